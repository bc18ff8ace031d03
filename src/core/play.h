/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Plies: one decision of the ball carrier and what happens until the next. Which there are, and what
/// each does to the state. Chance enters only as "this ply keeps the ball": a lost ball ends the
/// break, so a line's worth is the product of its chances and the last shot's.
#ifndef BW_CORE_PLAY_H
#define BW_CORE_PLAY_H

#include "core/ply.h"

/// All plies from a state, by rising rank, into list[BW_MAX_PLIES]. Returns how many.
int bw_plies(const bw_break *b, const bw_state *s, bw_ply *list);

/// Plays `ply` (not a shot) from *from into *to. Returns the chance that the ball is kept, in [0, 1].
/// `watch` may be NULL.
double bw_play(const bw_break *b, const bw_state *from, bw_ply ply, bw_state *to, bw_watch *watch,
               void *self);

/// What a shot is made of.
typedef struct bw_shot_terms {
    double place; ///< worth of the place with time and room
    double left;  ///< share the defenders leave of it
    bw_vec at;    ///< where it is taken
} bw_shot_terms;

/// A shot now: the wind-up is played, then the product of the terms counts. *end may be NULL,
/// otherwise it gets the state at release.
bw_shot_terms bw_play_shot(const bw_break *b, const bw_state *from, bw_state *end, bw_watch *watch,
                           void *self);

#endif
