/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The ground a break is played on: one scheme, one level and one field made ready, with every table
/// the search looks things up in. Built once, then const: any number of threads may share it.
#ifndef BW_CORE_GROUND_H
#define BW_CORE_GROUND_H

#include "core/graph.h"
#include "core/shape.h"
#include "core/shot.h"
#include "core/text.h"

/// Time inside the break engine is counted in ticks: whole numbers compare exactly and hash exactly.
#define BW_TICK 0.02

enum {
    BW_TICKS_PER_SECOND = 50,
    BW_STEP_TICKS = 10, ///< a man decides his effort anew every 0.2 s
    BW_MAX_PLACES = BW_MAX_LANDMARKS,
    BW_MAX_FLIGHT = 200, ///< ticks of the longest flight any level has
    BW_MAX_TICKS = 500,  ///< ten seconds
    BW_STEP_TABLE = 64   ///< ticks of constant effort with ready constants
};

/// Seconds ahead at which a man's effort would have him on his target. A parameter of the model, not
/// of its numerics: it says how hard men chase (assumed; see docs/model.md).
#define BW_HORIZON 0.5

/// Bounds of one carry, s (assumed).
#define BW_CARRY_LEAST 0.35
#define BW_CARRY_MOST 1.2

/// Nobody throws farther than this in a break, m (assumed: 30 yd).
#define BW_LONGEST_PASS 27.432

/// A place the offence may carry or cut to: the scheme's landmarks and, where it has none, the usual
/// spots inside.
typedef struct bw_node {
    bw_vec at;
    char id[BW_ID_SIZE]; ///< landmark id, or the inside spot's own: "crease", "hash-left", ...
    int landmark;        ///< index in the scheme, -1 for an inside spot
} bw_node;

/// Constants of one man's motion over whole ticks of constant effort.
typedef struct bw_stride {
    double fade[BW_STEP_TABLE];  ///< exp(-t / tau)
    double coast[BW_STEP_TABLE]; ///< C(t) = tau (1 - fade), s
    double drive[BW_STEP_TABLE]; ///< t - C(t), s
    double ahead_coast;          ///< C(BW_HORIZON)
    double ahead_gain;           ///< 1 / (BW_HORIZON - C(BW_HORIZON)), 1/s
    double vmax;
} bw_stride;

typedef struct bw_ground {
    const bw_scheme *scheme; ///< not owned; must outlive the ground
    const bw_level *level;
    const bw_field *field;
    bw_plan
        plans[BW_MAX_SPOTS + 1]; ///< by number of defenders; spots == 0 where the scheme has none
    bw_stride attacker;
    bw_stride carrier;
    int place_count;
    bw_node places[BW_MAX_PLACES];
    double worth[BW_MAX_PLACES];     ///< of a shot from each place with time and room
    bw_graph graph;                  ///< of the places
    int release;                     ///< ticks from catch to release of a pass
    int shoot;                       ///< ticks from catch to a shot
    int hold;                        ///< ticks of a hold
    int carry_least;                 ///< ticks of the shortest carry
    int carry_most;                  ///< and of the longest
    int longest_ply;                 ///< ticks of the longest ply
    double flown[BW_MAX_FLIGHT + 1]; ///< how far a pass has flown, by ticks, m
    double reach[BW_MAX_TICKS + 1];  ///< farthest an attacker gets from rest, by ticks, m
    bw_shot_table shot;
} bw_ground;

/// Makes a scheme ready for a level (NULL: the scheme's own). `why` may be NULL; otherwise it gets one
/// sentence when the answer is not BW_OK. About 30 ms.
bw_status bw_ground_build(const bw_scheme *scheme, const bw_level *level, bw_ground *ground,
                          bw_text *why);

/// Constants for one pair of legs.
void bw_stride_build(bw_legs legs, bw_stride *stride);

/// Index of the place nearest to p, lowest index on a tie.
int bw_ground_nearest(const bw_ground *ground, bw_vec p);

/// Ticks a pass of d >= 0 metres flies: the first whole one by which it is there.
int bw_ground_flight(const bw_ground *ground, double d);

#endif
