/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Scheme documents as text, for tests: files of the source tree, and documents made from a small
/// whole one by changing a few words.
#ifndef BW_TESTS_SCHEME_TEXT_H
#define BW_TESTS_SCHEME_TEXT_H

#include "file/document.h"
#include "scheme/tree.h"
#include "scheme/write.h"
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

/// The whole of a file named from the root of the source tree, terminated; the caller frees it. A
/// file that is not there ends the test program: no check after it would mean anything.
static inline char *text_of_file(const char *name, size_t *length) {
    const char *root = getenv("BW_ROOT");
    char path[4096];
    snprintf(path, sizeof path, "%s/%s", root ? root : ".", name);
    FILE *in = fopen(path, "rb");
    char *text = malloc((size_t)2 * BW_DOCUMENT_BYTES);
    if (!in || !text) {
        fprintf(stderr, "%s cannot be read\n", path);
        exit(1);
    }
    *length = fread(text, 1, (size_t)2 * BW_DOCUMENT_BYTES - 1, in);
    text[*length] = '\0';
    fclose(in);
    return text;
}

/// A small scheme with one of everything that must be there.
static const char text_small[] =
    "{\"format\": \"breakwater-scheme\", \"version\": 1, \"name\": \"Small\",\n"
    " \"field\": \"boys-nfhs\", \"units\": \"yd\", \"level\": \"high-school\",\n"
    " \"landmarks\": [{\"id\": \"top\", \"name\": \"top centre\", \"at\": [0, 15]},\n"
    "  {\"id\": \"wr\", \"name\": \"right wing\", \"at\": [13, 7]},\n"
    "  {\"id\": \"wl\", \"mirror_of\": \"wr\"},\n"
    "  {\"id\": \"x\", \"name\": \"behind the goal\", \"at\": [0, -6]}],\n"
    " \"stages\": [{\"defenders\": 3, \"shape\": \"1-2\", \"spots\": [\n"
    "  {\"id\": \"BR\", \"name\": \"right back\", \"home\": [2.5, 2.25], \"call\": \"right\"},\n"
    "  {\"id\": \"BL\", \"mirror_of\": \"BR\"},\n"
    "  {\"id\": \"P\", \"name\": \"point\", \"home\": [0, 12]}]}]}\n";

/// Copies `from` with the first `old` replaced by `new_`. The test program ends when there is none.
static inline char *text_change(const char *from, const char *old, const char *new_) {
    const char *at = strstr(from, old);
    const size_t size = strlen(from) + strlen(new_) + 1;
    char *to = malloc(size);
    if (!at || !to) {
        fprintf(stderr, "no \"%s\" to change\n", old);
        exit(1);
    }
    snprintf(to, size, "%.*s%s%s", (int)(at - from), from, new_, at + strlen(old));
    return to;
}

/// Whether two documents are the same; the first line that differs is printed.
static inline int text_same(const char *got, const char *want) {
    if (strcmp(got, want) == 0) return 1;
    const char *line = want;
    for (; *got && *got == *want; got++, want++) {
        if (*want == '\n') line = want + 1;
    }
    fprintf(stderr, "differs from byte %d of: %.*s\n", (int)(want - line), (int)strcspn(line, "\n"),
            line);
    return 0;
}

/// The canonical text of a scheme, in memory that the next call uses again.
static inline const char *text_of_scheme(const bw_scheme *scheme) {
    static char room[BW_DOCUMENT_BYTES];
    bw_text out = bw_text_in(room, sizeof room);
    bw_scheme_write(scheme, &out);
    return out.full ? "" : room;
}

#endif
