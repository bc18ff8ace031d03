/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Every page of the demo book against its trace in tests/golden/book. With BW_REGOLDEN set the traces
/// are written instead (tools/regolden.sh); look at the pictures before committing them.
#include "draw/book.h"
#include "draw/trace.h"
#include "harness.h"
#include "tests/draw/pages.h"

enum { TRACE_BYTES = 1 << 18 };

static bw_scheme terns;
static double memory[BW_INK_PAGE_BYTES / sizeof(double)];
static char trace[TRACE_BYTES], golden[TRACE_BYTES];

static size_t read_golden(const char *path) {
    FILE *file = fopen(path, "rb");
    const size_t size = file ? fread(golden, 1, sizeof golden - 1, file) : 0;
    if (file) fclose(file);
    golden[size] = '\0';
    return size;
}

static void write_golden(const char *path) {
    FILE *file = fopen(path, "wb");
    CHECK(file != NULL);
    if (!file) return;
    CHECK_INT(fwrite(trace, 1, strlen(trace), file), strlen(trace));
    fclose(file);
}

/// The first line that differs, both ways.
static void show_difference(const char *path) {
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

static void pages_match_their_traces(void) {
    const int pages = bw_book_pages(&terns);
    for (int page = 1; page <= pages; page++) {
        char name[64];
        snprintf(name, sizeof name, "tests/golden/book/page-%02d.txt", page);
        const char *path = tree_path(name);
        bw_ink *ink = bw_ink_in(memory, sizeof memory);
        bw_text t = bw_text_in(trace, sizeof trace);
        CHECK_INT(bw_book_page(&terns, page, BW_LETTER, ink), BW_OK);
        bw_trace(ink, &t);
        CHECK(!t.full);
        if (getenv("BW_REGOLDEN")) {
            write_golden(path);
            continue;
        }
        read_golden(path);
        const bool same = strcmp(trace, golden) == 0;
        CHECK(same);
        if (!same) show_difference(path);
    }
    char beyond[64];
    snprintf(beyond, sizeof beyond, "tests/golden/book/page-%02d.txt", pages + 1);
    CHECK_INT(read_golden(tree_path(beyond)), 0); // no trace of a page that is no more
}

int main(int argc, char **argv) {
    if (load_terns(&terns)) RUN(pages_match_their_traces);
    return test_report(argc, argv);
}
