/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Whatever names the weakest rotations names the same ones in the same order: of a break the test's text
/// and JSON and the board, of a scheme the packet and the practice script; and both by one ranking.
#include "harness.h"
#include "report/packet.h"
#include "report/packet_parts.h"
#include "report/test_json.h"
#include "report/test_text.h"
#include "tests/report/pages.h"
#include "trial/script.h"
#include "web/tester_say.h"

enum { TEXT = 64 * 1024, NAME = 160 };

static bw_scheme scheme;
static bw_ground ground;
static bw_trial trials[BW_WEAK_TRIALS];
static int trial_count;
static bw_weak_list list; ///< of the scheme

/// What a stage's rotations of a list are called, "Top centre to left wing", in its order.
static char names[BW_WEAK_EACH][NAME];
static const bw_weak *rotations[BW_WEAK_EACH];

static int name_those_of(const bw_weak_list *of, int stage) {
    int count = 0;
    for (int i = 0; i < of->count; i++) {
        if (of->weak[i].stage != stage) continue;
        rotations[count] = &of->weak[i];
        bw_text t = bw_text_in(names[count++], NAME);
        bw_say_weak(&of->weak[i], &t);
    }
    return count;
}

/// "\n  2. Top centre to left wing ", as lists have it.
static void put_numbered(const char *before, int number, const char *name, bw_text *out) {
    bw_put(out, before);
    bw_put_int(out, number);
    bw_put(out, ". ");
    bw_put(out, name);
    bw_put_char(out, ' ');
}

static void text_and_board_say_them(const bw_trial *trial, int count) {
    static char room[TEXT];
    static bw_tester tester;
    bw_text text = bw_text_in(room, sizeof room);
    bw_report_text(&(bw_report){.ground = &ground, .headline = trial}, &text);
    bw_tester_reset(&tester);
    tester.side[0].scheme = scheme;
    tester.side[0].open = true;
    tester.side[0].trial = *trial;
    CHECK_INT(bw_tester_adopt(&tester, 0), BW_OK);
    for (int i = 0; i < count; i++) {
        char line[2 * NAME], said[NAME];
        bw_text t = bw_text_in(line, sizeof line);
        put_numbered("\n  ", i + 1, names[i], &t);
        CHECK(strstr(room, line) != NULL);
        t = bw_text_in(said, sizeof said);
        bw_tester_say(&tester, BW_TEST_WORD_ROTATION, 0, i, &t);
        CHECK_TEXT(said, names[i]);
    }
}

static void json_lists_them(const bw_trial *trial, int count) {
    char *bytes = NULL;
    size_t length = 0;
    FILE *out = open_memstream(&bytes, &length);
    bw_test_json(out, &(bw_report){.ground = &ground, .headline = trial});
    fclose(out);
    const char *at = strstr(bytes, "\"weakest\"");
    for (int i = 0; i < count; i++) {
        char want[80];
        at = at ? strstr(at + 1, "\"from\"") : NULL;
        CHECK(at != NULL);
        if (rotations[i]->from_at < 0 || rotations[i]->to_at < 0) continue;
        snprintf(want, sizeof want, "\"from\":\"%s\",\"to\":\"%s\"",
                 scheme.landmarks[rotations[i]->from_at].id,
                 scheme.landmarks[rotations[i]->to_at].id);
        CHECK(at && strncmp(at, want, strlen(want)) == 0);
    }
    free(bytes);
}

/// The script has each one's mirror image after it.
static void the_script_has_them(int stage, int count) {
    static _Alignas(16) char memory[512 * 1024];
    static bw_script script;
    CHECK_INT(bw_script_build(&scheme, stage, &list, memory, sizeof memory, &script, NULL), BW_OK);
    int at = 0;
    for (int i = 0; i < count; i++) {
        const bw_weak *want = rotations[i];
        if (want->from_at < 0 || want->to_at < 0) continue; // nobody feeds from there in practice
        while (at < script.weak_count &&
               (script.weak[at][0] != want->from_at || script.weak[at][1] != want->to_at))
            at++;
        CHECK(at < script.weak_count);
    }
}

static void a_break_has_its_own(void) {
    for (int i = 0; i < trial_count; i++) {
        static bw_weak_list own;
        own.count = 0;
        bw_weak_take(&ground, &trials[i], &own);
        const int count = name_those_of(&own, bw_scheme_stage(&scheme, trials[i].def.defence));
        CHECK(count > 1 && count == bw_weak_shown(&trials[i]));
        text_and_board_say_them(&trials[i], count);
        json_lists_them(&trials[i], count);
    }
}

static void a_stage_has_those_of_the_scheme(void) {
    for (int stage = 0; stage < scheme.stage_count; stage++) {
        const int count = name_those_of(&list, stage);
        CHECK(count > 1 || scheme.stages[stage].match_up);
        the_script_has_them(stage, count);
    }
}

/// All words of the packet's pages, in reading order.
static void read_packet(char *room, size_t size) {
    static _Alignas(16) char memory[BW_INK_PAGE_BYTES];
    const bw_teach teach = {.scheme = &scheme, .weak = &list, .date = ""};
    bw_text all = bw_text_in(room, size);
    const int pages = bw_packet_pages(&teach);
    for (int page = 1; page <= pages; page++) {
        bw_ink *ink = bw_ink_in(memory, sizeof memory);
        CHECK_INT(bw_packet_page(&teach, page, pages, ink), BW_OK);
        for (const bw_ink_item *i = bw_ink_first(ink); i; i = bw_ink_next(ink, i)) {
            if (i->kind != BW_INK_TEXT) continue;
            bw_put_n(&all, bw_ink_string(i), (size_t)i->text);
            bw_put_char(&all, ' ');
        }
    }
    CHECK(!all.full);
}

static void the_packet_has_the_list(void) {
    static char room[TEXT];
    read_packet(room, sizeof room);
    const char *at = strstr(room, "What to rehearse first");
    CHECK(at != NULL);
    int number = 1;
    for (int i = 0; i < list.count; i++) {
        char name[NAME], want[2 * NAME];
        bw_text t = bw_text_in(name, sizeof name);
        bw_say_weak(&list.weak[i], &t);
        t = bw_text_in(want, sizeof want);
        put_numbered(" ", number, name, &t);
        const char *found = at ? strstr(at, want) : NULL;
        if (!found) continue; // not every one has room
        at = found;
        number++;
    }
    char more[16];
    snprintf(more, sizeof more, " %d. ", number);
    CHECK(number > 4 && at && !strstr(at, more));
}

/// The pages of a stage's rotations come before the list, and show its weakest by the same names.
static void the_packet_shows_them_by_name(void) {
    static char room[TEXT];
    read_packet(room, sizeof room);
    char *end = strstr(room, "What to rehearse first");
    CHECK(end != NULL);
    if (end) *end = '\0';
    int inside = 0;
    for (int stage = 0; stage < scheme.stage_count; stage++) {
        const int count = name_those_of(&list, stage);
        if (scheme.stages[stage].match_up) continue;
        for (int i = 0; i < count && i < 4; i++) {
            CHECK(strstr(room, names[i]) != NULL);
            inside += rotations[i]->to_at < 0;
        }
    }
    CHECK(inside > 0); // those have no landmark's name
}

int main(int argc, char **argv) {
    bw_scheme_fresh(0, 3, &scheme);
    for (int l = 0; l < scheme.landmark_count; l++) // so short that no table breaks a line
        snprintf(scheme.landmarks[l].name, BW_NAME_SIZE, "place %d", l);
    CHECK_INT(bw_ground_build(&scheme, NULL, &ground, NULL), BW_OK);
    void *memory = malloc(bw_trial_size());
    trial_count = bw_weak_trials(&scheme, 1, trials);
    for (int i = 0; i < trial_count; i++) {
        CHECK_INT(bw_trial_run(&ground, memory, bw_trial_size(), &trials[i]), BW_OK);
        bw_weak_take(&ground, &trials[i], &list);
    }
    free(memory);
    RUN(a_break_has_its_own);
    RUN(a_stage_has_those_of_the_scheme);
    RUN(the_packet_has_the_list);
    RUN(the_packet_shows_them_by_name);
    return test_report(argc, argv);
}
