/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Time that a connection is given: for the head of a request, and for all the rest of it. A client that
/// sends a byte now and then never falls silent, so silence is not what is measured.
#ifndef BW_SERVE_SLOW_H
#define BW_SERVE_SLOW_H

#include "core/base.h"
#include <pthread.h>

enum {
    BW_CONNECTIONS = 192, ///< at a time, at all doors together
    BW_HEAD_SECONDS = 15, ///< from the connection, or the last answer, to the end of a head
    BW_REST_SECONDS = 60  ///< from there until the answer has been sent
};

typedef struct bw_slow {
    pthread_mutex_t lock;
    int file[BW_CONNECTIONS]; ///< sockets; 0 for none
    double until[BW_CONNECTIONS];
} bw_slow;

void bw_slow_open(bw_slow *slow);
void bw_slow_close(bw_slow *slow);

/// A connection has so many seconds from now. False when there is no room for one more.
bool bw_slow_give(bw_slow *slow, int file, double seconds, double now);

/// It is about to be closed.
void bw_slow_forget(bw_slow *slow, int file);

/// Shuts those whose time is over.
void bw_slow_sweep(bw_slow *slow, double now);

#endif
