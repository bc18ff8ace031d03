/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Where everyone stands and his duty, the crease among them: rule first, then pins, then shading. A plan is one stage made ready; it is
/// const afterwards and may be shared. docs/shape.md tells the rule in words.
///
/// Exactly mirror symmetric: bw_where on the mirrored scheme with the mirrored ball and attackers
/// gives the mirrored answer to the last bit, and so does a left-right symmetric scheme on its own.
#ifndef BW_CORE_SHAPE_H
#define BW_CORE_SHAPE_H

#include "core/field.h"
#include "core/neighbour.h"
#include "core/scheme.h"
#include "core/station.h"

/// A stage made ready for bw_where.
typedef struct bw_plan {
    int spots;
    bool match_up;
    bw_rule rule;
    bw_field field;
    bw_side lead;
    int low[2][2]; ///< the low pair, ball on the right and on the left: away from it, on its side
    bw_vec home[BW_MAX_SPOTS];
    int pin_sites;                      ///< 0: no pins, nothing to interpolate
    bw_sites sites;                     ///< landmarks, then a ring of anchors on the field's edge
    uint8_t order[2][BW_MAX_LANDMARKS]; ///< landmarks from low to high and left to right; mirrored
    /// Pin minus rule at each landmark, [0] with the ball on the right, [1] on the left. They differ
    /// only at landmarks on the centre line, where the unit leans to the ball's side.
    bw_vec pull[2][BW_MAX_LANDMARKS][BW_MAX_SPOTS];
} bw_plan;

/// Makes stage number `stage` of a valid scheme ready. Cost: one bw_where per landmark.
void bw_plan_build(const bw_scheme *scheme, int stage, bw_plan *plan);

/// Positions and duties of all plan->spots spots for a ball position; `attackers` may be NULL with
/// count 0. `out` has room for BW_MAX_SPOTS. At every ball position exactly one spot has
/// BW_DUTY_BALL, or two have BW_DUTY_HOLD while the ball is behind; exactly one has BW_DUTY_CREASE
/// unless the rule says none, or its man has the ball in a match-up. Reads only; bench/ measures it:
/// about 0.1 microseconds, 0.4 where places are pinned.
void bw_where(const bw_plan *plan, bw_vec ball, const bw_vec *attackers, int count,
              bw_station *out);

#endif
