/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The breaks a stage is tuned on, and those it is judged on afterwards: attack sets, ball starts and
/// levels it has never seen.
#ifndef BW_TUNE_DRILLS_H
#define BW_TUNE_DRILLS_H

#include "core/break.h"

enum { BW_MAX_DRILLS = 48 };

typedef enum bw_drill_kind {
    BW_DRILL_TRAINING,
    BW_DRILL_SETS,   ///< held out: other attack sets, the same starts
    BW_DRILL_STARTS, ///< held out: the same sets, other starts
    BW_DRILL_LEVEL,  ///< held out: the training breaks among players of another level
    BW_DRILL_KINDS
} bw_drill_kind;

/// "training breaks", "other attack sets", ...
const char *bw_drill_name(bw_drill_kind kind);

/// Breaks of a kind for a stage into list[BW_MAX_DRILLS]; returns how many, at most `most`. Every
/// other attack set and start is for training. Late men are the scheme's. `seed` goes into their
/// roll-outs. No breaks: numbers are even with this stage.
int bw_drills(const bw_scheme *scheme, int stage, bw_drill_kind kind, int most, uint64_t seed,
              bw_break_def *list);

/// Every attack set at every start (mirror images left out) with so many attackers, at most
/// BW_MAX_DRILLS; returns how many.
int bw_drills_for(const bw_scheme *scheme, int stage, int offence, bw_break_def *list);

/// The level held out: the next one up, or down from the last. An index into bw_level_at.
int bw_drill_level(int level);

#endif
