/* SPDX-License-Identifier: GPL-3.0-or-later */
/// How often someone may ask: a burst, then so many requests a second.
#ifndef BW_SERVE_RATE_H
#define BW_SERVE_RATE_H

#include "core/text.h"

enum { BW_RATE_ENTRIES = 512, BW_RATE_NAME_SIZE = 56 };

typedef struct bw_rate_entry {
    char name[BW_RATE_NAME_SIZE]; ///< whose it is
    double left;                  ///< requests it may make at once
    double last;                  ///< s
} bw_rate_entry;

typedef struct bw_rate_limit {
    double burst, per_second;
    bw_rate_entry list[BW_RATE_ENTRIES];
} bw_rate_limit;

/// Counts one request of whoever has this name. False when that is too often.
bool bw_rate_allow(bw_rate_limit *rate, const char *name, double now);

#endif
