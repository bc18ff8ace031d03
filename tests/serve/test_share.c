/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Sharing over real sockets: a second door that opens and closes, players who may look and answer and
/// nothing else, and clients who are slow on purpose.
#include "client.h"
#include "serve/route.h"
#include "serve/slow.h"
#include <errno.h>

static desk d;
static char host[60], origin[100]; ///< of the network's door
static int port;

/// The network's door, once it is open.
static void find_door(void) {
    bw_share_view view;
    bw_server_look(d.server, &view);
    CHECK(view.open);
    snprintf(host, sizeof host, "%.*s", (int)strcspn(view.base + 7, "/"), view.base + 7);
    snprintf(origin, sizeof origin, "Origin: http://%s\r\n", host);
    port = atoi(strrchr(host, ':') + 1);
}

static void code_now(char code[BW_CODE_SIZE + 1]) {
    bw_share_view view;
    bw_server_look(d.server, &view);
    strcpy(code, view.code);
}

/// Joins and gives the player's head of secret.
static void let_in(char secret[80]) {
    char code[BW_CODE_SIZE + 1], word[40];
    code_now(code);
    CHECK_INT(test_ask(port, host, "POST", "/api/join?name=17", origin, code), 200);
    test_member("secret", word, sizeof word);
    CHECK_INT(strlen(word), 32);
    snprintf(secret, 80, "Breakwater-Secret: %s\r\n", word);
}

static void the_network_has_a_door_of_its_own(void) {
    find_door();
    CHECK(port != d.port);
    CHECK(strncmp(host, "club.test:", 10) == 0);
    CHECK_INT(test_ask(port, host, "GET", "/", "", NULL), 200);
    CHECK_INT(test_ask(port, d.host, "GET", "/", "", NULL), 421);
    CHECK_INT(test_ask(d.port, host, "GET", "/", "", NULL), 421);
    CHECK_INT(test_ask(port, "club.test", "GET", "/", "", NULL), 421);
    CHECK_INT(test_ask(port, host, "GET", "/api/scheme", "", NULL), 403);
    CHECK(test_in_words());
}

static void the_coach_has_no_rights_at_the_networks_door(void) {
    find_door();
    char heads[300];
    snprintf(heads, sizeof heads, "%s%s", origin, d.secret);
    CHECK_INT(test_ask(port, host, "GET", "/api/share", heads, NULL), 403);
    CHECK_INT(test_ask(port, host, "GET", "/api/scheme", heads, NULL), 403);
    char room[300];
    bw_text address = bw_text_in(room, sizeof room);
    bw_server_launch(d.server, &address);
    CHECK_INT(test_ask(port, host, "POST", "/api/start", origin, strchr(room, '=') + 1), 403);
    char code[BW_CODE_SIZE + 1];
    code_now(code);
    CHECK_INT(test_ask(d.port, d.host, "POST", "/api/join", d.origin, code), 403);
}

static void players_look_and_do_nothing_else(void) {
    find_door();
    char secret[80], heads[300], path[64];
    let_in(secret);
    snprintf(heads, sizeof heads, "%s%s", origin, secret);
    CHECK_INT(test_ask(port, host, "GET", "/api/scheme", secret, NULL), 200);
    CHECK(strstr(got.body, "Harbour") != NULL);
    CHECK_INT(test_ask(port, host, "GET", "/api/hello", secret, NULL), 200);
    CHECK(strstr(got.body, "\"player\"") && !strstr(got.body, "terns"));
    for (int i = 0; bw_route_at(i); i++) {
        const bw_route *r = bw_route_at(i);
        if (r->rights != BW_COACH) continue;
        snprintf(path, sizeof path, "%.*s%s", (int)strcspn(r->path, "#"), r->path,
                 strchr(r->path, '#') ? "1" : "");
        CHECK_INT(test_ask(port, host, r->method, path, heads, r->room ? "{}" : NULL), 403);
        CHECK(test_in_words());
    }
    CHECK_INT(test_ask(d.port, d.host, "GET", "/api/scheme", secret, NULL),
              403); // nor at the other door
}

static void codes_are_good_once_and_guessing_is_stopped(void) {
    find_door();
    char code[BW_CODE_SIZE + 1], secret[80];
    code_now(code);
    let_in(secret);
    CHECK_INT(test_ask(port, host, "POST", "/api/join", origin, code), 403);
    for (int i = 1; i < BW_CODE_TRIES; i++)
        CHECK_INT(test_ask(port, host, "POST", "/api/join", origin, "BBBB-BBBB"), 403);
    code_now(code);
    CHECK_INT(test_ask(port, host, "POST", "/api/join", origin, code), 429);
    CHECK(test_in_words());
    atomic_store(&test_now, test_now + BW_CODE_WAIT + 1);
    CHECK_INT(test_ask(port, host, "POST", "/api/join", "", code), 403); // no origin
    CHECK_INT(test_ask(port, host, "POST", "/api/join", origin, code), 200);
    code_now(code);
    atomic_store(&test_now, test_now + BW_CODE_SECONDS);
    CHECK_INT(test_ask(port, host, "POST", "/api/join", origin, code), 403); // too old
    CHECK_INT(test_ask(port, host, "GET", "/api/scheme", secret, NULL), 200);
}

static void removed_players_are_out_at_once(void) {
    find_door();
    char secret[80], other[80];
    let_in(secret);
    let_in(other);
    CHECK_INT(test_ask(d.port, d.host, "GET", "/api/share", d.secret, NULL), 200);
    CHECK(strstr(got.body, "\"id\":2,") && strstr(got.body, "\"id\":3,"));
    CHECK_INT(test_ask(d.port, d.host, "DELETE", "/api/devices/2", d.both, NULL), 200);
    CHECK_INT(test_ask(d.port, d.host, "DELETE", "/api/devices/2", d.both, NULL), 404);
    CHECK_INT(test_ask(d.port, d.host, "DELETE", "/api/devices/1", d.both, NULL), 404); // the coach
    CHECK_INT(test_ask(port, host, "GET", "/api/scheme", secret, NULL), 403);
    CHECK_INT(test_ask(port, host, "GET", "/api/scheme", other, NULL), 200);
}

static void sharing_ends_when_it_is_told_or_when_its_time_is_over(void) {
    find_door();
    char secret[80];
    let_in(secret);
    CHECK_INT(test_ask(d.port, d.host, "DELETE", "/api/share", d.both, NULL), 202);
    bw_server_tick(d.server);
    CHECK_INT(test_connect(port), -1);
    CHECK_INT(test_ask(d.port, d.host, "GET", "/", "", NULL), 200);
    CHECK_INT(test_ask(d.port, d.host, "POST", "/api/share?minutes=0", d.both, NULL), 400);
    CHECK_INT(test_ask(d.port, d.host, "POST", "/api/share?minutes=5", d.both, NULL), 202);
    bw_server_tick(d.server);
    find_door();
    CHECK_INT(test_ask(port, host, "GET", "/api/scheme", secret, NULL), 403); // of the last time
    let_in(secret);
    atomic_store(&test_now, test_now + 299);
    bw_server_tick(d.server);
    CHECK_INT(test_ask(port, host, "GET", "/api/scheme", secret, NULL), 200);
    atomic_store(&test_now, test_now + 2);
    bw_server_tick(d.server);
    CHECK_INT(test_connect(port), -1);
}

/// A client that trickles is cut off when its time is over, though it never falls silent.
static void slow_clients_are_cut_off(void) {
    find_door();
    const int head = test_connect(port), body = test_connect(d.port);
    char text[400];
    const int n = snprintf(text, sizeof text,
                           "PUT /api/scheme HTTP/1.1\r\nHost: %s\r\n%sIf-Match: \"x\"\r\n"
                           "Expect: 100-continue\r\nContent-Length: 500000\r\n\r\n",
                           d.host, d.both);
    CHECK(test_send(body, text, (size_t)n));
    CHECK(test_send(head, "GET / HT", 8));
    // The one has been read when it is told to go on, the other was taken on before the next is answered.
    CHECK(recv(body, text, sizeof text, 0) > 12 && strncmp(text, "HTTP/1.1 100", 12) == 0);
    CHECK_INT(test_ask(port, host, "GET", "/", "", NULL), 200);
    atomic_store(&test_now, test_now + BW_HEAD_SECONDS + 1);
    bw_server_tick(d.server);
    CHECK_INT(test_receive(head), 0);
    CHECK(test_send(body, " ", 1));
    CHECK(recv(body, text, 1, MSG_DONTWAIT) == -1 && errno == EAGAIN); // it has more time
    atomic_store(&test_now, test_now + BW_REST_SECONDS);
    bw_server_tick(d.server);
    CHECK_INT(test_receive(body), 0);
    close(head);
    close(body);
    CHECK_INT(test_ask(d.port, d.host, "GET", "/", "", NULL), 200);
}

static void one_address_cannot_hold_every_connection(void) {
    find_door();
    int held[40];
    for (int i = 0; i < BW_COUNT(held); i++)
        held[i] = test_connect(port);
    CHECK_INT(test_ask(d.port, d.host, "GET", "/", "", NULL), 200); // the coach still gets through
    for (int i = 0; i < BW_COUNT(held); i++)
        if (held[i] >= 0) close(held[i]);
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
    RUN_AT_A_DESK(the_network_has_a_door_of_its_own);
    RUN_AT_A_DESK(the_coach_has_no_rights_at_the_networks_door);
    RUN_AT_A_DESK(players_look_and_do_nothing_else);
    RUN_AT_A_DESK(codes_are_good_once_and_guessing_is_stopped);
    RUN_AT_A_DESK(removed_players_are_out_at_once);
    RUN_AT_A_DESK(sharing_ends_when_it_is_told_or_when_its_time_is_over);
    RUN_AT_A_DESK(slow_clients_are_cut_off);
    RUN_AT_A_DESK(one_address_cannot_hold_every_connection);
    return test_report(argc, argv);
}
