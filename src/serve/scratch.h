/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A file of our own in a temporary folder, for painters and filmers, who write files: made, read back,
/// gone.
#ifndef BW_SERVE_SCRATCH_H
#define BW_SERVE_SCRATCH_H

#include "core/base.h"
#include "core/text.h"
#include "file/beside.h"

/// Bytes that whoever holds them frees.
typedef struct bw_bytes {
    char *data;
    size_t length;
} bw_bytes;

typedef struct bw_scratch {
    bw_beside folder;
    char path[BW_BESIDE_SIZE + 32]; ///< write here
} bw_scratch;

/// BW_OK, or BW_FILE with one sentence in *why. `name` has at most 24 letters.
bw_status bw_scratch_open(bw_scratch *scratch, const char *name, bw_text *why);

/// The whole file into *out; false when it is empty, cannot be read, or there is no memory.
bool bw_scratch_take(const bw_scratch *scratch, bw_bytes *out);

/// File and folder are gone.
void bw_scratch_close(bw_scratch *scratch);

#endif
