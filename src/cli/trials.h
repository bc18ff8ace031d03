/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Running breaks for a verb: progress on a terminal, and Ctrl-C.
#ifndef BW_CLI_TRIALS_H
#define BW_CLI_TRIALS_H

#include "cli/break_options.h"
#include "report/battery.h"
#include "trial/weak_rotations.h"

/// Makes the ground a request is played on. BW_EXIT_OK, or the code after saying what is wrong.
int bw_load_ground(const bw_scheme *scheme, const bw_break_request *request, bw_ground *ground);

/// Runs the battery on all cores. BW_EXIT_OK, 130 when interrupted, or the code after saying why.
/// The first trial must have a result; the others may be refused.
int bw_run_trials(bw_battery *battery);

/// The scheme's weakest rotations, of one stage or (-1) of all. A stage without a result has none. Codes
/// as bw_run_battery.
int bw_find_weak(const bw_scheme *scheme, int stage, uint64_t seed, bw_weak_list *weak);

#endif
