/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The least value of a bounded function that is neither smooth nor of one valley: a global stage
/// (controlled random search with local mutation) and a local polish (subplex), both of NLopt.
/// Sources: P. Kaelo, M. M. Ali, J. Optim. Theory Appl. 130, 2006; T. Rowan, thesis, Austin 1990;
/// S. G. Johnson, the NLopt library. Same seed and budget: same sequence, same answer.
#ifndef BW_TUNE_MINIMISE_H
#define BW_TUNE_MINIMISE_H

#include "core/base.h"

typedef struct bw_minimise {
    int n; ///< variables, 1 to 32
    const double *low, *high;
    const double *step; ///< first step of the polish, each above 0
    int budget;         ///< evaluations in all, at least 10
    double polish;      ///< share of them kept for the polish, [0, 1]
    int population;     ///< of the global stage; 0: 10 (n + 1), what the method's authors use
    int rounds; ///< times the global stage begins anew, at least 1: more where valleys are many
    uint64_t seed;
    /// The value at x[n]; called from the thread that called bw_minimise_run.
    double (*value)(void *self, const double *x);
    bool (*stop)(void *self); ///< looked at before every evaluation; may be NULL
    void *self;
} bw_minimise;

/// Goes from x[n], which is the first point looked at, and leaves the best point found in x and its
/// value in *least. BW_LIMIT: stopped early (x is the best so far); BW_BAD_INPUT: bounds, budget or n
/// out of range, or x outside the bounds; BW_NO_ROOM: no memory.
bw_status bw_minimise_run(const bw_minimise *problem, double *x, double *least);

#endif
