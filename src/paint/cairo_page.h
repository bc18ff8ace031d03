/* SPDX-License-Identifier: GPL-3.0-or-later */
/// One ink list onto a cairo context: the part PDF, PNG and film frames share.
#ifndef BW_PAINT_CAIRO_PAGE_H
#define BW_PAINT_CAIRO_PAGE_H

#include "draw/ink.h"
#include "draw/theme.h"
#include "paint/fonts.h"
#include <cairo.h>

/// Where structure goes while a page is painted; NULL when nobody wants it.
typedef struct bw_structure {
    void (*open)(void *self, cairo_t *cr, bw_tag tag, const char *text);
    void (*shut)(void *self, cairo_t *cr, bw_tag tag);
    void *self;
} bw_structure;

/// Paints the page at the context's own scale, one unit a point. BW_BAD_INPUT: a letter the font does
/// not have; BW_NO_ROOM: the list did not fit its memory; BW_FILE: cairo gave up.
bw_status bw_cairo_page(cairo_t *cr, const bw_ink *ink, bw_fonts *fonts, const bw_theme *theme,
                        const bw_structure *structure, bw_text *why);

#endif
