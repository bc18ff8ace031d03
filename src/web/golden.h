/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The golden scene: one fixed walk through the core and the drawing, hashed. Native and WebAssembly,
/// gcc and clang, optimised or not must all come to the same values; and what the model comes to is
/// held in tests/web/golden.txt, so that it moves only when that was meant. Hashed part by part: the
/// part that moved says where to look.
#ifndef BW_WEB_GOLDEN_H
#define BW_WEB_GOLDEN_H

#include <stdint.h>

int bw_golden_count(void);

/// Name of part 0 to bw_golden_count() - 1, e.g. "motion".
const char *bw_golden_name(int part);

/// Hash of one part. Uses working memory of its own: not for two threads at once.
uint64_t bw_golden_part(int part);

/// Hash of all parts in order.
uint64_t bw_golden_hash(void);

#endif
