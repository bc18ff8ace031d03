/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Putting a break together, late men coming in, matching up at even numbers, and the steps men take.
#include "breaks.h"
#include "core/run.h"
#include "harness.h"

static bw_break b;

static void refusals_say_what_is_wrong(void) {
    static const struct {
        int offence, defence;
        const char *set, *start;
        bw_status status;
        const char *says;
    } cases[] = {{2, 2, "2-2-2", "top", BW_BAD_INPUT, "3 to 6"},
                 {4, 5, "2-2-2", "top", BW_BAD_INPUT, "3 to 6"},
                 {6, 4, "9-9-9", "top", BW_NOT_FOUND, "\"9-9-9\""},
                 {6, 4, "2-2-2", "moon", BW_NOT_FOUND, "\"moon\""}};
    for (int i = 0; i < BW_COUNT(cases); i++) {
        char room[300];
        bw_text why = bw_text_in(room, sizeof room);
        const bw_break_def def =
            breaks_def(cases[i].offence, cases[i].defence, cases[i].set, cases[i].start);
        CHECK_INT(bw_break_begin(&breaks_ground, &def, &b, &why), cases[i].status);
        CHECK(strstr(room, cases[i].says) != NULL);
    }
    bw_break_def def = breaks_def(6, 4, "2-2-2", "top");
    def.late_count = 1;
    def.late[0] = 101;
    CHECK_INT(bw_break_begin(&breaks_ground, &def, &b, NULL), BW_BAD_INPUT);
}

static void everyone_starts_in_place(void) {
    const bw_break_def def = breaks_def(6, 4, "spread", "x");
    CHECK_INT(bw_break_begin(&breaks_ground, &def, &b, NULL), BW_OK);
    const bw_vec ball = breaks_scheme.landmarks[b.start_landmark].at;
    CHECK_SAME(b.start.x[(int)b.start.holder], ball.x);
    CHECK_SAME(b.start.y[(int)b.start.holder], ball.y);
    CHECK_INT(b.start.in, 4);
    CHECK(!b.start.matched);
    bw_station station[BW_MAX_SPOTS];
    bw_vec attackers[BW_MAX_ATTACKERS];
    for (int a = 0; a < 6; a++)
        attackers[a] = bw_man(&b.start, a);
    bw_where(&breaks_ground.plans[4], ball, attackers, 6, station);
    for (int d = 0; d < 4; d++) {
        CHECK_SAME(b.start.x[6 + d], station[d].at.x);
        CHECK_SAME(b.start.y[6 + d], station[d].at.y);
    }
}

static void late_men_come_in_and_numbers_become_even(void) {
    bw_break_def def = breaks_def(6, 4, "2-2-2", "top");
    def.late_count = 2;
    def.late[0] = 18;
    def.late[1] = 27;
    CHECK_INT(bw_break_begin(&breaks_ground, &def, &b, NULL), BW_OK);
    CHECK_INT(b.defenders, 6);
    double first[BW_MAX_LATE], later[BW_MAX_LATE];
    bw_late_arrivals(&b, first);
    CHECK(first[0] > 0.5 && first[0] < first[1] && first[1] < 6);
    def.late[1] = 37;
    bw_break_begin(&breaks_ground, &def, &b, NULL);
    bw_late_arrivals(&b, later);
    CHECK_SAME(later[0], first[0]);
    CHECK(later[1] > first[1] + 0.5);

    bw_state s = b.start, next;
    const bw_ply hold = {BW_HOLD, BW_NOBODY, BW_NOBODY, BW_NOBODY};
    for (int i = 0; i < 20; i++) {
        bw_play(&b, &s, hold, &next, NULL, NULL);
        CHECK(next.in >= s.in);
        s = next;
    }
    CHECK_INT(s.in, 6);
    CHECK(s.matched);
    int taken = 0;
    for (int d = 0; d < 6; d++)
        taken |= 1 << s.job[d];
    CHECK_INT(taken, 63);
    // Everyone has come to his man: goal side of him and within a few steps.
    for (int d = 0; d < 6; d++)
        CHECK(bw_distance(bw_man(&s, 6 + d), bw_man(&s, s.job[d])) < 7);
}

static void extra_late_men_idle(void) {
    bw_break_def def = breaks_def(5, 4, "2-2-2", "top");
    def.late_count = 3;
    for (int i = 0; i < 3; i++)
        def.late[i] = 20 + 5 * i;
    CHECK_INT(bw_break_begin(&breaks_ground, &def, &b, NULL), BW_OK);
    CHECK_INT(b.defenders, 5);
}

/// The looked-up step against the closed form it stands for.
static void steps_are_the_exact_motion(void) {
    const bw_break_def def = breaks_def(6, 4, "2-2-2", "top");
    bw_break_begin(&breaks_ground, &def, &b, NULL);
    bw_state s = b.start;
    const bw_stretch run = {.ball = {6, 9}, .man = 1, .ticks = 10, .carrier = BW_NOBODY};
    for (int step = 0; step < 8; step++) {
        const bw_state before = s;
        double tx[BW_MAX_SPOTS], ty[BW_MAX_SPOTS];
        bw_break_stations(&b, &before, run.ball, run.man, tx, ty);
        bw_run(&b, &s, &run);
        for (int d = 0; d < 4; d++) {
            const bw_legs legs = breaks_ground.level->defender;
            const bw_body body = {bw_man(&before, 6 + d), {before.u[6 + d], before.v[6 + d]}};
            const bw_vec effort = bw_effort_toward(legs, body, bw_v(tx[d], ty[d]), BW_HORIZON);
            const bw_body after = bw_advance(legs, body, effort, 0.2);
            CHECK_NEAR(s.x[6 + d], after.at.x, 1e-12);
            CHECK_NEAR(s.y[6 + d], after.at.y, 1e-12);
            CHECK_NEAR(s.u[6 + d], after.velocity.x, 1e-12);
            CHECK_NEAR(s.v[6 + d], after.velocity.y, 1e-12);
        }
    }
}

static void nobody_moves_before_he_reacts(void) {
    const bw_break_def def = breaks_def(6, 4, "2-2-2", "top");
    bw_break_begin(&breaks_ground, &def, &b, NULL);
    bw_state s = b.start;
    const int react = b.reaction[4];
    CHECK(react >= 10 && react <= 20);
    const bw_stretch run = {
        .ball = {9, 1}, .man = 3, .ticks = react, .freeze = react, .carrier = -1};
    bw_run(&b, &s, &run);
    for (int d = 0; d < 4; d++) {
        CHECK_SAME(s.x[6 + d], b.start.x[6 + d]);
        CHECK_SAME(s.y[6 + d], b.start.y[6 + d]);
    }
}

static void plies_are_listed_once_in_rank_order(void) {
    for (int i = 0; i < 6; i++) {
        const bw_break_def def = breaks_def(6, 4, bw_attack_set_at(i)->id, "wl");
        bw_break_begin(&breaks_ground, &def, &b, NULL);
        bw_ply list[BW_MAX_PLIES];
        const int count = bw_plies(&b, &b.start, list);
        CHECK(count > 10);
        for (int k = 1; k < count; k++)
            CHECK(bw_ply_rank(list[k]) > bw_ply_rank(list[k - 1]));
    }
}

static void sets_have_their_men(void) {
    for (int i = 0; i < bw_attack_set_count(); i++) {
        const bw_attack_set *set = bw_attack_set_at(i);
        CHECK_INT(set->count, 6);
        for (int a = 0; a < 6; a++) {
            CHECK(bw_field_contains(breaks_ground.field, set->at[a]));
            for (int k = 0; k < a; k++)
                CHECK(bw_distance(set->at[a], set->at[k]) > 3);
        }
    }
    CHECK(bw_attack_set_find("4-4-4") == NULL);
}

int main(int argc, char **argv) {
    breaks_ready("high-school");
    RUN(refusals_say_what_is_wrong);
    RUN(everyone_starts_in_place);
    RUN(late_men_come_in_and_numbers_become_even);
    RUN(extra_late_men_idle);
    RUN(steps_are_the_exact_motion);
    RUN(nobody_moves_before_he_reacts);
    RUN(plies_are_listed_once_in_rank_order);
    RUN(sets_have_their_men);
    return test_report(argc, argv);
}
