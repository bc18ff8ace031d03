/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The sea chart of a field: paper, graticule, the lines of the field's own profile, the goal with its
/// net, and a border that is a ladder of five-yard steps, so that the chart is its own ruler.
#ifndef BW_DRAW_CHART_H
#define BW_DRAW_CHART_H

#include "draw/ink.h"
#include "draw/view.h"

/// How far the ladder border reaches outside a view's box, points.
#define BW_BORDER 4.5

/// The view's box as blank chart paper. Danger tints, if any, go between this and the field.
void bw_draw_paper(bw_ink *ink, const bw_view *view);

/// Crease, graticule and field lines inside the view's box.
void bw_draw_field(bw_ink *ink, const bw_field *field, bw_units units, const bw_view *view);

/// The border round the box; with `figures`, distances from the centre line and the goal line are
/// written outside it at every tenth unit (9 pt, within 12 pt of the border on the left and below).
void bw_draw_border(bw_ink *ink, bw_units units, const bw_view *view, bool figures);

/// A scale bar of two steps of twenty, ten, five, two or one units with its figures, at `scale` points per metre, at
/// most 130 pt long where that can be, and beside it the up-field arrow with its word: all left of
/// `right`, feet at `y`, about 17 pt tall.
void bw_draw_scale(bw_ink *ink, bw_units units, double scale, double right, double y);

#endif
