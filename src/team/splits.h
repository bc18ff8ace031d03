/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Timed sprints: what a player's legs are worked out from.
#ifndef BW_TEAM_SPLITS_H
#define BW_TEAM_SPLITS_H

#include "team/date.h"
#include "team/team.h"

typedef struct bw_timed_split {
    int jersey;
    char date[BW_DATE_SIZE];
    double distance; ///< from the start line, m, [1, 200]
    double seconds;  ///< on the clock, [0.3, 60]
    char clock
        [8]; ///< when the clock started: "move" (his first movement), "signal" (whistle or gun,
             ///< so his reaction is in it) or "gate" (he tripped a light gate at the line)
} bw_timed_split;

/// Adds splits, all or none, to the millimetre and the millisecond; one that is there already is not added
/// again. *added may be NULL.
bw_status bw_team_add_splits(bw_team *team, const bw_timed_split *splits, int count, int *added,
                             bw_error *error);

/// A player's splits, or everyone's when jersey is negative: by player, day, and distance. The caller
/// frees *list.
bw_status bw_team_splits(bw_team *team, int jersey, bw_timed_split **list, int *count,
                         bw_error *error);

/// Whether `clock` is the id of a bw_clock.
bool bw_split_clock_good(const char *clock);

#endif
