/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Better spots as a run of the server's: made, cancelled, and put on sheets. What is refused is in
/// test_save.c, with the other kinds.
#include "client.h"
#include "file/document.h"

static desk d;
static char *demo; ///< the demo scheme's text

static void wait_for(const char *where) {
    do {
        test_wait();
        atomic_store(&test_now, test_now + 1);
        CHECK_INT(test_ask(d.port, d.host, "GET", where, d.secret, NULL), 200);
    } while (strstr(got.body, "\"running\""));
}

/// Asks for a run and waits until it is over; its last description is then in `got`.
static int run_to_the_end(const char *target) {
    char where[60];
    if (test_ask(d.port, d.host, "POST", target, d.both, demo) != 202) return 0;
    const char *at = strstr(got.body, "\"id\":");
    const int id = at ? atoi(at + 5) : 0;
    snprintf(where, sizeof where, "/api/jobs/%d", id);
    wait_for(where);
    return id;
}

/// A suggestion is what the verb's own JSON is, keeps what is to be kept and counts its way up to the
/// end.
static void a_suggestion_is_made(void) {
    char where[60];
    const int id =
        run_to_the_end("/api/jobs?kind=tune&tries=10&breaks=4&keep=TL,pickup&within=1.5");
    CHECK(id > 0 && strstr(got.body, "\"state\":\"done\""));
    const char *done = strstr(got.body, "\"done\":"), *count = strstr(got.body, "\"count\":");
    CHECK(done && count && atoi(done + 7) > 100 && atoi(done + 7) <= atoi(count + 8));
    snprintf(where, sizeof where, "/api/jobs/%d/file", id);
    CHECK_INT(test_ask(d.port, d.host, "GET", where, "", NULL), 403);
    CHECK_INT(test_ask(d.port, d.host, "GET", where, d.secret, NULL), 200);
    CHECK(strstr(got.head, "application/json") && strstr(got.body, "\"defenders\":4"));
    CHECK(strstr(got.body, "\"spots\":[\"LL\",\"LR\"]") ||
          strstr(got.body, "\"spots\":[\"LR\",\"LL\"]"));
    CHECK(strstr(got.body, "\"key\":\"cushion\"") && !strstr(got.body, "\"key\":\"pickup\""));
    CHECK(strstr(got.body, "\"verdict\":\"") && strstr(got.body, "\"limits\":[\""));
    CHECK(strstr(got.body, "\"in_100_breaks\":\""));
}

static void it_can_be_cancelled(void) {
    CHECK_INT(test_ask(d.port, d.host, "POST", "/api/jobs?kind=tune", d.both, demo), 202);
    CHECK_INT(test_ask(d.port, d.host, "DELETE", "/api/jobs/1", d.both, NULL), 202);
    wait_for("/api/jobs/1");
    CHECK(strstr(got.body, "\"cancelled\""));
}

static void it_is_put_on_sheets(void) {
    char where[60];
    const int id =
        run_to_the_end("/api/jobs?kind=tune-sheets&tries=10&breaks=4&keep=rule&paper=a4");
    snprintf(where, sizeof where, "/api/jobs/%d/file", id);
    CHECK_INT(test_ask(d.port, d.host, "GET", where, d.secret, NULL), 200);
    CHECK(strstr(got.head, "application/pdf") && strncmp(got.body, "%PDF-", 5) == 0);
}

static void run_at_a_desk(void (*test)(void)) {
    CHECK(desk_open(&d, NULL, false));
    test();
    desk_close(&d);
}

static bool read_demo(void) {
    char path[240];
    const char *root = getenv("BW_ROOT");
    bw_scheme *scheme = malloc(sizeof *scheme);
    bw_source source;
    bw_error error;
    snprintf(path, sizeof path, "%s/examples/terns.json", root ? root : ".");
    const bool good = scheme && bw_document_load(path, scheme, &source, &error) == BW_OK;
    free(scheme);
    if (good) demo = source.text;
    return good;
}

#define RUN_AT_A_DESK(test) RUN_AS(#test, run_at_a_desk(test))

int main(int argc, char **argv) {
    test_name = "main";
    CHECK(read_demo());
    RUN_AT_A_DESK(a_suggestion_is_made);
    RUN_AT_A_DESK(it_can_be_cancelled);
    RUN_AT_A_DESK(it_is_put_on_sheets);
    free(demo);
    return test_report(argc, argv);
}
