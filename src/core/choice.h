/* SPDX-License-Identifier: GPL-3.0-or-later */
/// How a person with the ball rates what he could do, and how likely he does each. Private to the
/// forecast.
#ifndef BW_CORE_CHOICE_H
#define BW_CORE_CHOICE_H

#include "core/run.h"

/// Everything he weighs up at one moment.
typedef struct bw_choice {
    int count;
    bw_ply plies[BW_MAX_PLIES];
    double rate[BW_MAX_PLIES];   ///< goals it seems to promise
    double chance[BW_MAX_PLIES]; ///< that it keeps the ball; for the shot, that it scores
    double share[BW_MAX_PLIES];  ///< how likely he picks it; they sum to 1
    double shoot;                ///< share of the shot, 0 when there is none
    double scores;               ///< chance that the shot scores
} bw_choice;

/// Scratch of one rating.
typedef struct bw_choice_work {
    bw_state child, grandchild;
    bw_state released[BW_MAX_CUTS + 1];
    bw_state next_released;
    bw_choice next; ///< for a look ahead
    uint64_t played;
} bw_choice_work;

/// Rates every ply from a state and turns the rates into shares by nested logit: kinds (shoot, pass to
/// each man, carry, hold) by the mean of their members' weights, then within the kind.
void bw_choose(const bw_break *b, const bw_state *s, int look_ahead, bw_choice_work *work,
               bw_choice *out);

#endif
