/* SPDX-License-Identifier: GPL-3.0-or-later */
/// FNV-1a, 64 bits, fed one byte at a time from the low end, so that the order of bytes in memory
/// does not matter.
#include "core/hash.h"

#include "core/base.h"

static const uint64_t fnv_prime = 1099511628211ull;

uint64_t bw_hash_u64(uint64_t hash, uint64_t value) {
    for (int i = 0; i < 8; i++) {
        hash ^= value & 0xff;
        hash *= fnv_prime;
        value >>= 8;
    }
    return hash;
}

uint64_t bw_hash_double(uint64_t hash, double value) {
    BW_ASSERT(value == value);
    union {
        double d;
        uint64_t u;
    } bits = {.d = value == 0 ? 0 : value};
    return bw_hash_u64(hash, bits.u);
}

uint64_t bw_hash_vec(uint64_t hash, bw_vec value) {
    return bw_hash_double(bw_hash_double(hash, value.x), value.y);
}
