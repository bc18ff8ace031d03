/* SPDX-License-Identifier: GPL-3.0-or-later */
/// How much time a man with his own legs has to spare on a spot: over every rotation, the time until it
/// matters that he is in his place less the time his run takes. The same measure the lint warns by.
#ifndef BW_SCHEME_MARGIN_H
#define BW_SCHEME_MARGIN_H

#include "core/motion.h"
#include "core/scheme.h"

typedef struct bw_margin {
    int rotations; ///< in which he has to run at all
    int late;      ///< of them, those he is late in
    double worst; ///< seconds to spare in the tightest one; below 0 he is late. Only with rotations
    double mean;  ///< over the rotations he has to run in
    int from, to; ///< landmarks of the tightest one, -1 without rotations
} bw_margin;

/// Margins of one pair of legs (vmax 0: the level's) on each spot of a stage, into out[BW_MAX_SPOTS].
/// Man-to-man stages have none: places follow the attackers.
void bw_margins(const bw_scheme *scheme, int stage, bw_legs legs, bw_margin *out);

#endif
