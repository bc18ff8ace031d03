/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The table of products: each can be found by its name and opened from one order, one after another, and
/// gives what its row says; what cannot be made is refused in one sentence.
#include "harness.h"
#include "report/cards.h"
#include "report/product.h"
#include "scheme/fresh.h"
#include <stdlib.h>

static _Alignas(16) char memory[BW_INK_PAGE_BYTES];
static bw_order *order;

static void begin(void) {
    free(order);
    order = calloc(1, sizeof *order);
    bw_scheme_fresh(0, 3, &order->scheme);
    order->book_stage = -1;
    order->plain = true;
    order->teach.card_width = BW_CARD_WIDTH;
    order->teach.card_height = BW_CARD_HEIGHT;
    order->practice = (bw_practice_def){.players = 12, .minutes = 30, .goals = 1};
    order->rehearsal.stage_count = 1;
    CHECK_INT(bw_ground_build(&order->scheme, NULL, &order->ground, NULL), BW_OK);
}

static bw_status open_one(const char *id, bw_document *out, char *said) {
    bw_text why = bw_text_in(said, 200);
    return bw_product_open(bw_product_find(id), order, out, &why);
}

static void every_row_has_a_name_of_its_own(void) {
    for (int i = 0; bw_product_at(i); i++) {
        const bw_product *p = bw_product_at(i);
        CHECK(bw_product_find(p->id) == p);
        for (int k = 0; k < i; k++)
            CHECK(strcmp(bw_product_at(k)->file, p->file) != 0);
    }
    CHECK(!bw_product_at(-1) && !bw_product_find("nothing"));
}

static void one_order_makes_one_after_another(void) {
    static const char *const ids[] = {"book", "packet", "cards", "quiz", "wall", "rehearsal"};
    begin();
    for (int i = 0; i < BW_COUNT(ids); i++) {
        char said[200];
        bw_document document;
        CHECK_INT(open_one(ids[i], &document, said), BW_OK);
        CHECK_TEXT(said, "");
        CHECK(strstr(document.pages.title, order->scheme.name) == document.pages.title);
        bw_ink *ink = bw_ink_in(memory, sizeof memory);
        for (int n = 1; n <= document.pages.count; n++) {
            CHECK_INT(document.pages.page(document.pages.self, n, ink), BW_OK);
            CHECK(bw_ink_first(ink) != NULL);
        }
        CHECK(document.pages.count > 0);
        CHECK_INT(document.pages.page(document.pages.self, document.pages.count + 1, ink),
                  BW_NOT_FOUND);
        bw_document_close(&document);
    }
}

/// A stage of the book is that part of the whole book.
static void a_stage_of_the_book_is_a_part_of_it(void) {
    char said[200];
    bw_document whole, part;
    begin();
    CHECK_INT(open_one("book", &whole, said), BW_OK);
    int sum = 0;
    for (int s = 0; s < order->scheme.stage_count; s++) {
        order->book_stage = s;
        CHECK_INT(open_one("book", &part, said), BW_OK);
        CHECK(part.pages.count > 1);
        sum += part.pages.count;
    }
    CHECK(sum < whole.pages.count);
}

static void what_cannot_be_made_is_refused(void) {
    char said[200];
    bw_document document;
    begin();
    order->teach.card_width = 5000;
    CHECK_INT(open_one("cards", &document, said), BW_BAD_INPUT);
    CHECK(strstr(said, "a card of that size does not fit") == said);
    begin();
    const atomic_bool cancelled = true;
    order->plain = false;
    order->watch.cancel = &cancelled;
    CHECK_INT(open_one("packet", &document, said), BW_LIMIT);
    CHECK_TEXT(said, "cancelled.");
}

int main(int argc, char **argv) {
    RUN(every_row_has_a_name_of_its_own);
    RUN(one_order_makes_one_after_another);
    RUN(a_stage_of_the_book_is_a_part_of_it);
    RUN(what_cannot_be_made_is_refused);
    free(order);
    return test_report(argc, argv);
}
