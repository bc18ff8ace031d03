/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Tables from a spreadsheet into the team file: all rows or none, and every row that cannot be taken is
/// named with its line, its column and one sentence. The first row names the columns; docs/team.md
/// lists them.
#ifndef BW_TEAM_IMPORT_H
#define BW_TEAM_IMPORT_H

#include "team/imported.h"
#include "team/team.h"
#include <stdbool.h>

typedef enum bw_csv_sheet {
    BW_SHEET_ROSTER,
    BW_SHEET_SPLITS,
    BW_SHEET_BREAKS,
    BW_SHEET_COUNT
} bw_csv_sheet;

/// "roster", "splits", "breaks"; NULL past the last.
const char *bw_sheet_id(int sheet);

/// How rows are taken.
typedef struct bw_import_how {
    int64_t now;   ///< seconds since 1970; 0: no clock, and no day is ahead
    bool keep_odd; ///< rows that hold what is hardly meant (odd.h) are taken and noted, not refused
} bw_import_how;

/// BW_OK when all of it is in the file. Otherwise none of it is: *error says so, and faults tell why when
/// rows are at fault.
bw_status bw_team_import(bw_team *team, bw_csv_sheet sheet, const char *text, size_t length,
                         bw_import_how how, bw_import *done, bw_error *error);

#endif
