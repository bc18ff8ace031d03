/* SPDX-License-Identifier: GPL-3.0-or-later */
/// FNV-1a over the bits of values, field by field (never whole structs: padding differs). Guards
/// "same input, same answer": the golden hash must agree natively and in WebAssembly.
#ifndef BW_CORE_HASH_H
#define BW_CORE_HASH_H

#include "core/vec.h"
#include <stdint.h>

#define BW_HASH_START 14695981039346656037ull

uint64_t bw_hash_u64(uint64_t hash, uint64_t value);

/// Minus zero hashes as zero; NaN traps, for its bits are not portable.
uint64_t bw_hash_double(uint64_t hash, double value);
uint64_t bw_hash_vec(uint64_t hash, bw_vec value);

#endif
