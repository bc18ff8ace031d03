/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A break on the command line: "6v4 save --seconds 7 --shot 4,9 --out TL".
#ifndef BW_CLI_LOG_ENTRY_H
#define BW_CLI_LOG_ENTRY_H

#include "cli/options.h"
#include "core/entry.h"
#include "team/known.h"

/// Takes the words from operand `first` on ("6v4", an outcome; either may be missing when `any`) and the
/// options that were given into an entry. False when something is wrong, which has been said.
bool bw_load_entry(const bw_args *args, int first, bool any, bw_entry *entry);

/// The game of --game, or of --against and --date, which is put into the file when it is new (and said);
/// game->id is 0 when neither is given. An opponent near one that is known is refused unless --keep-odd.
/// BW_EXIT_OK, or the code after saying what is wrong.
int bw_load_game(const bw_args *args, bw_team *team, const bw_known *known, bw_game *game);

/// An id of this machine's making that no other break has.
bool bw_make_client(bw_entry *entry);

#endif
