/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The frame of a chart of worth over time: its scale, seconds and axes. Private to the curve charts.
#ifndef BW_DRAW_CURVE_FRAME_H
#define BW_DRAW_CURVE_FRAME_H

#include "core/curve.h"
#include "draw/ink.h"
#include "draw/view.h"

#define BW_CURVE_LEFT 24   ///< points left of the plot: figures of the worth
#define BW_CURVE_RIGHT 112 ///< right of it: the lines' own names
#define BW_CURVE_SMALL 9   ///< type of the scale and its words

typedef struct bw_curve_frame {
    bw_box plot;
    double top; ///< goals in a break at the upper edge
} bw_curve_frame;

double bw_curve_across(const bw_curve_frame *f, double seconds);
double bw_curve_bottom(const bw_curve_frame *f);
bw_vec bw_curve_spot(const bw_curve_frame *f, double seconds, double worth);

/// Worth at any moment: straight between whole seconds.
double bw_curve_between(const double *worth, double seconds);

/// The grid with its figures and seconds; the axes; what the scale counts.
void bw_curve_scale(bw_ink *ink, const bw_curve_frame *f);
void bw_curve_axes(bw_ink *ink, const bw_curve_frame *f);
void bw_curve_caption(bw_ink *ink, const bw_curve_frame *f);

/// Words in the scale's type.
void bw_curve_words(bw_ink *ink, bw_weight weight, bw_align align, double x, double y,
                    const char *text);

/// The line through all whole seconds, as part of the path being built.
void bw_curve_trace(bw_ink *ink, const bw_curve_frame *f, const double *worth);

/// Two standard errors either side of each whole second.
void bw_curve_errors(bw_ink *ink, const bw_curve_frame *f, const double *worth,
                     const double *error);

#endif
