/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Where precision matters: what a yard in or out, or a turn of the rule, costs.
#ifndef BW_TUNE_SENSE_H
#define BW_TUNE_SENSE_H

#include "tune/tune.h"

/// Steps each way of a map and of a scale, and its sides.
enum { BW_SENSE_STEPS = 3, BW_SENSE_SIDE = 2 * BW_SENSE_STEPS + 1, BW_MAX_MAPS = BW_MAX_SPOTS };

/// A home (and its mirror image's) moved over a grid, everything else as it is.
typedef struct bw_sense_map {
    int spot, twin;
    bw_vec home; ///< the grid's middle, m
    /// Goals a break more than at the middle, by step out (0: nearest the goal) and step to the right;
    /// always a finite number. `there` is false for a place where nobody can stand.
    double cost[BW_SENSE_SIDE][BW_SENSE_SIDE];
    bool there[BW_SENSE_SIDE][BW_SENSE_SIDE];
} bw_sense_map;

/// A number of the rule turned by steps of half its scale.
typedef struct bw_sense_scale {
    bw_knob knob;
    double at[BW_SENSE_SIDE];
    double cost[BW_SENSE_SIDE];
    bool there[BW_SENSE_SIDE];
} bw_sense_scale;

typedef struct bw_sense {
    double step; ///< metres between two places of a map: one shown unit
    double flat; ///< goals: costs below it are chance; two standard errors
    int map_count, scale_count;
    bw_sense_map maps[BW_MAX_MAPS];
    bw_sense_scale scales[BW_MAX_KNOBS];
} bw_sense;

/// Maps every home and every number of the rule around a scheme, on the tuning's training breaks, by
/// quick judging. Watched as the tuning is; BW_LIMIT: cancelled.
/// About 49 candidates for each pair of homes.
bw_status bw_sense_map_all(const bw_tuning *def, const bw_scheme *scheme, bw_sense *out);

#endif
