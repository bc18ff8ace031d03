/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Pagination: which sheet a page number means.
#include "draw/book.h"

#include "core/text.h"
#include "draw/book_parts.h"
#include "draw/key.h"

typedef enum part_kind { COVER, SHAPES, STAGE, CHARTS, LESSON, NOTES, NO_PART } part_kind;

typedef struct part {
    part_kind kind;
    int of;    ///< stage or lesson
    int sheet; ///< of its grid sheets, from 0
    int sheets;
} part;

/// The part at page `page`; with `page` 0 the number of pages comes back in *pages.
static part part_at(const bw_scheme *scheme, int page, int *pages) {
    part found = {NO_PART, 0, 0, 0};
    int at = 0;
#define ADD(...)                                                                                   \
    do {                                                                                           \
        if (++at == page) found = (part){__VA_ARGS__};                                             \
    } while (0)
    ADD(COVER, 0, 0, 1);
    ADD(SHAPES, 0, 0, 1);
    const int charts = bw_sheets_of(scheme->landmark_count);
    for (int s = 0; s < scheme->stage_count; s++) {
        ADD(STAGE, s, 0, 1);
        for (int i = 0; i < charts; i++) {
            ADD(CHARTS, s, i, charts);
        }
    }
    for (int l = 0; l < scheme->lesson_count; l++) {
        const int sheets = bw_sheets_of(scheme->lessons[l].stop_count);
        for (int i = 0; i < sheets; i++) {
            ADD(LESSON, l, i, sheets);
        }
    }
    if (!bw_notes_on_cover(scheme)) ADD(NOTES, 0, 0, 1);
#undef ADD
    *pages = at;
    return found;
}

int bw_book_pages(const bw_scheme *scheme) {
    int pages;
    part_at(scheme, 0, &pages);
    return pages;
}

static int first_page(const bw_scheme *scheme, part_kind kind, int of) {
    const int pages = bw_book_pages(scheme);
    int ignored;
    for (int page = 1; page <= pages; page++) {
        const part p = part_at(scheme, page, &ignored);
        if (p.kind == kind && p.of == of) return page;
    }
    return 0;
}

int bw_book_stage_page(const bw_scheme *scheme, int stage) {
    return first_page(scheme, STAGE, stage);
}

int bw_book_lesson_page(const bw_scheme *scheme, int lesson) {
    return first_page(scheme, LESSON, lesson);
}

static uint32_t keys_of(const bw_scheme *scheme, part p) {
    switch (p.kind) {
    case COVER: return BW_KEY_PLACE;
    case SHAPES:
    case STAGE: return BW_KEY_DEFENDER | BW_KEY_KEEPER;
    case CHARTS: return bw_duty_keys(&scheme->stages[p.of]) | BW_KEY_FROM_HOME;
    case LESSON: {
        const int stage = bw_scheme_stage(scheme, scheme->lessons[p.of].defenders);
        return bw_duty_keys(&scheme->stages[stage]) | BW_KEY_RUN | BW_KEY_PASS;
    }
    default: return 0;
    }
}

/// A grid sheet's running head and, beside it, which of its sheets this is.
static void draw_grid(const bw_scheme *scheme, part p, bw_sheet *sheet) {
    char head[BW_NAME_SIZE + 48], note[64];
    bw_text h = bw_text_in(head, sizeof head), n = bw_text_in(note, sizeof note);
    bw_grid_sheet grid;
    if (p.kind == CHARTS) {
        bw_landmark_cells(scheme, p.of, p.sheet, &grid);
        bw_say_stage(&scheme->stages[p.of], &h);
        bw_put(&n, "where everyone stands, by where the ball is");
    } else {
        bw_lesson_cells(scheme, p.of, p.sheet, &grid);
        bw_put(&h, scheme->lessons[p.of].name);
        bw_put(&n, "a walk with ");
        bw_put_int(&n, scheme->lessons[p.of].defenders);
        bw_put(&n, " in");
    }
    if (p.sheets > 1) {
        bw_put(&n, ", sheet ");
        bw_put_int(&n, p.sheet + 1);
        bw_put(&n, " of ");
        bw_put_int(&n, p.sheets);
    }
    grid.head = head;
    grid.note = note;
    grid.lines = bw_caption_lines(scheme);
    bw_draw_grid_sheet(&grid, sheet);
}

bw_status bw_book_page(const bw_scheme *scheme, int page, bw_paper paper, bw_ink *ink) {
    return bw_book_page_with(scheme, page, paper, NULL, ink);
}

bw_status bw_book_page_with(const bw_scheme *scheme, int page, bw_paper paper,
                            const bw_danger *danger, bw_ink *ink) {
    int pages;
    const part p = part_at(scheme, page, &pages);
    if (p.kind == NO_PART) return BW_NOT_FOUND;
    char name[2 * BW_NAME_SIZE + 8];
    bw_text t = bw_text_in(name, sizeof name);
    bw_put(&t, scheme->name);
    if (scheme->team[0]) {
        bw_put(&t, " \xC2\xB7 ");
        bw_put(&t, scheme->team);
    }
    const bw_foot foot = {.name = name,
                          .keys = keys_of(scheme, p),
                          .charts = p.kind != NOTES,
                          .page = page,
                          .pages = pages};
    bw_sheet sheet = bw_sheet_begin(ink, paper, &foot);
    switch (p.kind) {
    case COVER: bw_book_cover(scheme, danger, &sheet); break;
    case SHAPES: bw_book_shapes(scheme, &sheet); break;
    case STAGE: bw_book_stage(scheme, p.of, &sheet); break;
    case CHARTS:
    case LESSON: draw_grid(scheme, p, &sheet); break;
    case NOTES: bw_book_notes(scheme, &sheet); break;
    case NO_PART: break;
    }
    return (bw_status)ink->status;
}
