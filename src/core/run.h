/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Men running through one stretch of a ply: attackers to where they are bound, defenders to where
/// the ball's coming place puts them. Private to the break engine.
#ifndef BW_CORE_RUN_H
#define BW_CORE_RUN_H

#include "core/play.h"

/// Who looks on, and how the ball flies meanwhile.
typedef struct bw_onlooker {
    bw_watch *watch; ///< may be NULL
    void *self;
    bool flying;
    bw_vec from; ///< where the ball was thrown from, when it flies
} bw_onlooker;

/// One stretch: the defence reads `ball` as the coming place of the ball, in the hands of `man`.
typedef struct bw_stretch {
    bw_vec ball;
    int man;
    int ticks;
    int freeze;  ///< ticks before the defenders react; their last efforts go on until then
    int carrier; ///< attacker who moves with the ball, or BW_NOBODY
    const bw_onlooker *onlooker; ///< may be NULL
} bw_stretch;

/// Runs everyone. Returns how near, m, any defender came to `man` at the end of a step.
double bw_run(const bw_break *b, bw_state *s, const bw_stretch *stretch);

/// Where attacker `a` will be after this many ticks: the same steps as bw_run takes.
bw_vec bw_run_alone(const bw_state *s, int a, const bw_stride *stride, int ticks, int freeze);

/// Attacker `a` gives up where he was bound for and comes to a stop.
void bw_run_stop(const bw_break *b, bw_state *s, int a);

/// The two halves of a pass, so that passes from one wind-up can share it.
void bw_play_windup(const bw_break *b, const bw_state *from, bw_ply ply, bw_state *to,
                    const bw_onlooker *onlooker);
double bw_play_flight(const bw_break *b, const bw_state *released, int to_man, bw_state *to,
                      const bw_onlooker *onlooker);

/// Chance that a pass this long is thrown and caught when no defender is near: never rises with length.
double bw_pass_thrown(const bw_level *level, double length);

/// How much of a pass from `from` to `at`, `length` > 0 m, the defenders and the goal leave, by where
/// they are when it is thrown; `flight` seconds.
double bw_lane_left(const bw_break *b, const bw_state *s, bw_vec from, bw_vec at, double length,
                    double flight);

/// Share of a shot from `at` that all defenders leave where they are.
double bw_shot_open(const bw_break *b, const bw_state *s, bw_vec at);

#endif
