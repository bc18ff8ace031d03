/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What can be kept but is hardly meant: a sprint faster than anybody has run, a spot no scheme has, a typo in
/// an opponent. One table (odd.c) says what is looked at, by which limit and from where; the command line,
/// sheets and the server ask it alike, refuse what it finds with its sentence, and keep it when they are told
/// to. What is in a file already is never looked at again.
#ifndef BW_TEAM_ODD_H
#define BW_TEAM_ODD_H

#include "team/known.h"
#include "team/splits.h"

typedef enum bw_odd_kind {
    BW_ODD_NOTHING,
    BW_ODD_OPPONENT,
    BW_ODD_GAME_AHEAD,
    BW_ODD_BREAK_AHEAD,
    BW_ODD_SPRINT_AHEAD,
    BW_ODD_SPRINT_FAST,
    BW_ODD_SPRINT_SLOW,
    BW_ODD_SPOT,
    BW_ODD_JERSEY,
    BW_ODD_SHOT,
    BW_ODD_STAGE,
    BW_ODD_COUNT
} bw_odd_kind;

/// A row of the table.
typedef struct bw_odd_rule {
    const char *id;
    const char *column;   ///< of the sheets, where it is told
    double limit;         ///< in `unit`; 0 where the limit is what the file holds
    const char *unit;     ///< "" without a number
    const char *sentence; ///< {value}: what was given; {near}: what it is held against
    const char *source;   ///< of the limit
} bw_odd_rule;

/// The row of a kind; NULL for BW_ODD_NOTHING and past the last.
const bw_odd_rule *bw_odd_rule_of(bw_odd_kind kind);

/// What was found.
typedef struct bw_odd {
    bw_odd_kind kind;
    char message[BW_MESSAGE_SIZE]; ///< a sentence without its stop: the value and what is odd in it
} bw_odd;

/// The first odd thing in each; false when there is none. A game is to be asked about before it is put in.
bool bw_odd_game(const bw_known *known, const bw_game *game, bw_odd *odd);
bool bw_odd_split(const bw_known *known, const bw_timed_split *split, bw_odd *odd);
bool bw_odd_player(const bw_known *known, const bw_player *player, bw_odd *odd);

/// `game` is the break's own, NULL without one.
bool bw_odd_entry(const bw_known *known, const bw_entry *entry, const bw_game *game, bw_odd *odd);

#endif
