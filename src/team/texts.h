/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Inside src/team only: every text of a team file that a coach may have written, one after the other, and
/// put back when it was changed. docs/team.md says table by table what is gone over.
#ifndef BW_TEAM_TEXTS_H
#define BW_TEAM_TEXTS_H

#include "team/team.h"
#include <stdbool.h>
#include <stddef.h>

typedef struct bw_speech {
    const char
        *where; ///< "break 3, note"; the same for the same text of several revisions of a scheme
    int64_t revision; ///< of a scheme, where it stands in one; otherwise 0
    const char *text;
    size_t length;
    bool code;       ///< an id made of words, where small letters are no initials
    bool names_only; ///< random letters or codes, where only names are looked for
} bw_speech;

/// Hears one text. True when it is to be changed to what was written to `out`, which is no longer than it
/// was.
typedef bool (*bw_hear)(void *self, const bw_speech *speech, char *out);

/// Goes over all texts but those in rows that are this player's own. What was heard is changed as it said;
/// where two things may not be called the same, the second gets a number. For changes, call it between
/// bw_team_begin() and bw_team_end().
bw_status bw_team_texts(bw_team *team, int jersey, bw_hear hear, void *self, bw_error *error);

#endif
