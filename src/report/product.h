/* SPDX-License-Identifier: GPL-3.0-or-later */
/// All that can be made of a scheme or of a season, one row of a table each: command line, server and
/// page ask here alike. A new product is a new row.
#ifndef BW_REPORT_PRODUCT_H
#define BW_REPORT_PRODUCT_H

#include "report/document.h"
#include "report/order.h"

/// What a product is made from, beside a scheme or a team file.
typedef enum bw_need {
    BW_NEED_GROUND = 1, ///< of the scheme at the level asked for
    BW_NEED_WEAK = 2,   ///< its weakest rotations, which opening finds
    BW_NEED_TEAM = 4    ///< a team file in the scheme's place
} bw_need;

typedef struct bw_product {
    const char *id;   ///< "packet"
    const char *file; ///< its name among others
    const char *what; ///< after the scheme's name in the title; "" for nothing
    unsigned needs;   ///< of bw_need
    bool handed_out;  ///< to the players
    /// Fills in pages, text and JSON; one sentence or less in *why when the answer is not BW_OK.
    bw_status (*open)(bw_order *order, bw_document *out, bw_text *why);
    /// Of what is handed out on paper.
    int (*count)(const bw_teach *teach);
    bw_status (*page)(const bw_teach *teach, int page, int pages, bw_ink *ink);
} bw_product;

/// Number `index`; NULL past the last.
const bw_product *bw_product_at(int index);

/// The one with this id; NULL: there is none.
const bw_product *bw_product_find(const char *id);

/// Makes it. The document points into the order, which stays where it is until it is closed. Not BW_OK:
/// one sentence in *why, which begins small; BW_LIMIT with a cancelled watch: cancelled.
bw_status bw_product_open(const bw_product *product, bw_order *order, bw_document *out,
                          bw_text *why);

#endif
