/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Where a tuned scheme is written: a file of its own, never over another.
#ifndef BW_CLI_TUNE_SAVE_H
#define BW_CLI_TUNE_SAVE_H

#include "cli/options.h"
#include "report/tune_report.h"

enum { BW_TUNE_PATH = 4096 };

/// Writes the tuned scheme, with a line in its notes of what changed and why, to --output or to
/// "NAME-tuned.json", "NAME-tuned-2.json" ... beside where the program runs: the first that is free or
/// holds the very same bytes. `path` gets where. BW_EXIT_OK, or the code after saying what is wrong:
/// --output names a file that is there already with other bytes.
int bw_tune_save(const bw_args *args, const bw_tune_report *report, char path[BW_TUNE_PATH]);

#endif
