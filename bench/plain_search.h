/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The plain way to the same answer as bw_best: the textbook's depth-first search for the maximum.
/// Every ply of every state is played from its beginning to its end; nothing is bounded away, put in
/// order, shared between plies, remembered, or known from a shallower search. The model is the same:
/// which plies there are, what each does and what a shot is worth.
#ifndef BW_BENCH_PLAIN_SEARCH_H
#define BW_BENCH_PLAIN_SEARCH_H

#include "core/search.h"

/// The best line with at most `depth` plies (0 to BW_DEEPEST) before a shot that leaves the stick within
/// `seconds`. Among equals the one with the lowest ranks, as bw_best has it.
typedef struct plain_line {
    double worth; ///< goals; 0 when there is no line
    int count;    ///< plies, the shot included
    bw_ply plies[BW_DEEPEST + 1];
    uint64_t played; ///< plies played
} plain_line;

void plain_search(const bw_break *b, int depth, double seconds, plain_line *out);

/// Whether bw_best found the same worth, to the last bit, and the same plies.
bool plain_agrees(const plain_line *plain, const bw_answer *answer);

#endif
