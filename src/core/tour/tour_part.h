/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What the parts of the tour share. Private to this folder.
#ifndef BW_CORE_TOUR_TOUR_PART_H
#define BW_CORE_TOUR_TOUR_PART_H

#include "core/tour/tour_def.h"

/// How often each move is made.
typedef struct bw_counts {
    int16_t n[BW_TOUR_PLACES][BW_TOUR_PLACES];
} bw_counts;

/// A set of places as bits.
typedef uint32_t bw_place_set;

/// Bounds on the moves of one relaxation.
typedef struct bw_tour_bounds {
    bw_counts least;                     ///< at least so often
    bw_place_set barred[BW_TOUR_PLACES]; ///< moves not to be made beyond `least`
} bw_tour_bounds;

/// The cheapest counts that keep every place in balance (as many in as out), whether or not they hang
/// together. BW_UNREACHABLE fills *from and *to.
bw_status bw_tour_balance(const bw_tour_def *def, const bw_tour_bounds *bounds, bw_counts *counts,
                          int64_t *length, int *from, int *to);

/// Splits the places that have a move into pieces that hang together, lowest place first. Returns how many.
int bw_tour_pieces(const bw_tour_def *def, const bw_counts *counts,
                   bw_place_set pieces[BW_TOUR_PLACES]);

/// Walks balanced counts in one piece as one closed tour. At each place the ball does not go straight back
/// if it can go elsewhere, and goes first where it has been least.
void bw_tour_walk(const bw_tour_def *def, const bw_counts *counts, bw_tour *tour);

#endif
