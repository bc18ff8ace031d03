/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A player's legs from the sprints in the team file.
#ifndef BW_TEAM_LEGS_H
#define BW_TEAM_LEGS_H

#include "core/sprint.h"
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

#endif
