/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The danger of a shot drawn as a chart of depths: tints that darken toward the goal, contours with
/// their figures, and soundings. Figures are chances in a hundred.
#ifndef BW_DRAW_DANGER_H
#define BW_DRAW_DANGER_H

#include "draw/contour.h"
#include "draw/label.h"

enum { BW_MAX_LEVELS = 5 };

/// A surface of chances in [0, 1] and the levels to draw, rising, 1 to BW_MAX_LEVELS of them.
typedef struct bw_danger {
    bw_grid grid;
    int count;
    double levels[BW_MAX_LEVELS];
} bw_danger;

/// The surface with the house's levels: 2, 5, 10, 20 and 35 in a hundred.
bw_danger bw_danger_of(bw_grid grid);

/// Tints and contours, on the paper.
void bw_draw_depths(bw_ink *ink, const bw_danger *danger, const bw_view *view);

/// The contours' figures and the soundings, over them. Soundings stand between the graticule's crosses where no contour runs through
/// them and the placed labels leave them room; the labels' patches take the tint they stand on.
void bw_draw_figures(bw_ink *ink, const bw_danger *danger, bw_labels *labels, bw_units units,
                     const bw_view *view);

/// Both.
void bw_draw_danger(bw_ink *ink, const bw_danger *danger, bw_labels *labels, bw_units units,
                    const bw_view *view);

/// The same from (x, y) down, y its top, at most `width` points wide: the words below the tints where there
/// is no room beside them. Returns the height.
double bw_draw_danger_key_rows(bw_ink *ink, double x, double y, double width);

#endif
