/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Which passes between landmarks are rotations: what the lint looks at, and what a practice script must
/// go through. One set for both, so that they never speak of different things.
#ifndef BW_SCHEME_ROTATION_H
#define BW_SCHEME_ROTATION_H

#include "core/scheme.h"

/// Landmarks farther apart than this are not neighbours, m. Common practice, no source: 20 yd.
#define BW_NEIGHBOURS_WITHIN (20 * BW_METRES_PER_YARD)

/// True when a ball here is in front and so near the goal that what follows is a shot, not a pass.
/// Nearer than 9 yd: common practice, no source.
bool bw_shot_next(bw_vec ball);

/// Metres from the goal's centre to the nearest point of the stretch a-b. A pass that comes nearer than
/// half the goal's width would go through it.
double bw_goal_clearance(bw_vec a, bw_vec b);

/// [from][to] by landmark, each 0 or 1.
typedef struct bw_rotations {
    int count; ///< of them
    uint8_t rotation[BW_MAX_LANDMARKS]
                    [BW_MAX_LANDMARKS];               ///< to a neighbour, neither a place to shoot
    uint8_t pass[BW_MAX_LANDMARKS][BW_MAX_LANDMARKS]; ///< any pass a man can make between such
} bw_rotations;

/// Those of a valid scheme.
void bw_rotations_of(const bw_scheme *scheme, bw_rotations *out);

#endif
