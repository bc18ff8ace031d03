/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Copies of a team file that are whole, taken while others read and write it, and put back.
#ifndef BW_TEAM_BACKUP_H
#define BW_TEAM_BACKUP_H

#include "team/team.h"
#include <stdbool.h>

/// A copy at `path`, one file, looked over before it gets that name. A file that is there already is
/// replaced only with `force`.
bw_status bw_team_backup(bw_team *team, const char *path, bool force, bw_error *error);

/// Puts the backup in place of the team file at `path`, or makes that file. The backup is looked over
/// first. A file that is there is replaced only with `force`: as one change, which other programs that
/// have it open see whole; one too damaged to open is replaced together with the log beside it.
bw_status bw_team_restore(const char *backup, const char *path, bool force, bw_error *error);

#endif
