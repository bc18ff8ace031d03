/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The practice script of a stage: the shortest closed run of passes through every rotation, weak ones
/// more often; and for each pass what the coach looks for and how long it takes.
#ifndef BW_TRIAL_SCRIPT_H
#define BW_TRIAL_SCRIPT_H

#include "core/tour.h"
#include "scheme/rotation.h"
#include "trial/trial.h"

enum { BW_SCRIPT_WEAK = 12 };

/// How fast a script is gone through.
typedef enum bw_pace { BW_WALK, BW_HALF_SPEED, BW_FULL_SPEED, BW_PACE_COUNT } bw_pace;

/// "walk", "half speed", "full speed"
const char *bw_pace_name(bw_pace pace);

/// What rehearsing is worth, by rotation: goals in a break that late men cost (core/whatif.h).
typedef struct bw_weakness {
    double cost[BW_MAX_LANDMARKS][BW_MAX_LANDMARKS]; ///< 0: not known to be weak
} bw_weakness;

/// Sums the what-ifs of tested breaks that begin with so many defenders in. Where landmarks and stage
/// have mirror images a rotation and its image get the mean of both: one attack set leans to a side,
/// practice should not.
void bw_weakness_of(const bw_scheme *scheme, int stage, const bw_trial *trials, int count,
                    bw_weakness *out);

/// One pass of the script.
typedef struct bw_script_stop {
    int from, to;  ///< landmarks
    int rank;      ///< 1: the weakest rotation; 0: not among the weak
    int again;     ///< how often it has been made before in this script
    bool link;     ///< made only to get on: the required ones do not ask for it again
    int on_ball;   ///< spot that takes the ball; -1: nobody, the low pair hold
    int crease;    ///< spot that has the crease; -1: nobody
    int farthest;  ///< spot with the longest way
    double metres; ///< his way
    double seconds[BW_PACE_COUNT]; ///< from the catch before to everyone set
} bw_script_stop;

typedef struct bw_script {
    const bw_scheme *scheme;
    int stage;     ///< index in scheme->stages
    int rotations; ///< different ones to go through: all between neighbours, and the weak
    int wanted;    ///< passes these ask for, the weak ones counted more than once
    int bound;     ///< no closed script has fewer passes
    bool weighed;  ///< the weak ones are known
    int pieces;    ///< as of bw_tour
    int start;     ///< landmark where it begins and ends
    int stop_count;
    bw_script_stop stops[BW_TOUR_MOVES];
    double seconds[BW_PACE_COUNT]; ///< sums
    int weak_count;
    int weak[BW_SCRIPT_WEAK][2]; ///< from, to; the weakest first
} bw_script;

/// Bytes of workspace.
size_t bw_script_size(void);

/// Builds it. `weakness` may be NULL: every rotation once. `why` may be NULL; else one sentence when the
/// answer is not BW_OK: BW_NOT_FOUND no rotations; BW_UNREACHABLE, BW_LIMIT as bw_tour_find. A mirrored
/// scheme has the mirrored script.
bw_status bw_script_build(const bw_scheme *scheme, int stage, const bw_weakness *weakness,
                          void *memory, size_t size, bw_script *out, bw_text *why);

/// What the estimate of the time rests on and leaves out, one sentence or two.
void bw_say_script_time(bw_text *out);

#endif
