/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Many small pieces, each a bold head and a few words, flowing down columns and on to the next sheet.
#ifndef BW_REPORT_FLOW_H
#define BW_REPORT_FLOW_H

#include "draw/sheet.h"

typedef struct bw_piece {
    char head[160];
    char tag[24]; ///< at the right of the head, in a box; empty: none
    char body[1600];
} bw_piece;

/// What flows: `piece` fills number 0 to count - 1.
typedef struct bw_flow {
    int count;
    void (*piece)(const void *self, int i, bw_piece *out);
    const void *self;
} bw_flow;

/// Sets the pieces from `first` on into two columns of the box and returns the first that did not fit. At
/// least one a column is set, cut if it must be. With ink NULL only measures.
int bw_flow_page(bw_ink *ink, const bw_flow *flow, int first, bw_box box);

#endif
