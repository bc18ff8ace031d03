/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The chart of the hand-out: one background for all its pictures, and the marks that stand on it. The
/// page and its program see the field through the same window.
#ifndef BW_DRAW_HAND_CHART_H
#define BW_DRAW_HAND_CHART_H

#include "core/scheme.h"
#include "draw/danger.h"
#include "draw/ink.h"
#include "draw/marks.h"
#include "draw/view.h"

/// Width of the chart with its border, units of the picture: about a CSS pixel each on a small phone.
#define BW_HAND_WIDTH 320.0

/// How the hand-out sees a scheme's field; the picture is BW_HAND_WIDTH wide and bw_hand_height tall.
bw_view bw_hand_view(const bw_scheme *scheme);
double bw_hand_height(const bw_view *view);

/// Sizes of its marks.
bw_mark_size bw_hand_marks(void);

/// Paper, danger (NULL: none), field, ball places, border, scale.
void bw_draw_hand_chart(bw_ink *ink, const bw_scheme *scheme, const bw_danger *danger);

#endif
