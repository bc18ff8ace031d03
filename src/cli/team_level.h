/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A level with the team's own figures, kept in the team file by `team feedback --apply on`.
#ifndef BW_CLI_TEAM_LEVEL_H
#define BW_CLI_TEAM_LEVEL_H

#include "cli/options.h"
#include "core/level.h"
#include "team/team.h"

/// Keeps the figures of a level in the team file; NULL takes them out again.
bw_status bw_team_keep_level(bw_team *team, const bw_level *level, bw_error *error);

/// Puts the kept figures into *level; *own tells whether there were any.
bw_status bw_team_own_level(bw_team *team, bw_level *level, bool *own, bw_error *error);

/// For --team FILE of another verb: the level with the team's own figures, which live as long as the
/// program. Says which they are. BW_EXIT_OK, or the code after saying what is wrong.
int bw_load_team_level(const bw_args *args, const bw_level **level);

#endif
