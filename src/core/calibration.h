/* SPDX-License-Identifier: GPL-3.0-or-later */
/// How good forecasts were: each break's forecast chance of a goal beside what happened.
/// Sources: G. W. Brier, Mon. Weather Rev. 78, 1950; A. H. Murphy, J. Appl. Meteorol. 12, 1973 (the
/// three parts); D. J. Spiegelhalter, Stat. Med. 5, 1986 (the z). Below BW_CALIBRATION_LEAST breaks
/// nothing can be told and nothing should be shown but the two sums.
#ifndef BW_CORE_CALIBRATION_H
#define BW_CORE_CALIBRATION_H

#include "core/rate.h"

enum { BW_CALIBRATION_BINS = 5, BW_CALIBRATION_LEAST = 30 };

typedef struct bw_prediction {
    double chance; ///< [0, 1]
    bool happened;
} bw_prediction;

/// Forecasts of one fifth of the scale: [0, .2), [.2, .4) ... [.8, 1].
typedef struct bw_calibration_bin {
    bw_count count;
    double chance; ///< mean forecast; 0 when there is none
} bw_calibration_bin;

typedef struct bw_calibration {
    int cases;
    double expected;    ///< sum of the chances
    double deviation;   ///< standard deviation of the number that happen, if the chances are right
    int happened;       ///< how many did
    double brier;       ///< mean squared error, 0 is perfect
    double reliability; ///< of the bins: distance from the diagonal, 0 is perfect
    double resolution;  ///< of the bins: how far they are apart
    double uncertainty; ///< Brier score of always saying the mean rate
    double z;           ///< Spiegelhalter's: beyond 2 either way the forecasts are off; 0 undefined
    bw_calibration_bin bin[BW_CALIBRATION_BINS];
} bw_calibration;

/// A calibration under way: forecasts one by one.
typedef struct bw_calibrating {
    bw_calibration so_far;
    double squares, over, under, variance;
} bw_calibrating;

bw_calibrating bw_calibrate_begin(void);
void bw_calibrate_add(bw_calibrating *run, double chance, bool happened);
bw_calibration bw_calibrate_end(const bw_calibrating *run);

/// All at once, O(count). The three parts add up to the Brier score exactly only when all forecasts in a bin agree.
bw_calibration bw_calibrate(const bw_prediction *forecasts, int count);

#endif
