/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Soundings round a home: what it costs to stand elsewhere, place by place, as depths on a sea chart.
/// Flat water, where a coach need not measure, is tinted and outlined.
#ifndef BW_DRAW_SOUNDINGS_H
#define BW_DRAW_SOUNDINGS_H

#include "draw/ink.h"
#include "draw/marks.h"
#include "draw/view.h"

enum { BW_SOUNDINGS_STEPS = 3, BW_SOUNDINGS_SIDE = 2 * BW_SOUNDINGS_STEPS + 1 };

typedef struct bw_soundings {
    bw_vec home; ///< in the middle, m
    double step; ///< metres from one to the next
    double flat; ///< goals: costs up to it are chance
    /// Goals a break more than at home, by step out (0: nearest the goal) and step to the right; a place
    /// that cannot be had has `there` false.
    double cost[BW_SOUNDINGS_SIDE][BW_SOUNDINGS_SIDE];
    bool there[BW_SOUNDINGS_SIDE][BW_SOUNDINGS_SIDE];
} bw_soundings;

/// Everything round the home and half a step more on every side.
bw_window bw_soundings_window(const bw_soundings *s);

/// Paper, flat water, the field's lines, the figures (goals in 100 breaks), the man's own mark and the
/// border, in a view of that window.
void bw_draw_soundings(bw_ink *ink, const bw_soundings *s, const bw_field *field, bw_units units,
                       const char *code, const bw_view *view);

#endif
