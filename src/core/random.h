/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Seeded random numbers kept in the caller's state: the same seed gives the same roll-outs on every
/// machine. SplitMix64 (G. Steele, D. Lea, C. Flood, "Fast splittable pseudorandom number
/// generators", OOPSLA 2014).
#ifndef BW_CORE_RANDOM_H
#define BW_CORE_RANDOM_H

#include <stdint.h>

typedef struct bw_random {
    uint64_t state; ///< any value; set it to the seed
} bw_random;

uint64_t bw_random_next(bw_random *r);

/// Uniform in [0, 1), 53 bits.
double bw_random_unit(bw_random *r);

#endif
