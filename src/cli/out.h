/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Where a verb's result goes: standard output, or whole and at once to the file of --output.
#ifndef BW_CLI_OUT_H
#define BW_CLI_OUT_H

#include "cli/options.h"
#include <stdio.h>

typedef struct bw_out {
    FILE *stream;     ///< write the result here
    const char *path; ///< NULL or "-": standard output
    char *bytes;      ///< what was written, when it goes to a file
    size_t length;
} bw_out;

/// From here on what is written is for its owner's eyes only, also where a file that others could read is
/// replaced: it holds players.
void bw_out_private(void);

/// Opens the result for a verb. False when there is no memory, which has been said.
bool bw_out_open(const bw_args *args, bw_out *out);

/// Delivers the result; returns `code`, or BW_EXIT_FILE when it could not be written (said).
int bw_out_close(bw_out *out, int code);

/// Whether --output could be written: BW_EXIT_OK, or the code after saying why not. For work that takes
/// its time.
int bw_out_check(const bw_args *args);

/// Delivers bytes made elsewhere to --output or standard output. BW_EXIT_OK or BW_EXIT_FILE (said).
int bw_out_bytes(const bw_args *args, const void *bytes, size_t length);

/// Makes the folder when it is not there; *made tells whether it was. BW_EXIT_OK, or the code after saying
/// why not.
int bw_out_folder(const char *path, bool *made);

#endif
