/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Time that a connection is given: for the head of a request, and for all the rest of it. A client that
/// sends a byte now and then never falls silent, so silence is not what is measured. Browsers keep
/// connections that ask for nothing, so when a door is full those have less time.
#ifndef BW_SERVE_SLOW_H
#define BW_SERVE_SLOW_H

#include "core/base.h"
#include <pthread.h>

enum {
    BW_OWN_CONNECTIONS = 64, ///< at each of the two doors of this computer's own: then it is full
    BW_NETWORK_CONNECTIONS = 480, ///< at the network's: 60 phones, six each, and some room
    BW_SPARE_CONNECTIONS = 64,    ///< taken on at a full door, until others have been let go
    BW_CONNECTIONS = 2 * BW_OWN_CONNECTIONS + BW_NETWORK_CONNECTIONS + 3 * BW_SPARE_CONNECTIONS,
    BW_HEAD_SECONDS = 15, ///< from the connection, or the last answer, to the end of a head
    BW_FULL_SECONDS = 2,  ///< the same while the door is full
    BW_REST_SECONDS = 60  ///< from the end of the head until the answer has been sent
};

typedef struct bw_slow_place {
    int file;         ///< socket; 0 marks a free place
    const void *door; ///< at which it came in
    bool asking;      ///< between the head of a request and the end of its answer
    double since;     ///< s
} bw_slow_place;

typedef struct bw_slow {
    pthread_mutex_t lock;
    bw_slow_place places[BW_CONNECTIONS];
} bw_slow;

void bw_slow_open(bw_slow *slow);
void bw_slow_close(bw_slow *slow);

/// A connection has come in at a door, or begins to ask (the head is there), or has its answer. False
/// when there is no room for one more.
bool bw_slow_note(bw_slow *slow, int file, const void *door, bool asking, double now);

/// It is about to be closed.
void bw_slow_forget(bw_slow *slow, int file);

/// Shuts those of a door whose time is over. `most`: how many it has when it is full.
void bw_slow_sweep(bw_slow *slow, const void *door, int most, double now);

#endif
