/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Who takes which place: up to BW_LINEUP_MEN players, up to BW_LINEUP_PLACES places (spots and late
/// men), each place filled by a different player. Exact, by subsets of places.
/// Source: R. Burkard, M. Dell'Amico, S. Martello, "Assignment Problems", SIAM 2009.
#ifndef BW_CORE_LINEUP_H
#define BW_CORE_LINEUP_H

#include "core/base.h"

enum { BW_LINEUP_MEN = 64, BW_LINEUP_PLACES = 9 };

/// A cost that forbids a pair.
#define BW_LINEUP_NEVER 1e30

typedef enum bw_lineup_aim {
    BW_LINEUP_SUM,  ///< least sum of costs
    BW_LINEUP_WORST ///< least largest cost, then least sum
} bw_lineup_aim;

typedef struct bw_lineup {
    int men, places;                              ///< places <= men
    double cost[BW_LINEUP_MEN][BW_LINEUP_PLACES]; ///< any finite value; BW_LINEUP_NEVER forbids
    int fixed[BW_LINEUP_PLACES];                  ///< the player the coach put there; -1: free
} bw_lineup;

typedef struct bw_lineup_choice {
    int man[BW_LINEUP_PLACES]; ///< who takes each place
    double worst, sum;
} bw_lineup_choice;

/// Best line-up; among equals the one with the lowest players from place 0 on is not promised, only
/// that it is always the same. BW_BAD_INPUT: sizes out of range, a player fixed to two places or one
/// that is not there; BW_NOT_FOUND: no line-up respects what is forbidden. O(men 2^places places).
bw_status bw_lineup_best(const bw_lineup *lineup, bw_lineup_aim aim, bw_lineup_choice *best);

/// Best line-up in which `man` does not take `place`: what giving him up there costs. Same errors;
/// BW_BAD_INPUT too when the coach fixed him there.
bw_status bw_lineup_without(const bw_lineup *lineup, bw_lineup_aim aim, int man, int place,
                            bw_lineup_choice *best);

#endif
