/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A tuning's work kept in a file as it goes, so that one broken off goes on where it stopped. The
/// search is deterministic: the values of the first candidates are all it needs to be led there again.
///
/// The file is text: a first line with the tuning's hash, then one value a line, exact (hexadecimal).
/// A last line without its end is what a crash leaves; it is dropped.
#ifndef BW_CLI_TUNE_JOURNAL_H
#define BW_CLI_TUNE_JOURNAL_H

#include "cli/options.h"
#include "tune/tune.h"
#include <stdio.h>

typedef struct bw_tune_journal {
    FILE *file;     ///< NULL: no journal is kept
    double *values; ///< read from it
    int count;
} bw_tune_journal;

/// Opens the journal of --resume, if given, and gives the tuning what it holds. BW_EXIT_OK, or the code
/// after saying what is wrong: a file that is no journal, or one of another tuning.
int bw_tune_journal_open(const bw_args *args, bw_tuning *def, bw_tune_journal *journal);

/// Adds a value and hands it to the operating system at once.
void bw_tune_journal_add(bw_tune_journal *journal, double value);

void bw_tune_journal_close(bw_tune_journal *journal);

#endif
