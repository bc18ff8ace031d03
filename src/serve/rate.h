/* SPDX-License-Identifier: GPL-3.0-or-later */
/// How often an address may ask: a burst, then so many requests a second.
#ifndef BW_SERVE_RATE_H
#define BW_SERVE_RATE_H

#include "serve/join.h"

enum { BW_RATE_ADDRESSES = 64 };

typedef struct bw_rate_entry {
    char address[BW_ADDRESS_SIZE];
    double left; ///< requests it may make at once
    double last; ///< s
} bw_rate_entry;

typedef struct bw_rate_limit {
    double burst, per_second;
    bw_rate_entry list[BW_RATE_ADDRESSES];
} bw_rate_limit;

/// Counts one request of an address. False when it asks too often.
bool bw_rate_allow(bw_rate_limit *rate, const char *address, double now);

#endif
