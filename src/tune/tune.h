/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Better spots for one stage: knobs turned until the training breaks concede least, held near practice
/// by a stated pull, and shown to be better on breaks that were not trained on.
#ifndef BW_TUNE_TUNE_H
#define BW_TUNE_TUNE_H

#include "trial/watcher.h"
#include "tune/judge.h"
#include "tune/knob.h"

typedef struct bw_tuning {
    const bw_scheme *scheme;
    int stage;
    bw_knob_limits limits;
    double mix; ///< share of typical in the aim, the rest is best; default .5
    double
        pull; ///< goals a break for one step of one knob away from practice, squared; default .002
    double spacing;             ///< metres two homes keep apart; default 3 yd
    int budget;                 ///< candidates looked at; default 600
    int training;               ///< breaks trained on at most; default 24
    uint64_t seed;              ///< default 1
    int threads;                ///< 0: all cores
    bw_legs legs[BW_MAX_SPOTS]; ///< of the men in each spot; vmax 0: the level's

    /// Values of the first candidates of the very same tuning, when it was broken off; NULL for none.
    const double *known;
    int known_count;
    void (*record)(void *self, double value); ///< each new value; may be NULL
    void *recorder;                           ///< its self
    bw_watcher watch;                         ///< told of candidates, or steps of what follows them
} bw_tuning;

bw_tuning bw_tuning_default(const bw_scheme *scheme, int stage);

typedef struct bw_tuned {
    bw_scheme scheme; ///< the new one, rounded to what a coach would write down
    int knob_count;
    bw_knob knobs[BW_MAX_KNOBS];
    double at[BW_MAX_KNOBS]; ///< new values, rounded
    int drill_count;
    bw_break_def drills[BW_MAX_DRILLS]; ///< trained on
    double aim_before, aim_after;       ///< goals a break on the training breaks, quick judging
    double pull_before, pull_after;     ///< what the pull toward practice added to each
    int tried;                          ///< candidates looked at
} bw_tuned;

/// Tunes. BW_BAD_INPUT: nothing to turn (all is kept) or no break is short-handed with this stage;
/// BW_NO_ROOM: no memory; BW_LIMIT: cancelled, of *out `tried` alone counts. The same definition gives the
/// same answer on any number of threads. O(budget * training) breaks.
bw_status bw_tune(const bw_tuning *def, bw_tuned *out);

/// What a tuning is about, as one number: known values belong to the same one.
uint64_t bw_tuning_hash(const bw_tuning *def);

/// Errors `check` would report about a scheme.
int bw_tune_errors(const bw_scheme *scheme);

#endif
