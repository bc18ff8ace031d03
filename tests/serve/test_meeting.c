/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A team meeting: sixty phones open the page at once, as browsers do, each with six connections that stay
/// open. All of them get all of it, and the coach gets in whatever the others hold.
#include "client.h"
#include "serve/assets.h"
#include "serve/slow.h"
#include <fcntl.h>
#include <poll.h>

enum { PHONES = 60, EACH = 6, LINES = PHONES * EACH };

/// A client that has seen nothing happen for so long gives up, milliseconds.
enum { PATIENCE = 60000 };

static desk d;

/// One connection of a phone: it asks for every sixth part of the page, one after the other.
typedef struct line {
    int file;
    int part;         ///< that it is getting; the page is done when there is no such part
    size_t got, want; ///< bytes of the answer; want is 0 until its head has come
    char head[2048];
} line;

static line lines[LINES];
static char host[60];
static int port;

static void find_door(void) {
    bw_share_view view;
    bw_server_look(d.server, &view);
    CHECK(view.open);
    snprintf(host, sizeof host, "%.*s", (int)strcspn(view.base + 7, "/"), view.base + 7);
    port = atoi(strrchr(host, ':') + 1);
}

/// A socket that connects from the phone's own address.
static int dial(int phone) {
    struct sockaddr_in from = {.sin_family = AF_INET}, to = from;
    from.sin_addr.s_addr = htonl(0x7f000101u + (uint32_t)phone); // 127.0.1.1 and on
    to.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
    to.sin_port = htons((uint16_t)port);
    const int file = socket(AF_INET, SOCK_STREAM, 0);
    CHECK(file >= 0 && bind(file, (const struct sockaddr *)&from, sizeof from) == 0);
    CHECK(fcntl(file, F_SETFL, O_NONBLOCK) == 0);
    connect(file, (const struct sockaddr *)&to, sizeof to);
    return file;
}

static bool ask_for_part(line *l) {
    char text[200];
    const bw_asset *asset = bw_asset_at(l->part);
    l->got = l->want = 0;
    if (!asset) return false;
    const int n =
        snprintf(text, sizeof text, "GET %s HTTP/1.1\r\nHost: %s\r\n\r\n", asset->path, host);
    CHECK(test_send(l->file, text, (size_t)n));
    return true;
}

/// Takes the head of an answer apart; what is beyond it is of the body.
static void read_head(line *l) {
    const char *end = strstr(l->head, "\r\n\r\n"), *length = strstr(l->head, "Content-Length: ");
    if (!end) return;
    CHECK(strncmp(l->head, "HTTP/1.1 200", 12) == 0 && length);
    const size_t body = length ? (size_t)atol(length + 16) : 0;
    CHECK_INT(body, bw_asset_length(bw_asset_at(l->part)));
    l->want = (size_t)(end + 4 - l->head) + body;
}

/// Reads what has come. False when the page is done, or the connection is.
static bool go_on(line *l) {
    static char rest[65536];
    const bool in_head = l->want == 0;
    const ssize_t n = in_head ? recv(l->file, l->head + l->got, sizeof l->head - 1 - l->got, 0)
                              : recv(l->file, rest, sizeof rest, 0);
    CHECK(n > 0);
    if (n <= 0) return false;
    l->got += (size_t)n;
    if (in_head) l->head[l->got] = '\0';
    if (in_head) read_head(l);
    if (l->want == 0 || l->got < l->want) return true;
    l->part += EACH;
    return ask_for_part(l);
}

/// Whether every line got all of its parts.
static void load(void) {
    static struct pollfd waits[LINES];
    static bool asked[LINES];
    int open = LINES;
    memset(asked, 0, sizeof asked);
    for (int i = 0; i < LINES; i++) {
        lines[i] = (line){.file = dial(i / EACH), .part = i % EACH};
        waits[i] = (struct pollfd){.fd = lines[i].file, .events = POLLOUT};
    }
    for (int quiet = 0; open > 0 && quiet < PATIENCE / 100; quiet++) {
        if (poll(waits, LINES, 100) > 0) quiet = 0;
        bw_server_tick(d.server);
        for (int i = 0; i < LINES; i++) {
            if (!waits[i].revents) continue;
            const bool more = asked[i] ? go_on(&lines[i]) : ask_for_part(&lines[i]);
            asked[i] = true;
            waits[i].events = POLLIN;
            if (more) continue;
            waits[i].fd = -1;
            open--;
        }
    }
    CHECK_INT(open, 0);
}

static void hang_up(void) {
    for (int i = 0; i < LINES; i++)
        close(lines[i].file);
}

/// Every phone has the whole page, though none lets go of a connection, and nobody had to be timed out:
/// the server's clock stands still.
static void a_team_opens_the_page_at_once(void) {
    find_door();
    load();
    CHECK_INT(test_ask(d.port, d.host, "GET", "/api/scheme", d.secret, NULL), 200);
    hang_up();
}

/// Connections that ask for nothing hold a door only until it is full: then the coach gets in long before
/// their usual time is over. The clock is moved again now and then, for a busy machine may take some of
/// them on only after it was moved before.
static void a_full_door_lets_go_of_those_that_ask_for_nothing(void) {
    int held[BW_OWN_CONNECTIONS + BW_SPARE_CONNECTIONS], status = 0;
    for (int i = 0; i < BW_COUNT(held); i++)
        held[i] = test_connect(d.port);
    for (int i = 0; i < 100 * (BW_HEAD_SECONDS / BW_FULL_SECONDS) && status != 200; i++) {
        if (i % 100 == 0) atomic_store(&test_now, test_now + BW_FULL_SECONDS);
        bw_server_tick(d.server);
        test_wait();
        status = test_ask(d.port, d.host, "GET", "/api/scheme", d.secret, NULL);
    }
    CHECK_INT(status, 200);
    for (int i = 0; i < BW_COUNT(held); i++)
        close(held[i]);
}

static void run_at_a_desk(void (*test)(void)) {
    char file[300];
    const char *root = getenv("BW_ROOT");
    snprintf(file, sizeof file, "%s/examples/terns.json", root ? root : ".");
    CHECK(desk_open(&d, file, true));
    test();
    desk_close(&d);
}

#define RUN_AT_A_DESK(test) RUN_AS(#test, run_at_a_desk(test))

int main(int argc, char **argv) {
    RUN_AT_A_DESK(a_team_opens_the_page_at_once);
    RUN_AT_A_DESK(a_full_door_lets_go_of_those_that_ask_for_nothing);
    return test_report(argc, argv);
}
