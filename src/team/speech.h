/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Inside src/team only: one text of a team file, and who hears it.
#ifndef BW_TEAM_SPEECH_H
#define BW_TEAM_SPEECH_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

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

#endif
