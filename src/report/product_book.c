/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The picture book, or one stage of it.
#include "core/field.h"
#include "draw/book.h"
#include "report/product_part.h"
#include "report/sample_danger.h"

static bw_status page(const void *self, int number, bw_ink *ink) {
    const bw_order *o = self;
    return bw_book_page_with(&o->scheme, o->before + number, o->paper, &o->danger, ink);
}

/// The first page after a stage's.
static int end_of(const bw_scheme *scheme, int stage) {
    if (stage + 1 < scheme->stage_count) return bw_book_stage_page(scheme, stage + 1);
    return scheme->lesson_count > 0 ? bw_book_lesson_page(scheme, 0) : bw_book_pages(scheme) + 1;
}

bw_status bw_open_book(bw_order *o, bw_document *out, bw_text *why) {
    (void)why;
    const bw_field *field = bw_field_at(o->scheme.field);
    const bw_window half = {-field->width / 2, field->width / 2, -field->end_line, field->midline};
    const int stage = o->book_stage;
    o->danger = bw_sample_danger(&o->scheme, half);
    o->before = stage >= 0 ? bw_book_stage_page(&o->scheme, stage) - 1 : 0;
    out->pages.count =
        stage >= 0 ? end_of(&o->scheme, stage) - 1 - o->before : bw_book_pages(&o->scheme);
    out->pages.page = page;
    return BW_OK;
}
