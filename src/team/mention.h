/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Where a text speaks of a player: by his name in any order, case, spacing and spelling of accents, by a
/// part of it, by his initials, by his number. Whole words only: "asleep" and "Leeds" do not speak of Lee.
/// Not seen: nicknames, spelling mistakes, his number as a bare number, and a part of fewer than
/// five letters inside a longer word.
#ifndef BW_TEAM_MENTION_H
#define BW_TEAM_MENTION_H

#include "team/fold.h"
#include "team/roster.h"
#include <stdint.h>

typedef enum bw_mention_kind {
    BW_SAYS_NAME,     ///< every word of a full name of two or more, next to each other
    BW_SAYS_PART,     ///< some of its words, of three letters or more
    BW_SAYS_INITIALS, ///< "Q.Z.", "QZ"; "qz" when that is no common word
    BW_SAYS_NUMBER,   ///< the digits of "#12", "no 12", "nos. 7 and 12", "number 12"
    BW_SAYS_COUNT
} bw_mention_kind;

typedef struct bw_mention {
    size_t from, to; ///< bytes of the text
    bw_mention_kind kind;
} bw_mention;

enum {
    BW_CALLED_NAMES = 2,
    BW_CALLED_WORDS = 32, ///< of one name, at most: it has at most 63 bytes
    BW_CALLED_INITIALS = 1 + 2 * BW_CALLED_NAMES
};

/// What a player may be called.
typedef struct bw_called {
    int jersey;
    int names;                  ///< how many
    int words[BW_CALLED_NAMES]; ///< of each
    bw_word word[BW_CALLED_NAMES][BW_CALLED_WORDS];
    int initials;
    char letters[BW_CALLED_INITIALS][BW_FOLD_BYTES]; ///< folded, without points
} bw_called;

/// From his row; `name`, when it is not NULL, is a full name to look for as well, at most
/// BW_FULL_NAME_SIZE - 1 bytes of it.
void bw_called_of(const bw_player *player, const char *name, bw_called *called);

/// Whether two full names are the same words in some order.
bool bw_called_same(const char *name, const char *other);

/// All places of a text that speak of him, first to last; none overlap. Linear in the length. The caller
/// frees *list. False when there is no memory.
bool bw_mentions(const bw_called *called, const char *text, size_t length, bw_mention **list,
                 int *count);

/// What is written where something was struck. One byte, so that a text never grows past its room, no name
/// becomes empty, and it may stand in the id of a break.
#define BW_STRUCK '_'

/// Writes the text without the mentions that are to be struck to `out`, which has room for all of it and a
/// terminator. Every other byte stays.
void bw_strike(const char *text, size_t length, const bw_mention *list, const bool *struck,
               int count, char *out);

#endif
