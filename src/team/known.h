/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What a team file knows that new values are held against (odd.h): its games, its roster, the spots of every
/// scheme revision, the field, and the day.
#ifndef BW_TEAM_KNOWN_H
#define BW_TEAM_KNOWN_H

#include "core/field.h"
#include "team/games.h"
#include "team/roster.h"

enum { BW_KNOWN_SPOTS = 64 };

typedef struct bw_known {
    int64_t today; ///< days since 1970; 0: no clock to be believed
    int game_count;
    bw_game *games; ///< by day
    int player_count;
    bool jersey[BW_MAX_JERSEY + 1];
    const bw_field *field; ///< of the newest scheme; NULL without one
    int spot_count;        ///< 0 without a scheme
    char spot[BW_KNOWN_SPOTS][BW_ID_SIZE];
} bw_known;

/// Gathers it. `now` is seconds since 1970; a clock that stands before this program was made is not believed.
/// BW_OK, or *known is NULL. Dropped by bw_known_drop().
bw_status bw_known_load(bw_team *team, int64_t now, bw_known **known, bw_error *error);
void bw_known_drop(bw_known *known); ///< NULL is fine

/// A game put in since. BW_NO_ROOM when there is no memory.
bw_status bw_known_add_game(bw_known *known, const bw_game *game);

#endif
