/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A file that is either whole or not there: its bytes gather elsewhere and are saved at the end, in the
/// way scheme files are (links kept, devices written through). Private to this room.
#ifndef BW_PAINT_WHOLE_FILE_H
#define BW_PAINT_WHOLE_FILE_H

#include "core/base.h"
#include "core/text.h"
#include <stdio.h>

typedef struct bw_whole_file {
    FILE *stream;    ///< write, read and seek here
    char path[4096]; ///< where it will be
} bw_whole_file;

/// BW_OK, or BW_FILE with one sentence in *why.
bw_status bw_whole_open(bw_whole_file *file, const char *path, bw_text *why);

/// Makes it appear; after any failure nothing is left behind. `status` other than BW_OK drops it.
bw_status bw_whole_close(bw_whole_file *file, bw_status status, bw_text *why);

#endif
