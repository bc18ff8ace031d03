/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What is looked at before anything is done for a request: where it came in, for whom it was meant,
/// and which page sent it. A name that someone pointed at this computer, a page of another site, a
/// second header that another reader might take for the first: all are turned away here.
#ifndef BW_SERVE_GUARD_H
#define BW_SERVE_GUARD_H

#include "core/base.h"

enum { BW_HOST_SIZE = 80, BW_DOOR_NAMES = 4 };

/// A way in: this computer only, or the local network.
typedef struct bw_door {
    bool shared;
    int name_count;
    char names[BW_DOOR_NAMES][BW_HOST_SIZE]; ///< exact values of Host, "127.0.0.1:7460"
} bw_door;

/// The headers that matter, and how often each came. A value that came twice, or is too long for its
/// room, counts as two.
typedef struct bw_heads {
    int hosts, origins, secrets, sites, matches, lengths, codings;
    char host[BW_HOST_SIZE];
    char origin[BW_HOST_SIZE + 8];
    char secret[40]; ///< Breakwater-Secret
    char site[16];   ///< Sec-Fetch-Site, where the browser sends it
    char match[40];  ///< If-Match
    char length[24]; ///< Content-Length
} bw_heads;

/// Notes one header of a request; those that do not matter are passed over.
void bw_heads_note(bw_heads *heads, const char *name, const char *value);

/// Whether a method only asks.
bool bw_is_reading(const char *method);

/// 0: go on. Otherwise the status to answer with, and one sentence in *why. `api`: the path is not that
/// of a part of the page.
int bw_guard(const bw_door *door, const char *method, const bw_heads *heads, bool api,
             const char **why);

/// Whether the browser says that it is our own page, or the person at the address line, who asks. Another
/// page cannot make it say so; another program can.
bool bw_from_own_page(const bw_door *door, const bw_heads *heads);

/// Bytes of body announced; -1 when that is no number.
long long bw_heads_length(const bw_heads *heads);

#endif
