/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The parts of what is handed out: one row of a table each. A new part is a new row here; --only and
/// the help list what the table has.
#ifndef BW_CLI_TEACH_PARTS_H
#define BW_CLI_TEACH_PARTS_H

#include "cli/teach_job.h"

typedef struct bw_teach_part {
    const char *name; ///< as --only has it
    const char *file; ///< its name in the folder
    bool weak;        ///< it needs the weakest rotations, which take a test of each stage
    /// Makes the file, or folder of files, whole at `path`, or nothing. *pages: of paper, 0 for none, -1
    /// when the scheme has nothing to make it of. Returns the exit code after saying what went wrong;
    /// BW_EXIT_INTERRUPTED without a word.
    int (*make)(const bw_teach_job *job, const char *path, int *pages);
} bw_teach_part;

/// NULL past the last.
const bw_teach_part *bw_teach_part_at(int index);

/// Pages to be painted into one PDF: `page` draws number 1 to `count` into the ink.
typedef struct bw_teach_pages {
    const char *what; ///< after the scheme's name in the PDF's title: "packet"
    int count;
    bw_status (*page)(const bw_teach *teach, int number, int count, bw_ink *ink);
} bw_teach_pages;

/// Paints them, looking for an interruption between pages. Returns the exit code as `make` does.
int bw_teach_pdf(const bw_teach_job *job, const char *path, const bw_teach_pages *pages);

#endif
