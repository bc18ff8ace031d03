/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The ink list: what is put in comes out, and running out of memory is whole and reported.
#include "draw/ink.h"
#include "harness.h"

#include <stdlib.h>

static void draw_something(bw_ink *ink) {
    bw_ink_page(ink, 200, 100);
    bw_ink_begin(ink, BW_TAG_FIGURE, "a square");
    bw_ink_fill(ink, BW_ROLE_LINE);
    bw_ink_move(ink, 1, 2);
    bw_ink_line(ink, 3, 4);
    bw_ink_curve(ink, 5, 6, 7, 8, 9, 10);
    bw_ink_shut(ink);
    bw_ink_clip(ink, 0, 0, 50, 60);
    bw_ink_dashed(ink, BW_ROLE_BALL, 1.5, 4, 2);
    bw_ink_move(ink, -1, -2);
    bw_ink_unclip(ink);
    bw_ink_text(ink, BW_ROLE_TEXT, BW_BOLD, 12, BW_CENTRE_ALIGN, 11, 22, "caf\xC3\xA9");
    bw_ink_end(ink);
}

static void walks_back_what_was_drawn(void) {
    static double memory[512];
    bw_ink *ink = bw_ink_in(memory, sizeof memory);
    draw_something(ink);
    CHECK_INT(ink->status, BW_OK);
    CHECK_INT(ink->items, 7);
    CHECK_INT(ink->open, 0);
    CHECK_INT(ink->need, ink->used);
    CHECK_SAME(ink->width, 200);

    static const int kinds[] = {BW_INK_OPEN,   BW_INK_FILL, BW_INK_CLIP, BW_INK_STROKE,
                                BW_INK_UNCLIP, BW_INK_TEXT, BW_INK_SHUT};
    static const int numbers[] = {0, 14, 4, 3, 0, 2, 0};
    int i = 0, bytes = (int)sizeof *ink;
    for (const bw_ink_item *item = bw_ink_first(ink); item; item = bw_ink_next(ink, item), i++) {
        CHECK_INT(item->kind, kinds[i]);
        CHECK_INT(item->numbers, numbers[i]);
        CHECK_INT(item->bytes % 8, 0);
        CHECK((size_t)item % sizeof(double) == 0);
        bytes += item->bytes;
        if (item->kind == BW_INK_FILL) {
            static const double path[] = {BW_MOVE, 1, 2, BW_LINE, 3, 4,  BW_CURVE,
                                          5,       6, 7, 8,       9, 10, BW_SHUT};
            CHECK(memcmp(bw_ink_numbers(item), path, sizeof path) == 0);
            CHECK_INT(item->role, BW_ROLE_LINE);
        }
        if (item->kind == BW_INK_STROKE) {
            CHECK_SAME(item->size, 1.5);
            CHECK_SAME(item->dash[0], 4);
            CHECK_SAME(item->dash[1], 2);
        }
        if (item->kind == BW_INK_TEXT) {
            CHECK_INT(item->text, 5);
            CHECK(memcmp(bw_ink_string(item), "caf\xC3\xA9", 5) == 0);
            CHECK_INT(item->style, BW_BOLD);
            CHECK_INT(item->align, BW_CENTRE_ALIGN);
        }
    }
    CHECK_INT(i, 7);
    CHECK_INT(bytes, ink->used);
}

/// Every size from nothing to enough: the need never changes, and what does not fit is not half there.
static void running_out_is_whole(void) {
    static double memory[512];
    bw_ink *ink = bw_ink_in(memory, sizeof memory);
    draw_something(ink);
    const int need = ink->need;
    for (int size = (int)sizeof(bw_ink); size <= need + 8; size++) {
        unsigned char *block =
            malloc((size_t)size); // exact, so that the sanitiser sees a step too far
        bw_ink *small = bw_ink_in(block, (size_t)size);
        draw_something(small);
        CHECK_INT(small->need, need);
        CHECK_INT(small->status, size < need ? BW_NO_ROOM : BW_OK);
        CHECK_INT(small->items, size < need ? 0 : 7);
        CHECK((bw_ink_first(small) == NULL) == (size < need));
        free(block);
    }
    CHECK(bw_ink_in(memory, sizeof(bw_ink) - 1) == NULL);
    CHECK(bw_ink_in(NULL, 1000) == NULL);
}

static void a_page_starts_clean(void) {
    static double memory[64];
    bw_ink *ink = bw_ink_in(memory, sizeof memory);
    draw_something(ink);
    CHECK_INT(ink->status, BW_NO_ROOM);
    bw_ink_page(ink, 10, 20);
    CHECK_INT(ink->status, BW_OK);
    CHECK_INT(ink->items, 0);
    CHECK(bw_ink_first(ink) == NULL);
    CHECK_INT(ink->room, sizeof memory);
}

int main(int argc, char **argv) {
    RUN(walks_back_what_was_drawn);
    RUN(running_out_is_whole);
    RUN(a_page_starts_clean);
    return test_report(argc, argv);
}
