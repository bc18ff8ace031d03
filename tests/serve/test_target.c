/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Targets, heads and QR pictures without sockets.
#include "harness.h"
#include "serve/guard.h"
#include "serve/qr.h"
#include "serve/target.h"
#include <string.h>

static bw_target target;

static void paths_and_values_are_read(void) {
    CHECK_INT(bw_target_read("/api/jobs?kind=test&late=20%2C30&set=2-2-2&name=No+7%21", &target),
              BW_OK);
    CHECK_TEXT(target.path, "/api/jobs");
    CHECK_INT(target.value_count, 4);
    CHECK_TEXT(bw_target_value(&target, "late"), "20,30");
    CHECK_TEXT(bw_target_value(&target, "name"), "No 7!");
    CHECK(bw_target_value(&target, "absent") == NULL);
    CHECK_INT(bw_target_read("/a?late=", &target), BW_OK);
    CHECK_TEXT(bw_target_value(&target, "late"), "");
}

static void anything_else_is_refused(void) {
    const char *wrong[] = {
        "",         "a",        "//",       "/..",         "/a/../b",   "/a..b",     "/.a",
        "/%2e",     "/a b",     "/a\tb",    "/a#b",        "http://x/", "/\xc3\xa9", "/a?",
        "/a?b",     "/a?=c",    "/a?b=c&",  "/a?b=c&b=d",  "/a?b=%",    "/a?b=%2",   "/a?b=%zz",
        "/a?b=%00", "/a?b=%0a", "/a?b=%7f", "/a?b=%c3%a9", "/a?B=c",    "/a?b=\x01", "/a&b=c"};
    for (int i = 0; i < BW_COUNT(wrong); i++)
        CHECK_INT(bw_target_read(wrong[i], &target), BW_BAD_INPUT);
}

static void lengths_are_limited(void) {
    char text[400] = "/";
    memset(text + 1, 'a', BW_PATH_SIZE - 2);
    CHECK_INT(bw_target_read(text, &target), BW_OK);
    text[BW_PATH_SIZE - 1] = 'a';
    CHECK_INT(bw_target_read(text, &target), BW_LIMIT);
    strcpy(text, "/a?abcdefghijklmnop=1");
    CHECK_INT(bw_target_read(text, &target), BW_LIMIT);
    memset(text, 0, sizeof text);
    strcpy(text, "/a?b=");
    memset(text + 5, 'x', BW_VALUE_SIZE);
    CHECK_INT(bw_target_read(text, &target), BW_LIMIT);
    strcpy(text, "/a?");
    for (int i = 0; i <= BW_MAX_VALUES; i++)
        snprintf(text + strlen(text), 8, "%s%c=1", i ? "&" : "", 'a' + i);
    CHECK_INT(bw_target_read(text, &target), BW_LIMIT);
}

static void numbers_are_whole_and_in_range(void) {
    int n;
    CHECK_INT(bw_target_read("/a?n=12&m=&p=-3&q=1.5&r=99999999999&s=013", &target), BW_OK);
    CHECK(bw_target_number(&target, "n", 1, 12, 4, &n) && n == 12);
    CHECK(!bw_target_number(&target, "n", 1, 11, 4, &n));
    CHECK(!bw_target_number(&target, "n", 13, 20, 4, &n));
    CHECK(bw_target_number(&target, "absent", 1, 12, 4, &n) && n == 4);
    CHECK(!bw_target_number(&target, "m", 0, 12, 4, &n));
    CHECK(!bw_target_number(&target, "p", -5, 12, 4, &n));
    CHECK(!bw_target_number(&target, "q", 0, 12, 4, &n));
    CHECK(!bw_target_number(&target, "r", 0, 2000000000, 4, &n));
}

static bw_door door = {false, 2, {"127.0.0.1:7460", "localhost:7460"}};

static int judged(const char *method, const char *host, const char *origin, bool api) {
    bw_heads heads = {0};
    const char *why = NULL;
    if (host) bw_heads_note(&heads, "hOST", host);
    if (origin) bw_heads_note(&heads, "oRIGIN", origin);
    const int status = bw_guard(&door, method, &heads, api, &why);
    CHECK((status == 0) == (why == NULL));
    return status;
}

static void hosts_and_origins_are_exact(void) {
    CHECK_INT(judged("GET", "127.0.0.1:7460", NULL, true), 0);
    CHECK_INT(judged("GET", "127.0.0.1:7461", NULL, true), 421);
    CHECK_INT(judged("GET", "127.0.0.1:7460.", NULL, true), 421);
    CHECK_INT(judged("GET", "127.0.0.1", NULL, false), 421);
    CHECK_INT(judged("GET", NULL, NULL, true), 400);
    CHECK_INT(judged("PUT", "127.0.0.1:7460", NULL, true), 403);
    CHECK_INT(judged("PUT", "127.0.0.1:7460", "http://127.0.0.1:7460", true), 0);
    CHECK_INT(judged("PUT", "127.0.0.1:7460", "http://localhost:7460", true), 403);
    CHECK_INT(judged("PUT", "127.0.0.1:7460", "http://127.0.0.1:7460/", true), 403);
    CHECK_INT(judged("GET", "127.0.0.1:7460", "http://evil.example", true), 403);
    CHECK_INT(judged("GET", "127.0.0.1:7460", "http://evil.example", false), 403);
    char longest[300];
    memset(longest, '1', sizeof longest);
    longest[299] = '\0';
    CHECK_INT(judged("GET", longest, NULL, true), 400);
}

static void lengths_are_digits(void) {
    bw_heads heads = {0};
    CHECK_INT(bw_heads_length(&heads), 0);
    const char *wrong[] = {"", "-1", "+1", "1 ", "0x10", "1e3", "99999999999999999999"};
    for (int i = 0; i < BW_COUNT(wrong); i++) {
        heads = (bw_heads){0};
        bw_heads_note(&heads, "Content-Length", wrong[i]);
        CHECK_INT(bw_heads_length(&heads), -1);
    }
    heads = (bw_heads){0};
    bw_heads_note(&heads, "content-length", "1048576");
    CHECK_INT(bw_heads_length(&heads), 1048576);
}

/// Finder patterns stand in three corners, and the terminal's picture has the quiet edge.
static void qr_pictures_have_their_marks(void) {
    static bw_qr qr;
    CHECK(bw_qr_make("http://192.168.100.100:7460/#join=BCDFGHJK", &qr));
    CHECK(qr.side >= 21 && qr.side % 4 == 1);
    const int far = qr.side - 7;
    const int corner[3][2] = {{0, 0}, {0, far}, {far, 0}};
    for (int i = 0; i < 3; i++) {
        const int r = corner[i][0], c = corner[i][1];
        for (int k = 0; k < 7; k++)
            CHECK(qr.dark[r][c + k] && qr.dark[r + 6][c + k] && qr.dark[r + k][c]);
        CHECK(qr.dark[r + 3][c + 3] && !qr.dark[r + 1][c + 1]);
    }
    static char room[BW_QR_TEXT];
    bw_text out = bw_text_in(room, sizeof room);
    bw_qr_put(&qr, &out);
    CHECK(!out.full);
    int lines = 0;
    for (const char *at = room; *at; at++)
        lines += *at == '\n';
    CHECK_INT(lines, (qr.side + 8 + 1) / 2);
    CHECK(strncmp(room, "\u2588\u2588\u2588\u2588", 12) == 0);
    char longest[1200];
    memset(longest, 'a', sizeof longest);
    longest[sizeof longest - 1] = '\0';
    CHECK(!bw_qr_make(longest, &qr));
}

int main(int argc, char **argv) {
    RUN(paths_and_values_are_read);
    RUN(anything_else_is_refused);
    RUN(lengths_are_limited);
    RUN(numbers_are_whole_and_in_range);
    RUN(hosts_and_origins_are_exact);
    RUN(lengths_are_digits);
    RUN(qr_pictures_have_their_marks);
    return test_report(argc, argv);
}
