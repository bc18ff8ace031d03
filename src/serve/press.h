/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Pages into the bytes of a PDF. Fonts and ink are opened with the first and kept; one thread at a time.
#ifndef BW_SERVE_PRESS_H
#define BW_SERVE_PRESS_H

#include "draw/sheet.h"
#include "paint/pages.h"
#include "serve/scratch.h"

typedef struct bw_press {
    bw_fonts *fonts;
    void *memory;
} bw_press;

/// BW_OK with *out the caller's, or one sentence in *why.
bw_status bw_press_pdf(bw_press *press, const bw_pages *pages, const bw_theme *theme, bw_bytes *out,
                       bw_text *why);

void bw_press_close(bw_press *press);

#endif
