/* SPDX-License-Identifier: GPL-3.0-or-later */
/// One pocket card, front or back. Private to card*.c.
#ifndef BW_REPORT_CARD_H
#define BW_REPORT_CARD_H

#include "report/teach.h"

/// Type of a card's words, bold, and of its head, points.
#define BW_CARD_TYPE 8.0
#define BW_CARD_HEAD_TYPE 10.0

typedef struct bw_pocket_card {
    const bw_scheme *scheme;
    int stage, spot;
    bw_box inside; ///< the card less its quiet edge
} bw_pocket_card;

void bw_card_front(bw_ink *ink, const bw_pocket_card *card);
void bw_card_back(bw_ink *ink, const bw_pocket_card *card);

/// Whether all ball places of the scheme have a line on it.
bool bw_card_holds(const bw_pocket_card *card);

/// Points per metre of the charts on that side, 0 when there are none.
double bw_card_scale(const bw_pocket_card *card, bool back);

#endif
