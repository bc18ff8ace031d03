/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Which sheet is which, and what several of them need.
#include "report/pages.h"

#include "draw/key.h"
#include "draw/path.h"
#include "report/pages_part.h"
#include "trial/words.h"

void bw_put_cell(bw_ink *ink, bw_weight weight, bw_align align, double x, double y,
                 const char *text) {
    bw_ink_text(ink, BW_ROLE_TEXT, weight, BW_TYPE_SMALL, align, x, y, text);
}

void bw_put_rule(bw_ink *ink, const bw_sheet *sheet, double y) {
    bw_ink_begin(ink, BW_TAG_ARTIFACT, "");
    bw_ink_stroke(ink, BW_ROLE_SOFT_LINE, 0.75);
    bw_path_segment(ink, bw_v(sheet->block.x, y), bw_v(sheet->block.x + sheet->block.width, y));
    bw_ink_end(ink);
}

void bw_put_estimate(const bw_sheet *sheet) {
    const bw_box *b = &sheet->block;
    bw_ink_begin(sheet->ink, BW_TAG_ARTIFACT, "");
    bw_ink_text(sheet->ink, BW_ROLE_SOFT_TEXT, BW_REGULAR, BW_TYPE_LABEL, BW_RIGHT_ALIGN,
                b->x + b->width, b->y + 9, "model estimate");
    bw_ink_end(sheet->ink);
}

void bw_put_estimate_heading(const bw_sheet *sheet, const char *heading) {
    const bw_box *b = &sheet->block;
    bw_put_estimate(sheet);
    bw_heading(sheet->ink, BW_TAG_H1, BW_ROLE_TEXT, BW_TYPE_HEAD, b->x, b->y + 16,
               b->width - BW_ESTIMATE_WIDTH, heading);
}

void bw_put_keys(bw_sheet *sheet, uint32_t keys) {
    const bw_box *b = &sheet->block;
    bw_ink_begin(sheet->ink, BW_TAG_ARTIFACT, "");
    bw_draw_key(sheet->ink, keys, b->x, b->y + b->height - 2);
    bw_ink_end(sheet->ink);
    sheet->block.height -= 20;
}

uint32_t bw_answer_keys(const bw_answer *answer) {
    static const uint32_t routes[] = {BW_KEY_SHOT, BW_KEY_PASS, BW_KEY_CARRY, 0};
    uint32_t keys = BW_KEY_DEFENDER | BW_KEY_KEEPER | BW_KEY_ATTACKER | BW_KEY_RUN;
    for (int i = 0; i < answer->count; i++)
        keys |= routes[answer->plies[i].ply.kind];
    return keys;
}

int bw_report_pages(const bw_report *report) {
    return report->standard_count > 0 ? 3 : 2;
}

bw_status bw_report_page(const bw_report *report, int page, bw_paper paper, bw_ink *ink) {
    static void (*const draw[])(const bw_report *, bw_sheet *) = {bw_page_worth, bw_page_answer,
                                                                  bw_page_standard};
    const int pages = bw_report_pages(report);
    if (page < 1 || page > pages) return BW_NOT_FOUND;
    char name[2 * BW_NAME_SIZE + 40];
    bw_text t = bw_text_in(name, sizeof name);
    bw_say_owner(report->ground->scheme, &t);
    const bw_foot foot = {.name = name, .charts = page == 2, .page = page, .pages = pages};
    bw_sheet sheet = bw_sheet_begin(ink, paper, &foot);
    draw[page - 1](report, &sheet);
    return (bw_status)ink->status;
}
