/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A player's own chart for one ball place with the words beside it: of his page in the packet, and of
/// the quiz's key.
#ifndef BW_REPORT_OWN_CELL_H
#define BW_REPORT_OWN_CELL_H

#include "core/shape.h"
#include "draw/ink.h"

typedef struct bw_own_cell {
    const bw_scheme *scheme;
    int stage, spot;
    bw_vec ball;
    bw_station stations[BW_MAX_SPOTS];
    char title[3 * BW_NAME_SIZE]; ///< "Ball at top centre:"
    char job[4 * BW_NAME_SIZE];   ///< "have the crease, call “port low”."
    char place[BW_NAME_SIZE];     ///< "in the middle, 4.0 yd out"
} bw_own_cell;

/// `plan` is the stage's.
void bw_own_cell_fill(const bw_scheme *scheme, const bw_plan *plan, int stage, int spot,
                      int landmark, bw_own_cell *cell);

/// Draws it `width` points wide with its top left corner at (x, y); returns its height. With ink NULL
/// only measures.
double bw_own_cell_put(bw_ink *ink, const bw_own_cell *cell, double x, double y, double width);

/// Points per metre of its chart.
double bw_own_cell_scale(const bw_scheme *scheme);

#endif
