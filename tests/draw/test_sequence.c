/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The answer on the chart: every step has its number and time, numbers keep clear of each other, men
/// who stay have no path, kinds of play differ by their line, and moments follow the plies.
#include "core/text.h"
#include "draw/sequence.h"
#include "harness.h"
#include "scheme/fresh.h"
#include "tests/draw/layout.h"
#include <stdbool.h>
#include <string.h>

enum { STEPS = 5, PER_STEP = 5, FRAMES = 1 + STEPS * PER_STEP };

static bw_scheme scheme;
static bw_ground ground;
static bw_break play;
static bw_answer answer;
static bw_frame frames[FRAMES];
static _Alignas(16) char memory[BW_INK_PAGE_BYTES];

static bw_sequence sequence(void) {
    return (bw_sequence){&play, &answer, frames, FRAMES};
}

/// A made-up answer: passes and carries between given places, holds where they agree, then a shot;
/// only defender 0 and the man with the ball move.
static void make(const bw_vec *places, const bw_kind *kinds) {
    memset(&answer, 0, sizeof answer);
    memset(frames, 0, sizeof frames);
    answer.count = STEPS;
    int holder = 0;
    for (int i = 0; i < STEPS; i++) {
        bw_answer_ply *step = &answer.plies[i];
        *step = (bw_answer_ply){.ply = {(int8_t)kinds[i], BW_NOBODY, BW_NOBODY, BW_NOBODY},
                                .who = holder,
                                .at_s = i,
                                .end_s = i + 1,
                                .chance = 0.9,
                                .from = places[i],
                                .to = kinds[i] == BW_SHOOT ? bw_v(0, 0) : places[i + 1]};
        if (kinds[i] == BW_PASS) step->ply.to = (int8_t)(holder = (holder + 1) % 6);
    }
    for (int f = 0; f < FRAMES; f++) {
        bw_frame *frame = &frames[f];
        const int ply = f == 0 ? 0 : (f - 1) / PER_STEP;
        const double share = f == 0 ? 0 : ((f - 1) % PER_STEP + 1) / (double)PER_STEP;
        *frame = (bw_frame){.at_s = ply + share, .ply = ply, .stage = 4};
        frame->ball = bw_lerp(answer.plies[ply].from, answer.plies[ply].to, share);
        for (int a = 0; a < play.attackers; a++)
            frame->attackers[a] = bw_man(&play.start, a);
        for (int d = 0; d < play.defenders; d++) {
            frame->defenders[d] = bw_man(&play.start, BW_MAX_ATTACKERS + d);
            frame->in[d] = d < 4;
        }
        frame->defenders[0] = bw_add(frame->defenders[0], bw_v(0, 0.15 * f));
    }
}

static int count_text(const bw_ink *ink, const char *words) {
    int count = 0;
    const size_t length = strlen(words);
    for (const bw_ink_item *item = bw_ink_first(ink); item; item = bw_ink_next(ink, item)) {
        count += item->kind == BW_INK_TEXT && (size_t)item->text == length &&
                 memcmp(bw_ink_string(item), words, length) == 0 && item->role != BW_ROLE_ATTACKER;
    }
    return count;
}

/// Middles of the order numbers' rings, by number.
static bool find_orders(const bw_ink *ink, bw_vec *at) {
    bool found[STEPS] = {false};
    for (const bw_ink_item *item = bw_ink_first(ink); item; item = bw_ink_next(ink, item)) {
        if (item->kind != BW_INK_TEXT || item->role != BW_ROLE_BALL || item->text != 1) continue;
        const int n = bw_ink_string(item)[0] - '1';
        if (n < 0 || n >= STEPS || found[n]) return false;
        found[n] = true;
        const double *xy = bw_ink_numbers(item);
        at[n] = bw_v(xy[0], xy[1] - item->size * BW_CAP_HEIGHT / 2);
    }
    for (int i = 0; i < STEPS; i++) {
        if (!found[i]) return false;
    }
    return true;
}

static bw_view view_of(const bw_sequence *sq) {
    return bw_view_fit(bw_window_sequence(sq), 60, 60, 330);
}

static bw_ink *draw(const bw_sequence *sq, const bw_view *view) {
    bw_ink *ink = bw_ink_in(memory, sizeof memory);
    bw_ink_page(ink, 612, 792);
    bw_draw_sequence(ink, sq, view, bw_marks_small(), true);
    CHECK_INT(ink->status, BW_OK);
    CHECK_INT(ink->open, 0);
    return ink;
}

static void usual(void) {
    const bw_vec places[] = {{0, 13.7}, {-8, 8}, {-4, 6}, {7, 8}, {7, 8}};
    const bw_kind kinds[] = {BW_PASS, BW_CARRY, BW_PASS, BW_HOLD, BW_SHOOT};
    make(places, kinds);
}

static void every_step_has_its_number_and_time(void) {
    usual();
    const bw_sequence sq = sequence();
    const bw_view view = view_of(&sq);
    const bw_ink *ink = draw(&sq, &view);
    bw_vec at[STEPS];
    CHECK(find_orders(ink, at));
    static const char *const times[] = {"0.0 s", "1.0 s", "2.0 s", "3.0 s", "4.0 s"};
    for (int i = 0; i < STEPS; i++)
        CHECK_INT(count_text(ink, times[i]), 1);
    CHECK_INT(count_text(ink, "LL"), 1);
    // The late men are still above the chart.
    CHECK_INT(count_text(ink, "+1"), 0);
}

static void codes_are_those_of_the_start(void) {
    CHECK_TEXT(bw_defender_code(&play, 0), "LL");
    CHECK_TEXT(bw_defender_code(&play, 3), "TR");
    CHECK_TEXT(bw_defender_code(&play, 4), "+1");
    CHECK_TEXT(bw_defender_code(&play, 5), "+2");
}

/// Strokes in the second rank with more than one piece: trails of defenders.
static int trails(const bw_ink *ink) {
    int count = 0;
    for (const bw_ink_item *item = bw_ink_first(ink); item; item = bw_ink_next(ink, item)) {
        count += item->kind == BW_INK_STROKE && item->role == BW_ROLE_SOFT_LINE &&
                 item->size == 0.9 && item->dash[1] == 0;
    }
    return count;
}

static void only_men_who_move_have_a_path(void) {
    usual();
    const bw_sequence sq = sequence();
    const bw_view view = view_of(&sq);
    CHECK_INT(trails(draw(&sq, &view)), 1);
    for (int f = 0; f < FRAMES; f++)
        frames[f].defenders[0] = frames[0].defenders[0];
    CHECK_INT(trails(draw(&sq, &view)), 0);
}

/// Any places in front of and behind the goal; a hold keeps the ball where it is.
static void random_answer(unsigned long long *seed) {
    bw_vec places[STEPS];
    bw_kind kinds[STEPS];
    for (int i = 0; i < STEPS; i++) {
        kinds[i] =
            i + 1 == STEPS ? BW_SHOOT : (bw_kind)(BW_PASS + (int)test_uniform(seed, 0, 2.999));
        const bool stays = i > 0 && kinds[i - 1] == BW_HOLD;
        places[i] =
            stays ? places[i - 1] : bw_v(test_uniform(seed, -9, 9), test_uniform(seed, 2, 13));
    }
    make(places, kinds);
}

static void numbers_keep_clear_of_each_other(void) {
    unsigned long long seed = 11;
    int near = 0, rounds = 1500;
    for (int round = 0; round < rounds; round++) {
        random_answer(&seed);
        const bw_sequence sq = sequence();
        const bw_view view = view_of(&sq);
        const bw_ink *ink = draw(&sq, &view);
        bw_vec at[STEPS];
        CHECK(find_orders(ink, at));
        bool close = false;
        for (int i = 0; i < STEPS; i++) {
            for (int k = 0; k < i; k++)
                close |= bw_distance(at[i], at[k]) < 2 * BW_ORDER_REACH - 0.5;
        }
        near += close;
    }
    // Where ways run over one another there may be no free place left.
    CHECK(near * 50 < rounds);
    if (near * 50 >= rounds) fprintf(stderr, "%d of %d have numbers over numbers\n", near, rounds);
}

static void moments_end_with_their_plies(void) {
    usual();
    const bw_sequence sq = sequence();
    int picked[40];
    const int count = bw_pick_moments(&sq, picked, BW_COUNT(picked));
    CHECK_INT(count, 1 + STEPS); // plies of one second are not split
    for (int i = 0; i < count; i++)
        CHECK_INT(picked[i], i * PER_STEP);
    CHECK_INT(bw_pick_moments(&sq, picked, 3), 3);
    CHECK_INT(bw_pick_moments(&sq, picked, 0), 0);
    for (int f = 0; f < FRAMES; f++)
        frames[f].at_s *= 2;
    CHECK(bw_pick_moments(&sq, picked, BW_COUNT(picked)) > 1 + STEPS);
}

static void every_moment_can_be_drawn(void) {
    usual();
    const bw_sequence sq = sequence();
    const bw_view view = view_of(&sq);
    bw_ink *ink = bw_ink_in(memory, sizeof memory);
    for (int from = 0; from < FRAMES; from++) {
        for (int to = from; to < FRAMES; to += 3) {
            bw_ink_page(ink, 612, 792);
            bw_draw_moment(ink, &sq, from, to, &view, bw_marks_small());
            CHECK_INT(ink->status, BW_OK);
            CHECK_INT(ink->open, 0);
            CHECK(layout_of(ink, (bw_box){0, 0, 612, 792}).smallest >= 9);
        }
    }
}

int main(int argc, char **argv) {
    bw_scheme_fresh(0, 3, &scheme);
    bw_ground_build(&scheme, NULL, &ground, NULL);
    const bw_break_def def = bw_break_default();
    CHECK_INT(bw_break_begin(&ground, &def, &play, NULL), BW_OK);
    RUN(every_step_has_its_number_and_time);
    RUN(codes_are_those_of_the_start);
    RUN(only_men_who_move_have_a_path);
    RUN(numbers_keep_clear_of_each_other);
    RUN(moments_end_with_their_plies);
    RUN(every_moment_can_be_drawn);
    return test_report(argc, argv);
}
