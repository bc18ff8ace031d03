/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Which sheet is which, and the first: the whole, and its parts by numbers and by stage.
#include "report/pages_part.h"
#include "report/review_part.h"

enum { LINE = 1024 };

static double put_item(bw_ink *ink, const bw_box *b, double y, const char *label,
                       const char *words) {
    bw_ink_text(ink, BW_ROLE_TEXT, BW_BOLD, BW_TYPE_TEXT, BW_LEFT_ALIGN, b->x, y + 12, label);
    return y + bw_paragraph(ink, BW_ROLE_TEXT, BW_REGULAR, BW_TYPE_TEXT, BW_LEADING, b->x + 110, y,
                            b->width - 110, words);
}

static double put_whole(const bw_review *r, bw_ink *ink, const bw_box *b, double y) {
    const bw_group *all = &r->season->all;
    char line[LINE];
    bw_text t = bw_text_in(line, sizeof line);
    bw_say_count(all->goals, "breaks", &t);
    y = put_item(ink, b, y, "Goals against", line);
    t = bw_text_in(line, sizeof line);
    bw_say_count(all->shots, "breaks", &t);
    y = put_item(ink, b, y, "Shots let go", line);
    t = bw_text_in(line, sizeof line);
    bw_say_count(all->on_shot, "shots", &t);
    y = put_item(ink, b, y, "Goals a shot", line);
    t = bw_text_in(line, sizeof line);
    bw_say_outcomes(all, &t);
    y = put_item(ink, b, y, "How they ended", line);
    if (all->timed == 0) return y;
    t = bw_text_in(line, sizeof line);
    bw_put_fixed(&t, all->seconds, 1);
    bw_put(&t, " s on average, over the ");
    bw_put_int(&t, all->timed);
    bw_put(&t, " that were timed");
    return put_item(ink, b, y, "How long", line);
}

static bw_plot_row row_of(const bw_review *r, const bw_group *g) {
    return (bw_plot_row){.label = g->label,
                         .seen = g->goals,
                         .expected = g->expected,
                         .forecast = r->modelled ? g->forecast_breaks : 0};
}

static double put_groups(const bw_review *r, bw_sheet *sheet, double y, const char *head,
                         const bw_group *list, int count) {
    bw_plot_row rows[BW_SEASON_NUMBERS];
    int used = 0;
    for (int i = 0; i < count && used < BW_SEASON_NUMBERS; i++) {
        if (list[i].breaks > 0) rows[used++] = row_of(r, &list[i]);
    }
    if (used == 0) return y;
    const bw_box *b = &sheet->block;
    bw_heading(sheet->ink, BW_TAG_H2, BW_ROLE_TEXT, BW_TYPE_SUBHEAD, b->x, y + 14, b->width, head);
    return bw_put_rates(sheet, y + 22, "goals in 100 breaks", rows, used) + 4;
}

static void review_page_whole(const bw_review *r, bw_sheet *sheet) {
    const bw_box *b = &sheet->block;
    char line[LINE];
    bw_text t = bw_text_in(line, sizeof line);
    bw_put(&t, "Review: ");
    bw_say_season(r, &t);
    bw_heading(sheet->ink, BW_TAG_H1, BW_ROLE_TEXT, BW_TYPE_HEAD, b->x, b->y + 16, b->width, line);
    double y = b->y + 26;
    if (r->about)
        y += 4 + bw_paragraph(sheet->ink, BW_ROLE_TEXT, BW_BOLD, BW_TYPE_TEXT, BW_LEADING, b->x, y,
                              b->width, r->about);
    y = put_whole(r, sheet->ink, b, y) + 6;
    y = put_groups(r, sheet, y, "By numbers", r->season->numbers, r->season->number_count);
    y = put_groups(r, sheet, y, "By stage", r->season->stages, r->season->stage_count);
    y += bw_paragraph(
        sheet->ink, BW_ROLE_TEXT, BW_REGULAR, BW_TYPE_SMALL, BW_LEADING_SMALL, b->x, y, b->width,
        r->modelled
            ? "Filled dot and line: what was seen, with its 95 % interval (thin under 30 breaks). "
              "Hollow dot: what the model forecast for the same breaks."
            : "Dot and line: what was seen, with its 95 % interval (thin under 30 breaks).");
    for (int i = 0;; i++) {
        t = bw_text_in(line, sizeof line);
        if (!bw_say_review_limit(r, i, &t)) break;
        const double height = bw_paragraph(NULL, BW_ROLE_TEXT, BW_REGULAR, BW_TYPE_SMALL,
                                           BW_LEADING_SMALL, b->x, y, b->width, line);
        if (y + height + 3 > b->y + b->height) break;
        y += 3 + bw_paragraph(sheet->ink, BW_ROLE_TEXT, BW_REGULAR, BW_TYPE_SMALL, BW_LEADING_SMALL,
                              b->x, y + 3, b->width, line);
    }
}

int bw_review_pages(const bw_review *r) {
    (void)r;
    return 3;
}

bw_status bw_review_page(const bw_review *r, int page, bw_paper paper, bw_ink *ink) {
    static void (*const draw[])(const bw_review *, bw_sheet *) = {
        review_page_whole, bw_review_page_shots, bw_review_page_games};
    if (page < 1 || page > bw_review_pages(r)) return BW_NOT_FOUND;
    const bw_foot foot = {
        .name = r->team, .charts = page == 2, .page = page, .pages = bw_review_pages(r)};
    bw_sheet sheet = bw_sheet_begin(ink, paper, &foot);
    draw[page - 1](r, &sheet);
    return (bw_status)ink->status;
}
