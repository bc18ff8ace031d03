/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What if: for each rotation, how much of the worth is owed to men still on their way when the ball
/// arrives. The largest are what to rehearse.
#ifndef BW_CORE_WHATIF_H
#define BW_CORE_WHATIF_H

#include "core/typical.h"

enum {
    BW_MAX_LATE_MEN_SHOWN = BW_MAX_SPOTS,
    BW_WEAK_MAX = 16,
    BW_WHATIF_SECONDS = 3,  ///< looked at after the catch
    BW_WHATIF_ROLLOUTS = 24 ///< breaks simulated each way
};

/// A man not where he belongs when the ball arrives.
typedef struct bw_behind {
    int spot;       ///< in the stage at the catch; his man when numbers are even
    double metres;  ///< from his station
    double seconds; ///< until he could be there and hold it
} bw_behind;

typedef struct bw_rotation {
    int from, to;    ///< places of the ground
    int thrower;     ///< attacker
    int receiver;    ///< attacker
    double thrown_s; ///< mean seconds at which it is thrown
    double use;      ///< mean times a typical offence throws it in a break
    double chance;   ///< that the pass is completed
    double moving;   ///< typical worth over the next 3 s from the catch, men on their way
    double set;      ///< the same with the men already in place
    double drop;     ///< moving - set; below 0 the shape itself is at fault there, not the rotation
    double error;    ///< standard error of drop
    double cost;     ///< use * chance * drop: goals a break it costs; the ranking
    int stage;       ///< defenders in at the catch
    bool matched;    ///< numbers are even then: behind[].spot are men
    int behind_count;
    bw_behind behind[BW_MAX_LATE_MEN_SHOWN]; ///< latest first
} bw_rotation;

typedef struct bw_whatif {
    int count;
    bw_rotation weak[BW_WEAK_MAX]; ///< by falling cost, drop > 0
    int fault_count;
    bw_rotation fault[BW_WEAK_MAX]; ///< drop clearly below 0: look at the shape, not the running
} bw_whatif;

size_t bw_whatif_size(void);

/// Ranks the rotations a typical offence uses from this break's start. `forecast` is the break's own.
bw_status bw_whatif_run(const bw_break *b, const bw_forecast *forecast, void *memory, size_t size,
                        bw_whatif *out);

/// The moment a rotation was looked into: the ball about to leave `from`, everyone where he then is.
void bw_rotation_moment(const bw_break *b, const bw_rotation *rotation, bw_state *s);

/// The same rotation by rotation. b, forecast, memory and *out stay where they are until the last
/// step. Returns how many steps there are in *steps; 0: it is done.
bw_status bw_whatif_begin(const bw_break *b, const bw_forecast *forecast, void *memory, size_t size,
                          bw_whatif *out, int *steps);

/// Looks into the next rotation.
bw_status bw_whatif_step(void *memory);

#endif
