/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Intervals against the published tables, and coverage counted exactly with the GNU Scientific
/// Library's binomial probabilities.
#include "core/calibration.h"
#include "core/rate.h"
#include "harness.h"
#include <gsl/gsl_randist.h>

/// R. G. Newcombe, "Two-sided confidence intervals for the single proportion: comparison of seven
/// methods", Stat. Med. 17, 1998, 857-872, Table I, score method; the last four worked out apart.
static void wilson(void) {
    static const struct {
        bw_count count;
        double low, high;
    } rows[] = {
        {{81, 263}, 0.255289, 0.366210}, {{15, 148}, 0.062386, 0.160487},
        {{0, 20}, 0, 0.161125},          {{1, 29}, 0.006113, 0.171755},
        {{3, 12}, 0.088942, 0.532305},   {{7, 10}, 0.396778, 0.892209},
        {{0, 5}, 0, 0.434482},           {{5, 5}, 0.565518, 1},
    };
    for (int i = 0; i < BW_COUNT(rows); i++) {
        const bw_interval got = bw_rate_interval(rows[i].count);
        CHECK_NEAR(got.low, rows[i].low, 6e-7);
        CHECK_NEAR(got.high, rows[i].high, 6e-7);
    }
}

/// R. G. Newcombe, "Interval estimation for the difference between independent proportions: comparison
/// of eleven methods", Stat. Med. 17, 1998, 873-890, Table II, method 10; c and e to h worked out apart.
static void newcombe(void) {
    static const struct {
        bw_count now, before;
        double low, high;
    } rows[] = {
        {{56, 70}, {48, 80}, 0.052431, 0.333873}, {{9, 10}, {3, 10}, 0.170523, 0.809018},
        {{6, 7}, {2, 7}, 0.058228, 0.806250},     {{5, 56}, {0, 29}, -0.038137, 0.192560},
        {{0, 10}, {0, 20}, -0.161125, 0.277533},  {{0, 10}, {0, 10}, -0.277533, 0.277533},
        {{10, 10}, {0, 20}, 0.679086, 1},         {{10, 10}, {0, 10}, 0.607509, 1},
    };
    for (int i = 0; i < BW_COUNT(rows); i++) {
        const bw_interval got = bw_rate_difference(rows[i].now, rows[i].before);
        CHECK_NEAR(got.low, rows[i].low, 6e-7);
        CHECK_NEAR(got.high, rows[i].high, 6e-7);
    }
}

/// Share of samples whose interval holds the true rate. Exact values worked out apart; Brown, Cai and
/// DasGupta (Statist. Sci. 16, 2001) print the same curves.
static double coverage(int n, double p) {
    double sum = 0;
    for (int x = 0; x <= n; x++) {
        const bw_interval i = bw_rate_interval((bw_count){x, n});
        if (i.low <= p && p <= i.high) sum += gsl_ran_binomial_pdf((unsigned)x, p, (unsigned)n);
    }
    return sum;
}

static void covers(void) {
    CHECK_NEAR(coverage(10, 0.3), 0.924403, 1e-6);
    CHECK_NEAR(coverage(20, 0.05), 0.924516, 1e-6);
}

/// A. Gelman et al., Bayesian Data Analysis, 3rd ed., section 5.1: a Beta(1.4, 8.6) belief and 4 of 14.
static void shrinkage(void) {
    const bw_belief after = bw_rate_learn((bw_belief){1.4, 8.6}, (bw_count){4, 14});
    CHECK_NEAR(bw_belief_mean(after), 0.225, 1e-12);
    CHECK_NEAR(bw_belief_deviation(after), 0.0835164654, 1e-9);
}

/// o = 0, 1, 1, 0 with p = .1, .9, .8, .4: 0.055, the example of a public library's own documentation;
/// then twenty forecasts in four values worked out apart.
static void brier(void) {
    const bw_prediction four[] = {{.1, false}, {.9, true}, {.8, true}, {.4, false}};
    CHECK_NEAR(bw_calibrate(four, 4).brier, 0.055, 1e-12);

    static const struct {
        double chance;
        bw_count seen;
    } groups[] = {{.1, {1, 8}}, {.3, {2, 5}}, {.5, {3, 4}}, {.8, {2, 3}}};
    bw_prediction twenty[20];
    int n = 0;
    for (int g = 0; g < 4; g++) {
        for (int i = 0; i < groups[g].seen.cases; i++)
            twenty[n++] = (bw_prediction){groups[g].chance, i < groups[g].seen.hits};
    }
    const bw_calibration c = bw_calibrate(twenty, n);
    CHECK_NEAR(c.brier, 0.1925, 1e-12);
    CHECK_NEAR(c.reliability, 0.0179166667, 1e-9);
    CHECK_NEAR(c.resolution, 0.0654166667, 1e-9);
    CHECK_NEAR(c.uncertainty, 0.24, 1e-12);
    CHECK_NEAR(c.reliability - c.resolution + c.uncertainty, c.brier, 1e-12);
    CHECK_NEAR(c.z, 0.6701505774, 1e-9);
    CHECK_NEAR(c.expected, 6.7, 1e-12);
    CHECK_INT(c.happened, 8);
    CHECK_NEAR(c.deviation, 1.8027756377, 1e-9);
}

int main(int argc, char **argv) {
    RUN(wilson);
    RUN(newcombe);
    RUN(covers);
    RUN(shrinkage);
    RUN(brier);
    return test_report(argc, argv);
}
