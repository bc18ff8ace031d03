/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What a coach reads first: the plateau, the time bought, the seconds missing, who is late, and what
/// being in place would have been worth. Each is held against its meaning, worked out anew from the
/// curves and states it is taken from.
#include "breaks.h"
#include "core/late.h"
#include "harness.h"

static bw_break b;
/// Breaks whose curves are drawn once for all: metres the two late men have to run, and goals above the
/// settled worth that count as beaten, 1 being more than anybody can score.
static const struct {
    double behind[2], margin;
} drawn[] = {{{2, 4}, 0.02},   {{12, 14}, 0.02}, {{22, 24}, 0.05},
             {{42, 44}, 0.02}, {{0, 0}, 0.02},   {{10, 0}, 1}};

enum { BOTH_COME = 4, DRAWN = BW_COUNT(drawn) };

static bw_curve curves[DRAWN];

/// Six against four, and two more on their way from so many metres off; 0: he does not come.
static void begin(double first, double second) {
    bw_break_def def = breaks_def(6, 4, "2-2-2", "top");
    def.late_count = (first > 0) + (second > 0);
    def.late[0] = first;
    def.late[1] = second;
    CHECK_INT(bw_break_begin(&breaks_ground, &def, &b, NULL), BW_OK);
}

/// The curves without best play, in a few simulated breaks.
static void draw_curves(void) {
    bw_curve_def how = bw_curve_default();
    how.with_best = false;
    how.search.depth = 1;
    how.typical.rollouts = BW_BUNDLES;
    how.settled_rollouts = BW_BUNDLES;
    for (int i = 0; i < DRAWN; i++) {
        begin(drawn[i].behind[0], drawn[i].behind[1]);
        how.margin = drawn[i].margin;
        CHECK_INT(bw_curve_run(&b, &how, 1, breaks_memory, bw_curve_size(), &curves[i]), BW_OK);
    }
}

/// A curve at a time between its whole seconds, in a straight line.
static double between(const double *worth, double seconds) {
    const double whole = floor(seconds);
    const int i = (int)whole;
    if (i >= BW_MAX_SECONDS) return worth[BW_MAX_SECONDS];
    return (1 - (seconds - whole)) * worth[i] + (seconds - whole) * worth[i + 1];
}

static void the_plateau_is_what_they_score_until_a_second_after_the_last_man_is_in(void) {
    int within = 0;
    for (int i = 0; i < BOTH_COME; i++) {
        const bw_curve *c = &curves[i];
        if (c->late_s[1] < 0) continue;
        CHECK_SAME(c->even_s, bw_max(c->late_s[0], c->late_s[1]));
        CHECK_NEAR(c->plateau, between(c->typical, c->even_s + 1), 1e-12);
        // Where the curve rises, a second more or less is another figure.
        within += between(c->typical, c->even_s + 2) > c->plateau &&
                  c->plateau > between(c->typical, c->even_s);
    }
    CHECK(within > 0);
}

static void while_a_man_is_missing_the_plateau_is_all_they_score(void) {
    for (int i = BOTH_COME; i < DRAWN; i++) {
        CHECK_SAME(curves[i].even_s, -1);
        CHECK_SAME(curves[i].plateau, curves[i].typical[BW_MAX_SECONDS]);
        CHECK(curves[i].plateau > curves[i].typical[BW_MAX_SECONDS / 2]);
    }
}

static void time_is_bought_until_they_score_more_than_a_settled_attack(void) {
    int beaten = 0;
    for (int i = 0; i < DRAWN; i++) {
        const bw_curve *c = &curves[i];
        const double bought = c->bought_s, margin = drawn[i].margin;
        for (int t = 0; t < bought; t++)
            CHECK(c->typical[t] <= c->settled[t] + margin);
        if (c->ever_beaten)
            CHECK_NEAR(between(c->typical, bought), between(c->settled, bought) + margin, 1e-9);
        else
            CHECK_SAME(bought, BW_MAX_SECONDS);
        beaten += c->ever_beaten;
    }
    CHECK(beaten > 0 && beaten < DRAWN);
}

static void seconds_are_missing_when_the_last_man_is_in_later_than_the_time_bought(void) {
    int missing = 0, enough = 0;
    for (int i = 0; i < DRAWN; i++) {
        const bw_curve *c = &curves[i];
        const double even = c->even_s < 0 ? BW_MAX_SECONDS : c->even_s;
        if (c->ever_beaten && even > c->bought_s) {
            missing++;
            CHECK_NEAR(c->bought_s + c->missing_s, even, 1e-12);
        } else {
            enough++;
            CHECK_SAME(c->missing_s, 0);
        }
    }
    CHECK(missing > 0 && enough > 0);
}

static void a_man_who_is_set_stands_still_in_his_place(void) {
    begin(0, 0);
    const bw_forecast all = breaks_typical(&b, 6, 1);
    static bw_whatif w;
    CHECK_INT(bw_whatif_run(&b, &all, breaks_memory, bw_whatif_size(), &w), BW_OK);
    CHECK(w.count > 0);
    int running = 0;
    for (int i = 0; i < w.count && i < 3; i++) {
        const bw_rotation *r = &w.weak[i];
        static bw_state before, caught;
        bw_rotation_moment(&b, r, &before);
        const bw_ply pass = {BW_PASS, (int8_t)r->receiver, BW_NOBODY, BW_NOBODY};
        CHECK_NEAR(bw_play(&b, &before, pass, &caught, NULL, NULL), r->chance, 1e-12);
        double x[BW_MAX_SPOTS], y[BW_MAX_SPOTS];
        bw_break_stations(&b, &caught, b.ground->places[r->to].at, r->receiver, x, y);
        for (int d = 0; d < b.defenders; d++) {
            const int man = BW_MAX_ATTACKERS + d;
            running += bw_length(bw_v(caught.u[man], caught.v[man])) > 1;
            caught.x[man] = x[d];
            caught.y[man] = y[d];
            caught.u[man] = caught.v[man] = caught.ex[d] = caught.ey[d] = 0;
        }
        bw_typical_def how = bw_typical_default();
        how.rollouts = BW_WHATIF_ROLLOUTS;
        how.seconds = BW_WHATIF_SECONDS;
        static bw_forecast after;
        CHECK_INT(bw_typical_from(&b, &caught, &how, breaks_memory, bw_typical_size(), &after),
                  BW_OK);
        CHECK_SAME(r->set, after.worth[BW_WHATIF_SECONDS]);
    }
    CHECK(running > 0); // some were taken out of a run
}

static void late_is_a_man_a_yard_and_a_moment_from_his_place(void) {
    const double yard = BW_METRES_PER_YARD;
    CHECK(!bw_is_late(0, 0));
    CHECK(bw_is_late(0.15, yard)); // both limits still count
    CHECK(!bw_is_late(0.149, 5 * yard));
    CHECK(!bw_is_late(3, 0.99 * yard));
    for (double seconds = 0.16; seconds < 2; seconds += 0.02)
        CHECK(bw_is_late(seconds, 1.01 * yard));
}

static void who_has_farther_to_go_is_later_and_his_own_legs_count(void) {
    begin(0, 0);
    const int man = BW_MAX_ATTACKERS;
    const bw_vec here = bw_man(&b.start, man);
    CHECK_SAME(bw_seconds_to(&b, &b.start, 0, here), 0);
    double before = 0;
    for (double yards = 1; yards < 20; yards++) {
        const bw_vec there = bw_add(here, bw_v(0, yards * BW_METRES_PER_YARD));
        const double seconds = bw_seconds_to(&b, &b.start, 0, there);
        CHECK(seconds > before);
        before = seconds;
        // A man already running there is sooner, one running away later.
        bw_state s = b.start;
        s.v[man] = 2;
        CHECK(bw_seconds_to(&b, &s, 0, there) < seconds);
        s.v[man] = -2;
        CHECK(bw_seconds_to(&b, &s, 0, there) > seconds);
        // Nor do his own legs leave it as it is.
        bw_break own = b;
        own.def.legs[0] = b.ground->level->defender;
        own.def.legs[0].vmax *= 1.2;
        CHECK(bw_seconds_to(&own, &b.start, 0, there) < seconds);
        CHECK_SAME(bw_seconds_to(&own, &b.start, 1, there), bw_seconds_to(&b, &b.start, 1, there));
    }
}

int main(int argc, char **argv) {
    breaks_ready("high-school");
    draw_curves();
    RUN(the_plateau_is_what_they_score_until_a_second_after_the_last_man_is_in);
    RUN(while_a_man_is_missing_the_plateau_is_all_they_score);
    RUN(time_is_bought_until_they_score_more_than_a_settled_attack);
    RUN(seconds_are_missing_when_the_last_man_is_in_later_than_the_time_bought);
    RUN(a_man_who_is_set_stands_still_in_his_place);
    RUN(late_is_a_man_a_yard_and_a_moment_from_his_place);
    RUN(who_has_farther_to_go_is_later_and_his_own_legs_count);
    return test_report(argc, argv);
}
