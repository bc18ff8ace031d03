/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The practice script of a stage: the shortest closed run of passes through every rotation, weak ones
/// more often; and for each pass what the coach looks for and how long it takes.
#ifndef BW_TRIAL_SCRIPT_H
#define BW_TRIAL_SCRIPT_H

#include "core/tour/tour.h"
#include "scheme/rotation.h"
#include "trial/weak_rotations.h"

/// Those of the scheme's list for one stage, and their mirror images.
enum { BW_SCRIPT_WEAK = 2 * BW_WEAK_EACH };

/// How fast a script is gone through.
typedef enum bw_pace { BW_WALK, BW_HALF_SPEED, BW_FULL_SPEED, BW_PACE_COUNT } bw_pace;

/// "walk", "half speed", "full speed"
const char *bw_pace_name(bw_pace pace);

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
    double cost[BW_SCRIPT_WEAK]; ///< theirs, goals in one break; of a mirror image the original's
} bw_script;

/// Bytes of workspace.
size_t bw_script_size(void);

/// Builds it. `weak` is the scheme's list, of which the stage's between landmarks are taken in its order;
/// where landmarks and stage have mirror images each is followed by its own, for one attack set leans to a
/// side and practice should not. NULL: every rotation once. `why` may be NULL; else one sentence when the
/// answer is not BW_OK: BW_NOT_FOUND no rotations; BW_UNREACHABLE, BW_LIMIT as bw_tour_find. A mirrored
/// scheme has the mirrored script.
bw_status bw_script_build(const bw_scheme *scheme, int stage, const bw_weak_list *weak,
                          void *memory, size_t size, bw_script *out, bw_text *why);

/// What the estimate of the time rests on and leaves out, one sentence or two.
void bw_say_script_time(bw_text *out);

#endif
