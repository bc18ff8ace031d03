/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Long work while it runs: one line on a terminal that says how far it is, and Ctrl-C obeyed.
#ifndef BW_CLI_PROGRESS_H
#define BW_CLI_PROGRESS_H

#include "cli/stop.h"
#include "trial/watcher.h"

/// Shows `doing`, "Testing breaks", while signals are watched. The watch goes to the work, which counts
/// on the same line: "Testing breaks: 3 of 72". Off a terminal nothing is shown. One may run within
/// another and has the line until it ends.
bw_watcher bw_progress_begin(const char *doing);

/// The next part of the same work.
void bw_progress_go_on(const char *doing);

/// Clears the line and ends the watching. True once the user has asked to end.
bool bw_progress_end(void);

/// Says that the work was interrupted; the exit code of that.
int bw_progress_interrupted(void);

#endif
