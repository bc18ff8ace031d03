/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Lessons on the board: edited within their limits, played as core/walk.h has them, called out.
#include "core/text.h"
#include "harness.h"
#include "scheme/fresh.h"
#include "web/lesson.h"

static bw_board board;
static bw_lessons lessons;

static void begin(void) {
    bw_board_reset(&board);
    bw_scheme_fresh(0, 3, &board.scheme);
    board.scheme.lesson_count = 0;
    board.open = true;
    board.ball = board.scheme.landmarks[0].at;
    bw_board_show(&board, 1);
    bw_lessons_reset(&lessons);
    bw_lessons_say(&lessons, &board);
}

static const bw_lesson *chosen(void) {
    return &board.scheme.lessons[lessons.view.lesson];
}

static void record(int landmark) {
    bw_board_ball_to(&board, landmark);
    bw_lessons_add(&lessons, &board, false);
    bw_lessons_say(&lessons, &board);
}

static void every_place_becomes_a_stop(void) {
    begin();
    CHECK_INT(lessons.view.lesson, -1);
    CHECK(!bw_lessons_add(&lessons, &board, false));
    CHECK(lessons.view.refused[0]);
    CHECK(bw_lessons_new(&lessons, &board));
    CHECK(!lessons.view.recording);
    record(1);
    record(2);
    record(2); // not twice
    CHECK_INT(chosen()->stop_count, 3);
    CHECK(chosen()->stops[2].at_landmark);
    CHECK_INT(chosen()->stops[2].landmark, 2);
    bw_board_move(&board, 0, bw_v(3.3, 7.1));
    CHECK(bw_lessons_add(&lessons, &board, false));
    CHECK(!chosen()->stops[3].at_landmark);
    CHECK_SAME(chosen()->stops[3].ball.x, board.ball.x);
    bw_lessons_visit(&lessons, &board, 0); // in the middle
    record(3);
    CHECK_INT(chosen()->stop_count, 5);
    CHECK_INT(chosen()->stops[1].landmark, 3);
}

/// A finger within a yard of a landmark means it; keys and numbers mean what they say.
static void a_finger_finds_the_landmark(void) {
    begin();
    bw_lessons_new(&lessons, &board);
    const bw_vec at = board.scheme.landmarks[4].at;
    bw_board_move(&board, 0, bw_add(at, bw_v(0.5, 0.5)));
    CHECK(bw_lessons_add(&lessons, &board, true));
    CHECK_INT(chosen()->stops[1].landmark, 4);
    bw_board_move(&board, 0, bw_add(at, bw_v(-0.5, 0.5)));
    CHECK(bw_lessons_add(&lessons, &board, false));
    CHECK(!chosen()->stops[2].at_landmark);
}

static void limits_are_met_with_a_sentence(void) {
    begin();
    for (int i = 0; i < BW_MAX_LESSONS; i++)
        CHECK(bw_lessons_new(&lessons, &board));
    CHECK(!bw_lessons_new(&lessons, &board));
    CHECK(lessons.view.refused[0]);
    CHECK_INT(board.scheme.lesson_count, BW_MAX_LESSONS);
    for (int i = 1; i < BW_MAX_STOPS; i++)
        record(i % 2);
    CHECK_INT(chosen()->stop_count, BW_MAX_STOPS);
    bw_board_ball_to(&board, 3);
    CHECK(!bw_lessons_add(&lessons, &board, false));
    CHECK(lessons.view.refused[0]);
    CHECK_INT(chosen()->stop_count, BW_MAX_STOPS);
    static char longest[BW_CAPTION_SIZE + 1];
    memset(longest, 'a', sizeof longest);
    CHECK(!bw_lessons_caption(&lessons, &board, 0, longest, BW_CAPTION_SIZE));
    CHECK(bw_lessons_caption(&lessons, &board, 0, longest, BW_CAPTION_SIZE - 1));
    CHECK(!bw_lessons_rename(&lessons, &board, longest, BW_NAME_SIZE));
    CHECK(!bw_lessons_pause(&lessons, &board, 0, 61));
    CHECK(!bw_lessons_pause(&lessons, &board, 0, 0.0 / 0.0));
    CHECK(bw_lessons_pause(&lessons, &board, 0, 60));
    while (chosen()->stop_count > 1)
        CHECK(bw_lessons_drop(&lessons, &board, 0));
    CHECK(!bw_lessons_drop(&lessons, &board, 0));
    CHECK(lessons.view.refused[0]);
}

/// Another stage than the lesson's: a stop there would be a lie.
static void a_lesson_keeps_to_its_stage(void) {
    begin();
    bw_lessons_new(&lessons, &board);
    bw_board_show(&board, 2);
    bw_board_ball_to(&board, 2);
    CHECK(!bw_lessons_add(&lessons, &board, false));
    CHECK(lessons.view.refused[0]);
    CHECK_INT(chosen()->stop_count, 1);
}

/// Whatever is done to it, a lesson has whole stops, and the chosen one is among them.
static void no_edit_breaks_it(void) {
    begin();
    unsigned long long seed = 11;
    bw_lessons_new(&lessons, &board);
    for (int i = 0; i < 400; i++) {
        const double x = test_uniform(&seed, -12, 12);
        const double y = test_uniform(&seed, -6, 15);
        const int stop = (int)test_uniform(&seed, -2, 42);
        const int what = (int)test_uniform(&seed, 0, 6);
        bw_board_move(&board, 0, bw_v(x, y));
        if (what < 2) bw_lessons_add(&lessons, &board, what == 1);
        if (what == 2) bw_lessons_shift(&lessons, &board, stop, i % 2 ? -1 : 1);
        if (what == 3) bw_lessons_pause(&lessons, &board, stop, y);
        if (what == 4 && i % 3 == 0) bw_lessons_drop(&lessons, &board, stop);
        if (what == 5) bw_lessons_place(&lessons, &board, stop);
        bw_lessons_say(&lessons, &board);
        CHECK(chosen()->stop_count >= 1 && chosen()->stop_count <= BW_MAX_STOPS);
        CHECK(lessons.view.stop >= 0 && lessons.view.stop < chosen()->stop_count);
        for (int k = 0; k < chosen()->stop_count; k++) {
            const bw_stop *one = &chosen()->stops[k];
            const bw_vec at = bw_stop_ball(&board.scheme, one);
            CHECK(one->pause >= 0 && one->pause <= 60);
            CHECK_SAME(at.x, one->ball.x);
            CHECK_SAME(at.y, one->ball.y);
        }
    }
    CHECK(chosen()->stop_count > 20);
}

/// At any moment the board shows what the walk has, and its words say the same time.
static void played_as_the_walk_has_it(void) {
    static bw_walk walk;
    begin();
    bw_lessons_new(&lessons, &board);
    for (int i = 1; i < 6; i++)
        record(i);
    bw_walk_build(&board.scheme, chosen(), &walk);
    CHECK_SAME(lessons.view.seconds, bw_walk_seconds(&walk));
    for (double t = 0; t < bw_walk_seconds(&walk); t += 0.37) {
        bw_walk_moment m;
        bw_walk_at(&walk, t, &m);
        bw_lessons_at(&lessons, &board, t);
        bw_board_say(&board);
        CHECK_INT(lessons.view.stop, m.stop);
        CHECK_SAME(board.ball.x, m.ball.x);
        for (int s = 0; s < walk.spots; s++) {
            CHECK_SAME(board.shown[s].at.x, m.men[s].body.at.x);
            CHECK_SAME(board.shown[s].at.y, m.men[s].body.at.y);
            CHECK_NEAR(board.view.token[BW_BOARD_MEN + s].late, m.men[s].needs, BW_FOLLOW_STEP);
        }
    }
    bw_lessons_stop(&lessons, &board);
    CHECK(!lessons.view.playing);
    for (int i = 0; i < 200 && board.view.running; i++)
        bw_board_run(&board, 0.05);
    CHECK(!board.view.running);
}

static void the_chosen_lesson_is_followed(void) {
    begin();
    for (int i = 0; i < 3; i++)
        bw_lessons_new(&lessons, &board);
    bw_lessons_choose(&lessons, &board, 1);
    char was[BW_ID_SIZE];
    bw_copy(was, sizeof was, board.scheme.lessons[1].id);
    board.scheme.lessons[0] = board.scheme.lessons[1]; // the first one is undone
    board.scheme.lessons[1] = board.scheme.lessons[2];
    board.scheme.lesson_count = 2;
    bw_lessons_say(&lessons, &board);
    CHECK_INT(lessons.view.lesson, 0);
    CHECK_TEXT(chosen()->id, was);
    CHECK(bw_lessons_delete(&lessons, &board));
    bw_lessons_say(&lessons, &board);
    CHECK(bw_lessons_delete(&lessons, &board));
    bw_lessons_say(&lessons, &board);
    CHECK_INT(lessons.view.lesson, -1);
    CHECK_INT(lessons.view.stop_count, 0);
}

/// Every place once a round, in order or not; the same for a seed; never one twice running.
static void places_are_called(void) {
    static char first[24][BW_NAME_SIZE + 32];
    begin();
    bw_lessons_new(&lessons, &board);
    for (int i = 1; i < 6; i++)
        record(i);
    for (int pass = 0; pass < 2; pass++) {
        bool other = false;
        bw_lessons_call(&lessons, true, 99);
        for (int n = 0; n < 24; n++) {
            char last[BW_NAME_SIZE + 32];
            bw_copy(last, sizeof last, lessons.view.spot);
            bw_lessons_next(&lessons, &board);
            CHECK(!bw_same(last, lessons.view.spot));
            if (pass == 0) bw_copy(first[n], sizeof first[n], lessons.view.spot);
            CHECK_TEXT(lessons.view.spot, first[n]);
            if (n % 6 > 0 && n > 6) other |= !bw_same(first[n], first[n - 6]);
        }
        CHECK(other);
    }
    bw_lessons_call(&lessons, false, 0);
    for (int n = 0; n < 12; n++) {
        bw_lessons_next(&lessons, &board);
        CHECK_TEXT(lessons.view.spot, board.scheme.landmarks[n % 6].name);
    }
}

int main(int argc, char **argv) {
    RUN(every_place_becomes_a_stop);
    RUN(a_finger_finds_the_landmark);
    RUN(limits_are_met_with_a_sentence);
    RUN(a_lesson_keeps_to_its_stage);
    RUN(no_edit_breaks_it);
    RUN(played_as_the_walk_has_it);
    RUN(the_chosen_lesson_is_followed);
    RUN(places_are_called);
    return test_report(argc, argv);
}
