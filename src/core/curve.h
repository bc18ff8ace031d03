/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The headline: worth over time, with the moments the late men arrive, the plateau, the time bought
/// and the seconds still missing.
#ifndef BW_CORE_CURVE_H
#define BW_CORE_CURVE_H

#include "core/typical.h"

typedef struct bw_curve_def {
    bw_search_def search;   ///< its seconds are set for each point
    bw_typical_def typical; ///< its seconds are 10
    int settled_rollouts;   ///< of the settled curve, which varies little; default 12
    double margin;          ///< goals above the settled worth that count as beaten; default 0.05
    bool with_best;         ///< false: typical only, best[] stays 0; default true
} bw_curve_def;

bw_curve_def bw_curve_default(void);

typedef struct bw_curve {
    double best[BW_MAX_SECONDS + 1];    ///< perfect play given t seconds; never falls
    double typical[BW_MAX_SECONDS + 1]; ///< goal within t seconds, people playing; never falls
    double error[BW_MAX_SECONDS + 1];   ///< of typical
    double settled[BW_MAX_SECONDS + 1]; ///< typical with numbers even from the start
    int late_count;
    double late_s[BW_MAX_LATE]; ///< seconds at which each late man is in, ball resting at the start
    double even_s;              ///< numbers are even from then on; 0 = at once, -1 = never
    double plateau;   ///< typical a second after numbers are even (at 10 s when they never are)
    double bought_s;  ///< first time typical passes settled + margin; 10 when it never does
    bool ever_beaten; ///< false: bought_s is 10 because it never does
    double missing_s; ///< even_s - bought_s when positive: seconds the late men come too late
    int answer_s;     ///< the answer is for this many seconds
    bw_answer answer; ///< the best line given answer_s seconds
    bw_forecast forecast;
} bw_curve;

size_t bw_curve_size(void);

/// The whole curve, with the answer for `answer_seconds` (1 to 10; 4 is usual).
bw_status bw_curve_run(const bw_break *b, const bw_curve_def *def, int answer_seconds, void *memory,
                       size_t size, bw_curve *out);

/// What of a curve is being made.
typedef enum bw_curve_part {
    BW_CURVE_TYPICAL, ///< the forecast, bundle by bundle
    BW_CURVE_EVEN,    ///< the settled one likewise
    BW_CURVE_BEST,    ///< perfect play, from ten seconds down
    BW_CURVE_DONE
} bw_curve_part;

/// How far a curve is.
typedef struct bw_curve_progress {
    bw_curve_part part; ///< being made now
    int done, of;       ///< bundles or seconds of this part
} bw_curve_progress;

/// The same piece by piece. b, memory and *out stay where they are until it is done.
bw_status bw_curve_begin(const bw_break *b, const bw_curve_def *def, int answer_seconds,
                         void *memory, size_t size, bw_curve *out);

/// Makes the next piece and tells how far it is. A status other than BW_OK ends it, BW_LIMIT only
/// with the last piece: the budget ended a search early.
bw_status bw_curve_step(void *memory, bw_curve_progress *progress);

/// Seconds at which each late man is counted in when the ball rests where it starts; -1 past 10 s.
void bw_late_arrivals(const bw_break *b, double *late_s);

#endif
