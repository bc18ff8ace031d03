/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Sharing on the local network: an act with an end. Whether it is wanted, till when, under which
/// address, and with which code the next device joins.
#ifndef BW_SERVE_SHARE_H
#define BW_SERVE_SHARE_H

#include "serve/guard.h"
#include "serve/join.h"

enum { BW_SHARE_MINUTES = 120, BW_SHARE_MINUTES_MAX = 720, BW_ADDRESS_LINE = 128 };

typedef struct bw_share {
    bool wanted;                   ///< by the coach
    bool open;                     ///< the second listener is there
    double until;                  ///< s, on the server's clock
    char base[BW_ADDRESS_LINE];    ///< "http://192.168.1.5:7461/"
    char refused[BW_ADDRESS_LINE]; ///< why it could not be opened, one sentence
    bw_join join;
} bw_share;

/// Wants it for so many minutes from now.
void bw_share_want(bw_share *share, int minutes, double now);

/// Whether it should be open now; its time may have run out.
bool bw_share_due(bw_share *share, double now);

/// The address with the code in its fragment, for a QR picture.
void bw_share_link(const bw_share *share, bw_text *out);

#endif
