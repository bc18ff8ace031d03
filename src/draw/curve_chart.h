/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The chart of worth over time: typical and best play, the late men's arrivals as flags, the
/// plateau, and below the seconds a ladder that shows the time bought and the seconds missing.
#ifndef BW_DRAW_CURVE_CHART_H
#define BW_DRAW_CURVE_CHART_H

#include "core/curve.h"
#include "draw/ink.h"
#include "draw/view.h"

/// Draws `curve` into `box`, at least 320 by 170 points. `late` names the curve's late men, in order
/// ("first midfielder"). Labels are 9 pt or larger; the lines differ by dash and marks.
void bw_draw_curve(bw_ink *ink, const bw_curve *curve, const char *const *late, bw_box box);

/// Goals in a hundred at the top of the chart's scale: a whole ten, at least 20.
int bw_curve_top(const bw_curve *curve);

#endif
