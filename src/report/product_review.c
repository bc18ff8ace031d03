/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What was seen in a season's breaks, with the model beside it or without.
#include "report/product_part.h"
#include "report/review_board.h"

static bw_status page(const void *self, int number, bw_ink *ink) {
    const bw_order *o = self;
    return bw_review_page(&o->review.review, number, o->paper, ink);
}

static bw_status put_text(const void *self, bw_text *out) {
    bw_review_text(&((const bw_order *)self)->review.review, out);
    return BW_OK;
}

static bool put_json(const void *self, FILE *out) {
    const bw_order *o = self;
    if (o->width > 0) return bw_review_board(out, &o->review.review, o->width);
    bw_review_json(out, &o->review.review);
    return true;
}

static void drop(void *self) {
    bw_review_drop(&((bw_order *)self)->review);
}

bw_status bw_open_review(bw_order *o, bw_document *out, bw_text *why) {
    out->close = drop;
    out->pages.title = "Review of the season's breaks";
    const bw_status status =
        bw_review_load(o->team, o->modelled, o->units, o->watch, &o->review, &o->error);
    if (status != BW_OK) {
        bw_put(why, "the team file: ");
        bw_put(why, o->error.message);
        bw_put_char(why, '.');
        return status;
    }
    out->pages.count = bw_review_pages(&o->review.review);
    out->pages.page = page;
    out->room = BW_REVIEW_BYTES;
    out->text = put_text;
    out->json = put_json;
    return BW_OK;
}
