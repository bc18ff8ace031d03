/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Two curves of worth on one chart, A and B. A's lines are solid, B's dashed; typical is thick with its
/// errors, best thin: told apart without colour.
#ifndef BW_DRAW_CURVE_PAIR_H
#define BW_DRAW_CURVE_PAIR_H

#include "core/curve.h"
#include "draw/ink.h"
#include "draw/view.h"

/// Draws both into `box`, at least 320 by 170 points.
void bw_draw_curve_pair(bw_ink *ink, const bw_curve *a, const bw_curve *b, bw_box box);

#endif
