/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Two trials of the same break side by side, A and B: what differs, and whether it is more than the
/// chance in the simulation.
#ifndef BW_TRIAL_COMPARE_H
#define BW_TRIAL_COMPARE_H

#include "trial/trial.h"

/// A difference of typical worth, goals in a break.
typedef struct bw_gap {
    double a, b;
    double doubt; ///< 95 of 100 runs of the model would come this near to the true difference
    bool clear;   ///< the difference is larger than that
} bw_gap;

/// At `seconds` (0 to 10, straight between whole ones).
bw_gap bw_gap_at(const bw_trial *a, const bw_trial *b, double seconds);

/// One second after numbers are even, each trial by its own late men: the plateau.
bw_gap bw_gap_plateau(const bw_trial *a, const bw_trial *b);

/// "Within 4 s typical play scores in about 27 of 100 against A and 21 against B. B gives up 6 fewer,
/// give or take 4 by chance in the simulation: more than chance."
void bw_say_compare(const bw_trial *a, const bw_trial *b, bw_text *out);

/// The same of the plateau.
void bw_say_compare_plateau(const bw_trial *a, const bw_trial *b, bw_text *out);

/// Best play, in which there is no chance.
void bw_say_compare_best(const bw_trial *a, const bw_trial *b, bw_text *out);

#endif
