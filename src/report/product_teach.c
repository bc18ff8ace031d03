/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What is handed out, on paper and as the page for phones.
#include "report/handout.h"
#include "report/product.h"
#include "report/product_part.h"
#include <stdlib.h>

/// Fills in what the asker leaves to us.
static void complete(bw_order *o) {
    bw_today(o->date);
    o->teach.scheme = &o->scheme;
    o->teach.weak = &o->weak;
    o->teach.date = o->date;
    o->teach.paper = o->paper;
}

static bw_status page(const void *self, int number, bw_ink *ink) {
    const bw_order *o = self;
    if (bw_cancelled(&o->watch)) return BW_LIMIT;
    return o->product->page(&o->teach, number, o->sheets, ink);
}

bw_status bw_open_handed_out(bw_order *o, bw_document *out, bw_text *why) {
    complete(o);
    out->pages.page = page;
    out->pages.count = o->sheets = o->product->count(&o->teach);
    if (o->sheets > 0) return BW_OK;
    bw_put(why, "a card of that size does not fit on the paper, or not all ball places on it.");
    return BW_BAD_INPUT;
}

static bw_status put_html(const void *self, bw_text *out) {
    const bw_order *o = self;
    void *memory = malloc(BW_INK_PAGE_BYTES);
    if (!memory) return BW_NO_ROOM;
    bw_ink *ink = bw_ink_in(memory, BW_INK_PAGE_BYTES);
    ink->lines = o->lines;
    const bw_status status = bw_handout(&o->teach, ink, out);
    free(memory);
    return status;
}

bw_status bw_open_handout(bw_order *o, bw_document *out, bw_text *why) {
    (void)why;
    complete(o);
    out->room = BW_HANDOUT_BYTES;
    out->text = put_html;
    return BW_OK;
}
