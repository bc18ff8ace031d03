/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Pages per second of the starting scheme's book: as ink alone, and as a PDF on disk, which has an aim.
#include "draw/book.h"
#include "bench/benches.h"
#include "paint/paint.h"
#include "scheme/fresh.h"
#include <stdlib.h>
#include <unistd.h>

/// A coach waits a second for a book of 24 pages, not longer.
static const double aim = 24; // pages/s

typedef struct press {
    bw_scheme scheme;
    double page[BW_INK_PAGE_BYTES / sizeof(double)];
    bw_fonts *fonts;
    const char *path;
    bool ok;
} press;

static press *open_press(void) {
    static press press;
    bw_scheme_fresh(0, 3, &press.scheme);
    press.ok = true;
    return &press;
}

static void draw_all(void *context) {
    press *press = context;
    bw_ink *ink = bw_ink_in(press->page, sizeof press->page);
    const int pages = bw_book_pages(&press->scheme);
    for (int i = 1; i <= pages; i++) {
        if (bw_book_page(&press->scheme, i, BW_LETTER, ink) != BW_OK) press->ok = false;
    }
}

static void print_all(void *context) {
    press *press = context;
    char words[320];
    bw_text why = bw_text_in(words, sizeof words);
    bw_ink *ink = bw_ink_in(press->page, sizeof press->page);
    const bw_about about = {.title = "bench"};
    bw_pdf *pdf = bw_pdf_open(press->path, &about, press->fonts, bw_theme_at(BW_THEME_CHART), &why);
    const int pages = bw_book_pages(&press->scheme);
    for (int i = 1; i <= pages && pdf; i++) {
        if (bw_book_page(&press->scheme, i, BW_LETTER, ink) != BW_OK) press->ok = false;
        if (bw_pdf_page(pdf, ink, &why) != BW_OK) press->ok = false;
    }
    if (!pdf || bw_pdf_close(pdf, true, &why) != BW_OK) press->ok = false;
}

bool bench_book_ink(bench_result *result) {
    press *press = open_press();
    const double pages = bw_book_pages(&press->scheme);
    *result = (bench_result){
        .value = pages / bench_seconds(draw_all, press), .unit = "pages/s", .more_is_better = true};
    return press->ok;
}

bool bench_book_pdf(bench_result *result) {
    press *press = open_press();
    char words[320], path[] = "/tmp/breakwater-bench-XXXXXX";
    bw_text why = bw_text_in(words, sizeof words);
    press->fonts = bw_fonts_open(&why);
    const int file = mkstemp(path);
    if (!press->fonts || file < 0) return false;
    close(file);
    press->path = path;
    const double pages = bw_book_pages(&press->scheme);
    *result = (bench_result){.value = pages / bench_seconds(print_all, press),
                             .baseline = aim,
                             .unit = "pages/s",
                             .against = "the aim, a book of 24 pages a second",
                             .more_is_better = true};
    unlink(path);
    bw_fonts_close(press->fonts);
    return press->ok;
}
