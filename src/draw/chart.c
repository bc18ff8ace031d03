/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The lines of the field.
#include "draw/chart.h"

#include "draw/path.h"

static const double field_line = 0.9;

static void line(bw_ink *ink, const bw_view *view, bw_vec a, bw_vec b) {
    bw_path_segment(ink, bw_view_point(view, a), bw_view_point(view, b));
}

/// Small crosses at every fifth unit, and the goal line extended as a row of dots.
static void graticule(bw_ink *ink, bw_units units, const bw_view *view) {
    const double step = 5 * bw_unit_length(units), arm = 1.8;
    const bw_window *w = &view->window;
    bw_ink_stroke(ink, BW_ROLE_GRID, 0.5);
    for (int i = (int)bw_floor(w->left / step); i * step <= w->right; i++) {
        for (int j = (int)bw_floor(w->bottom / step); j * step <= w->top; j++) {
            const bw_vec p = bw_view_point(view, bw_v(i * step, j * step));
            bw_path_segment(ink, bw_v(p.x - arm, p.y), bw_v(p.x + arm, p.y));
            bw_path_segment(ink, bw_v(p.x, p.y - arm), bw_v(p.x, p.y + arm));
        }
    }
    bw_ink_dashed(ink, BW_ROLE_SOFT_LINE, 0.75, 0, 3);
    line(ink, view, bw_v(0, 0), bw_v(w->left, 0));
    line(ink, view, bw_v(0, 0), bw_v(w->right, 0));
}

static void arc(bw_ink *ink, const bw_view *view, double radius) {
    if (radius <= 0) return;
    bw_path_arc(ink, view->origin, radius * view->scale, 0, BW_PI);
}

static void boundaries(bw_ink *ink, const bw_field *f, const bw_view *view) {
    const double side = f->width / 2, yard = BW_METRES_PER_YARD;
    bw_ink_stroke(ink, BW_ROLE_LINE, field_line * 1.4);
    line(ink, view, bw_v(-side, -f->end_line), bw_v(side, -f->end_line));
    line(ink, view, bw_v(-side, -f->end_line), bw_v(-side, f->midline));
    line(ink, view, bw_v(side, -f->end_line), bw_v(side, f->midline));
    line(ink, view, bw_v(-side, f->midline), bw_v(side, f->midline));

    bw_ink_stroke(ink, BW_ROLE_LINE, field_line);
    if (f->restraining > 0)
        line(ink, view, bw_v(-side, f->restraining), bw_v(side, f->restraining));
    if (f->box_half > 0 && f->restraining > 0) {
        line(ink, view, bw_v(-f->box_half, -f->end_line), bw_v(-f->box_half, f->restraining));
        line(ink, view, bw_v(f->box_half, -f->end_line), bw_v(f->box_half, f->restraining));
    }
    if (f->alley_half > 0) { // ten yards either side of the midline
        const double from = f->midline - 10 * yard;
        line(ink, view, bw_v(-f->alley_half, from), bw_v(-f->alley_half, f->midline));
        line(ink, view, bw_v(f->alley_half, from), bw_v(f->alley_half, f->midline));
    }
    arc(ink, view, f->arc);
    arc(ink, view, f->fan);
}

/// The net runs back to a point: two sides and three strands.
static void goal(bw_ink *ink, const bw_field *f, const bw_view *view) {
    const double half = f->goal / 2;
    const bw_vec back = bw_v(0, -f->goal_depth);
    const bw_vec left = bw_v(-half, 0), right = bw_v(half, 0);
    bw_ink_stroke(ink, BW_ROLE_LINE, 0.5);
    for (int i = 1; i <= 3; i++) {
        line(ink, view, bw_lerp(left, back, i / 4.0), bw_lerp(right, back, i / 4.0));
    }
    bw_ink_stroke(ink, BW_ROLE_LINE, field_line);
    line(ink, view, left, back);
    line(ink, view, right, back);
    bw_ink_stroke(ink, BW_ROLE_LINE, 2);
    line(ink, view, left, right);
}

void bw_draw_paper(bw_ink *ink, const bw_view *view) {
    bw_ink_fill(ink, BW_ROLE_PAPER);
    bw_path_rect(ink, view->box.x, view->box.y, view->box.width, view->box.height);
}

void bw_draw_field(bw_ink *ink, const bw_field *field, bw_units units, const bw_view *view) {
    const bw_box *box = &view->box;
    bw_ink_clip(ink, box->x, box->y, box->width, box->height);
    bw_ink_fill(ink, BW_ROLE_LAND);
    bw_path_circle(ink, view->origin, field->crease * view->scale);
    graticule(ink, units, view);
    bw_ink_stroke(ink, BW_ROLE_LINE, field_line);
    bw_path_circle(ink, view->origin, field->crease * view->scale);
    arc(ink, view, field->goal_mouth);
    boundaries(ink, field, view);
    goal(ink, field, view);
    bw_ink_unclip(ink);
}
