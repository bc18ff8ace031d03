/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The team file: one SQLite database that holds all a team knows of itself (docs/team.md). Opened,
/// brought up to date and looked over here; each table has its own header. A handle serves one thread
/// at a time; several handles and several programs may have the same file open.
///
/// Every function that can fail fills *error with one sentence: BW_FILE when the file or disk failed
/// or another program holds it, BW_BAD_INPUT when what is asked or what the file holds is wrong,
/// BW_NOT_FOUND when there is no such thing, BW_LIMIT or BW_NO_ROOM when there is too much of it.
/// Nothing is half done: each call changes all it was asked to, or nothing.
#ifndef BW_TEAM_TEAM_H
#define BW_TEAM_TEAM_H

#include "scheme/error.h"
#include <stdint.h>

typedef struct bw_team bw_team;

typedef enum bw_team_mode {
    BW_TEAM_READ, ///< changes nothing; a file one may not write to will do
    BW_TEAM_WRITE
} bw_team_mode;

/// Makes a new team file at `path`, whole or not at all; a file that is there already is refused.
bw_status bw_team_create(const char *path, bw_error *error);

/// Opens a team file: looks at whose it is before anything else, refuses one that is damaged, foreign or
/// newer than this program, and brings an older one up to date (BW_TEAM_WRITE). After a crash the last
/// whole state is there. *team is NULL on failure.
bw_status bw_team_open(const char *path, bw_team_mode mode, bw_team **team, bw_error *error);

/// NULL is fine.
void bw_team_close(bw_team *team);

/// The path it was opened by.
const char *bw_team_path(const bw_team *team);

/// Looks at everything in the file: the pages, the indexes, that every reference leads somewhere.
/// bw_team_open() makes the quick check; this one takes longer.
bw_status bw_team_verify(bw_team *team, bw_error *error);

/// Several calls as one: all that is done between begin and a good end is kept, or none of it. Waits up
/// to five seconds for another writer. May be nested; the outermost end counts.
bw_status bw_team_begin(bw_team *team, bw_error *error);

/// Ends what begin began: keeps it when `status` is BW_OK, otherwise takes it back and leaves *error
/// alone. Returns BW_OK when it is kept.
bw_status bw_team_end(bw_team *team, bw_status status, bw_error *error);

#endif
