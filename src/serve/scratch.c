/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "serve/scratch.h"

#include <stdio.h>
#include <stdlib.h>
#include <unistd.h>

bw_status bw_scratch_open(bw_scratch *scratch, const char *name, bw_text *why) {
    if (!bw_beside_folder(&scratch->folder)) {
        bw_put(why, "No temporary folder could be made.");
        return BW_FILE;
    }
    bw_text path = bw_text_in(scratch->path, sizeof scratch->path);
    bw_put(&path, scratch->folder.path);
    bw_put_char(&path, '/');
    bw_put(&path, name);
    return BW_OK;
}

bool bw_scratch_take(const bw_scratch *scratch, bw_bytes *out) {
    FILE *in = fopen(scratch->path, "rb");
    if (!in) return false;
    const bool sized = fseek(in, 0, SEEK_END) == 0;
    const long length = sized ? ftell(in) : -1;
    rewind(in);
    out->data = length > 0 ? malloc((size_t)length) : NULL;
    out->length = out->data ? fread(out->data, 1, (size_t)length, in) : 0;
    const bool whole = out->data && out->length == (size_t)length;
    fclose(in);
    if (!whole) free(out->data);
    return whole;
}

void bw_scratch_close(bw_scratch *scratch) {
    unlink(scratch->path);
    bw_beside_close(&scratch->folder);
}
