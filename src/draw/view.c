/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Windows and their scale.
#include "draw/view.h"

bw_view bw_view_fit(bw_window window, double x, double y, double width) {
    const double scale = width / (window.right - window.left);
    return (bw_view){.scale = scale,
                     .origin = bw_v(x - window.left * scale, y + window.top * scale),
                     .box = {x, y, width, (window.top - window.bottom) * scale},
                     .window = window};
}

double bw_view_width(bw_window window, double height) {
    return height * (window.right - window.left) / (window.top - window.bottom);
}

bw_vec bw_view_point(const bw_view *view, bw_vec p) {
    return bw_v(view->origin.x + p.x * view->scale, view->origin.y - p.y * view->scale);
}

bw_vec bw_view_place(const bw_view *view, bw_vec point) {
    return bw_v((point.x - view->origin.x) / view->scale, (view->origin.y - point.y) / view->scale);
}

/// The restraining line is shown when it is no farther than this beyond the highest place, metres.
static const double near_by = 8;

static void include(bw_window *w, bw_vec p) {
    w->right = bw_max(w->right, bw_abs(p.x));
    w->bottom = bw_min(w->bottom, p.y);
    w->top = bw_max(w->top, p.y);
}

/// Rounded outward to whole units, with margins, held near the field.
static bw_window settle(const bw_scheme *scheme, bw_window w, double side, double below,
                        double above) {
    const bw_field *field = bw_field_at(scheme->field);
    const double unit = bw_unit_length(scheme->units);
    const double right = bw_min(w.right + side * unit, field->width / 2 + 2 * unit);
    const double bottom = bw_max(w.bottom - below * unit, -field->end_line - 2 * unit);
    const double top = bw_min(w.top + above * unit, field->midline + 2 * unit);
    w.right = -bw_floor(-right / unit) * unit;
    w.left = -w.right;
    w.bottom = bw_floor(bottom / unit) * unit;
    w.top = -bw_floor(-top / unit) * unit;
    return w;
}

static bw_window around(const bw_scheme *scheme) {
    const bw_field *field = bw_field_at(scheme->field);
    bw_window w = {0, 0, -field->goal_depth, 0};
    for (int i = 0; i < scheme->landmark_count; i++) {
        include(&w, scheme->landmarks[i].at);
    }
    for (int i = 0; i < scheme->stage_count; i++) {
        const bw_stage *stage = &scheme->stages[i];
        for (int s = 0; s < stage->defenders; s++) {
            include(&w, stage->spots[s].home);
        }
        for (int l = 0; l < scheme->landmark_count; l++) {
            for (int s = 0; s < stage->defenders; s++) {
                if (stage->pinned[l][s]) include(&w, stage->pins[l][s]);
            }
        }
    }
    return w;
}

bw_window bw_window_unit(const bw_scheme *scheme) {
    return settle(scheme, around(scheme), 2, 2, 2);
}

bw_window bw_window_field(const bw_scheme *scheme) {
    const bw_field *field = bw_field_at(scheme->field);
    bw_window w = around(scheme);
    include(&w, bw_v(field->box_half, 0));
    if (field->restraining < w.top + near_by) include(&w, bw_v(0, field->restraining));
    return settle(scheme, w, 2, 2, 2);
}
