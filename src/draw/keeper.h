/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Where the goalkeeper's mark stands.
#ifndef BW_DRAW_KEEPER_H
#define BW_DRAW_KEEPER_H

#include "draw/marks.h"
#include "draw/view.h"

/// The page point of his mark for a ball `ball_x` metres to the right: clear of the goal line, on the
/// ball's side of the mouth, at his post when it is 7 m aside or more.
bw_vec bw_keeper_point(const bw_view *view, const bw_field *field, bw_mark_size size,
                       double ball_x);

#endif
