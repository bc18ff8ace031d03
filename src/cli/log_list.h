/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Breaks as people read them, a line each.
#ifndef BW_CLI_LOG_LIST_H
#define BW_CLI_LOG_LIST_H

#include "cli/options.h"
#include "core/entry.h"
#include "team/games.h"

/// One break with its game (id 0: none) as the result of an action that has changed the file already; `done`
/// says how: "kept". That it cannot be written is said, and is no failure. Returns the exit code.
int bw_print_entry(const bw_args *args, const bw_entry *entry, const bw_game *game,
                   const char *done);

/// The action `log FILE list`.
int bw_log_list(const bw_args *args);

#endif
