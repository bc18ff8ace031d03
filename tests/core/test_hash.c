/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The hash that guards "same input, same answer".
#include "core/hash.h"

#include "harness.h"

/// Test vectors of the 64-bit FNV-1a by its authors (G. Fowler, L. C. Noll, K.-P. Vo; IETF draft
/// "The FNV Non-Cryptographic Hash Algorithm", values from memory), for texts of one byte "a" and
/// six bytes "foobar", fed byte by byte here to check prime and start.
static uint64_t fnv_of_text(const char *s) {
    uint64_t hash = BW_HASH_START;
    for (; *s; s++)
        hash = (hash ^ (unsigned char)*s) * 0x100000001b3ull;
    return hash;
}

static void agrees_with_published_vectors(void) {
    CHECK(fnv_of_text("a") == 0xaf63dc4c8601ec8cull);
    CHECK(fnv_of_text("foobar") == 0x85944171f73967e8ull);
    CHECK(bw_hash_u64(BW_HASH_START, 0x6867666564636261ull) == fnv_of_text("abcdefgh"));
}

static void sees_every_bit(void) {
    const uint64_t base = bw_hash_u64(BW_HASH_START, 0);
    for (int bit = 0; bit < 64; bit++)
        CHECK(bw_hash_u64(BW_HASH_START, 1ull << bit) != base);
}

static void zero_has_one_hash(void) {
    CHECK(bw_hash_double(BW_HASH_START, -0.0) == bw_hash_double(BW_HASH_START, 0.0));
    CHECK(bw_hash_double(BW_HASH_START, 0x1p-1074) != bw_hash_double(BW_HASH_START, 0.0));
    CHECK(bw_hash_double(BW_HASH_START, 1) == bw_hash_u64(BW_HASH_START, 0x3ff0000000000000ull));
}

static void order_matters(void) {
    const uint64_t xy = bw_hash_vec(BW_HASH_START, bw_v(1, 2));
    CHECK(xy == bw_hash_double(bw_hash_double(BW_HASH_START, 1), 2));
    CHECK(xy != bw_hash_vec(BW_HASH_START, bw_v(2, 1)));
}

int main(int argc, char **argv) {
    RUN(agrees_with_published_vectors);
    RUN(sees_every_bit);
    RUN(zero_has_one_hash);
    RUN(order_matters);
    return test_report(argc, argv);
}
