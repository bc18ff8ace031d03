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

enum { BW_SENT_PLACES = 1000 }; ///< that speak of one player, on the page

/// A player to look for or to forget.
typedef struct bw_sent_forget {
    int jersey;
    char name[BW_FULL_NAME_SIZE]; ///< to look for as well; may be empty
    uint32_t seen;                ///< of the list the coach looked at
    int places;                   ///< how many it had
    bool strike[BW_SENT_PLACES];
} bw_sent_forget;

/// Breaks in one request, and bytes of it.
enum { BW_SENT_MAX = 50, BW_SENT_ROOM = 64 * 1024 };

/// A request's breaks.
typedef struct bw_sent {
    int count;
    bw_sent_entry list[BW_SENT_MAX];
} bw_sent;

/// Number `index` of the tables of what is taken: "break", "game", "player", "spot", "sprint", "forget"; NULL past the
/// last.
const bw_form_table *bw_team_form_at(int index);

/// The readers of what is sent; *out is what they are named for: a bw_sent_entry, bw_sent, bw_game, bw_player,
/// bw_timed_split or bw_sent_forget.

/// A "break"; what is not said is unknown. The break alone is sound (core/entry.h).
bool bw_form_entry(const bw_form *form, void *out);

/// {"entries": [...]}
bool bw_form_sent(const bw_form *form, void *out);

bool bw_form_game(const bw_form *form, void *out);
bool bw_form_player(const bw_form *form, void *out);
bool bw_form_split(const bw_form *form, void *out);

/// {"jersey", "name", "seen": "99aa1fc0", "places": how many, "strike": [numbers from 1]}; only the jersey has
/// to be there.
bool bw_form_forget(const bw_form *form, void *out);

#endif
