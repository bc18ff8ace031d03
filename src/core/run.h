/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Men running through one stretch of a ply: attackers to where they are bound, defenders to where
/// the ball's coming place puts them. Private to the break engine.
#ifndef BW_CORE_RUN_H
#define BW_CORE_RUN_H

#include "core/ply.h"

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

/// Runs everyone. Returns how near, m, any defender came to `man` at the end of a step, when he is the
/// carrier; otherwise a large number.
double bw_run(const bw_break *b, bw_state *s, const bw_stretch *stretch);

/// One attacker by himself: attackers do not mind the defence, so where a man will be can be known
/// without playing everyone. The same steps as bw_run takes.
typedef struct bw_runner {
    double x, y, u, v;
    double to_x, to_y;
    bool moving;
} bw_runner;

bw_runner bw_runner_of(const bw_state *s, int a);

/// Sends him to a place.
void bw_runner_send(bw_runner *r, bw_vec to);

/// He gives up where he was bound for and comes to a stop.
void bw_runner_stop(bw_runner *r);

/// Runs for some ticks, the first `freeze` of them (when above 0) in one step.
void bw_runner_go(bw_runner *r, const bw_stride *stride, int ticks, int freeze);

/// Attacker `a` gives up where he was bound for and comes to a stop.
void bw_run_stop(const bw_break *b, bw_state *s, int a);

#endif
