/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A player's legs from the sprints in the team file.
#ifndef BW_TEAM_LEGS_H
#define BW_TEAM_LEGS_H

#include "core/scheme.h"
#include "core/sprint.h"
#include "core/text.h"
#include "team/splits.h"

typedef struct bw_player_legs {
    int jersey;
    char date[BW_DATE_SIZE]; ///< of the run that was fitted; "" without splits
    bw_clock clock;
    bw_sprint fit; ///< verdict BW_SPRINT_FEW without splits
} bw_player_legs;

/// Fits the newest day on which a player ran splits that can be fitted (one way of starting the clock at a
/// time); when there is none, says why for the newest day. `splits` are bw_team_splits(); `reaction` is
/// what a signal start is taken to cost, seconds.
bw_player_legs bw_legs_of(const bw_timed_split *splits, int count, int jersey, double reaction);

/// "top speed 8.1 yd/s (give or take 0.2), start 0.95 s (give or take 0.05), 20 yd in 3.25 s from his first
/// step; 6 splits, 2026-03-02", or why there are none.
void bw_say_legs(const bw_player_legs *legs, bw_units units, bw_text *out);

#endif
