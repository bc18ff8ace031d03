/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What a team file holds, as JSON.
#ifndef BW_REPORT_TEAM_JSON_H
#define BW_REPORT_TEAM_JSON_H

#include "core/entry.h"
#include "core/json.h"
#include "core/scheme.h"
#include "team/games.h"
#include "team/places.h"
#include "team/roster.h"

void bw_json_player(bw_json *json, const bw_player *player);

/// A break, its places in this unit and named for it; times as ISO 8601; what is not known is left out.
/// `game` adds the day and the opponent; NULL or id 0: not wanted.
void bw_json_entry(bw_json *json, const bw_entry *entry, const bw_game *game, bw_units units);

/// "seen", and "places" that speak of a player; with `strike`, one for each, whether each was struck.
void bw_json_places(bw_json *json, const bw_places *places, const bool *strike);

/// A moment in UTC; nothing when it is 0.
void bw_json_time(bw_json *json, const char *key, int64_t time);

#endif
