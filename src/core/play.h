/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Plies: one decision of the ball carrier and what happens until the next. Which there are, and what
/// each does to the state. Chance enters only as "this ply keeps the ball": a lost ball ends the
/// break, so a line's worth is the product of its chances and the last shot's.
#ifndef BW_CORE_PLAY_H
#define BW_CORE_PLAY_H

#include "core/break.h"

typedef enum bw_kind { BW_SHOOT, BW_PASS, BW_CARRY, BW_HOLD, BW_KIND_COUNT } bw_kind;

/// "shoot", "pass", "carry", "hold".
const char *bw_kind_name(bw_kind kind);

enum {
    BW_NOBODY = -1,
    BW_MAX_CUTS = 3,  ///< cuts kept a ply: the ones that gain most
    BW_MAX_PLIES = 96 ///< plies from one state
};

typedef struct bw_ply {
    int8_t kind;      ///< bw_kind
    int8_t to;        ///< receiver of a pass, place of a carry, BW_NOBODY otherwise
    int8_t cutter;    ///< attacker who begins a cut, or BW_NOBODY
    int8_t cut_place; ///< where he cuts to
} bw_ply;

/// A number that orders plies of one state: ties in worth go to the lowest.
static inline uint32_t bw_ply_rank(bw_ply p) {
    return (uint32_t)p.kind << 24 | (uint32_t)(uint8_t)(p.to + 1) << 16 |
           (uint32_t)(uint8_t)(p.cutter + 1) << 8 | (uint32_t)(uint8_t)(p.cut_place + 1);
}

/// All plies from a state, by rising rank, into list[BW_MAX_PLIES]. Returns how many.
int bw_plies(const bw_break *b, const bw_state *s, bw_ply *list);

/// Called once per step with the state in between: for drawings and film. `ball` is where the ball is.
typedef void bw_watch(void *self, const bw_state *s, bw_vec ball, bool flying);

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
