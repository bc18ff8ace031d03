/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What is hardly meant (team/odd.h) on the command line: refused with its sentence, or kept with --keep-odd.
#ifndef BW_CLI_CARE_H
#define BW_CLI_CARE_H

#include "cli/options.h"
#include "team/odd.h"

/// The option's help, the same wherever it is taken.
extern const char bw_keep_odd_help[];

/// What is said of something odd: with --keep-odd that it is kept, and true; otherwise how to keep it, and
/// false.
bool bw_keep_odd(const bw_args *args, const bw_odd *odd);

#endif
