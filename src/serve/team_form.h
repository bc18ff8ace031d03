/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What the page sends for the team file, out of JSON: the members that report/team_json.h writes.
#ifndef BW_SERVE_TEAM_FORM_H
#define BW_SERVE_TEAM_FORM_H

#include "serve/form.h"
#include "team/breaks.h"
#include "team/games.h"
#include "team/roster.h"
#include "team/splits.h"

/// A break as it is sent: its game by number, or by day and opponent, so that one of a game nobody has put
/// in yet can be logged too.
typedef struct bw_sent_entry {
    bw_entry entry;
    bool named;   ///< by `game`, which is then to be put in or found
    bw_game game; ///< day, opponent, field
} bw_sent_entry;

/// {"id", "time", "game": number or {"date", "opponent", "field"}, "offence", "defence", "outcome",
/// "seconds", "passes", "shot_x_m", "shot_y_m", "out": [...], "stage", "revision", "note", and "number",
/// which is not looked at}. What is not there is unknown.
bool bw_form_entry(const bw_form *form, bw_sent_entry *out);

/// {"date", "opponent", "field"}
bool bw_form_game(const bw_form *form, bw_game *out);

/// {"jersey", "initials", "name", "spots": [{"spot", "fixed"}]}
bool bw_form_player(const bw_form *form, bw_player *out);

/// {"jersey", "date", "distance_m", "seconds", "clock"}
bool bw_form_split(const bw_form *form, bw_timed_split *out);

#endif
