/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What the server knows, and one request to it.
#ifndef BW_SERVE_REQUEST_H
#define BW_SERVE_REQUEST_H

#include "serve/guard.h"
#include "serve/job.h"
#include "serve/rate.h"
#include "serve/reply.h"
#include "serve/session.h"
#include "serve/share.h"
#include "serve/target.h"

typedef struct bw_site {
    bw_store store;       ///< guards itself
    const char *team;     ///< the team file; NULL: the board was opened without one
    bw_job job;           ///< guards itself
    pthread_mutex_t lock; ///< guards what follows
    bw_sessions sessions;
    bw_share share;
    bw_rate_limit rate;
} bw_site;

/// A request whose head has been read.
typedef struct bw_ask {
    const bw_door *door;
    const char *method;
    const char *raw; ///< target as it came
    bw_heads heads;
    char address[BW_ADDRESS_SIZE]; ///< who asks
    double now;                    ///< s
    // What bw_site_admit finds out:
    bw_target target;
    const struct bw_route *route; ///< NULL: a part of the page
    const struct bw_asset *asset;
    int id;                    ///< the number in the path, where the route has one
    bw_session who;            ///< a copy, for the one in the list may go at any time
    const bw_session *session; ///< &who, NULL for nobody
    // Filled in when it has come:
    const char *body;
    size_t length;
} bw_ask;

#endif
