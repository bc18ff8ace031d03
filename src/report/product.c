/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report/product.h"

#include "report/battery.h"
#include "report/cards.h"
#include "report/packet.h"
#include "report/product_part.h"
#include "report/quiz_sheet.h"
#include "report/wall.h"

enum { WEIGHED = BW_NEED_GROUND | BW_NEED_WEAK };

static const bw_product products[] = {
    {"test", "report.pdf", "what a break is worth", BW_NEED_GROUND, false, bw_open_test, NULL,
     NULL},
    {"strip", "strip.pdf", "", BW_NEED_GROUND, false, bw_open_strip, NULL, NULL},
    {"book", "book.pdf", "", 0, false, bw_open_book, NULL, NULL},
    {"packet", "packet.pdf", "packet", WEIGHED, true, bw_open_handed_out, bw_packet_pages,
     bw_packet_page},
    {"handout", "handout.html", "", WEIGHED, true, bw_open_handout, NULL, NULL},
    {"cards", "cards.pdf", "pocket cards", 0, true, bw_open_handed_out, bw_cards_pages,
     bw_cards_page},
    {"quiz", "quiz.pdf", "quiz", WEIGHED, true, bw_open_handed_out, bw_quiz_pages, bw_quiz_page},
    {"wall", "wall.pdf", "wall sheets", 0, true, bw_open_handed_out, bw_wall_pages, bw_wall_page},
    {"rehearsal", "rehearsal.pdf", "what to rehearse", WEIGHED, false, bw_open_rehearsal, NULL,
     NULL},
    {"tune", "tune.pdf", "", 0, false, bw_open_tuning, NULL, NULL},
    {"review", "review.pdf", "", BW_NEED_TEAM, false, bw_open_review, NULL, NULL},
};

const bw_product *bw_product_at(int index) {
    return index >= 0 && index < BW_COUNT(products) ? &products[index] : NULL;
}

const bw_product *bw_product_find(const char *id) {
    for (int i = 0; i < BW_COUNT(products); i++) {
        if (bw_same(products[i].id, id)) return &products[i];
    }
    return NULL;
}

bw_status bw_order_run(bw_order *order, int count) {
    bw_battery battery = {
        .ground = &order->ground, .trials = order->trials, .count = count, .watch = order->watch};
    return count > 0 ? bw_battery_run(&battery) : BW_OK;
}

/// The weakest rotations; of one stage where only that is rehearsed. A stage without a result has none.
static bw_status weigh(bw_order *order) {
    const bw_rehearsal *r = &order->rehearsal;
    const int only =
        r->stage_count == 1 ? order->scheme.stages[r->stages[0].script.stage].defenders : 0;
    const int all = bw_weak_trials(&order->scheme, order->teach.seed, order->trials);
    int count = 0;
    for (int i = 0; i < all; i++) {
        if (!only || order->trials[i].def.defence == only)
            order->trials[count++] = order->trials[i];
    }
    const bw_status status = bw_order_run(order, count);
    for (int i = 0; i < count && status == BW_OK; i++)
        bw_weak_take(&order->ground, &order->trials[i], &order->weak);
    order->weighed = status == BW_OK;
    return status;
}

static void put_title(bw_order *order) {
    bw_text t = bw_text_in(order->title, sizeof order->title);
    bw_put(&t, order->scheme.name);
    if (!order->product->what[0]) return;
    bw_put(&t, ": ");
    bw_put(&t, order->product->what);
}

bw_status bw_product_open(const bw_product *product, bw_order *order, bw_document *out,
                          bw_text *why) {
    *out = (bw_document){.self = order, .pages = {.title = order->title, .self = order}};
    order->product = product;
    put_title(order);
    bw_status status = BW_OK;
    if ((product->needs & BW_NEED_WEAK) && !order->weighed && !order->plain) status = weigh(order);
    if (status == BW_OK) status = product->open(order, out, why);
    if (status == BW_OK) return BW_OK;
    bw_document_close(out);
    if (why->used > 0) return status;
    if (status == BW_NO_ROOM) bw_put(why, BW_NO_MEMORY ".");
    if (status == BW_LIMIT) bw_put(why, "cancelled.");
    return status;
}
