/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What a scheme concedes over a set of breaks, on all cores. The threads live as long as the judge, so
/// that a thousand small questions cost no more than one large one. Sums are taken in the order of the
/// breaks: the same answer for any number of threads.
#ifndef BW_TUNE_JUDGE_H
#define BW_TUNE_JUDGE_H

#include "core/level.h"
#include "core/scheme.h"
#include "tune/drills.h"
#include <stdatomic.h>

/// How thoroughly a break is judged.
typedef struct bw_judging {
    double seconds; ///< the offence is given; default 6
    int rollouts;   ///< of typical play; default 24
    int look_ahead; ///< of the typical carrier; -1: as the level says
    int depth;      ///< plies of best play before the shot; default 3
} bw_judging;

/// For the many candidates of a search: carriers who do not think ahead, twelve roll-outs, two plies.
/// Ranks candidates as the full judging does (correlation .92 over random shapes, for typical play; docs/tune.md).
bw_judging bw_judging_quick(void);

/// For the evidence.
bw_judging bw_judging_full(void);

/// Goals a break, means over the set.
typedef struct bw_judgement {
    double typical;
    double best;
    double typical_each[BW_MAX_DRILLS], best_each[BW_MAX_DRILLS];
    int count;
} bw_judgement;

typedef struct bw_judge bw_judge;

/// Opens a judge for schemes on this scheme's field with its landmarks, at a level (NULL: its own).
/// `threads` 0: one for each core. Once *cancel (NULL: never) is true it judges nothing more. NULL: no
/// memory.
bw_judge *bw_judge_open(const bw_scheme *scheme, const bw_level *level, int threads,
                        const atomic_bool *cancel);
void bw_judge_close(bw_judge *judge);

/// Judges a scheme that differs from the opened one in its stages alone. BW_BAD_INPUT: a break that
/// cannot begin. BW_LIMIT: cancelled, which is met within a break too; the verdict means nothing.
bw_status bw_judge_scheme(bw_judge *judge, const bw_scheme *scheme, const bw_break_def *drills,
                          int count, bw_judging how, bw_judgement *verdict);

/// Breaks judged to the end since it was opened.
uint64_t bw_judge_done(const bw_judge *judge);

#endif
