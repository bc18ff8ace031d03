/* SPDX-License-Identifier: GPL-3.0-or-later */
/// SM-2 against the figures of its own rule, P. A. Wozniak, "Optimization of Learning", Master's thesis,
/// Poznan 1990, section 3.2, worked out apart for the reading that core/recall.h names.
#include "core/recall.h"
#include "harness.h"

/// Answers one after the other, each on the day it is due.
static void series(const char *answers, const int *intervals, const double *eases) {
    bw_card card = bw_card_new(0);
    int day = 0;
    for (int i = 0; answers[i]; i++) {
        bw_card_answer(&card, answers[i] - '0', day);
        CHECK_INT(card.interval, intervals[i]);
        CHECK_NEAR(card.ease, eases[i], 1e-9);
        CHECK_INT(card.due, day + intervals[i]);
        day = card.due;
    }
}

static void intervals_and_eases(void) {
    series("444444", (int[]){1, 6, 15, 38, 95, 238}, (double[]){2.5, 2.5, 2.5, 2.5, 2.5, 2.5});
    series("555555", (int[]){1, 6, 17, 48, 140, 420}, (double[]){2.6, 2.7, 2.8, 2.9, 3.0, 3.1});
    series("333333", (int[]){1, 6, 14, 30, 59, 107},
           (double[]){2.36, 2.22, 2.08, 1.94, 1.80, 1.66});
    series("555254", (int[]){1, 6, 17, 1, 1, 6}, (double[]){2.6, 2.7, 2.8, 2.8, 2.9, 2.9});
    series("5552544", (int[]){1, 6, 17, 1, 1, 6, 18},
           (double[]){2.6, 2.7, 2.8, 2.8, 2.9, 2.9, 2.9});
}

/// EF' = EF + (0.1 - (5 - q)(0.08 + (5 - q) 0.02)) from 2.5: 2.36, 2.50, 2.60 for q = 3, 4, 5; never below
/// 1.3.
static void one_step(void) {
    static const double eases[] = {2.36, 2.50, 2.60};
    for (int q = 3; q <= 5; q++) {
        bw_card card = bw_card_new(0);
        bw_card_answer(&card, q, 0);
        CHECK_NEAR(card.ease, eases[q - 3], 1e-9);
    }
    bw_card hard = bw_card_new(1);
    CHECK_NEAR(hard.ease, 1.3, 1e-12);
    for (int i = 0; i < 20; i++)
        bw_card_answer(&hard, 3, i);
    CHECK_NEAR(hard.ease, 1.3, 1e-12);
}

int main(int argc, char **argv) {
    RUN(intervals_and_eases);
    RUN(one_step);
    return test_report(argc, argv);
}
