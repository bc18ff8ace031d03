/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/pages.h"

bw_status bw_pages_draw(const bw_pages *pages, int number, bw_ink *ink, bw_text *why) {
    const bw_status status = pages->page(pages->self, number, ink);
    if (status == BW_NO_ROOM) bw_put(why, "A page has more on it than there is room for.");
    return status;
}

bw_status bw_pages_pdf(const bw_pages *pages, const char *path, bw_press *press,
                       const bw_theme *theme, bw_text *why) {
    const bw_about about = {.title = pages->title};
    bw_pdf *pdf = bw_pdf_open(path, &about, press->fonts, theme, why);
    if (!pdf) return BW_FILE;
    bw_status status = BW_OK;
    for (int n = 1; n <= pages->count && status == BW_OK; n++) {
        status = bw_pages_draw(pages, n, press->ink, why);
        if (status == BW_OK) status = bw_pdf_page(pdf, press->ink, why);
    }
    const bw_status closed = bw_pdf_close(pdf, status == BW_OK, why);
    return status == BW_OK ? closed : status;
}
