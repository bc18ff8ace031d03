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

/// A pass in its parts, so that passes from one wind-up can share it, and one that looks bad when it
/// leaves the stick need not be played.
typedef struct bw_flight {
    bw_vec from, aim;
    int ticks, freeze;
    double chance; ///< at release: thrown, not picked off; catching in a crowd still to come
} bw_flight;

void bw_play_windup(const bw_break *b, const bw_state *from, bw_ply ply, bw_state *to,
                    const bw_onlooker *onlooker);
void bw_play_release(const bw_break *b, const bw_state *released, int to_man, bw_flight *flight);
double bw_play_flight(const bw_break *b, const bw_state *released, int to_man,
                      const bw_flight *flight, bw_state *to, const bw_onlooker *onlooker);

/// The plies of bw_plies that begin no cut, in the same order.
int bw_plies_uncut(const bw_break *b, const bw_state *s, bw_ply *list);

/// Ticks a pass flies from `from` to a man at `at` with velocity `v` (zero when he stands).
int bw_flight_ticks(const bw_ground *g, bw_vec from, bw_vec at, bw_vec v);

/// Ticks a carry of d metres takes.
int bw_carry_ticks(const bw_ground *g, double d);

/// Chance that a pass this long is thrown and caught when no defender is near: never rises with length.
double bw_pass_thrown(const bw_level *level, double length);

/// How much of a pass from `from` to `at`, `length` > 0 m, the defenders and the goal leave, by where
/// they are when it is thrown; `flight` seconds.
double bw_lane_left(const bw_break *b, const bw_state *s, bw_vec from, bw_vec at, double length,
                    double flight);

/// Share of a shot from `at` that all defenders leave where they are.
double bw_shot_open(const bw_break *b, const bw_state *s, bw_vec at);

#endif
