/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/press.h"
#include <stdlib.h>

bw_status bw_press_open(bw_press *press, bw_text *why) {
    if (!press->fonts && !(press->fonts = bw_fonts_open(why))) return BW_FILE;
    if (!press->ink) press->ink = bw_ink_in(malloc(BW_INK_PAGE_BYTES), BW_INK_PAGE_BYTES);
    if (press->ink) return BW_OK;
    bw_put(why, BW_NO_MEMORY_SENTENCE);
    return BW_NO_ROOM;
}

void bw_press_close(bw_press *press) {
    if (press->fonts) bw_fonts_close(press->fonts);
    free(press->ink);
    *press = (bw_press){NULL, NULL};
}
