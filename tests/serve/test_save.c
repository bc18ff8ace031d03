/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The coach's file over real sockets: read, saved, and never at the cost of an edit made elsewhere;
/// and heavy runs beside it.
#include "client.h"
#include "file/document.h"
#include "serve/work.h"
#include <sys/stat.h>

static desk d;
static char folder[200], path[240];
static char *demo; ///< the demo scheme's text
static size_t demo_length;

static void write_file(const char *text, size_t length) {
    FILE *out = fopen(path, "wb");
    CHECK(out && fwrite(text, 1, length, out) == length);
    if (out) fclose(out);
}

static bool file_is(const char *text, size_t length) {
    static char room[400000];
    FILE *in = fopen(path, "rb");
    if (!in) return false;
    const size_t n = fread(room, 1, sizeof room, in);
    fclose(in);
    return n == length && memcmp(room, text, n) == 0;
}

/// The demo scheme under another name of the same length.
static void renamed(const char *name, char *out) {
    memcpy(out, demo, demo_length + 1);
    char *at = strstr(out, "\"Harbour\"");
    CHECK(at && strlen(name) == 7);
    memcpy(at + 1, name, 7);
}

static void tag_now(char heads[300]) {
    CHECK_INT(test_ask(d.port, d.host, "GET", "/api/scheme", d.secret, NULL), 200);
    const char *at = strstr(got.head, "ETag: ");
    CHECK(at != NULL);
    snprintf(heads, 300, "%sIf-Match: %.*s\r\n", d.both, at ? (int)strcspn(at + 6, "\r\n") : 0,
             at ? at + 6 : "");
}

static void what_is_read_is_what_lies_there(void) {
    CHECK_INT(test_ask(d.port, d.host, "GET", "/api/scheme", d.secret, NULL), 200);
    CHECK_INT(got.length, demo_length);
    CHECK(memcmp(got.body, demo, demo_length) == 0);
}

static void a_save_goes_over_what_was_read(void) {
    static char next[400000];
    char heads[300];
    tag_now(heads);
    renamed("Jetties", next);
    CHECK_INT(test_ask(d.port, d.host, "PUT", "/api/scheme", heads, next), 200);
    CHECK(strstr(got.head, "ETag: ") != NULL);
    CHECK(file_is(next, demo_length));
    CHECK_INT(test_ask(d.port, d.host, "PUT", "/api/scheme", heads, demo), 412); // an old tag
    CHECK(test_in_words());
    CHECK(file_is(next, demo_length));
    tag_now(heads);
    CHECK_INT(test_ask(d.port, d.host, "PUT", "/api/scheme", heads, demo), 200);
    CHECK(file_is(demo, demo_length));
}

static void an_edit_elsewhere_is_never_lost(void) {
    static char other[400000];
    char heads[300];
    tag_now(heads);
    renamed("Wharves", other);
    write_file(other, demo_length);
    CHECK_INT(test_ask(d.port, d.host, "PUT", "/api/scheme", heads, demo), 412);
    CHECK(file_is(other, demo_length));
    write_file("not a scheme", 12);
    CHECK_INT(test_ask(d.port, d.host, "PUT", "/api/scheme", heads, demo), 412);
    CHECK(file_is("not a scheme", 12));
    CHECK_INT(test_ask(d.port, d.host, "GET", "/api/scheme", d.secret, NULL),
              200); // as it lies there
    remove(path);
    CHECK_INT(test_ask(d.port, d.host, "PUT", "/api/scheme", heads, demo), 412);
    CHECK(access(path, F_OK) != 0);
    CHECK_INT(test_ask(d.port, d.host, "GET", "/api/scheme", d.secret, NULL), 500);
    CHECK(test_in_words());
}

static void what_is_no_scheme_is_not_written(void) {
    char heads[300];
    tag_now(heads);
    const char *wrong[] = {"", "{}", "[", "{\"breakwater\": 1, \"id\": \"x\"}", "null"};
    for (int i = 0; i < BW_COUNT(wrong); i++) {
        CHECK_INT(test_ask(d.port, d.host, "PUT", "/api/scheme", heads, wrong[i]), 422);
        CHECK(test_in_words());
    }
    CHECK(file_is(demo, demo_length));
    CHECK_INT(test_ask(d.port, d.host, "PUT", "/api/scheme", d.both, demo), 428);
    CHECK(file_is(demo, demo_length));
}

/// Nobody writes to it, and the server does not wait for that.
static void a_pipe_in_the_files_place_is_refused(void) {
    char heads[300];
    tag_now(heads);
    CHECK(remove(path) == 0 && mkfifo(path, 0600) == 0);
    CHECK_INT(test_ask(d.port, d.host, "GET", "/api/scheme", d.secret, NULL), 500);
    CHECK(test_in_words() && strstr(got.body, "pipe"));
    CHECK_INT(test_ask(d.port, d.host, "PUT", "/api/scheme", heads, demo), 412);
    CHECK(remove(path) == 0);
}

/// Asks for a run and waits until it is over; its last description is then in `got`.
static int run_to_the_end(const char *target) {
    char where[60];
    if (test_ask(d.port, d.host, "POST", target, d.both, demo) != 202) return 0;
    const char *id = strstr(got.body, "\"id\":");
    snprintf(where, sizeof where, "/api/jobs/%d", id ? atoi(id + 5) : 0);
    do {
        test_wait();
        atomic_store(&test_now, test_now + 1);
        CHECK_INT(test_ask(d.port, d.host, "GET", where, d.secret, NULL), 200);
    } while (strstr(got.body, "\"running\""));
    return atoi(id + 5);
}

static void runs_give_json_and_papers(void) {
    char where[60];
    int id = run_to_the_end("/api/jobs?kind=test&quick=1&seconds=2&late=");
    CHECK(id > 0 && strstr(got.body, "\"state\":\"done\""));
    snprintf(where, sizeof where, "/api/jobs/%d/file", id);
    CHECK_INT(test_ask(d.port, d.host, "GET", where, "", NULL), 403);
    CHECK_INT(test_ask(d.port, d.host, "GET", where, d.secret, NULL), 200);
    CHECK(strstr(got.head, "application/json") && strncmp(got.body, "{\"units\":\"yd\"", 13) == 0);
    id = run_to_the_end("/api/jobs?kind=book&paper=a4&theme=mono");
    CHECK(strstr(got.body, "\"state\":\"done\""));
    CHECK_INT(test_ask(d.port, d.host, "GET", where, d.secret, NULL), 404); // the run before
    snprintf(where, sizeof where, "/api/jobs/%d/file", id);
    CHECK_INT(test_ask(d.port, d.host, "GET", where, d.secret, NULL), 200);
    CHECK(strstr(got.head, "application/pdf") && strncmp(got.body, "%PDF-", 5) == 0);
}

/// What a kind alone knows to be wrong is told when it is made.
static void kinds_refuse_their_own_words(void) {
    CHECK(run_to_the_end("/api/jobs?kind=film&lesson=none") > 0);
    CHECK(strstr(got.body, "\"failed\"") && strstr(got.body, "no such lesson"));
    for (int i = 0; bw_work_kind_at(i); i++) {
        const bw_work_kind *kind = bw_work_kind_at(i);
        CHECK(kind->id[0] && (!kind->product || bw_product_find(kind->product)) &&
              strchr(kind->type, '/') && kind->ending[0]);
    }
}

static void one_run_at_a_time_and_it_can_be_cancelled(void) {
    CHECK_INT(test_ask(d.port, d.host, "POST", "/api/jobs?kind=test", d.both, demo), 202);
    CHECK_INT(test_ask(d.port, d.host, "POST", "/api/jobs?kind=book", d.both, demo), 409);
    CHECK(test_in_words());
    CHECK_INT(test_ask(d.port, d.host, "GET", "/api/jobs/1/file", d.secret, NULL), 409);
    CHECK_INT(test_ask(d.port, d.host, "GET", "/", "", NULL), 200); // the server goes on
    CHECK_INT(test_ask(d.port, d.host, "DELETE", "/api/jobs/2", d.both, NULL), 404);
    CHECK_INT(test_ask(d.port, d.host, "DELETE", "/api/jobs/1", d.both, NULL), 202);
    do {
        test_wait();
        atomic_store(&test_now, test_now + 1);
        CHECK_INT(test_ask(d.port, d.host, "GET", "/api/jobs/1", d.secret, NULL), 200);
    } while (strstr(got.body, "\"running\""));
    CHECK(strstr(got.body, "\"cancelled\""));
}

static void what_cannot_be_run_is_refused_in_words(void) {
    const char *wrong[] = {"/api/jobs",
                           "/api/jobs?kind=song",
                           "/api/jobs?kind=test&set=9-9-9",
                           "/api/jobs?kind=test&start=nowhere",
                           "/api/jobs?kind=test&offence=7",
                           "/api/jobs?kind=test&offence=3&defence=4",
                           "/api/jobs?kind=test&late=20,",
                           "/api/jobs?kind=test&late=1,2,3,4,5",
                           "/api/jobs?kind=test&late=-3",
                           "/api/jobs?kind=test&seconds=0",
                           "/api/jobs?kind=test&level=moon",
                           "/api/jobs?kind=book&paper=napkin",
                           "/api/jobs?kind=book&theme=pink",
                           "/api/jobs?kind=tune&stage=9",
                           "/api/jobs?kind=tune&stage=many",
                           "/api/jobs?kind=tune&stage=6",
                           "/api/jobs?kind=tune&keep=XX",
                           "/api/jobs?kind=tune&keep=homes,rule",
                           "/api/jobs?kind=tune&within=0",
                           "/api/jobs?kind=tune&within=-1",
                           "/api/jobs?kind=tune&within=21",
                           "/api/jobs?kind=tune&within=2x",
                           "/api/jobs?kind=tune&spacing=11",
                           "/api/jobs?kind=tune&mix=101",
                           "/api/jobs?kind=tune&practice=",
                           "/api/jobs?kind=tune&tries=9",
                           "/api/jobs?kind=tune&tries=5001",
                           "/api/jobs?kind=tune&breaks=3",
                           "/api/jobs?kind=tune&breaks=49",
                           "/api/jobs?kind=tune&quick=2",
                           "/api/jobs?kind=tune&seed=0",
                           "/api/jobs?kind=tune-sheets&within=far"};
    for (int i = 0; i < BW_COUNT(wrong); i++) {
        CHECK_INT(test_ask(d.port, d.host, "POST", wrong[i], d.both, demo), 422);
        CHECK(test_in_words());
    }
    CHECK_INT(test_ask(d.port, d.host, "POST", "/api/jobs?kind=test", d.both, "{}"), 422);
    CHECK_INT(test_ask(d.port, d.host, "GET", "/api/jobs/1", d.secret, NULL), 404);
}

/// The server is closed while a run is under way: nothing hangs, nothing leaks.
static void closing_ends_a_run(void) {
    CHECK_INT(test_ask(d.port, d.host, "POST", "/api/jobs?kind=report", d.both, demo), 202);
}

static void run_with_a_file(void (*test)(void)) {
    write_file(demo, demo_length);
    CHECK(desk_open(&d, path, false));
    test();
    desk_close(&d);
    remove(path);
}

#define RUN_WITH_A_FILE(test) RUN_AS(#test, run_with_a_file(test))

static void without_a_file_there_is_nothing_to_save(void) {
    CHECK(desk_open(&d, NULL, false));
    CHECK_INT(test_ask(d.port, d.host, "GET", "/api/scheme", d.secret, NULL), 404);
    char heads[300];
    snprintf(heads, sizeof heads, "%sIf-Match: \"x\"\r\n", d.both);
    CHECK_INT(test_ask(d.port, d.host, "PUT", "/api/scheme", heads, demo), 404);
    desk_close(&d);
}

static bool read_demo(void) {
    const char *root = getenv("BW_ROOT");
    bw_scheme *scheme = malloc(sizeof *scheme);
    bw_source source;
    bw_error error;
    snprintf(path, sizeof path, "%s/examples/terns.json", root ? root : ".");
    const bool good = scheme && bw_document_load(path, scheme, &source, &error) == BW_OK;
    free(scheme);
    if (!good) return false;
    demo = source.text;
    demo_length = source.length;
    return true;
}

int main(int argc, char **argv) {
    const char *temporary = getenv("TMPDIR");
    test_name = "main";
    CHECK(read_demo());
    snprintf(folder, sizeof folder, "%s/breakwater-%d", temporary ? temporary : "/tmp",
             (int)getpid());
    CHECK(mkdir(folder, 0700) == 0);
    snprintf(path, sizeof path, "%s/mine.json", folder);
    RUN_WITH_A_FILE(what_is_read_is_what_lies_there);
    RUN_WITH_A_FILE(a_save_goes_over_what_was_read);
    RUN_WITH_A_FILE(an_edit_elsewhere_is_never_lost);
    RUN_WITH_A_FILE(what_is_no_scheme_is_not_written);
    RUN_WITH_A_FILE(a_pipe_in_the_files_place_is_refused);
    RUN_WITH_A_FILE(runs_give_json_and_papers);
    RUN_WITH_A_FILE(kinds_refuse_their_own_words);
    RUN_WITH_A_FILE(one_run_at_a_time_and_it_can_be_cancelled);
    RUN_WITH_A_FILE(what_cannot_be_run_is_refused_in_words);
    RUN_WITH_A_FILE(closing_ends_a_run);
    RUN(without_a_file_there_is_nothing_to_save);
    rmdir(folder);
    free(demo);
    return test_report(argc, argv);
}
