/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Legs from splits: what went in comes out, error bars mean what they say, and splits that cannot
/// carry a fit are refused.
#include "core/sprint.h"
#include "harness.h"
#include <string.h>

static bw_legs runner(unsigned long long *state) {
    const double vmax = test_uniform(state, 5.5, 10);
    const double tau = test_uniform(state, 0.7, 1.6);
    return (bw_legs){vmax, tau};
}

static void exact_splits_give_the_legs_back(void) {
    unsigned long long state = 1;
    for (int n = 0; n < 300; n++) {
        const bw_legs legs = runner(&state);
        const double late = test_uniform(&state, -0.3, 0.4);
        bw_split run[6];
        for (int i = 0; i < 6; i++) {
            const double d = 5 + 6 * i;
            run[i] = (bw_split){d, bw_sprint_time(legs, d) - late};
        }
        const bw_sprint given = bw_sprint_fit_late(run, 6, late, false);
        CHECK_INT(given.verdict, BW_SPRINT_FITTED);
        CHECK_NEAR(given.legs.vmax, legs.vmax, 1e-5);
        CHECK_NEAR(given.legs.tau, legs.tau, 1e-5);
        const bw_sprint free = bw_sprint_fit_late(run, 6, 0, true);
        CHECK_NEAR(free.legs.vmax, legs.vmax, 1e-3);
        CHECK_NEAR(free.late, late, 1e-3);
        const bw_sprint two = bw_sprint_fit_late(run + 1, 2, late, false);
        if (two.verdict == BW_SPRINT_FITTED) {
            CHECK_NEAR(two.legs.vmax, legs.vmax, 1e-3);
            CHECK(two.vmax_error < 0 && two.residual < 0);
        }
    }
}

static void a_start_behind_the_gate_is_found(void) {
    unsigned long long state = 2;
    for (int n = 0; n < 200; n++) {
        const bw_legs legs = runner(&state);
        const double behind = test_uniform(&state, 0.1, 0.9);
        bw_split run[6];
        for (int i = 0; i < 6; i++) {
            const double d = 5 + 6 * i;
            run[i] = (bw_split){d, bw_sprint_time(legs, d + behind) - bw_sprint_time(legs, behind)};
        }
        double found;
        const bw_sprint f = bw_sprint_fit_behind(run, 6, &found);
        CHECK_INT(f.verdict, BW_SPRINT_FITTED);
        CHECK_NEAR(f.legs.vmax, legs.vmax, 2e-3);
        CHECK_NEAR(found, behind, 2e-3);
        CHECK_NEAR(f.late, bw_sprint_time(legs, behind), 2e-3);
    }
}

/// One in three true values lies outside one standard error when the errors are honest.
static void error_bars_cover(void) {
    unsigned long long state = 3;
    int inside = 0;
    enum { RUNS = 1500 };
    for (int n = 0; n < RUNS; n++) {
        const bw_legs legs = {8.2, 1.2};
        bw_split run[8];
        for (int i = 0; i < 8; i++) {
            double error = -6;
            for (int k = 0; k < 12; k++)
                error += test_uniform(&state, 0, 1);
            run[i] = (bw_split){5 + 5 * i, bw_sprint_time(legs, 5 + 5 * i) + 0.02 * error};
        }
        const bw_sprint f = bw_sprint_fit_late(run, 8, 0, false);
        CHECK_INT(f.verdict, BW_SPRINT_FITTED);
        inside += fabs(f.legs.vmax - legs.vmax) < f.vmax_error;
    }
    // Student's t with six degrees of freedom: 64.4 % within one; four standard deviations either way.
    CHECK_NEAR(inside / (double)RUNS, 0.644, 0.05);
}

static void what_cannot_be_fitted_is_refused(void) {
    const bw_split one[] = {{10, 1.9}};
    CHECK_INT(bw_sprint_fit(one, 1, BW_CLOCK_MOVE, 0.2).verdict, BW_SPRINT_FEW);
    CHECK_INT(bw_sprint_fit(one, 0, BW_CLOCK_GATE, 0.2).verdict, BW_SPRINT_FEW);
    const bw_split back[] = {{10, 1.9}, {20, 1.8}};
    CHECK_INT(bw_sprint_fit(back, 2, BW_CLOCK_MOVE, 0.2).verdict, BW_SPRINT_ORDER);
    const bw_split rocket[] = {{10, 1.9}, {20, 2.4}};
    CHECK_INT(bw_sprint_fit(rocket, 2, BW_CLOCK_MOVE, 0.2).verdict, BW_SPRINT_TOO_FAST);
    const bw_split far[] = {{10, 1.9}, {300, 30}};
    CHECK_INT(bw_sprint_fit(far, 2, BW_CLOCK_MOVE, 0.2).verdict, BW_SPRINT_RANGE);
    const bw_split nan_time[] = {{10, 1.9}, {20, (double)NAN}};
    CHECK_INT(bw_sprint_fit(nan_time, 2, BW_CLOCK_MOVE, 0.2).verdict, BW_SPRINT_RANGE);
    const bw_split speeding[] = {{1, 0.7}, {2, 1.0}};
    CHECK_INT(bw_sprint_fit(speeding, 2, BW_CLOCK_MOVE, 0.2).verdict, BW_SPRINT_NO_TOP);
    const bw_split cruising[] = {{60, 8.0}, {80, 10.4}};
    CHECK_INT(bw_sprint_fit(cruising, 2, BW_CLOCK_MOVE, 0.2).verdict, BW_SPRINT_NO_START);
    const bw_split wild[] = {{5, 1.4}, {10, 4.6}, {20, 5.2}, {30, 9.6}, {40, 10.1}};
    const bw_sprint f = bw_sprint_fit(wild, 5, BW_CLOCK_MOVE, 0.2);
    CHECK(f.verdict != BW_SPRINT_FITTED);
    for (int v = BW_SPRINT_FEW; v <= BW_SPRINT_NOT_A_RUN; v++)
        CHECK(strlen(bw_sprint_why((bw_sprint_verdict)v)) > 20);
}

static void few_splits_take_the_usual_start(void) {
    const bw_legs legs = {8, 1.2};
    bw_split run[4];
    for (int i = 0; i < 4; i++)
        run[i] = (bw_split){5 + 8 * i, bw_sprint_time(legs, 5 + 8 * i) - BW_GATE_SECONDS};
    const bw_sprint gate = bw_sprint_fit(run, 4, BW_CLOCK_GATE, 0.2);
    CHECK_INT(gate.verdict, BW_SPRINT_FITTED);
    CHECK(!gate.start_estimated);
    CHECK_NEAR(gate.legs.vmax, legs.vmax, 1e-5);
    for (int i = 0; i < 4; i++)
        run[i].seconds += BW_GATE_SECONDS + 0.25;
    CHECK_NEAR(bw_sprint_fit(run, 4, BW_CLOCK_SIGNAL, 0.25).legs.tau, legs.tau, 1e-5);
}

static const double five_yards[] = {5, 10, 20, 30, 40};

static void in_yards(const double *seconds, bw_split *run) {
    for (int i = 0; i < 5; i++)
        run[i] = (bw_split){0.9144 * five_yards[i], seconds[i]};
}

/// A man who tires from 20 yards on, by hand from a whistle: start and clock cannot be told apart, his legs
/// can.
static void a_start_that_cannot_be_told_is_taken_as_usual(void) {
    static const double tiring[] = {1.43, 2.23, 3.34, 4.54, 5.84};
    bw_split run[5];
    in_yards(tiring, run);
    CHECK(bw_sprint_fit_late(run, 5, 0, true).verdict != BW_SPRINT_FITTED);
    const bw_sprint f = bw_sprint_fit(run, 5, BW_CLOCK_SIGNAL, 0.2);
    CHECK_INT(f.verdict, BW_SPRINT_FITTED);
    CHECK(!f.start_estimated);
    CHECK_NEAR(f.late, -0.2, 0);
    CHECK_NEAR(f.legs.vmax, 7.7, 0.3);
    CHECK_NEAR(f.legs.tau, 0.84, 0.15);
    const bw_sprint less = bw_sprint_fit(run + 1, 4, BW_CLOCK_SIGNAL, 0.2);
    CHECK_NEAR(f.legs.vmax, less.legs.vmax, 0.2);
}

/// Real stopwatches scatter; every man who is timed so at the usual five distances gets his legs.
static void hand_times_are_fitted(void) {
    unsigned long long state = 6;
    double off = 0;
    enum { RUNS = 400 };
    for (int n = 0; n < RUNS; n++) {
        const bw_legs legs = runner(&state);
        const double reaction = test_uniform(&state, 0.15, 0.35);
        double seconds[5];
        for (int i = 0; i < 5; i++) {
            seconds[i] = bw_sprint_time(legs, 0.9144 * five_yards[i]) + reaction;
            seconds[i] += test_uniform(&state, -0.06, 0.06);
        }
        bw_split run[5];
        in_yards(seconds, run);
        const bw_sprint f = bw_sprint_fit(run, 5, BW_CLOCK_SIGNAL, 0.25);
        CHECK_INT(f.verdict, BW_SPRINT_FITTED);
        off += fabs(f.legs.vmax - legs.vmax) / legs.vmax / RUNS;
    }
    CHECK(off < 0.05);
}

/// Nobody is told to add a split that is there.
static void advice_is_never_what_was_done(void) {
    unsigned long long state = 7;
    int refused = 0;
    for (int n = 0; n < 3000; n++) {
        double seconds[5];
        for (int i = 0; i < 5; i++)
            seconds[i] = (i > 0 ? seconds[i - 1] : 0) + test_uniform(&state, 0.1, 2.5);
        bw_split run[5];
        in_yards(seconds, run);
        for (int clock = 0; clock < BW_CLOCK_COUNT; clock++) {
            const bw_sprint f = bw_sprint_fit(run, 5, (bw_clock)clock, 0.25);
            refused += f.verdict != BW_SPRINT_FITTED;
            CHECK(f.verdict != BW_SPRINT_NO_TOP && f.verdict != BW_SPRINT_NO_START);
        }
    }
    CHECK(refused > 1000);
}

/// Yards or metres, the fit is the same run: scaling all distances scales top speed alone.
static void scales_with_the_unit(void) {
    unsigned long long state = 5;
    for (int n = 0; n < 100; n++) {
        bw_split a[5], b[5];
        const bw_legs legs = runner(&state);
        for (int i = 0; i < 5; i++) {
            const double error = test_uniform(&state, -0.02, 0.02);
            a[i] = (bw_split){5 + 7 * i, bw_sprint_time(legs, 5 + 7 * i) + error};
            b[i] = (bw_split){0.9144 * a[i].distance, a[i].seconds};
        }
        const bw_sprint fa = bw_sprint_fit_late(a, 5, 0, false);
        const bw_sprint fb = bw_sprint_fit_late(b, 5, 0, false);
        CHECK_NEAR(fb.legs.vmax, 0.9144 * fa.legs.vmax, 1e-6);
        CHECK_NEAR(fb.legs.tau, fa.legs.tau, 1e-6);
    }
}

int main(int argc, char **argv) {
    RUN(exact_splits_give_the_legs_back);
    RUN(a_start_behind_the_gate_is_found);
    RUN(error_bars_cover);
    RUN(what_cannot_be_fitted_is_refused);
    RUN(few_splits_take_the_usual_start);
    RUN(a_start_that_cannot_be_told_is_taken_as_usual);
    RUN(hand_times_are_fitted);
    RUN(advice_is_never_what_was_done);
    RUN(scales_with_the_unit);
    return test_report(argc, argv);
}
