/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Contours of a sampled surface: closed loops round everything at or above a level, by marching
/// squares (W. Lorensen, H. Cline 1987 in two dimensions), saddles decided by the cell's mean. The
/// surface comes as plain numbers, so that this file knows nothing of shots.
#ifndef BW_DRAW_CONTOUR_H
#define BW_DRAW_CONTOUR_H

#include "draw/ink.h"
#include "draw/view.h"

enum { BW_GRID_SIDE = 96 };

/// value[row * columns + column] at (left + column cell, bottom + row cell), metres. At least 2 by 2,
/// at most BW_GRID_SIDE by BW_GRID_SIDE; every value finite.
typedef struct bw_grid {
    double left, bottom, cell;
    int columns, rows;
    const double *value;
} bw_grid;

/// The surface at p, bilinear, held at its edge values outside.
double bw_grid_value(const bw_grid *grid, bw_vec p);

/// Appends to the path being built the loops round {value >= level}, the grid's edge included: to fill.
void bw_contour_area(bw_ink *ink, const bw_grid *grid, double level, const bw_view *view);

/// The same without the stretches that run along the grid's edge: to stroke.
void bw_contour_line(bw_ink *ink, const bw_grid *grid, double level, const bw_view *view);

#endif
