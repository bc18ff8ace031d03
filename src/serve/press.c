/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "serve/press.h"

#include <stdlib.h>

static bool set_up(bw_press *press, bw_text *why) {
    if (!press->fonts) press->fonts = bw_fonts_open(why);
    if (!press->memory) press->memory = malloc(BW_INK_PAGE_BYTES);
    if (press->fonts && !press->memory) bw_put(why, BW_NO_MEMORY_SENTENCE);
    return press->fonts && press->memory;
}

bw_status bw_press_pdf(bw_press *press, const bw_pages *pages, const bw_theme *theme, bw_bytes *out,
                       bw_text *why) {
    bw_scratch scratch;
    if (!set_up(press, why)) return BW_NO_ROOM;
    bw_status status = bw_scratch_open(&scratch, "pages.pdf", why);
    if (status != BW_OK) return status;
    bw_ink *ink = bw_ink_in(press->memory, BW_INK_PAGE_BYTES);
    status = bw_pages_pdf(pages, scratch.path, press->fonts, theme, ink, why);
    if (status == BW_OK && !bw_scratch_take(&scratch, out)) {
        bw_put(why, "The finished pages could not be read back.");
        status = BW_FILE;
    }
    bw_scratch_close(&scratch);
    return status;
}

void bw_press_close(bw_press *press) {
    if (press->fonts) bw_fonts_close(press->fonts);
    free(press->memory);
    *press = (bw_press){NULL, NULL};
}
