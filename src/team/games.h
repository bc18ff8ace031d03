/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Games the breaks belong to.
#ifndef BW_TEAM_GAMES_H
#define BW_TEAM_GAMES_H

#include "core/base.h"
#include "team/date.h"
#include "team/team.h"

typedef struct bw_game {
    int64_t id; ///< number in the team file
    char date[BW_DATE_SIZE];
    char opponent[BW_NAME_SIZE];
    char field[BW_NAME_SIZE]; ///< where it was played, in the coach's words; may be empty
    bool fresh;               ///< bw_team_put_game() put it in: it was not there before
} bw_game;

/// Puts a game in, or finds the one of this day against this opponent; fills id and fresh. A field that is
/// given replaces the one that was known.
bw_status bw_team_put_game(bw_team *team, bw_game *game, bw_error *error);

/// All games by day. The caller frees *list.
bw_status bw_team_games(bw_team *team, bw_game **list, int *count, bw_error *error);

/// BW_NOT_FOUND when there is none of this number.
bw_status bw_team_game(bw_team *team, int64_t id, bw_game *game, bw_error *error);

#endif
