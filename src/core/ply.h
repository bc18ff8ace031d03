/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A ply: one decision of the ball carrier.
#ifndef BW_CORE_PLY_H
#define BW_CORE_PLY_H

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

/// Called once per step with the state in between: for drawings and film. `ball` is where the ball is.
typedef void bw_watch(void *self, const bw_state *s, bw_vec ball, bool flying);

#endif
