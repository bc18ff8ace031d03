/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A page against its trace under tests/golden. With BW_REGOLDEN set the trace is written instead
/// (tools/regolden.sh); look at the pictures before committing it.
#ifndef BW_TESTS_DRAW_GOLDEN_H
#define BW_TESTS_DRAW_GOLDEN_H

#include "draw/trace.h"
#include "tests/draw/pages.h"

enum { TRACE_BYTES = 1 << 18 };

static char trace[TRACE_BYTES], golden[TRACE_BYTES];

static inline size_t read_golden(const char *path) {
    FILE *file = fopen(path, "rb");
    const size_t size = file ? fread(golden, 1, sizeof golden - 1, file) : 0;
    if (file) fclose(file);
    golden[size] = '\0';
    return size;
}

static inline void write_golden(const char *path) {
    FILE *file = fopen(path, "wb");
    CHECK(file != NULL);
    if (!file) return;
    CHECK_INT(fwrite(trace, 1, strlen(trace), file), strlen(trace));
    fclose(file);
}

/// The first line that differs, both ways.
static inline void show_difference(const char *path) {
    const char *a = trace, *b = golden;
    int line = 1;
    while (*a && *a == *b) {
        line += *a == '\n';
        a++;
        b++;
    }
    while (a > trace && a[-1] != '\n') {
        a--;
        b--;
    }
    fprintf(stderr, "%s:%d\n  drawn:  %.*s\n  golden: %.*s\n", path, line, (int)strcspn(a, "\n"), a,
            (int)strcspn(b, "\n"), b);
}

/// The page as a trace, against the one of this name.
static inline void check_trace(const char *name, const bw_ink *ink) {
    const char *path = tree_path(name);
    bw_text t = bw_text_in(trace, sizeof trace);
    bw_trace(ink, &t);
    CHECK(!t.full);
    if (getenv("BW_REGOLDEN")) {
        write_golden(path);
        return;
    }
    read_golden(path);
    const bool same = strcmp(trace, golden) == 0;
    CHECK(same);
    if (!same) show_difference(path);
}

#endif
