/* SPDX-License-Identifier: GPL-3.0-or-later */
/// How far a man may stand beside his place before it matters: the distance at which the shape's danger
/// has risen by a set share. The danger is what a shot is worth from where the ball is, and from every
/// landmark one pass away, with the defenders where they are once it could be taken there: each has run
/// from where he stood toward where the pass puts him. One man's mistake is looked at by itself.
///
/// Limits: the shares of the places are equal, nobody dodges, and the late men are left out; so it orders
/// mistakes by size rather than pricing them. docs/teach.md tells how the share was chosen.
#ifndef BW_CORE_TOLERANCE_H
#define BW_CORE_TOLERANCE_H

#include "core/shape.h"
#include "core/shot.h"

/// Share by which the danger may rise within the tolerance (assumed).
#define BW_TOLERANCE_RISE 0.02

/// Bounds of the tolerance, m: nobody can pace off less than a yard, and four yards off is not there.
#define BW_TOLERANCE_LEAST (1 * BW_METRES_PER_YARD)
#define BW_TOLERANCE_MOST (4 * BW_METRES_PER_YARD)

/// A scheme made ready for asking; const afterwards.
typedef struct bw_tolerances {
    const bw_scheme *scheme; ///< not owned; must outlive this
    bw_plan plan[BW_MAX_STAGES];
    bw_shot_table shot;
} bw_tolerances;

/// About 20 ms, for the table of shots.
void bw_tolerances_build(const bw_scheme *scheme, bw_tolerances *model);

/// The danger with the ball at `ball`, goals, summed over the places, one man standing at `at` instead of
/// where he belongs.
double bw_shape_danger(const bw_tolerances *model, int stage, bw_vec ball, int spot, bw_vec at);

/// Metres he may be off in the direction of `toward` (any length; zero: the least of eight directions),
/// between the bounds.
double bw_tolerance(const bw_tolerances *model, int stage, bw_vec ball, int spot, bw_vec toward);

#endif
