/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The weakest rotations: what to rehearse first. Two lists have that name, and each stands here once.
/// Of a break: what a test of it shows, in the order of its what-ifs. Of a scheme: from quick breaks of
/// each of its stages; packet, cards, quiz, hand-out and practice script all go by that list, in its
/// order.
#ifndef BW_TRIAL_WEAK_ROTATIONS_H
#define BW_TRIAL_WEAK_ROTATIONS_H

#include "trial/trial.h"

/// So many of each stage, for a stage that is played little needs its practice too; and room for one
/// more while the list is being made.
enum { BW_WEAK_EACH = 4, BW_WEAK_LIST = BW_MAX_STAGES * BW_WEAK_EACH + 1, BW_WEAK_MEN = 3 };

/// Breaks that tell which they are.
enum { BW_WEAK_TRIALS = 2 * BW_MAX_STAGES };

/// A man late for a rotation.
typedef struct bw_weak_man {
    int spot; ///< in the stage
    double seconds, metres;
} bw_weak_man;

typedef struct bw_weak {
    int stage;                                           ///< index in scheme->stages
    bw_vec from, to;                                     ///< of the ball
    int from_at, to_at;                                  ///< landmarks, or -1
    char from_name[BW_NAME_SIZE], to_name[BW_NAME_SIZE]; ///< "left wing", "crease"
    double cost;                                         ///< goals in one break, a model's estimate
    int men;                                             ///< those called late, latest first
    bw_weak_man man[BW_WEAK_MEN];
} bw_weak;

typedef struct bw_weak_list {
    int count;
    bw_weak weak[BW_WEAK_LIST]; ///< by falling cost
} bw_weak_list;

/// Of a break: the first so many of trial->whatif.weak, at most five, and none that costs less than 0.05
/// goals in 100 breaks.
int bw_weak_shown(const bw_trial *trial);

/// The breaks to run, two for each stage: six attackers (four against three) in the usual set, the ball up
/// top and behind the goal; nobody comes back, so that each stage's own rotations are seen. Fills def and
/// effort of trials[BW_WEAK_TRIALS]; returns how many.
int bw_weak_trials(const bw_scheme *scheme, uint64_t seed, bw_trial *trials);

/// Takes in the rotations of a trial that has a result. Those between matched-up men have no spots to
/// name and are left out; so are those that cost next to nothing.
void bw_weak_take(const bw_ground *ground, const bw_trial *trial, bw_weak_list *list);

#endif
