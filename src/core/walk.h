/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A lesson played through time. The ball stands at each stop for its pause and then goes on to the
/// next: thrown at the level's pass speed and slowed by the air (core/ball.h), or carried, from rest to
/// rest at the level's carrying speed, when the way is shorter than 5 yd and keeps out of the crease.
/// As in a break, the men read where the ball is going: from the moment it leaves they have the level's
/// reaction, then they run to where its coming place puts them (core/follow.h).
///
/// There is no clock: any moment can be asked for, in any order, and gives the same bits everywhere.
/// Times are whole steps of BW_FOLLOW_STEP: a way takes the first whole step by which the ball is there,
/// a pause is rounded to the nearest. A mirrored scheme gives the mirrored walk to the last bit.
#ifndef BW_CORE_WALK_H
#define BW_CORE_WALK_H

#include "core/follow.h"
#include "core/shape.h"

typedef enum bw_way {
    BW_WAY_NONE, ///< the ball is there already
    BW_WAY_PASS,
    BW_WAY_CARRY
} bw_way;

/// One stop of a walk: how the ball comes to it, and the unit when it has come.
typedef struct bw_walk_stop {
    bw_vec ball;
    bw_way way;    ///< by which it comes here from the stop before; NONE at the first
    double length; ///< m of that way
    int left;      ///< steps from the start until the ball leaves the stop before
    int come;      ///< and until it is here
    int gone;      ///< and until it leaves here
    bw_station station[BW_MAX_SPOTS]; ///< where the men belong for a ball here
    bw_body body[BW_MAX_SPOTS];       ///< and where they are when it comes,
    bw_vec effort[BW_MAX_SPOTS];      ///< with the effort they make then
} bw_walk_stop;

/// A lesson made ready; const afterwards.
typedef struct bw_walk {
    int count; ///< stops, at least 1
    int spots; ///< men
    int stage; ///< index in the scheme
    int delay; ///< steps of reaction
    bw_legs legs;
    bw_legs carrying; ///< of the man with the ball
    double pass_speed;
    bw_walk_stop stops[BW_MAX_STOPS];
} bw_walk;

/// One man at one moment.
typedef struct bw_walker {
    bw_body body;
    bw_station station; ///< where he belongs, for the ball where it is or where it is going
    double needs; ///< seconds before he can stand there, his reaction counted in; 0 when he does
    double late;  ///< seconds after the ball is there before he can be
} bw_walker;

/// Everything at one moment.
typedef struct bw_walk_moment {
    double at_s;
    int stop;       ///< where the ball stands, or is going
    bw_way way;     ///< how it goes; NONE while it stands
    bw_vec ball;    ///< now
    bw_vec from;    ///< the stop it left; its place while it stands
    double to_come; ///< seconds until it is there, 0 while it stands
    bw_walker men[BW_MAX_SPOTS];
} bw_walk_moment;

/// Makes a lesson of a valid scheme ready. Lets everyone stand where the first stop puts him at 0 s.
void bw_walk_build(const bw_scheme *scheme, const bw_lesson *lesson, bw_walk *walk);

/// Seconds the whole lesson lasts, the last pause counted in.
double bw_walk_seconds(const bw_walk *walk);

/// Everyone at `seconds` from the start, held between 0 and bw_walk_seconds.
void bw_walk_at(const bw_walk *walk, double seconds, bw_walk_moment *moment);

#endif
