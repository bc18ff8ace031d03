/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Pages that can be drawn by number, and one PDF of all of them.
#ifndef BW_PAINT_PAGES_H
#define BW_PAINT_PAGES_H

#include "paint/paint.h"
#include "paint/press.h"

/// Pages to be painted: `page` draws number 1 to `count` into the ink.
typedef struct bw_pages {
    int count;
    const char *title; ///< of the PDF
    bw_status (*page)(const void *self, int number, bw_ink *ink);
    const void *self;
} bw_pages;

/// Writes them as one PDF with an open press. One sentence in *why when the answer is not BW_OK, and then
/// nothing is at `path` that was not there before.
bw_status bw_pages_pdf(const bw_pages *pages, const char *path, bw_press *press,
                       const bw_theme *theme, bw_text *why);

/// Draws one of them, and says so in *why when it does not fit.
bw_status bw_pages_draw(const bw_pages *pages, int number, bw_ink *ink, bw_text *why);

#endif
