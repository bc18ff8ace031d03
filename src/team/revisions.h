/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Schemes with every revision that was saved: the canonical document, when, and why. A scheme is known
/// by its name; nothing that was saved is changed or lost by saving again.
#ifndef BW_TEAM_REVISIONS_H
#define BW_TEAM_REVISIONS_H

#include "core/entry.h"
#include "core/scheme.h"
#include "team/team.h"

enum { BW_REVISION_HASH_SIZE = 17 };

typedef struct bw_revision {
    int64_t id; ///< number in the team file, rising
    char scheme[BW_NAME_SIZE];
    int64_t time;                     ///< UTC seconds; 0: unknown
    char hash[BW_REVISION_HASH_SIZE]; ///< of the document: 16 hex digits of FNV-1a, against damage
    char note[BW_NOTE_SIZE];
} bw_revision;

/// Saves a scheme as a new revision, unless the newest one of this name is the very same document; its
/// number goes to *revision either way. *fresh may be NULL.
bw_status bw_team_save_scheme(bw_team *team, const bw_scheme *scheme, int64_t time,
                              const char *note, int64_t *revision, bool *fresh, bw_error *error);

/// All revisions, oldest first. The caller frees *list.
bw_status bw_team_revisions(bw_team *team, bw_revision **list, int *count, bw_error *error);

/// The scheme of a revision, or of the newest one when it is 0. *about may be NULL. BW_NOT_FOUND when
/// there is none.
bw_status bw_team_scheme(bw_team *team, int64_t revision, bw_scheme *scheme, bw_revision *about,
                         bw_error *error);

/// Puts another document in place of a saved one, and its hash: for words that must go from the file for good
/// (forget.h), nothing else. BW_BAD_INPUT when it would not be read back.
bw_status bw_team_rewrite(bw_team *team, int64_t revision, const bw_scheme *scheme,
                          bw_error *error);

#endif
