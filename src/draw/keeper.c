/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "draw/keeper.h"

/// A ball this far aside has him at the end of his way, m.
static const double shaded = 7;

bw_vec bw_keeper_point(const bw_view *view, const bw_field *field, bw_mark_size size,
                       double ball_x) {
    const double reach = 0.35 * field->goal * view->scale;
    const double side = bw_clamp(ball_x / shaded, -1, 1);
    return bw_v(view->origin.x + side * reach, view->origin.y - size.radius * 0.76 - 2.5);
}
