/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Typical: what people make of a break. At each decision the carrier rates every ply by its chance
/// times what seems to come next, picks a kind and then a ply of that kind by logit choice, with the
/// level's sharpness. Seeded roll-outs, shots not sampled but weighed, so little noise is left.
/// Source of the form: D. McFadden, nested logit, 1978; R. McKelvey, T. Palfrey, quantal response,
/// 1995. Sharpness, look-ahead and the value of keeping the ball set its height and no open data
/// fixes them: use it to compare and to rank.
#ifndef BW_CORE_TYPICAL_H
#define BW_CORE_TYPICAL_H

#include "core/search.h"

enum {
    BW_MAX_ROTATIONS = 64,
    BW_BUNDLES = 6 ///< a forecast's roll-outs come in so many bundles
};

/// How often the ball went from one place to another, weighed by the chance of getting there.
typedef struct bw_use {
    int from, to; ///< places of the ground
    double share; ///< mean number of such passes a break
    double kept;  ///< mean chance that one is completed
    double first; ///< mean seconds at which it is thrown
} bw_use;

typedef struct bw_forecast {
    double worth[BW_MAX_SECONDS + 1]; ///< chance of a goal within t whole seconds; [0] is 0
    double error[BW_MAX_SECONDS + 1]; ///< Monte-Carlo standard error of each
    double lost;                      ///< chance that the ball is lost within 10 s
    double shots;                     ///< mean number of shots within 10 s (at most 1)
    int use_count;
    bw_use use[BW_MAX_ROTATIONS]; ///< by falling share
    int rollouts;
    uint64_t played; ///< plies played out
} bw_forecast;

typedef struct bw_typical_def {
    int rollouts;   ///< default 48; made a multiple of 6
    double seconds; ///< when the whistle goes, (0, 10]; default 10
    uint64_t seed;  ///< 0: the break's own
} bw_typical_def;

bw_typical_def bw_typical_default(void);
size_t bw_typical_size(void);

/// The forecast. Never falls as time grows, by its definition. BW_NO_ROOM: too little memory.
bw_status bw_typical(const bw_break *b, const bw_typical_def *def, void *memory, size_t size,
                     bw_forecast *out);

/// Typical worth from any state of a break, e.g. a rotation's catch, over `seconds` from then.
bw_status bw_typical_from(const bw_break *b, const bw_state *from, const bw_typical_def *def,
                          void *memory, size_t size, bw_forecast *out);

/// The same bundle by bundle, for a caller that shows progress or may cancel. b, from, memory and *out stay
/// where they are until the last step.
bw_status bw_typical_begin(const bw_break *b, const bw_state *from, const bw_typical_def *def,
                           void *memory, size_t size, bw_forecast *out);

/// Plays the next of BW_BUNDLES bundles. False after the last: the forecast is whole.
bool bw_typical_step(void *memory);

#endif
