/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Test mode natively: a trial in pieces is the whole trial; results carried over; refusals; films.
/// `test_tester --print` prints the hash of random trials, which the module in Node must come to as well
/// (tests/board/tester.test.mjs).
#include "harness.h"
#include "scheme/fresh.h"
#include "trial/weak_rotations.h"
#include "web/agree_tests.h"
#include "web/tester_say.h"
#include <inttypes.h>

static bw_tester tester, other;
static double page[BW_INK_PAGE_BYTES / sizeof(double)];
static double work[BW_TESTER_WORK / sizeof(double)];

static void open_side(bw_tester *t, int side, int choice) {
    bw_tester_forget(t, side);
    bw_scheme_fresh(0, choice, &t->side[side].scheme);
    t->side[side].open = true;
    t->side[side].built = false;
}

static void begin_quick(bw_tester *t) {
    bw_tester_reset(t);
    open_side(t, 0, 3);
    bw_tester_usual(t);
    bw_tester_numbers(t, 5, 4);
    bw_tester_effort(t, 3, true, 7);
}

static void finish(bw_tester *t, int side) {
    CHECK_INT(bw_tester_begin(t, side), BW_OK);
    int pieces = 0;
    do {
        CHECK_INT(bw_tester_step(t), BW_OK);
        pieces++;
    } while (t->progress.part != BW_TRIAL_DONE && pieces < 200);
    CHECK(pieces > 2 * BW_BUNDLES && t->side[side].tested);
}

static void pieces_make_the_whole(void) {
    static bw_trial whole;
    begin_quick(&tester);
    finish(&tester, 0);
    const bw_tester_side *s = &tester.side[0];
    whole.def = tester.def;
    whole.effort = tester.effort;
    CHECK_INT(bw_trial_run(&s->ground, work, sizeof work, &whole), BW_OK);
    CHECK(memcmp(&whole.curve, &s->trial.curve, sizeof whole.curve) == 0);
    CHECK(memcmp(&whole.whatif, &s->trial.whatif, sizeof whole.whatif) == 0);
}

static void a_result_can_be_carried_over(void) {
    begin_quick(&tester);
    finish(&tester, 0);
    begin_quick(&other);
    other.side[0].trial = tester.side[0].trial;
    CHECK_INT(bw_tester_adopt(&other, 0), BW_OK);
    CHECK(other.side[0].trial.begun.ground == &other.side[0].ground);
    for (int figure = 0; figure < BW_TEST_FILM_AT; figure++) {
        const double a = bw_tester_figure(&tester, (bw_test_figure)figure, 0, 3);
        const double b = bw_tester_figure(&other, (bw_test_figure)figure, 0, 3);
        CHECK(a == b || (a != a && b != b));
    }
}

/// The film runs from the first step to the shot; between frames men move no faster than they can.
static void a_film_is_smooth(void) {
    begin_quick(&tester);
    finish(&tester, 0);
    CHECK_INT(bw_tester_film(&tester, 0, -1), BW_OK);
    const bw_sequence sq = bw_tester_sequence(&tester);
    const double end = sq.frames[sq.count - 1].at_s;
    CHECK_SAME(bw_tester_figure(&tester, BW_TEST_FILM_AT, 0, 0), 0);
    CHECK_SAME(bw_tester_figure(&tester, BW_TEST_FILM_AT, 0, 1), end);
    const double dt = 0.01, fastest = 9; // m/s
    bw_frame before = bw_frame_at(&sq, 0);
    for (int i = 1; i * dt <= end; i++) {
        const bw_frame now = bw_frame_at(&sq, i * dt);
        CHECK(now.ply >= before.ply);
        for (int d = 0; d < sq.b->defenders; d++) {
            CHECK(bw_distance(now.defenders[d], before.defenders[d]) <= fastest * dt + 1e-9);
            CHECK(now.late[d] >= 0);
        }
        before = now;
    }
    const bw_frame last = bw_frame_at(&sq, 1e9);
    CHECK_SAME(last.at_s, end);
}

/// A weak rotation ends with somebody late, for that is what makes it weak; and the words say so.
static void a_weak_rotation_shows_who_is_late(void) {
    begin_quick(&tester);
    finish(&tester, 0);
    CHECK(bw_weak_shown(&tester.side[0].trial) > 0);
    CHECK_INT(bw_tester_film(&tester, 0, 0), BW_OK);
    char room[512];
    bw_text out = bw_text_in(room, sizeof room);
    bw_tester_say_late(&tester, 1e9, &out);
    CHECK(strstr(room, "Late: ") == room);
    out = bw_text_in(room, sizeof room);
    bw_tester_say_moment(&tester, 1e9, &out);
    CHECK(strstr(room, " seconds, ball from ") != NULL);
    bw_tester_draw_film(&tester, 1e9, 500, 400, page, sizeof page);
    CHECK_INT(((const bw_ink *)page)->status, BW_OK);
    CHECK_INT(((const bw_ink *)page)->open, 0);
}

static void refusals_are_sentences(void) {
    bw_tester_reset(&tester);
    CHECK_INT(bw_tester_begin(&tester, 0), BW_NOT_FOUND);
    CHECK(strstr(tester.error.message, "no scheme") != NULL);
    begin_quick(&tester);
    bw_tester_late(&tester, 1);
    bw_tester_late_from(&tester, 0, 200);
    CHECK(bw_tester_begin(&tester, 0) != BW_OK);
    CHECK(tester.error.message[0] != '\0');
    CHECK_INT(bw_tester_film(&tester, 0, -1), BW_NOT_FOUND);
    CHECK_INT(bw_tester_sequence(&tester).count, 0);
    CHECK_INT(bw_tester_step(&tester), BW_NOT_FOUND);
}

static void the_same_again(void) {
    const uint64_t once = bw_agree_tests(&tester, 5, 1, page, sizeof page);
    CHECK(once == bw_agree_tests_alone(5, 1));
    CHECK(once != bw_agree_tests_alone(6, 1));
}

int main(int argc, char **argv) {
    if (argc > 1 && strcmp(argv[1], "--print") == 0) {
        printf("%016" PRIx64 "\n", bw_agree_tests(&tester, 2026, 4, page, sizeof page));
        return 0;
    }
    RUN(pieces_make_the_whole);
    RUN(a_result_can_be_carried_over);
    RUN(a_film_is_smooth);
    RUN(a_weak_rotation_shows_who_is_late);
    RUN(refusals_are_sentences);
    RUN(the_same_again);
    return test_report(argc, argv);
}
