/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Breaks as people read them, a line each.
#ifndef BW_CLI_LOG_LIST_H
#define BW_CLI_LOG_LIST_H

#include "cli/options.h"
#include "core/entry.h"

/// One break as the result of an action. Returns the exit code.
int bw_print_entry(const bw_args *args, const bw_entry *entry);

/// The action `log FILE list`.
int bw_log_list(const bw_args *args);

#endif
