/* SPDX-License-Identifier: GPL-3.0-or-later */
#define _XOPEN_SOURCE 700 // mkdtemp
#include "serve/press.h"

#include <stdio.h>
#include <stdlib.h>
#include <unistd.h>

enum { FOLDER_SIZE = 3072, PAPER_PATH_SIZE = FOLDER_SIZE + 16 };

/// The whole of a file; false when it cannot be read or there is no memory.
static bool take(const char *path, bw_bytes *out) {
    FILE *in = fopen(path, "rb");
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

static bool set_up(bw_press *press, bw_text *why) {
    if (!press->fonts) press->fonts = bw_fonts_open(why);
    if (!press->memory) press->memory = malloc(BW_INK_PAGE_BYTES);
    if (press->fonts && !press->memory) bw_put(why, "There is no memory left for a page.");
    return press->fonts && press->memory;
}

/// Painters write files, so the PDF goes by way of one in a folder of its own.
bw_status bw_press_pdf(bw_press *press, const bw_pages *pages, const bw_theme *theme, bw_bytes *out,
                       bw_text *why) {
    if (!set_up(press, why)) return BW_NO_ROOM;
    const char *temporary = getenv("TMPDIR");
    char folder[FOLDER_SIZE], path[PAPER_PATH_SIZE];
    const int n = snprintf(folder, sizeof folder, "%s/breakwater-XXXXXX",
                           temporary && temporary[0] ? temporary : "/tmp");
    if (n >= FOLDER_SIZE || !mkdtemp(folder)) {
        bw_put(why, "No temporary folder could be made.");
        return BW_FILE;
    }
    snprintf(path, sizeof path, "%s/pages.pdf", folder);
    bw_ink *ink = bw_ink_in(press->memory, BW_INK_PAGE_BYTES);
    bw_status status = bw_pages_pdf(pages, path, press->fonts, theme, ink, why);
    if (status == BW_OK && !take(path, out)) {
        bw_put(why, "The finished pages could not be read back.");
        status = BW_FILE;
    }
    unlink(path);
    rmdir(folder);
    return status;
}

void bw_press_close(bw_press *press) {
    if (press->fonts) bw_fonts_close(press->fonts);
    free(press->memory);
    *press = (bw_press){NULL, NULL};
}
