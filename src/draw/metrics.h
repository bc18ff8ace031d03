/* SPDX-License-Identifier: GPL-3.0-or-later */
/// How wide text is, without a font library: the bundled font's advance widths, and the breaking of
/// paragraphs into lines. Kerning is left out: it only ever moves a line by a percent or two, mostly
/// narrower, so what fits here fits on paper (tests/paint/test_fonts.c holds it to that).
#ifndef BW_DRAW_METRICS_H
#define BW_DRAW_METRICS_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

/// Heights of B612 as shares of the type size (measured on the font's own outlines).
#define BW_CAP_HEIGHT 0.76
#define BW_X_HEIGHT 0.56
#define BW_DESCENT 0.26

typedef struct bw_glyph_width {
    uint16_t code;  ///< Unicode code point
    uint16_t width; ///< thousandths of the type size
} bw_glyph_width;

extern const bw_glyph_width bw_advances[];
extern const int bw_advance_count;

/// The code point at s, and how many of the `length` > 0 bytes it takes in *bytes (at least 1). Bytes
/// that are no UTF-8 count one by one as U+FFFD.
uint32_t bw_code_point(const char *s, size_t length, int *bytes);

/// True when the bundled font can show this code point.
bool bw_glyph_known(uint32_t code);

/// Width of text in points. A code point the font lacks counts as one type size.
double bw_text_width(const char *s, size_t length, double size);
double bw_width(const char *s, double size); ///< the same for a terminated string

/// One line of a broken paragraph: bytes of the paragraph's text, spaces at the ends left out.
typedef struct bw_span {
    int32_t start, length;
} bw_span;

/// Breaks a paragraph into lines at most `width` points wide, at spaces and after hyphens, and where
/// the text has a newline; a word wider than a line is cut. As few lines as possible, and the last
/// one is no lonely word: when it would hold one short word, the line before gives it another.
/// Writes at most `room` lines and returns how many there are in all.
int bw_wrap(const char *s, double size, double width, bw_span *lines, int room);

#endif
