/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The most that can still come of a state: an admissible bound. Defenders are ignored, attackers run
/// at full effort straight to where a shot is worth most, and the ball gets there at the best chance
/// a pass that long ever has. Every figure is at least the true one, so cutting by it changes no
/// answer. Private to the search.
#ifndef BW_CORE_BOUND_H
#define BW_CORE_BOUND_H

#include "core/run.h"

typedef struct bw_bound {
    const bw_break *b;
    const bw_state *s;
    int depth;                     ///< plies left before the shot
    int left;                      ///< ticks of time left
    double shot_now;               ///< at least the worth of a shot by the holder now
    double most[BW_MAX_ATTACKERS]; ///< at least the worth of any shot this man may come to
    double best;                   ///< the largest of them
    double need; ///< a hope below this may be rough: it will not be looked at; -1 at first
} bw_bound;

void bw_bound_begin(const bw_break *b, const bw_state *s, int depth, int left, bw_bound *bound);

/// What may come of a ply, both factors at least the true ones.
typedef struct bw_hope {
    double chance; ///< that it keeps the ball
    double after;  ///< worth of what follows; 0: it cannot lead to a shot in time
} bw_hope;

/// Hope of any line that begins with ply `p`, which is not a shot.
bw_hope bw_bound_ply(const bw_bound *bound, bw_ply p);

/// At least the worth of any line from the state.
double bw_bound_all(const bw_bound *bound);

#endif
