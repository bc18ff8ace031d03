/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A player's own chart: the field, the ball, himself large and his team-mates small. Without men it is
/// the empty chart of a quiz.
#ifndef BW_DRAW_OWN_H
#define BW_DRAW_OWN_H

#include "core/shape.h"
#include "draw/ink.h"
#include "draw/view.h"

typedef struct bw_own {
    const bw_scheme *scheme;
    int stage;                  ///< index in scheme->stages
    int spot;                   ///< himself
    const bw_station *stations; ///< of all spots; NULL: nobody on it
    bw_vec ball;
    const bw_vec *from; ///< where he comes from: a faint ghost and run; NULL: none
} bw_own;

/// Radius of himself on it, points: small enough that a ball two yards off shows at 3.5 pt a yard.
#define BW_OWN_RADIUS 4.6

/// Draws it into the view's box with its border.
void bw_draw_own(bw_ink *ink, const bw_own *own, const bw_view *view);

#endif
