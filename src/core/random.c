/* SPDX-License-Identifier: GPL-3.0-or-later */
/// SplitMix64: one add and three mixes a number, full period, any seed good.
#include "core/random.h"

uint64_t bw_random_next(bw_random *r) {
    uint64_t z = (r->state += 0x9e3779b97f4a7c15ull);
    z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9ull;
    z = (z ^ (z >> 27)) * 0x94d049bb133111ebull;
    return z ^ (z >> 31);
}

double bw_random_unit(bw_random *r) {
    return (double)(bw_random_next(r) >> 11) * 0x1p-53;
}
