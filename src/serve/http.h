/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A listener that speaks HTTP: libmicrohttpd on one side, the site on the other. The only file that
/// knows the library.
#ifndef BW_SERVE_HTTP_H
#define BW_SERVE_HTTP_H

#include "serve/site.h"
#include "serve/slow.h"

/// What all listeners share.
typedef struct bw_house {
    bw_site site;
    bw_slow slow;
    double (*clock)(void *self); ///< s, never going back
    void *clock_self;
} bw_house;

typedef struct bw_listener bw_listener;

/// Begins to answer at a listening socket, which it closes in the end, also when it cannot begin (NULL).
bw_listener *bw_http_open(bw_house *house, const bw_door *door, int file);

/// To be called a few times a second: shuts connections whose time is over.
void bw_http_sweep(bw_listener *listener);

/// Ends it and waits for what is under way. The site's lock must not be held.
void bw_http_close(bw_listener *listener);

#endif
