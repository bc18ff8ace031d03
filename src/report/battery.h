/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Many breaks on all cores. Every trial is computed alone and lands in its own place, so the results
/// are the same for any number of threads. Memory stays below BW_BATTERY_BYTES.
#ifndef BW_REPORT_BATTERY_H
#define BW_REPORT_BATTERY_H

#include "trial/trial.h"
#include "trial/watcher.h"

/// Workspace of all threads together at most.
#define BW_BATTERY_BYTES ((size_t)48 << 20)

typedef struct bw_battery {
    const bw_ground *ground;
    bw_trial *trials; ///< their defs and efforts filled in; the heaviest first saves time
    int count;
    int threads;      ///< at most; 0: one for each core
    bw_watcher watch; ///< told after each trial
} bw_battery;

/// Runs all trials. BW_LIMIT: cancelled, the trials not done have that status too. BW_NO_ROOM: no
/// memory. A trial's own refusal is in its status and does not stop the others.
bw_status bw_battery_run(bw_battery *battery);

#endif
