/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Who is on the team. A player is his jersey number; initials if the coach wants them; a full name only
/// where the coach turned full names on (settings.h).
#ifndef BW_TEAM_ROSTER_H
#define BW_TEAM_ROSTER_H

#include "core/entry.h"
#include "team/team.h"
#include <stdbool.h>

enum {
    BW_MAX_PLAYER_SPOTS = 8, ///< spots one man can play
    BW_INITIALS_SIZE =
        25, ///< bytes, terminator included: four letters of any alphabet, with points
    BW_FULL_NAME_SIZE = 64
};

/// A spot he can play.
typedef struct bw_player_spot {
    char spot[4]; ///< its code in the scheme, 1 to 3 letters or digits
    bool fixed;   ///< the coach has settled that he plays it: nobody is reckoned there instead
} bw_player_spot;

typedef struct bw_player {
    int jersey; ///< 0 to BW_MAX_JERSEY, his own
    char initials[BW_INITIALS_SIZE];
    char name[BW_FULL_NAME_SIZE]; ///< "" unless full names are on
    int spot_count;
    bw_player_spot spots[BW_MAX_PLAYER_SPOTS]; ///< best first
} bw_player;

/// Puts a player on the roster, or in place of what was known of this jersey number. What he ran and
/// answered stays his.
bw_status bw_team_put_player(bw_team *team, const bw_player *player, bw_error *error);

/// All players by number. The caller frees *list.
bw_status bw_team_players(bw_team *team, bw_player **list, int *count, bw_error *error);

/// BW_NOT_FOUND when nobody wears it.
bw_status bw_team_player(bw_team *team, int jersey, bw_player *player, bw_error *error);

#endif
