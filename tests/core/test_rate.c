/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Properties of intervals, beliefs and calibration.
#include "core/calibration.h"
#include "core/rate.h"
#include "harness.h"

static void intervals_hold_the_rate_and_mirror(void) {
    for (int n = 1; n <= 60; n++) {
        for (int x = 0; x <= n; x++) {
            const bw_interval i = bw_rate_interval((bw_count){x, n});
            const bw_interval j = bw_rate_interval((bw_count){n - x, n});
            CHECK(0 <= i.low && i.low <= (double)x / n && (double)x / n <= i.high && i.high <= 1);
            CHECK_NEAR(i.low, 1 - j.high, 1e-12);
            if (x > 0) CHECK(bw_rate_interval((bw_count){x - 1, n}).high < i.high);
            const bw_interval more = bw_rate_interval((bw_count){2 * x, 2 * n});
            CHECK(more.high - more.low < i.high - i.low);
        }
    }
    CHECK_SAME(bw_rate_interval((bw_count){0, 0}).high, 1);
}

static void differences_turn_round(void) {
    unsigned long long state = 4;
    for (int k = 0; k < 2000; k++) {
        bw_count a, b;
        a.cases = 1 + (int)(test_random(&state) % 40);
        a.hits = (int)(test_random(&state) % (unsigned)(a.cases + 1));
        b.cases = 1 + (int)(test_random(&state) % 40);
        b.hits = (int)(test_random(&state) % (unsigned)(b.cases + 1));
        const bw_interval ab = bw_rate_difference(a, b), ba = bw_rate_difference(b, a);
        CHECK_NEAR(ab.low, -ba.high, 1e-12);
        CHECK_NEAR(ab.high, -ba.low, 1e-12);
        CHECK(ab.low <= bw_rate(a) - bw_rate(b) + 1e-12 &&
              bw_rate(a) - bw_rate(b) <= ab.high + 1e-12);
        CHECK(ab.low >= -1 && ab.high <= 1);
    }
}

static void groups_shrink_to_the_season(void) {
    unsigned long long state = 6;
    for (int k = 0; k < 500; k++) {
        bw_count groups[12];
        for (int g = 0; g < 12; g++) {
            groups[g].cases = (int)(test_random(&state) % 12);
            groups[g].hits = (int)(test_random(&state) % (unsigned)(groups[g].cases + 1));
        }
        const bw_belief season = bw_rate_spread(groups, 12);
        CHECK(season.a > 0 && season.b > 0);
        for (int g = 0; g < 12; g++) {
            const double raw = bw_rate(groups[g]), mean = bw_belief_mean(season);
            const double shrunk = bw_belief_mean(bw_rate_learn(season, groups[g]));
            if (groups[g].cases == 0)
                CHECK_NEAR(shrunk, mean, 1e-12);
            else
                CHECK((shrunk - raw) * (shrunk - mean) <= 1e-12);
        }
    }
    const bw_count few[] = {{1, 4}, {2, 4}};
    const bw_belief weak = bw_rate_spread(few, 2);
    CHECK_NEAR(weak.a + weak.b, BW_WEAK_CASES, 1e-12);
    const bw_belief nothing = bw_rate_spread(NULL, 0);
    CHECK_NEAR(bw_belief_mean(nothing), 0.5, 1e-12);
}

/// Groups that share one rate spread by chance alone: that must not pass for a true spread.
static void chance_is_not_spread(void) {
    const bw_count same[] = {{2, 4}, {2, 4}, {2, 4}, {2, 4}, {2, 4}, {2, 4}};
    const bw_belief b = bw_rate_spread(same, 6);
    CHECK_NEAR(b.a + b.b, BW_WEAK_CASES, 1e-12);
}

static void calibration_counts_everything_once(void) {
    unsigned long long state = 8;
    bw_prediction f[400];
    for (int i = 0; i < 400; i++) {
        f[i].chance = test_uniform(&state, 0, 1);
        f[i].happened = test_uniform(&state, 0, 1) < f[i].chance;
    }
    f[0].chance = 1;
    f[0].happened = true;
    const bw_calibration c = bw_calibrate(f, 400);
    int cases = 0, hits = 0;
    for (int k = 0; k < BW_CALIBRATION_BINS; k++) {
        cases += c.bin[k].count.cases;
        hits += c.bin[k].count.hits;
        CHECK(c.bin[k].chance >= 0.2 * k - 1e-9 && c.bin[k].chance <= 0.2 * (k + 1));
    }
    CHECK_INT(cases, 400);
    CHECK_INT(hits, c.happened);
    CHECK_NEAR(c.reliability - c.resolution + c.uncertainty, c.brier, 0.01);
    CHECK(fabs(c.z) < 4);
    const bw_calibration none = bw_calibrate(NULL, 0);
    CHECK_INT(none.cases, 0);
    CHECK_SAME(none.brier, 0);
}

int main(int argc, char **argv) {
    RUN(intervals_hold_the_rate_and_mirror);
    RUN(differences_turn_round);
    RUN(groups_shrink_to_the_season);
    RUN(chance_is_not_spread);
    RUN(calibration_counts_everything_once);
    return test_report(argc, argv);
}
