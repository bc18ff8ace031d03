/* SPDX-License-Identifier: GPL-3.0-or-later */
/// One break tested: everything the text, the JSON and the pages say of it, in one block, so that all
/// three carry the same numbers.
#ifndef BW_TRIAL_TRIAL_H
#define BW_TRIAL_TRIAL_H

#include "core/curve.h"
#include "core/late.h"
#include "core/whatif.h"

/// A defender out of place at the end of a ply.
typedef struct bw_straggler {
    int man;        ///< defender, from 0: those in first, then the late men
    int stage;      ///< defenders in at that moment
    int job;        ///< his spot in that stage, or his man when `matched`; -1 while he is not in
    bool matched;   ///< numbers are even
    double metres;  ///< from where he belongs
    double seconds; ///< until he could be there and stay
} bw_straggler;

/// How thoroughly a trial is run.
typedef struct bw_effort {
    int seconds;        ///< the answer is for this many seconds, 1 to 10; default 4
    bool with_weak;     ///< rank the weakest rotations too; default true
    bw_curve_def curve; ///< depth, budget, roll-outs, margin
    int weak_most;      ///< only so many of the rotations most used; 0, the default: all there are
} bw_effort;

bw_effort bw_effort_default(void);

/// The lighter effort for each break of the standard set.
bw_effort bw_effort_standard(void);

typedef struct bw_trial {
    bw_break_def def; ///< what was asked
    bw_effort effort; ///< and how thoroughly
    bw_status status; ///< BW_OK, or why there are no results
    char why[160];    ///< one sentence then
    bw_break begun;
    bw_curve curve;
    bw_whatif whatif;                       ///< count 0 when not asked for
    bw_straggler straggler[BW_DEEPEST + 1]; ///< the latest man when each ply of the answer ends
} bw_trial;

/// Bytes of workspace for bw_trial_run.
size_t bw_trial_size(void);

/// Runs trial->def with trial->effort. The result depends on these and the ground alone. `memory`
/// holds bw_trial_size() bytes.
bw_status bw_trial_run(const bw_ground *ground, void *memory, size_t size, bw_trial *trial);

/// What of a trial is being made, in this order.
typedef enum bw_trial_part {
    BW_TRIAL_TYPICAL, ///< bundles of roll-outs
    BW_TRIAL_EVEN,    ///< bundles of roll-outs with numbers even
    BW_TRIAL_BEST,    ///< seconds of the curve, the most time first
    BW_TRIAL_WEAK,    ///< rotations looked into
    BW_TRIAL_DONE
} bw_trial_part;

typedef struct bw_trial_progress {
    bw_trial_part part;
    int done, of; ///< of this part
} bw_trial_progress;

/// The same trial piece by piece, for a caller that shows progress or may cancel. ground, memory and *trial
/// stay where they are until it is done.
bw_status bw_trial_begin(const bw_ground *ground, void *memory, size_t size, bw_trial *trial);

/// Makes the next piece and tells how far it is. A status other than BW_OK ends it and is in
/// trial->status.
bw_status bw_trial_step(void *memory, bw_trial_progress *progress);

/// The defender latest to his place when the ball is with attacker `holder` in state `s`; his seconds
/// are 0 when nobody is late.
bw_straggler bw_latest(const bw_break *b, const bw_state *s, int holder);

#endif
