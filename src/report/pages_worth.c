/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The first sheet: four figures to read across a room, the curve, the weakest rotations.
#include "draw/curve_chart.h"
#include "draw/metrics.h"
#include "draw/path.h"
#include "report/pages_part.h"
#include "trial/catalogue.h"
#include "trial/sentences.h"
#include "trial/weak_rotations.h"
#include "trial/words.h"

enum { LINE = 1024 };

static double put_title(const bw_report *r, const bw_sheet *sheet) {
    const bw_box *b = &sheet->block;
    char line[LINE];
    bw_text t = bw_text_in(line, sizeof line);
    bw_put(&t, r->ground->scheme->name);
    bw_put(&t, ": what a break is worth");
    bw_heading(sheet->ink, BW_TAG_H1, BW_ROLE_TEXT, 22, b->x, b->y + 18,
               b->width - BW_ESTIMATE_WIDTH, line);
    bw_put_estimate(sheet);
    t = bw_text_in(line, sizeof line);
    bw_say_break(r->ground, &r->headline->def, &t);
    bw_put(&t, " ");
    bw_say_late_men(r->ground, &r->headline->begun, &t);
    return b->y + 26 +
           bw_paragraph(sheet->ink, BW_ROLE_TEXT, BW_REGULAR, BW_TYPE_TEXT, BW_LEADING, b->x,
                        b->y + 26, b->width, line);
}

/// One of the big figures: number, unit, name, and what it means in a few words.
typedef struct figure {
    char number[16];
    const char *unit, *name;
    char meaning[80];
} figure;

static void put_figure(bw_ink *ink, const figure *f, double x, double y, double width) {
    bw_ink_text(ink, BW_ROLE_TEXT, BW_BOLD, 11, BW_LEFT_ALIGN, x, y, f->name);
    bw_ink_text(ink, BW_ROLE_TEXT, BW_BOLD, 34, BW_LEFT_ALIGN, x, y + 34, f->number);
    bw_ink_text(ink, BW_ROLE_TEXT, BW_REGULAR, 12, BW_LEFT_ALIGN, x + bw_width(f->number, 34) + 5,
                y + 34, f->unit);
    bw_paragraph(ink, BW_ROLE_SOFT_TEXT, BW_REGULAR, 9, 11.5, x, y + 38, width - 8, f->meaning);
}

static void fill_figures(const bw_trial *trial, figure *f) {
    const bw_curve *c = &trial->curve;
    bw_text t = bw_text_in(f[0].number, sizeof f[0].number);
    bw_put_int(&t, bw_in_100(c->typical[c->answer_s]));
    t = bw_text_in(f[0].meaning, sizeof f[0].meaning);
    bw_put(&t, "typical play, within ");
    bw_put_int(&t, c->answer_s);
    bw_put(&t, " s (");
    bw_say_range(c->typical[c->answer_s], c->error[c->answer_s], &t);
    bw_put(&t, " on a re-run); best play ");
    bw_put_int(&t, bw_in_100(c->best[c->answer_s]));

    t = bw_text_in(f[1].number, sizeof f[1].number);
    bw_put_int(&t, bw_in_100(c->plateau));
    t = bw_text_in(f[1].meaning, sizeof f[1].meaning);
    bw_put(&t, c->even_s < 0 ? "typical play after 10 s: numbers are never even"
                             : "typical play, one second after numbers are even");

    t = bw_text_in(f[2].number, sizeof f[2].number);
    bw_put_fixed(&t, c->bought_s, 1);
    t = bw_text_in(f[2].meaning, sizeof f[2].meaning);
    bw_put(&t, c->ever_beaten ? "until typical play is clearly above even numbers"
                              : "and more: typical play stays near even numbers");

    t = bw_text_in(f[3].number, sizeof f[3].number);
    bw_put_fixed(&t, c->missing_s, 1);
    t = bw_text_in(f[3].meaning, sizeof f[3].meaning);
    bw_put(&t,
           c->even_s < 0 ? "nobody comes to even the numbers" : "from then until numbers are even");
    if (c->even_s < 0) bw_copy(f[3].number, sizeof f[3].number, "\xE2\x80\x93");
}

static double put_figures(const bw_report *r, const bw_sheet *sheet, double y) {
    figure f[4] = {{.unit = "in 100", .name = "Worth now"},
                   {.unit = "in 100", .name = "Plateau"},
                   {.unit = "s", .name = "Time bought"},
                   {.unit = "s", .name = "Seconds missing"}};
    fill_figures(r->headline, f);
    const double width = sheet->block.width / 4;
    for (int i = 0; i < 4; i++)
        put_figure(sheet->ink, &f[i], sheet->block.x + i * width, y, width);
    return y + 78;
}

static double put_curve(const bw_report *r, const bw_sheet *sheet, double y) {
    char names[BW_MAX_LATE][BW_NAME_SIZE];
    const char *late[BW_MAX_LATE];
    for (int i = 0; i < BW_MAX_LATE; i++) {
        bw_text t = bw_text_in(names[i], sizeof names[i]);
        bw_say_late_man(r->ground->scheme, i, &t);
        late[i] = names[i];
    }
    const double height = 290;
    bw_heading(sheet->ink, BW_TAG_H2, BW_ROLE_TEXT, BW_TYPE_SUBHEAD, sheet->block.x, y,
               sheet->block.width, "Worth over time");
    bw_ink_begin(sheet->ink, BW_TAG_FIGURE, "Worth over time, best and typical, 1 to 10 seconds");
    bw_draw_curve(sheet->ink, &r->headline->curve, late,
                  (bw_box){sheet->block.x, y + 10, sheet->block.width, height});
    bw_ink_end(sheet->ink);
    return y + 10 + height;
}

/// Columns of the rotations' table, points from the left edge; all but the first are right-aligned.
enum { at_cost = 213, at_thrown = 265, at_moving = 317, at_set = 364, at_late = 376 };

static void put_row(const bw_report *r, const bw_rotation *row, const bw_sheet *sheet, double y) {
    bw_ink *ink = sheet->ink;
    const double x = sheet->block.x;
    char line[LINE];
    bw_text t = bw_text_in(line, sizeof line);
    bw_say_rotation(r->ground, row, &t);
    bw_line_of(ink, BW_ROLE_TEXT, BW_BOLD, BW_TYPE_SMALL, x, y, at_cost - 40, line);
    const double figures[] = {100 * row->cost, 100 * row->use, 100 * row->moving, 100 * row->set};
    const double at[] = {at_cost, at_thrown, at_moving, at_set};
    for (int i = 0; i < 4; i++) {
        t = bw_text_in(line, sizeof line);
        bw_put_fixed(&t, figures[i], i == 0 ? 1 : 0);
        bw_put_cell(ink, i == 0 ? BW_BOLD : BW_REGULAR, BW_RIGHT_ALIGN, x + at[i], y, line);
    }
    const bw_behind *man = row->behind;
    if (row->behind_count == 0 || !bw_is_late(man->seconds, man->metres)) return;
    t = bw_text_in(line, sizeof line);
    bw_say_defender(r->ground, row->stage, man->spot, row->matched, &t);
    bw_put(&t, " ");
    bw_put_fixed(&t, man->seconds, 1);
    bw_put(&t, " s, ");
    bw_say_length(r->ground->scheme->units, man->metres, &t);
    bw_line_of(ink, BW_ROLE_TEXT, BW_REGULAR, BW_TYPE_SMALL, x + at_late, y,
               sheet->block.width - at_late, line);
}

static void put_weak_head(const bw_sheet *sheet, double y) {
    static const struct {
        double at;
        const char *upper, *lower;
    } heads[] = {{at_cost, "costs in", "100 breaks"},
                 {at_thrown, "thrown", "in 100"},
                 {at_moving, "worth", "as it is"},
                 {at_set, "if all", "are set"}};
    for (int i = 0; i < BW_COUNT(heads); i++) {
        const double x = sheet->block.x + heads[i].at;
        bw_ink_text(sheet->ink, BW_ROLE_SOFT_TEXT, BW_REGULAR, 9, BW_RIGHT_ALIGN, x, y - 11,
                    heads[i].upper);
        bw_ink_text(sheet->ink, BW_ROLE_SOFT_TEXT, BW_REGULAR, 9, BW_RIGHT_ALIGN, x, y,
                    heads[i].lower);
    }
    bw_ink_text(sheet->ink, BW_ROLE_SOFT_TEXT, BW_REGULAR, 9, BW_LEFT_ALIGN,
                sheet->block.x + at_late, y, "who is latest, by how much");
}

static void put_weak(const bw_report *r, const bw_sheet *sheet, double y) {
    const bw_whatif *w = &r->headline->whatif;
    const bw_box *b = &sheet->block;
    bw_heading(sheet->ink, BW_TAG_H2, BW_ROLE_TEXT, BW_TYPE_SUBHEAD, b->x, y, b->width,
               "The weakest rotations of this break: what to rehearse");
    const int count = bw_weak_shown(r->headline);
    if (count == 0) {
        char none[2 * BW_NAME_SIZE];
        bw_text t = bw_text_in(none, sizeof none);
        bw_put_plain_sentence(&t, bw_voice_of(r->ground->scheme), &bw_s_weak_none);
        bw_paragraph(sheet->ink, BW_ROLE_TEXT, BW_REGULAR, BW_TYPE_TEXT, BW_LEADING, b->x, y + 6,
                     b->width, none);
        return;
    }
    put_weak_head(sheet, y + 28);
    bw_put_rule(sheet->ink, sheet, y + 33);
    y += 47;
    for (int i = 0; i < count; i++, y += 15)
        put_row(r, &w->weak[i], sheet, y);
    if (w->fault_count == 0) return;
    char line[LINE];
    bw_text t = bw_text_in(line, sizeof line);
    bw_say_faults(r->headline, &t);
    bw_paragraph(sheet->ink, BW_ROLE_TEXT, BW_REGULAR, BW_TYPE_SMALL, BW_LEADING_SMALL, b->x, y,
                 b->width, line);
}

void bw_page_worth(const bw_report *r, bw_sheet *sheet) {
    double y = put_title(r, sheet);
    bw_put_rule(sheet->ink, sheet, y + 6);
    y = put_figures(r, sheet, y + 24);
    y = put_curve(r, sheet, y + 22);
    put_weak(r, sheet, y + 22);
}
