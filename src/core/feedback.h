/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A level moved toward what a team's own log shows: how sure passes are, how good shots are, how quickly
/// the ball is moved. Each stays at the level's figure as if so many cases of it had been seen
/// already, so that a few breaks move it little. Never applied silently: before and after are told.
#ifndef BW_CORE_FEEDBACK_H
#define BW_CORE_FEEDBACK_H

#include "core/entry.h"
#include "core/level.h"
#include "core/rate.h"

/// Cases the level's own figure counts as (assumed: about two games' worth).
#define BW_FEEDBACK_PASSES 60.0
#define BW_FEEDBACK_SHOTS 40.0
#define BW_FEEDBACK_GOALS 20.0

/// What the level's own breaks come to, by simulated typical play: the same figures as the log gives, so
/// that like is laid beside like.
typedef struct bw_feedback_own {
    double completion; ///< share of passes that are completed, (0, 1)
    double shot;       ///< goals a shot, (0, 1)
    double goal_s;     ///< mean seconds from the start to a goal, above 0
} bw_feedback_own;

/// One figure: what the level says, what was seen, and what comes of both.
typedef struct bw_feedback_figure {
    int cases;    ///< passes or shots seen
    double level; ///< before
    double seen;  ///< mean over the cases; 0 without any
    double after; ///< weighted by cases and by what the level counts as
} bw_feedback_figure;

typedef struct bw_feedback {
    bw_feedback_figure completion; ///< share of passes that are completed
    bw_feedback_figure shot;       ///< goals a shot
    bw_feedback_figure goal_s;     ///< seconds from the start to a goal
    bw_level level;                ///< the level moved as the figures were
} bw_feedback;

/// What entries show against a level. Passes are counted from breaks that note them; one that ended in a
/// turnover lost one pass. The chance of a sure pass moves by as much as completion did, the time to
/// release by the ratio of the times, and the error of shots so that `danger`, the chance of a shot with
/// time and room at a level, moves by the ratio of the shots. O(count), and twenty times `danger`.
void bw_feedback_of(const bw_entry *entries, int count, const bw_level *level, bw_feedback_own own,
                    double (*danger)(const bw_level *level, void *self), void *self,
                    bw_feedback *out);

#endif
