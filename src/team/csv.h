/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Comma-separated values (RFC 4180) as spreadsheets write them: read a row at a time from memory, with
/// limits; written so that no cell can be taken for a formula.
///
/// Also read: semicolons or tabs between cells (spreadsheets write them where the comma is the decimal point; the
/// first line tells which it is), a byte order mark, lines ended by a line feed alone, blank lines (passed over), blanks around
/// a cell that is not quoted. Every cell must be one line of plain UTF-8.
#ifndef BW_TEAM_CSV_H
#define BW_TEAM_CSV_H

#include "scheme/error.h"
#include <stdio.h>

enum {
    BW_CSV_BYTES = 8 << 20, ///< in a file
    BW_CSV_ROWS = 20000,    ///< the header among them
    BW_CSV_COLUMNS = 24,
    BW_CSV_CELL = 512 ///< bytes of a cell, terminator included
};

typedef struct bw_csv {
    const char *text; ///< not owned
    size_t length, at;
    char delimiter; ///< ',', ';' or a tab: what stands most in the first line, outside quotes
    int line;       ///< of `at`, from 1
    int rows;       ///< read so far
} bw_csv;

typedef struct bw_csv_row {
    int line;                   ///< on which it begins
    int count;                  ///< cells
    int column[BW_CSV_COLUMNS]; ///< character of the line at which a cell begins, from 1
    char cell[BW_CSV_COLUMNS][BW_CSV_CELL];
} bw_csv_row;

/// BW_OK, or BW_LIMIT when the text is too long.
bw_status bw_csv_begin(bw_csv *csv, const char *text, size_t length, bw_error *error);

/// BW_OK with the next row; BW_NOT_FOUND at the end; BW_BAD_INPUT or BW_LIMIT with a sentence and its
/// place. A cell that bw_csv_put_text() guarded comes back as it was.
bw_status bw_csv_next(bw_csv *csv, bw_csv_row *row, bw_error *error);

/// Writes one cell with its comma (none before the first), quoted where it must be, and where a semicolon in it
/// could be taken for a separator. A text that a
/// spreadsheet would take for a formula (it begins with = + - @) is guarded by an apostrophe, and so is
/// one that begins with an apostrophe.
void bw_csv_put_text(FILE *out, int index, const char *text);

/// A number: at most four decimals. Nothing between the commas when it is not known.
void bw_csv_put_number(FILE *out, int index, bool known, double value);

void bw_csv_end_row(FILE *out);

#endif
