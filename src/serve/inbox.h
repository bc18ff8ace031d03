/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Quiz answers that players have sent, in order, until the coach's page takes them.
#ifndef BW_SERVE_INBOX_H
#define BW_SERVE_INBOX_H

#include "serve/session.h"

enum { BW_INBOX_SIZE = 256, BW_ANSWER_SIZE = 1024 };

typedef struct bw_inbox_entry {
    int device; ///< the session's id
    char name[BW_DEVICE_SIZE];
    char text[BW_ANSWER_SIZE]; ///< one line of plain text
} bw_inbox_entry;

typedef struct bw_inbox {
    int count;
    bw_inbox_entry list[BW_INBOX_SIZE];
} bw_inbox;

/// BW_BAD_INPUT: empty or not one plain line; BW_LIMIT: too long, or the box is full.
bw_status bw_inbox_put(bw_inbox *inbox, const bw_session *from, const char *text, size_t length);

#endif
