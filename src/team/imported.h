/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What became of the rows of a table from a spreadsheet.
#ifndef BW_TEAM_IMPORTED_H
#define BW_TEAM_IMPORTED_H

#include "scheme/error.h"

enum { BW_MAX_FAULTS = 20 };

typedef struct bw_import {
    int rows;    ///< read, the header left out
    int added;   ///< new
    int changed; ///< players who are now otherwise than they were
    int known;   ///< in the file already, and unchanged
    int fault_count;
    int faults_left;                ///< beyond what is kept
    bw_error faults[BW_MAX_FAULTS]; ///< in the order of the rows
    int note_count;
    int notes_left;                ///< beyond what is kept
    bw_error notes[BW_MAX_FAULTS]; ///< of rows that were taken: what changed, and what is odd
} bw_import;

#endif
