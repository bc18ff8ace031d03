/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Where the goalkeeper's mark stands.
#ifndef BW_DRAW_KEEPER_H
#define BW_DRAW_KEEPER_H

#include "draw/marks.h"
#include "draw/view.h"

/// How far to the right of the middle of the mouth he stands for a ball `ball_x` metres to the right,
/// m: on the ball's side, at most 0.35 of the mouth, when the ball is 7 m aside or more.
double bw_keeper_side(const bw_field *field, double ball_x);

/// The page point of his mark for a ball `ball_x` metres to the right, clear of the goal line.
bw_vec bw_keeper_point(const bw_view *view, const bw_field *field, bw_mark_size size,
                       double ball_x);

/// Half the width and half the height of his mark with a little air.
bw_vec bw_keeper_reach(bw_mark_size size);

#endif
