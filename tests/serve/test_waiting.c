/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Whoever waits, waits alone: while another program holds the team file and a request waits for it, all
/// that does not need it is answered. And what many do at once is done one after the other where it must
/// be.
#include "client.h"
#include "team/team.h"
#include <poll.h>
#include <pthread.h>
#include <sqlite3.h>
#include <stddef.h>
#include <stdint.h>
#include <sys/wait.h>

enum { WAITING = 6, SAVERS = 8, ROUNDS = 10, TRIES = 10 };

static desk d;
static char folder[200], team_path[240], scheme_path[240];

static const char one[] = "{\"entries\":[{\"id\":\"a1\",\"offence\":6,\"defence\":4,"
                          "\"outcome\":\"goal\"}]}";

/// Another program that takes the team file for itself and lets it go, each when it is told. It begins
/// before this one has threads.
static struct {
    pid_t pid;
    int tell, hear;
} other;

static void take_and_let_go(int told, int say) {
    sqlite3 *db = NULL;
    for (char byte; read(told, &byte, 1) == 1;) {
        sqlite3_close(db);
        db = NULL;
        if (byte == 't' && (sqlite3_open(team_path, &db) != SQLITE_OK ||
                            sqlite3_exec(db, "BEGIN EXCLUSIVE", NULL, NULL, NULL) != SQLITE_OK))
            break;
        if (write(say, &byte, 1) != 1) break;
    }
    sqlite3_close(db);
    _exit(0);
}

static void begin_other(void) {
    int told[2], said[2];
    CHECK(pipe(told) == 0 && pipe(said) == 0);
    other.pid = fork();
    if (other.pid == 0) {
        close(told[1]);
        close(said[0]);
        take_and_let_go(told[0], said[1]);
    }
    close(told[0]);
    close(said[1]);
    other.tell = told[1];
    other.hear = said[0];
}

/// 't': takes the file; 'l': lets it go. It has been done when this returns.
static void tell_other(char what) {
    char heard = 0;
    CHECK(write(other.tell, &what, 1) == 1);
    CHECK(read(other.hear, &heard, 1) == 1 && heard == what);
}

static void end_other(void) {
    close(other.tell);
    CHECK(waitpid(other.pid, NULL, 0) == other.pid);
    close(other.hear);
}

static int send_entry(void) {
    char text[700];
    const int file = test_connect(d.port);
    const int n = snprintf(text, sizeof text,
                           "POST /api/team/entries HTTP/1.1\r\nHost: %s\r\nConnection: close\r\n%s"
                           "Content-Length: %zu\r\n\r\n%s",
                           d.host, d.both, strlen(one), one);
    CHECK(file >= 0 && test_send(file, text, (size_t)n));
    return file;
}

/// Everyone's hello, a join, the scheme for player and coach, and a saved scheme.
static void all_else_is_answered(void) {
    bw_share_view view;
    char host[60], origin[100], secret[40], heads[300];
    bw_server_look(d.server, &view);
    snprintf(host, sizeof host, "%.*s", (int)strcspn(view.base + 7, "/"), view.base + 7);
    snprintf(origin, sizeof origin, "Origin: http://%s\r\n", host);
    const int port = atoi(strrchr(host, ':') + 1);
    CHECK_INT(test_ask(d.port, d.host, "GET", "/api/hello", d.secret, NULL), 200);
    CHECK_INT(test_ask(port, host, "GET", "/api/hello", "", NULL), 200);
    CHECK_INT(test_ask(port, host, "POST", "/api/join?name=17", origin, view.code), 200);
    test_member("secret", secret, sizeof secret);
    snprintf(heads, sizeof heads, "Breakwater-Secret: %s\r\n", secret);
    CHECK_INT(test_ask(port, host, "GET", "/api/scheme", heads, NULL), 200);
    CHECK_INT(test_ask(d.port, d.host, "GET", "/api/scheme", d.secret, NULL), 200);
    CHECK_INT(test_ask(d.port, d.host, "GET", "/api/share", d.secret, NULL), 200);
    CHECK_INT(test_ask(d.port, d.host, "GET", "/", "", NULL), 200);
}

/// Whether all that waited were still waiting when the others had been answered. SQLite waits five seconds
/// for the file; on a machine too busy for that they have given up before, and it says nothing.
static bool others_come_first(void) {
    int waiting[WAITING], still = 0;
    tell_other('t');
    for (int i = 0; i < WAITING; i++)
        waiting[i] = send_entry();
    all_else_is_answered();
    for (int i = 0; i < WAITING; i++)
        still += poll(&(struct pollfd){.fd = waiting[i], .events = POLLIN}, 1, 0) == 0;
    tell_other('l');
    for (int i = 0; i < WAITING; i++) {
        const int status = test_receive(waiting[i]);
        CHECK(status == 200 || status == 503);
        close(waiting[i]);
    }
    return still == WAITING;
}

static void a_held_team_file_stops_nobody_else(void) {
    bool came_first = false;
    for (int i = 0; i < TRIES && !came_first; i++)
        came_first = others_come_first();
    CHECK(came_first);
}

static char tag[60]; ///< that the savers begin from

/// Saves a text over the one that was read; returns the status of the answer.
static void *save(void *self) {
    const char *text = self;
    char *request = malloc(strlen(text) + 600);
    const int file = test_connect(d.port);
    const int n = sprintf(request,
                          "PUT /api/scheme HTTP/1.1\r\nHost: %s\r\nConnection: close\r\n%s"
                          "If-Match: %s\r\nContent-Length: %zu\r\n\r\n%s",
                          d.host, d.both, tag, strlen(text), text);
    char line[32] = "";
    test_send(file, request, (size_t)n);
    recv(file, line, sizeof line - 1, MSG_WAITALL);
    close(file);
    free(request);
    int status = 0;
    sscanf(line, "HTTP/1.%*d %d", &status);
    return (void *)(intptr_t)status;
}

/// Of many who save over the same text at the same time one is right and the others are told.
static void of_many_saves_at_once_one_is_kept(void) {
    static char texts[SAVERS][400000];
    CHECK_INT(test_ask(d.port, d.host, "GET", "/api/scheme", d.secret, NULL), 200);
    const char *name = strstr(got.body, "\"Harbour\"");
    CHECK(name != NULL);
    const ptrdiff_t at = name ? name + 1 - got.body : 0;
    for (int i = 0; i < SAVERS; i++)
        memcpy(texts[i], got.body, got.length + 1);
    for (int round = 0; round < ROUNDS; round++) {
        pthread_t threads[SAVERS];
        int kept = 0, told = 0;
        CHECK_INT(test_ask(d.port, d.host, "GET", "/api/scheme", d.secret, NULL), 200);
        const char *etag = strstr(got.head, "ETag: ");
        CHECK(etag != NULL);
        snprintf(tag, sizeof tag, "%.*s", etag ? (int)strcspn(etag + 6, "\r\n") : 0,
                 etag ? etag + 6 : "");
        for (int i = 0; i < SAVERS; i++) { // each text is a new one
            texts[i][at] = (char)('A' + round);
            texts[i][at + 1] = (char)('a' + i);
            CHECK(pthread_create(&threads[i], NULL, save, texts[i]) == 0);
        }
        for (int i = 0; i < SAVERS; i++) {
            void *status;
            CHECK(pthread_join(threads[i], &status) == 0);
            kept += (intptr_t)status == 200;
            told += (intptr_t)status == 412;
        }
        CHECK_INT(kept, 1);
        CHECK_INT(told, SAVERS - 1);
    }
}

static bool copy_file(const char *from, const char *to) {
    static char bytes[400000];
    FILE *in = fopen(from, "rb"), *out = fopen(to, "wb");
    const size_t n = in ? fread(bytes, 1, sizeof bytes, in) : 0;
    const bool good = n > 0 && out && fwrite(bytes, 1, n, out) == n;
    if (in) fclose(in);
    if (out) fclose(out);
    return good;
}

static void clean(void) {
    static const char *const ends[] = {"", "-wal", "-shm"};
    char name[300];
    for (int i = 0; i < BW_COUNT(ends); i++) {
        snprintf(name, sizeof name, "%s%s", team_path, ends[i]);
        unlink(name);
    }
    unlink(scheme_path);
}

static void run_at_a_desk(void (*test)(void)) {
    bw_error error;
    char file[300];
    const char *root = getenv("BW_ROOT");
    clean();
    snprintf(file, sizeof file, "%s/examples/terns.json", root ? root : ".");
    CHECK(copy_file(file, scheme_path));
    CHECK(bw_team_create(team_path, &error) == BW_OK);
    CHECK(desk_open_team(&d, scheme_path, team_path, true));
    test();
    desk_close(&d);
}

#define RUN_AT_A_DESK(test) RUN_AS(#test, run_at_a_desk(test))

int main(int argc, char **argv) {
    snprintf(folder, sizeof folder, "%s/breakwater-XXXXXX",
             getenv("TMPDIR") ? getenv("TMPDIR") : "/tmp");
    CHECK(mkdtemp(folder) != NULL);
    snprintf(team_path, sizeof team_path, "%s/terns.team", folder);
    snprintf(scheme_path, sizeof scheme_path, "%s/terns.json", folder);
    begin_other();
    RUN_AT_A_DESK(a_held_team_file_stops_nobody_else);
    RUN_AT_A_DESK(of_many_saves_at_once_one_is_kept);
    end_other();
    clean();
    rmdir(folder);
    return test_report(argc, argv);
}
