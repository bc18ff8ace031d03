/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Setting plain text in columns: padding by characters, not bytes, and wrapping with an indent.
#ifndef BW_REPORT_COLUMN_H
#define BW_REPORT_COLUMN_H

#include "core/text.h"

/// Characters of a UTF-8 text.
int bw_columns(const char *text);

/// `text` and spaces up to `width` columns, at least one: a text too wide is cut.
void bw_put_left(bw_text *out, const char *text, int width);

/// One column of a table's row: the last of its `width` columns stays empty.
typedef struct bw_column {
    const char *text;
    int width;
} bw_column;

/// A row of a table whose first column is column `at` of the line, which is where `out` stands. A text that
/// is too wide for its column goes on below, in the same one. No spaces at the end of a line; ends with a
/// newline.
void bw_put_row(bw_text *out, int at, const bw_column *columns, int count);

enum { BW_ROW_COLUMNS = 8 }; ///< of a row, at most

/// Spaces and then x with `decimals` places, `width` columns in all.
void bw_put_right(bw_text *out, double x, int decimals, int width);

/// Words wrapped to `width` columns. The first line starts at column `at`, which is where `out` stands;
/// the others are indented by `indent`. Ends with a newline.
void bw_put_wrapped(bw_text *out, const char *words, int at, int indent, int width);

#endif
