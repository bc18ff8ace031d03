/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Every page of the demo book against its trace in tests/golden/book. With BW_REGOLDEN set the traces
/// are written instead (tools/regolden.sh); look at the pictures before committing them.
#include "draw/book.h"
#include "harness.h"
#include "tests/draw/golden.h"

static bw_scheme terns;
static double memory[BW_INK_PAGE_BYTES / sizeof(double)];

static void pages_match_their_traces(void) {
    const int pages = bw_book_pages(&terns);
    for (int page = 1; page <= pages; page++) {
        char name[64];
        snprintf(name, sizeof name, "tests/golden/book/page-%02d.txt", page);
        bw_ink *ink = bw_ink_in(memory, sizeof memory);
        CHECK_INT(bw_book_page(&terns, page, BW_LETTER, ink), BW_OK);
        check_trace(name, ink);
    }
    char beyond[64];
    snprintf(beyond, sizeof beyond, "tests/golden/book/page-%02d.txt", pages + 1);
    CHECK_INT(read_golden(tree_path(beyond)), 0); // no trace of a page that is no more
}

int main(int argc, char **argv) {
    if (load_terns(&terns)) RUN(pages_match_their_traces);
    return test_report(argc, argv);
}
