/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Talk: one sentence on standard error, and the exit code a status turns into.
#ifndef BW_CLI_SAY_H
#define BW_CLI_SAY_H

#include "cli/command.h"
#include "scheme/error.h"

/// "breakwater: error: ..." on standard error, printf-style.
void bw_say_error(const char *format, ...) __attribute__((format(printf, 1, 2)));

/// Plain talk on standard error, printf-style.
void bw_say(const char *format, ...) __attribute__((format(printf, 1, 2)));

/// What is wrong with the command line, and where help is. Returns BW_EXIT_USAGE.
int bw_usage(const bw_command *verb, const char *format, ...) __attribute__((format(printf, 2, 3)));

/// A refused document, with its place, and the exit code that goes with it.
int bw_say_refusal(const char *path, const bw_error *error);

/// Says that there is not enough memory. Returns BW_EXIT_LIMIT.
int bw_say_no_memory(void);

int bw_exit_code(bw_status status);

#endif
