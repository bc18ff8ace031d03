/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The bundled font, the same on every machine: it lives in the program and is handed to pango through
/// a font configuration of its own, so that neither the system's fonts nor its settings are seen.
#ifndef BW_PAINT_FONTS_H
#define BW_PAINT_FONTS_H

#include "core/text.h"
#include <stddef.h>

typedef struct bw_fonts bw_fonts;

/// A set of fonts, the caller's alone till it is closed; NULL with a sentence in *why when the font
/// cannot be set up. Any thread may open one at any time; a set serves one thread at a time. The program
/// holds as many sets as were ever open at once, two descriptors each, to its end: a closed one is the
/// next to be opened.
bw_fonts *bw_fonts_open(bw_text *why);

/// Gives the set back. NULL is let pass.
void bw_fonts_close(bw_fonts *fonts);

/// Width of one line of text as it will be painted, kerning included, points.
double bw_fonts_width(bw_fonts *fonts, const char *text, double size, int bold);

/// The font files as they are in the program: Regular, or Bold.
const unsigned char *bw_font_file(int bold, size_t *size);

#endif
