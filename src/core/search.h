/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Best: what perfect play makes of a break, and the line that does it. Depth-first branch and bound
/// over plies. A stress test, not a forecast: no team plays like this. Budgets are plies, never
/// seconds, so the same question gets the same answer on any machine.
#ifndef BW_CORE_SEARCH_H
#define BW_CORE_SEARCH_H

#include "core/play.h"

enum { BW_DEEPEST = 8 };

/// One ply of an answer, with its place in time and its chance.
typedef struct bw_answer_ply {
    bw_ply ply;
    int who;       ///< attacker who has the ball when it begins
    double at_s;   ///< seconds from the start at which it begins
    double end_s;  ///< and ends (release, for the shot)
    double chance; ///< that it keeps the ball; for the shot, that it scores
    bw_vec from;   ///< where the ball is when it begins
    bw_vec to;     ///< and when it ends; the goal's centre for the shot
} bw_answer_ply;

typedef struct bw_answer {
    double worth;       ///< goals expected from this line: product of the chances
    double kept;        ///< chance that the ball is still there when the shot is taken
    bw_shot_terms shot; ///< the last shot's terms; worth = kept * shot.place * shot.left
    int count;          ///< plies, the shot included; 0 when no shot fits in the time
    bw_answer_ply plies[BW_DEEPEST + 1];
    int depth;       ///< plies before the shot that were searched through
    uint64_t played; ///< plies played out
    uint64_t seen;   ///< plies looked at, those bounded away without playing included
    bool cut_short;  ///< the budget ended before `depth` was searched through
} bw_answer;

typedef struct bw_search_def {
    double seconds;  ///< time the offence is given, (0, 10]; default 4
    int depth;       ///< plies before the shot, 0 to BW_DEEPEST; default 4
    uint64_t budget; ///< plies played at most; default 4 million
    bool prune;      ///< false: every ply is played, for tests; default true
    bool order;      ///< false: plies in rank order; default true
} bw_search_def;

bw_search_def bw_search_default(void);

/// Bytes of workspace for bw_best.
size_t bw_search_size(void);

/// The best line. `memory` holds at least bw_search_size() bytes, aligned for double; it is only
/// scratch, and one per thread. BW_NO_ROOM: too little memory. BW_LIMIT: the budget ended first; *out
/// then holds the best line of the depths searched through, and cut_short is set.
bw_status bw_best(const bw_break *b, const bw_search_def *def, void *memory, size_t size,
                  bw_answer *out);

#endif
