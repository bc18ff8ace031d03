/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Who is let through the door, over real sockets: every wrong host, origin, secret, path and head is
/// refused in words, and the server goes on serving.
#include "client.h"
#include "serve/route.h"

static desk d;

/// The path of a route with a number where it has one.
static void path_of(const bw_route *route, char *out, size_t room) {
    const char *hash = strchr(route->path, '#');
    snprintf(out, room, "%.*s%s%s", (int)(hash ? hash - route->path : (long)strlen(route->path)),
             route->path, hash ? "1" : "", hash ? hash + 1 : "");
}

static const char *body_of(const bw_route *route) {
    return route->room > 0 ? "{}" : NULL;
}

static void other_hosts_are_refused_on_every_route(void) {
    const char *wrong[] = {"evil.example", "127.0.0.1",   "127.0.0.1:1", "localhost", "",
                           "[::1]",        "0.0.0.0:7460"};
    char path[64], near[64];
    for (int i = 0; bw_route_at(i); i++) {
        const bw_route *r = bw_route_at(i);
        path_of(r, path, sizeof path);
        for (int k = 0; k < BW_COUNT(wrong); k++) {
            CHECK_INT(test_ask(d.port, wrong[k], r->method, path, d.both, body_of(r)), 421);
            CHECK(test_in_words());
        }
        atomic_store(&test_now, test_now + 1); // or it were refused for asking too often
        snprintf(near, sizeof near, "%s.evil.example", d.host);
        CHECK_INT(test_ask(d.port, near, r->method, path, d.both, body_of(r)), 421);
    }
    CHECK_INT(test_ask(d.port, "evil.example", "GET", "/", "", NULL), 421);
    char local[40];
    snprintf(local, sizeof local, "localhost:%d", d.port);
    CHECK_INT(test_ask(d.port, local, "GET", "/", "", NULL), 200);
}

/// Everything that changes something, with every way of not coming from our own page.
static void writes_need_origin_and_secret(void) {
    char path[64], heads[400];
    for (int i = 0; bw_route_at(i); i++) {
        const bw_route *r = bw_route_at(i);
        if (bw_is_reading(r->method)) continue;
        path_of(r, path, sizeof path);
        const char *body = body_of(r);
        const char *origins[] = {"", "Origin: null\r\n", "Origin: http://evil.example\r\n",
                                 "Origin: https://127.0.0.1\r\n", "Origin: \r\n"};
        for (int k = 0; k < BW_COUNT(origins); k++) {
            snprintf(heads, sizeof heads, "%s%s", origins[k], d.secret);
            CHECK_INT(test_ask(d.port, d.host, r->method, path, heads, body), 403);
            CHECK(test_in_words());
        }
        snprintf(heads, sizeof heads, "Origin: http://localhost:%d\r\n%s", d.port, d.secret);
        CHECK_INT(test_ask(d.port, d.host, r->method, path, heads, body),
                  403); // known, not this one
        snprintf(heads, sizeof heads, "%sSec-Fetch-Site: cross-site\r\n", d.both);
        CHECK_INT(test_ask(d.port, d.host, r->method, path, heads, body), 403);
        snprintf(heads, sizeof heads, "%sSec-Fetch-Site: same-site\r\n", d.both);
        CHECK_INT(test_ask(d.port, d.host, r->method, path, heads, body), 403);
        if (r->rights == BW_STRANGER) continue;
        CHECK_INT(test_ask(d.port, d.host, r->method, path, d.origin, body), 403);
        CHECK(test_in_words());
    }
}

static void secrets_must_be_exact_and_cookies_are_nothing(void) {
    char heads[400], secret[40];
    snprintf(secret, sizeof secret, "%.32s", d.secret + strlen("Breakwater-Secret: "));
    CHECK_INT(test_ask(d.port, d.host, "GET", "/api/scheme", d.secret, NULL), 200);
    CHECK_INT(test_ask(d.port, d.host, "GET", "/api/scheme", "", NULL), 403);
    snprintf(heads, sizeof heads, "Cookie: Breakwater-Secret=%s; secret=%s\r\n", secret, secret);
    CHECK_INT(test_ask(d.port, d.host, "GET", "/api/scheme", heads, NULL), 403);
    CHECK_INT(test_ask(d.port, d.host, "PUT", "/api/scheme", heads, "{}"), 403);
    for (int i = 0; i < 32; i++) { // each digit matters
        char wrong[40];
        memcpy(wrong, secret, sizeof wrong);
        wrong[i] = wrong[i] == '0' ? '1' : '0';
        snprintf(heads, sizeof heads, "Breakwater-Secret: %s\r\n", wrong);
        CHECK_INT(test_ask(d.port, d.host, "GET", "/api/scheme", heads, NULL), 403);
    }
    snprintf(heads, sizeof heads, "Breakwater-Secret: %.16s\r\n", secret);
    CHECK_INT(test_ask(d.port, d.host, "GET", "/api/scheme", heads, NULL), 403);
    snprintf(heads, sizeof heads, "Breakwater-Secret: \r\n");
    CHECK_INT(test_ask(d.port, d.host, "GET", "/api/scheme", heads, NULL), 403);
    CHECK(strstr(got.head, "Set-Cookie") == NULL);
}

static void launch_tokens_are_good_once(void) {
    char room[300];
    bw_text address = bw_text_in(room, sizeof room);
    bw_server_launch(d.server, &address);
    const char *token = strchr(room, '=') + 1;
    CHECK_INT(test_ask(d.port, d.host, "POST", "/api/start", d.origin, "wrong"), 403);
    CHECK_INT(test_ask(d.port, d.host, "POST", "/api/start", d.origin, ""), 403);
    CHECK_INT(test_ask(d.port, d.host, "POST", "/api/start", "", token), 403);
    CHECK_INT(test_ask(d.port, d.host, "POST", "/api/start", d.origin, token), 200);
    CHECK_INT(test_ask(d.port, d.host, "POST", "/api/start", d.origin, token), 403);
    CHECK(test_in_words());
    CHECK_INT(test_ask(d.port, d.host, "POST", "/api/start", d.origin, ""), 403);
}

static void every_answer_has_the_same_strict_heads(void) {
    const char *targets[] = {"/", "/board.js", "/api/hello", "/nothing", "/api/scheme"};
    const char *wanted[] = {
        "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'",
        "frame-ancestors 'none'",
        "X-Content-Type-Options: nosniff",
        "Cross-Origin-Opener-Policy: same-origin",
        "Cross-Origin-Resource-Policy: same-origin",
        "Referrer-Policy: no-referrer",
        "Cache-Control: no-store"};
    for (int i = 0; i < BW_COUNT(targets); i++) {
        CHECK(test_ask(d.port, d.host, "GET", targets[i], "", NULL) > 0);
        for (int k = 0; k < BW_COUNT(wanted); k++)
            CHECK(strstr(got.head, wanted[k]));
        CHECK(!strstr(got.head, "unsafe-inline") && !strstr(got.head, "'unsafe-eval'"));
        CHECK(!strstr(got.head, "Access-Control"));
    }
}

static void only_plain_paths_lead_anywhere(void) {
    const char *wrong[] = {"/..%2f..%2fetc/passwd",
                           "/../etc/passwd",
                           "/board.js%00",
                           "//board.js",
                           "/./board.js",
                           "/board.js/",
                           "/BOARD.JS",
                           "/api//hello",
                           "/api/hello/",
                           "/%61pi/hello",
                           "http://127.0.0.1/api/hello",
                           "*",
                           "/api/jobs/0",
                           "/api/jobs/-1",
                           "/api/jobs/99999999999999999999",
                           "/api/jobs/1x",
                           "/api/hello?x",
                           "/api/hello?x=1&x=2",
                           "/api/hello?X=1",
                           "/\\board.js",
                           "/board.js;x",
                           "/index.html",
                           "/.git/config",
                           "/api",
                           "/api/"};
    for (int i = 0; i < BW_COUNT(wrong); i++) {
        CHECK_INT(test_ask(d.port, d.host, "GET", wrong[i], d.secret, NULL), 404);
        CHECK(test_in_words());
    }
    char longest[3000] = "/";
    memset(longest + 1, 'a', sizeof longest - 2);
    CHECK_INT(test_ask(d.port, d.host, "GET", longest, d.secret, NULL), 404);
}

static void methods_that_are_not_there_are_refused(void) {
    const char *methods[] = {"OPTIONS", "TRACE", "PATCH", "POST", "DELETE", "PROPFIND", "get", "X"};
    for (int i = 0; i < BW_COUNT(methods); i++) {
        CHECK_INT(test_ask(d.port, d.host, methods[i], "/", d.both, NULL), 405);
        CHECK(test_in_words());
        CHECK(strstr(got.head, "Allow: GET, HEAD") || strlen(methods[i]) > 7);
    }
    CHECK_INT(test_ask(d.port, d.host, "POST", "/api/scheme", d.both, "{}"), 405);
    CHECK(strstr(got.head, "Allow: GET, HEAD, PUT"));
    CHECK_INT(test_ask(d.port, d.host, "GET", "/api/start", d.secret, NULL), 405);
    CHECK(strstr(got.head, "Allow: POST"));
}

static void a_head_is_the_answer_without_its_body(void) {
    CHECK_INT(test_ask(d.port, d.host, "GET", "/board.css", "", NULL), 200);
    char length[60];
    snprintf(length, sizeof length, "Content-Length: %zu", got.length);
    CHECK_INT(test_ask(d.port, d.host, "HEAD", "/board.css", "", NULL), 200);
    CHECK(strstr(got.head, length));
    CHECK_INT(got.length, 0);
}

static void doubled_and_odd_heads_are_refused(void) {
    char heads[600];
    snprintf(heads, sizeof heads, "Host: %s\r\n", d.host);
    CHECK_INT(test_ask(d.port, d.host, "GET", "/", heads, NULL), 400);
    snprintf(heads, sizeof heads, "%s%s", d.both, d.origin);
    CHECK_INT(test_ask(d.port, d.host, "POST", "/api/start", heads, "x"), 400);
    snprintf(heads, sizeof heads, "%s%s", d.secret, d.secret);
    CHECK_INT(test_ask(d.port, d.host, "GET", "/api/scheme", heads, NULL), 400);
    snprintf(heads, sizeof heads, "%sTransfer-Encoding: chunked\r\n", d.both);
    CHECK_INT(test_ask(d.port, d.host, "POST", "/api/start", heads, NULL), 411);
    snprintf(heads, sizeof heads, "%sContent-Length: 5\r\nContent-Length: 6\r\n", d.both);
    CHECK_INT(test_ask(d.port, d.host, "POST", "/api/start", heads, NULL), 400);
    snprintf(heads, sizeof heads, "%sContent-Length: -5\r\n", d.both);
    CHECK(test_ask(d.port, d.host, "POST", "/api/start", heads, NULL) >= 400);
    snprintf(heads, sizeof heads, "%sContent-Length: +5\r\n", d.both);
    CHECK(test_ask(d.port, d.host, "POST", "/api/start", heads, NULL) >= 400);
}

/// What follows a refused request on the same connection is never taken for another.
static void a_body_is_never_the_next_request(void) {
    char bytes[1200];
    const char *methods[] = {"GET", "DELETE", "POST", "PUT"};
    for (int i = 0; i < BW_COUNT(methods); i++) {
        char inner[300];
        snprintf(inner, sizeof inner, "GET /api/hello HTTP/1.1\r\nHost: %s\r\n\r\n", d.host);
        const int n =
            snprintf(bytes, sizeof bytes,
                     "%s /nothing HTTP/1.1\r\nHost: %s\r\n%sContent-Length: %zu\r\n\r\n%s",
                     methods[i], d.host, d.both, strlen(inner), inner);
        CHECK_INT(test_raw(d.port, bytes, (size_t)n), 404);
        CHECK(strstr(got.body, "breakwater") == NULL);
        CHECK(strstr(got.head, "Connection: close"));
    }
}

static void too_large_a_body_is_refused_before_it_comes(void) {
    char heads[400];
    snprintf(heads, sizeof heads, "%sIf-Match: \"x\"\r\nContent-Length: 2000000\r\n", d.both);
    CHECK_INT(test_ask(d.port, d.host, "PUT", "/api/scheme", heads, NULL), 413);
    CHECK(test_in_words());
    snprintf(heads, sizeof heads, "%sContent-Length: 99999999999999999999\r\n", d.both);
    CHECK(test_ask(d.port, d.host, "PUT", "/api/scheme", heads, NULL) >= 400);
    char token[200];
    memset(token, 'a', sizeof token - 1);
    token[sizeof token - 1] = '\0';
    CHECK_INT(test_ask(d.port, d.host, "POST", "/api/start", d.origin, token), 413);
    CHECK_INT(test_ask(d.port, d.host, "GET", "/api/hello", d.secret, "body"), 413);
}

static void too_large_a_head_is_refused(void) {
    static char heads[40000];
    strcpy(heads, "X-Long: ");
    memset(heads + 8, 'a', sizeof heads - 20);
    strcpy(heads + sizeof heads - 12, "\r\n");
    static char bytes[50000];
    const int n =
        snprintf(bytes, sizeof bytes, "GET / HTTP/1.1\r\nHost: %s\r\n%s\r\n", d.host, heads);
    const int status = test_raw(d.port, bytes, (size_t)n);
    CHECK(status == 431 || status == 413 || status == 0);
}

/// Bytes that are no request at all, and requests cut off anywhere.
static void garbage_harms_nothing(void) {
    unsigned long long seed = 11;
    char bytes[600];
    for (int round = 0; round < 60; round++) {
        const size_t n = 1 + test_random(&seed) % sizeof bytes;
        for (size_t i = 0; i < n; i++)
            bytes[i] = (char)test_random(&seed);
        const int file = test_connect(d.port);
        CHECK(file >= 0);
        test_send(file, bytes, n);
        shutdown(file, SHUT_WR);
        // Half a request may be waited upon, till its time is over; this client has less.
        const struct timeval patience = {.tv_usec = 100000};
        setsockopt(file, SOL_SOCKET, SO_RCVTIMEO, &patience, sizeof patience);
        CHECK(test_receive(file) != 200);
        close(file);
    }
    const int length = snprintf(bytes, sizeof bytes,
                                "PUT /api/scheme HTTP/1.1\r\nHost: %s\r\n%sIf-Match: \"x\"\r\n"
                                "Content-Length: 40\r\n\r\n{\"breakwater\": 1",
                                d.host, d.both);
    for (int n = 1; n <= length; n += 7) {
        const int file = test_connect(d.port);
        test_send(file, bytes, (size_t)n);
        close(file);
    }
    // So many at once may be too many for one address; they are gone in a moment.
    int status = 0;
    for (int tries = 0; tries < 500 && status != 200; tries++) {
        test_wait();
        status = test_ask(d.port, d.host, "GET", "/api/hello", "", NULL);
        atomic_store(&test_now, test_now + 1);
    }
    CHECK_INT(status, 200);
}

static void an_address_that_asks_too_often_waits(void) {
    int refused = 0;
    for (int i = 0; i < 400; i++)
        refused += test_ask(d.port, d.host, "GET", "/api/hello", "", NULL) == 429;
    CHECK(refused > 100);
    CHECK_INT(test_ask(d.port, d.host, "GET", "/api/hello", "", NULL), 429);
    CHECK(test_in_words());
    atomic_store(&test_now, test_now + 60);
    CHECK_INT(test_ask(d.port, d.host, "GET", "/api/hello", "", NULL), 200);
}

/// What another site's page in the coach's own browser sends is counted apart from what he does: neither
/// his window nor a new one of his is shut out.
static void other_pages_use_up_nothing_of_the_coachs(void) {
    static const char *const foreign[] = {
        "Origin: http://evil.example\r\nSec-Fetch-Site: cross-site\r\n",
        "Sec-Fetch-Site: cross-site\r\n", // a picture, whose address is ours
        "Sec-Fetch-Site: same-site\r\n", ""};
    static const char *const own[] = {"Sec-Fetch-Site: none\r\n",
                                      "Sec-Fetch-Site: same-origin\r\n"};
    char room[300], heads[300];
    int refused = 0;
    for (int i = 0; i < 300; i++) {
        refused += test_ask(d.port, d.host, "GET", "/board.js", foreign[i % 4], NULL) == 429;
        // A name of theirs that leads here, under which their page is at home.
        test_ask(d.port, "evil.example", "GET", "/", own[1], NULL);
    }
    CHECK(refused > 0);
    CHECK_INT(test_ask(d.port, d.host, "GET", "/api/scheme", d.secret, NULL), 200);
    CHECK_INT(test_ask(d.port, d.host, "GET", "/", own[0], NULL), 200);
    CHECK_INT(test_ask(d.port, d.host, "GET", "/board.js", own[1], NULL), 200);
    bw_text address = bw_text_in(room, sizeof room);
    bw_server_launch(d.server, &address);
    snprintf(heads, sizeof heads, "%s%s", d.origin, own[1]);
    CHECK_INT(test_ask(d.port, d.host, "POST", "/api/start", heads, strchr(room, '=') + 1), 200);
}

/// A server for each test: haste counts anew.
static void run_at_a_desk(void (*test)(void)) {
    char file[300];
    const char *root = getenv("BW_ROOT");
    snprintf(file, sizeof file, "%s/examples/terns.json", root ? root : ".");
    CHECK(desk_open(&d, file, false));
    test();
    desk_close(&d);
}

#define RUN_AT_A_DESK(test) RUN_AS(#test, run_at_a_desk(test))

int main(int argc, char **argv) {
    RUN_AT_A_DESK(other_hosts_are_refused_on_every_route);
    RUN_AT_A_DESK(writes_need_origin_and_secret);
    RUN_AT_A_DESK(secrets_must_be_exact_and_cookies_are_nothing);
    RUN_AT_A_DESK(launch_tokens_are_good_once);
    RUN_AT_A_DESK(every_answer_has_the_same_strict_heads);
    RUN_AT_A_DESK(only_plain_paths_lead_anywhere);
    RUN_AT_A_DESK(methods_that_are_not_there_are_refused);
    RUN_AT_A_DESK(a_head_is_the_answer_without_its_body);
    RUN_AT_A_DESK(doubled_and_odd_heads_are_refused);
    RUN_AT_A_DESK(a_body_is_never_the_next_request);
    RUN_AT_A_DESK(too_large_a_body_is_refused_before_it_comes);
    RUN_AT_A_DESK(too_large_a_head_is_refused);
    RUN_AT_A_DESK(garbage_harms_nothing);
    RUN_AT_A_DESK(an_address_that_asks_too_often_waits);
    RUN_AT_A_DESK(other_pages_use_up_nothing_of_the_coachs);
    return test_report(argc, argv);
}
