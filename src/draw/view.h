/* SPDX-License-Identifier: GPL-3.0-or-later */
/// From metres on the field to points on the page: up-field is up, the goal is at the bottom, left on
/// paper is left for a defender looking out, and one metre is as long across as along.
#ifndef BW_DRAW_VIEW_H
#define BW_DRAW_VIEW_H

#include "core/field.h"
#include "core/scheme.h"

/// A rectangle of the page, points, y down.
typedef struct bw_box {
    double x, y, width, height;
} bw_box;

/// A rectangle of the field, metres.
typedef struct bw_window {
    double left, right, bottom, top;
} bw_window;

typedef struct bw_view {
    double scale;     ///< points per metre
    bw_vec origin;    ///< the page point of the centre of the goal line
    bw_box box;       ///< the page rectangle of the window
    bw_window window; ///< what is seen
} bw_view;

/// The view that shows `window` in a box `width` points wide with its top left corner at (x, y); the
/// box's height follows.
bw_view bw_view_fit(bw_window window, double x, double y, double width);

/// The width at which a window is `height` points tall.
double bw_view_width(bw_window window, double height);

bw_vec bw_view_point(const bw_view *view, bw_vec p);

/// The place on the field at a page point.
bw_vec bw_view_place(const bw_view *view, bw_vec point);

/// The smallest symmetric window with whole yards (metres) on its edges that shows every landmark,
/// home and pin of a scheme with room for their labels, and the goal; never past the field's edge by
/// more than two.
bw_window bw_window_unit(const bw_scheme *scheme);

/// The same, grown to show the sides of the goal area, and the restraining line where it is near.
bw_window bw_window_field(const bw_scheme *scheme);

#endif
