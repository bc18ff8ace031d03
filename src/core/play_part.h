/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What a ply is made of, and the chances in it. Private to the break engine.
#ifndef BW_CORE_PLAY_PART_H
#define BW_CORE_PLAY_PART_H

#include "core/run.h"

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
