/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Which moves a tour must make, and the tour.
#ifndef BW_CORE_TOUR_TOUR_DEF_H
#define BW_CORE_TOUR_TOUR_DEF_H

#include "core/base.h"

enum { BW_TOUR_PLACES = BW_MAX_LANDMARKS, BW_TOUR_MOVES = 1024, BW_TOUR_BUDGET = 20000 };

/// Which moves there are, and which must be made. Ties are settled by the lowest index: give the places
/// in an order that has a meaning, and the tour follows it.
typedef struct bw_tour_def {
    int count;                                     ///< places, at most BW_TOUR_PLACES
    int32_t cost[BW_TOUR_PLACES][BW_TOUR_PLACES];  ///< [from][to] > 0; 0: no such move
    uint8_t times[BW_TOUR_PLACES][BW_TOUR_PLACES]; ///< at least so often; only where cost > 0
    int start;  ///< begin here if the tour comes by; else at the lowest place it visits
    int budget; ///< flows to solve at most, BW_TOUR_BUDGET is plenty
} bw_tour_def;

typedef struct bw_tour {
    int count;                     ///< moves; 0 when nothing was required
    uint8_t at[BW_TOUR_MOVES + 1]; ///< places in order; at[count] == at[0]
    int64_t length;                ///< sum of the costs of all moves
    int64_t required;              ///< the part of it that was required
    int64_t bound; ///< no closed tour is shorter; equal to length: this one is proven shortest
    int pieces;    ///< the required moves hang together in so many pieces
    int flows;     ///< flows solved
    int from, to;  ///< when BW_UNREACHABLE: from here there is no way to there
} bw_tour;

#endif
