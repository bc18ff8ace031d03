/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A man running to his place and standing on it: the one rule the board and the lessons share.
/// Between two steps his effort is constant and the motion its exact solution, so a picture may be
/// taken at any moment, however rare or frequent.
#ifndef BW_CORE_FOLLOW_H
#define BW_CORE_FOLLOW_H

#include "core/level.h"
#include <stdbool.h>

/// Seconds of one step of constant effort.
#define BW_FOLLOW_STEP 0.05

/// Lets one step go by with `*effort`, then chooses the effort of the next: the one that would put him
/// on `place` BW_HORIZON seconds ahead, as in a break (core/run.h). A man within 0.05 m of his place
/// and slower than 0.2 m/s is put on it exactly, at rest, without effort. True while he is on his way.
bool bw_follow(bw_legs legs, bw_body *body, bw_vec *effort, bw_vec place);

/// Seconds before he can stand on his place: `unseen` until he has seen where it is, then the run. 0
/// within 0.15 m of it: a tenth of a second at a walk.
double bw_follow_needs(bw_legs legs, bw_body body, bw_vec place, double unseen);

/// Whole steps before `defenders` men (at least 1) have seen what `attackers` do; with none of those
/// shown, one more of them than of us is taken.
int bw_follow_delay(const bw_level *level, int attackers, int defenders);

#endif
