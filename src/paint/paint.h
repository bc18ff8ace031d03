/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Ink to paper: PDF, SVG and PNG by cairo and pango with the bundled font. The same ink and theme give
/// the same bytes, whatever the machine's fonts. Every file is whole or not there. Where a function
/// answers other than BW_OK, *why holds one sentence.
#ifndef BW_PAINT_PAINT_H
#define BW_PAINT_PAINT_H

#include "draw/ink.h"
#include "draw/theme.h"
#include "paint/fonts.h"

/// What a PDF says of itself. Strings are UTF-8 and may be NULL.
typedef struct bw_about {
    const char *title, *author, *subject;
    const char *date; ///< ISO 8601, e.g. "2025-03-01T12:00:00Z"; NULL: no date in the file
} bw_about;

typedef struct bw_pdf bw_pdf;

/// Opens a PDF of many pages, tagged, with an outline made of the pages' headings. The caller owns it;
/// NULL with *why on failure. `fonts` and `theme` must outlive it.
bw_pdf *bw_pdf_open(const char *path, const bw_about *about, bw_fonts *fonts, const bw_theme *theme,
                    bw_text *why);

/// Adds a page. After a failure only bw_pdf_close may follow.
bw_status bw_pdf_page(bw_pdf *pdf, const bw_ink *ink, bw_text *why);

/// Finishes the file and frees `pdf`. Nothing appears at the path when any page failed, or when
/// `keep` is false.
bw_status bw_pdf_close(bw_pdf *pdf, bool keep, bw_text *why);

/// Smallest and largest resolution of a PNG, dots per inch.
enum { BW_DPI_MIN = 36, BW_DPI_MAX = 600 };

/// One page as PNG. BW_BAD_INPUT: dpi out of range, or a letter the font does not have.
bw_status bw_paint_png(const char *path, const bw_ink *ink, bw_fonts *fonts, const bw_theme *theme,
                       double dpi, bw_text *why);

/// The page into the caller's pixels, row by row, 0x00RRGGBB, width x height of them with no gaps: a
/// frame of a film, or a test. The page is stretched to fill them. BW_LIMIT: more than 20000 a side.
bw_status bw_paint_pixels(const bw_ink *ink, bw_fonts *fonts, const bw_theme *theme, int width,
                          int height, uint32_t *pixels, bw_text *why);

/// One page as SVG with the font inside the file.
bw_status bw_paint_svg(const char *path, const bw_ink *ink, const bw_theme *theme, bw_text *why);

#endif
