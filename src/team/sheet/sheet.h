/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Inside src/team only: the columns of each sheet, and the cells of one row by column. A cell that cannot
/// be read marks the row; what comes after is still read, and the first fault counts.
#ifndef BW_TEAM_SHEET_SHEET_H
#define BW_TEAM_SHEET_SHEET_H

#include "core/base.h"
#include "team/csv.h"
#include "team/imported.h"
#include "team/odd.h"
#include "team/team.h"

typedef struct bw_sheet_column {
    const char *name;
    bool required;
} bw_sheet_column;

typedef struct bw_cells {
    const bw_sheet_column *columns;
    const bw_csv_row *row;
    const int *where;   ///< cell of each column, -1 when the file has it not
    bool decimal_comma; ///< "3,1" is a number
    bool keep_odd;
    bw_known *known; ///< what the row is held against
    bw_import *done; ///< where notes go
    bw_error *fault; ///< status BW_OK while the row is good
} bw_cells;

/// What a sheet is made of.
typedef struct bw_sheet_kind {
    const char *id;
    const bw_sheet_column *columns;
    int count;
    /// Stores one row. False with the fault marked, or with *error filled when the file itself failed.
    /// `shared` is what rows of one file know of each other, zeroed before the first.
    bool (*store)(bw_team *team, bw_cells *cells, void *shared, bw_import *done, bw_error *error);
} bw_sheet_kind;

enum { BW_SHARED_SIZE = 1024 };

extern const bw_sheet_kind bw_sheet_roster, bw_sheet_splits, bw_sheet_breaks;

/// The text of a column, "" when it is empty or not there.
const char *bw_cell_text(const bw_cells *cells, int column);

/// Marks the row: the column's name, then printf-style what is wrong. Always false.
bool bw_cell_fault(bw_cells *cells, int column, const char *format, ...)
    __attribute__((format(printf, 3, 4)));

/// Something odd in the row: noted and true when it is to be kept, otherwise the row is marked and false.
bool bw_cell_odd(bw_cells *cells, int column, const bw_odd *odd);

/// Notes something of a row that is taken, printf-style.
void bw_cell_note(bw_cells *cells, const char *format, ...) __attribute__((format(printf, 2, 3)));

/// A whole number from low to high into *out; an empty cell leaves it alone.
bool bw_cell_int(bw_cells *cells, int column, int64_t low, int64_t high, int64_t *out);

/// A decimal number such as 3.1 or -4, or 3,1 where a sheet's cells are parted by semicolons; an empty cell leaves *out alone.
bool bw_cell_real(bw_cells *cells, int column, double *out);

/// A text that fits; whether it does.
bool bw_cell_copy(bw_cells *cells, int column, char *to, size_t room);

/// Words with blanks or commas between: the next one from *at into `word`. False when there is none.
bool bw_cell_word(const char **at, char *word, size_t room);

#endif
