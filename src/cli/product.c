/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli/product.h"
#include "cli/out.h"
#include "cli/pages.h"
#include "cli/progress.h"
#include "cli/say.h"
#include <stdlib.h>

enum { WHY_SIZE = 400 };

int bw_with_order(const bw_args *args, int (*work)(const bw_args *args, bw_order *order)) {
    bw_order *order = calloc(1, sizeof *order);
    if (!order) return bw_say_no_memory();
    const int code = work(args, order);
    free(order);
    return code;
}

int bw_make_product(const char *id, const bw_level *level, const char *doing, bw_order *order,
                    bw_document *out) {
    const bw_product *product = bw_product_find(id);
    char room[WHY_SIZE];
    bw_text why = bw_text_in(room, sizeof room);
    if ((product->needs & BW_NEED_GROUND) && !order->plain && !order->ground.scheme &&
        bw_ground_build(&order->scheme, level, &order->ground, &why) != BW_OK) {
        bw_say_error("%s.", why.data);
        return BW_EXIT_WRONG;
    }
    order->watch = bw_progress_begin(doing);
    order->doing = bw_progress_go_on;
    const bw_status status = bw_product_open(product, order, out, &why);
    if (bw_progress_end()) {
        bw_document_close(out);
        return bw_progress_interrupted();
    }
    if (status == BW_OK) return BW_EXIT_OK;
    bw_say_error("%s", why.data);
    return bw_exit_code(status);
}

int bw_deliver_words(const bw_args *args, const bw_document *document, FILE *out) {
    if (bw_option_given(args, "json"))
        return document->json(document->self, out) ? BW_EXIT_OK : bw_say_no_memory();
    char *room = malloc(document->room);
    if (!room) return bw_say_no_memory();
    bw_text text = bw_text_in(room, document->room);
    document->text(document->self, &text);
    fputs(room, out);
    free(room);
    return BW_EXIT_OK;
}

static int print(const bw_args *args, const bw_document *document) {
    bw_out out;
    if (!bw_out_open(args, &out)) return BW_EXIT_FILE;
    return bw_out_close(&out, bw_deliver_words(args, document, out.stream));
}

int bw_deliver(const bw_args *args, bw_document *document) {
    const int code = !document->text || bw_wants_pages(args)
                         ? bw_paint_pages(args, &document->pages)
                         : print(args, document);
    bw_document_close(document);
    return code;
}
