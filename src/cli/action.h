/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A verb that does several things: its action found, its words counted, and options that would do nothing
/// there refused rather than passed over.
#ifndef BW_CLI_ACTION_H
#define BW_CLI_ACTION_H

#include "cli/options.h"

/// The `run` of such a verb.
int bw_action_run(const bw_args *args);

#endif
