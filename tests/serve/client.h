/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What the server's tests share: a server in this process with a clock of our own, and a client that
/// sends exactly the bytes it is told to.
#ifndef BW_TESTS_SERVE_CLIENT_H
#define BW_TESTS_SERVE_CLIENT_H

#include "harness.h"
#include "serve/server.h"
#include <arpa/inet.h>
#include <netinet/in.h>
#include <stdatomic.h>
#include <stdbool.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/socket.h>
#include <sys/time.h>
#include <time.h>
#include <unistd.h>

/// Seconds on the server's clock. It stands still unless a test moves it.
static _Atomic double test_now = 1000;

static inline double test_clock(void *self) {
    (void)self;
    return atomic_load(&test_now);
}

/// An answer: its status (0: none), its head and its body, both terminated.
typedef struct reply {
    int status;
    char head[4096];
    char body[4000000];
    size_t length;
} reply;

static reply got; ///< the last answer

static inline int test_connect(int port) {
    struct sockaddr_in at = {.sin_family = AF_INET, .sin_port = htons((uint16_t)port)};
    at.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
    const int file = socket(AF_INET, SOCK_STREAM, 0);
    const struct timeval patience = {.tv_sec = 20};
    setsockopt(file, SOL_SOCKET, SO_RCVTIMEO, &patience, sizeof patience);
    if (connect(file, (const struct sockaddr *)&at, sizeof at) == 0) return file;
    close(file);
    return -1;
}

static inline bool test_send(int file, const char *bytes, size_t length) {
    while (length > 0) {
        const ssize_t n = send(file, bytes, length, MSG_NOSIGNAL);
        if (n <= 0) return false;
        bytes += n;
        length -= (size_t)n;
    }
    return true;
}

/// Reads until the other side closes, and takes the answer apart.
static inline int test_receive(int file) {
    static char all[sizeof got.body];
    size_t n = 0;
    for (ssize_t k; n < sizeof all - 1 && (k = recv(file, all + n, sizeof all - 1 - n, 0)) > 0;)
        n += (size_t)k;
    all[n] = '\0';
    memset(&got, 0, sizeof got);
    char *body = strstr(all, "\r\n\r\n");
    if (!body || sscanf(all, "HTTP/1.%*d %d", &got.status) != 1) return got.status = 0;
    *body = '\0';
    body += 4;
    snprintf(got.head, sizeof got.head, "%.4000s", all);
    got.length = n - (size_t)(body - all);
    memcpy(got.body, body, got.length);
    return got.status;
}

/// Sends these bytes on a connection of their own; returns the status, the answer in `got`.
static inline int test_raw(int port, const char *bytes, size_t length) {
    const int file = test_connect(port);
    if (file < 0) return 0;
    test_send(file, bytes, length);
    const int status = test_receive(file);
    close(file);
    return status;
}

/// One request. `heads` are whole header lines beside Host and Connection; body may be NULL.
static inline int test_ask(int port, const char *host, const char *method, const char *target,
                           const char *heads, const char *body) {
    const size_t n = body ? strlen(body) : 0, room = n + 4096;
    char *text = malloc(room);
    int used = snprintf(text, room, "%s %s HTTP/1.1\r\nHost: %s\r\nConnection: close\r\n%s", method,
                        target, host, heads);
    if (body) used += snprintf(text + used, room - (size_t)used, "Content-Length: %zu\r\n", n);
    used += snprintf(text + used, room - (size_t)used, "\r\n%s", body ? body : "");
    const int status = test_raw(port, text, (size_t)used);
    free(text);
    return status;
}

/// Whether the last answer is one plain sentence for people.
static inline bool test_in_words(void) {
    return strstr(got.head, "text/plain") && got.length > 5 && got.body[got.length - 1] == '\n' &&
           strchr(got.body, '\n') == got.body + got.length - 1 && got.body[got.length - 2] == '.';
}

/// A server, the address of its own door as Host has it, and the coach's heads for reading and writing.
typedef struct desk {
    bw_server *server;
    int port;
    char host[40];
    char origin[80]; ///< "Origin: http://...\r\n"
    char secret[80]; ///< "Breakwater-Secret: ...\r\n"
    char both[160];
} desk;

/// The value of a text member in the last answer's JSON.
static inline void test_member(const char *key, char *out, size_t room) {
    char pattern[40];
    snprintf(pattern, sizeof pattern, "\"%s\":\"", key);
    const char *at = strstr(got.body, pattern);
    out[0] = '\0';
    if (!at) return;
    at += strlen(pattern);
    snprintf(out, room, "%.*s", (int)strcspn(at, "\""), at);
}

/// Opens a server on a scheme file and a team file, its coach let in.
static inline bool desk_open_team(desk *d, const char *file, const char *team, bool share) {
    memset(d, 0, sizeof *d);
    char room[300], secret[40];
    bw_text why = bw_text_in(room, sizeof room);
    const bw_server_def def = {.file = file,
                               .team = team,
                               .share = share,
                               .minutes = 30,
                               .host = "club.test",
                               .address = "127.0.0.1",
                               .clock = test_clock};
    d->server = bw_server_open(&def, &why);
    if (!d->server) {
        fprintf(stderr, "%s\n", room);
        return false;
    }
    bw_server_tick(d->server);
    d->port = bw_server_port(d->server);
    snprintf(d->host, sizeof d->host, "127.0.0.1:%d", d->port);
    snprintf(d->origin, sizeof d->origin, "Origin: http://%s\r\n", d->host);
    bw_text address = bw_text_in(room, sizeof room);
    bw_server_launch(d->server, &address);
    test_ask(d->port, d->host, "POST", "/api/start", d->origin, strchr(room, '=') + 1);
    test_member("secret", secret, sizeof secret);
    snprintf(d->secret, sizeof d->secret, "Breakwater-Secret: %s\r\n", secret);
    snprintf(d->both, sizeof d->both, "%s%s", d->origin, d->secret);
    return strlen(secret) == 32;
}

static inline bool desk_open(desk *d, const char *file, bool share) {
    return desk_open_team(d, file, NULL, share);
}

static inline void desk_close(desk *d) {
    bw_server_close(d->server);
}

/// Between two looks at something that another thread is at work on.
static inline void test_wait(void) {
    nanosleep(&(struct timespec){.tv_nsec = 20000000}, NULL);
}

#endif
