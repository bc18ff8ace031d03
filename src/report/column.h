/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Setting plain text in columns: padding by characters, not bytes, and wrapping with an indent.
#ifndef BW_REPORT_COLUMN_H
#define BW_REPORT_COLUMN_H

#include "core/text.h"

/// Characters of a UTF-8 text.
int bw_columns(const char *text);

/// `text`, at most `width` of its characters.
void bw_put_cut(bw_text *out, const char *text, int width);

/// `text` and spaces up to `width` columns, at least one: a text too wide is cut.
void bw_put_left(bw_text *out, const char *text, int width);

/// Spaces and then x with `decimals` places, `width` columns in all.
void bw_put_right(bw_text *out, double x, int decimals, int width);

/// Words wrapped to `width` columns. The first line starts at column `at`, which is where `out` stands;
/// the others are indented by `indent`. Ends with a newline.
void bw_put_wrapped(bw_text *out, const char *words, int at, int indent, int width);

#endif
