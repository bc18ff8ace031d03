/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "draw/own.h"

#include "draw/chart.h"
#include "draw/marks.h"
#include "draw/path.h"

/// A man this near to where he was has not moved: no ghost, no run. Metres.
static const double stayed = 1.5;

/// A smaller ball than on the charts of the whole unit, without its halo.
static void draw_ball(bw_ink *ink, bw_vec at) {
    bw_ink_fill(ink, BW_ROLE_PAPER);
    bw_path_circle(ink, at, 3.6);
    bw_ink_fill(ink, BW_ROLE_BALL);
    bw_path_circle(ink, at, 1.9);
    bw_ink_stroke(ink, BW_ROLE_BALL, 0.9);
    bw_path_circle(ink, at, 3.1);
}

static void draw_men(bw_ink *ink, const bw_own *own, const bw_view *view) {
    const bw_mark_size size = {.radius = BW_OWN_RADIUS, .type = 9, .label = 9};
    const bw_vec at = bw_view_point(view, own->stations[own->spot].at);
    if (own->from && bw_distance(*own->from, own->stations[own->spot].at) > stayed) {
        const bw_vec from = bw_view_point(view, *own->from);
        bw_mark_ghost(ink, size, from);
        bw_mark_route(ink, BW_ROUTE_RUN, from, at, size.radius * 0.6 + 1, size.radius + 1.5, true);
    }
    for (int s = 0; s < own->scheme->stages[own->stage].defenders; s++) {
        if (s != own->spot) bw_mark_mate(ink, bw_view_point(view, own->stations[s].at));
    }
    bw_ink_fill(ink, BW_ROLE_PAPER);
    bw_path_circle(ink, at, size.radius + 0.8);
    bw_ink_fill(ink, BW_ROLE_DEFENDER);
    bw_path_circle(ink, at, size.radius);
}

void bw_draw_own(bw_ink *ink, const bw_own *own, const bw_view *view) {
    bw_draw_paper(ink, view);
    bw_draw_field(ink, bw_field_at(own->scheme->field), own->scheme->units, view);
    bw_ink_clip(ink, view->box.x, view->box.y, view->box.width, view->box.height);
    if (own->stations) draw_men(ink, own, view);
    draw_ball(ink, bw_view_point(view, own->ball));
    bw_ink_unclip(ink);
    bw_draw_border(ink, own->scheme->units, view, false);
}
