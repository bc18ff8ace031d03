/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Ctrl-C (an interrupt) and a polite request to end: while watched they only raise a flag, and the work stops at the
/// next place where nothing is half done.
#ifndef BW_CLI_STOP_H
#define BW_CLI_STOP_H

#include <stdatomic.h>

/// Exit code of an interrupted run.
enum { BW_EXIT_INTERRUPTED = 130 };

/// Watches SIGINT and SIGTERM until as many calls of bw_stop_unwatch have followed. Who started us to
/// run on through a signal meant it: an ignored one stays ignored.
void bw_stop_watch(void);
void bw_stop_unwatch(void);

/// True once one of them has come.
atomic_bool *bw_stop_flag(void);

#endif
