/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "draw/keeper.h"

/// A ball this far aside has him at the end of his way, m.
static const double shaded = 7;

double bw_keeper_side(const bw_field *field, double ball_x) {
    return 0.35 * field->goal * bw_clamp(ball_x / shaded, -1, 1);
}

bw_vec bw_keeper_point(const bw_view *view, const bw_field *field, bw_mark_size size,
                       double ball_x) {
    return bw_v(view->origin.x + bw_keeper_side(field, ball_x) * view->scale,
                view->origin.y - bw_keeper_half(size) - 2.5);
}

bw_vec bw_keeper_reach(bw_mark_size size) {
    const double reach = bw_keeper_half(size) + 1;
    return bw_v(reach, reach);
}
