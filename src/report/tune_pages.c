/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Which sheet is which, and the first: what changes, and whether it is better.
#include "core/level.h"
#include "draw/key.h"
#include "draw/path.h"
#include "draw/scene.h"
#include "report/pages_part.h"
#include "report/tune_part.h"
#include "trial/words.h"

enum { LINE = 600 };

static const double gutter = 18, row = 15.5;

/// New homes as discs, the old ones as ghosts with a run between.
static double put_chart(const bw_tune_report *r, const bw_sheet *sheet, double x, double y,
                        double width) {
    const bw_scheme *scheme = &r->tuned->scheme;
    const bw_stage *before = &r->def->scheme->stages[r->def->stage];
    const bw_stage *after = &scheme->stages[r->def->stage];
    bw_station station[BW_MAX_SPOTS];
    bw_vec from[BW_MAX_SPOTS];
    for (int s = 0; s < after->defenders; s++) {
        station[s] = (bw_station){.at = after->spots[s].home, .man = -1};
        from[s] = before->spots[s].home;
    }
    const bw_view view = bw_view_fit(bw_window_unit(scheme), x + 20, y + 6, width - 26);
    const bw_scene scene = {.scheme = scheme,
                            .stage = r->def->stage,
                            .stations = station,
                            .from = from,
                            .beside = BW_BESIDE_NAME};
    bw_ink_begin(sheet->ink, BW_TAG_FIGURE,
                 "Today's homes as dashed rings, the suggested ones as discs.");
    bw_draw_scene(sheet->ink, &scene, &view, bw_marks_small(), true);
    bw_ink_end(sheet->ink);
    bw_sheet_scale(sheet, scheme->units, view.scale);
    return view.box.y + view.box.height + 18;
}

static double put_changes(const bw_tune_report *r, bw_ink *ink, double x, double y, double width) {
    const bw_stage *stage = &r->def->scheme->stages[r->def->stage];
    bw_heading(ink, BW_TAG_H2, BW_ROLE_TEXT, BW_TYPE_SUBHEAD, x, y + 12, width, "What changes");
    y += 18;
    char line[LINE];
    int kept = 0;
    for (int k = 0; k < r->tuned->knob_count; k++) {
        if (r->tuned->at[k] == r->tuned->knobs[k].now) {
            kept++;
            continue;
        }
        bw_text t = bw_text_in(line, sizeof line);
        bw_knob_name(stage, &r->tuned->knobs[k], &t);
        y += bw_paragraph(ink, BW_ROLE_TEXT, BW_REGULAR, BW_TYPE_SMALL, 12.5, x, y, width, line);
        t = bw_text_in(line, sizeof line);
        bw_say_turn(r, k, &t);
        y += bw_paragraph(ink, BW_ROLE_TEXT, BW_BOLD, BW_TYPE_SMALL, 12.5, x + 8, y, width - 8,
                          line);
    }
    bw_text t = bw_text_in(line, sizeof line);
    if (kept > 0) {
        bw_put(&t, "As they are: ");
        bw_put_int(&t, kept);
        bw_put(&t, kept == 1 ? " number." : " numbers.");
        y +=
            bw_paragraph(ink, BW_ROLE_TEXT, BW_REGULAR, BW_TYPE_SMALL, 12.5, x, y + 2, width, line);
    }
    return y;
}

static void put_gain_cells(bw_ink *ink, const bw_gain *g, bool seeds, double x, double y) {
    const double values[] = {g->before, g->after, g->gain};
    char line[40];
    for (int c = 0; c < 3; c++) {
        bw_text t = bw_text_in(line, sizeof line);
        bw_put_fixed(&t, 100 * values[c], 1);
        bw_put_cell(ink, c == 2 ? BW_BOLD : BW_REGULAR, BW_RIGHT_ALIGN, x + 32 + 42 * c, y, line);
    }
    bw_text t = bw_text_in(line, sizeof line);
    bw_put(&t, "\xc2\xb1 ");
    bw_put_fixed(&t, 200 * g->error, 1);
    bw_put_cell(ink, BW_REGULAR, BW_LEFT_ALIGN, x + 124, y, line);
    // Best play has no chance in it: every seed says the same.
    if (!seeds) return;
    t = bw_text_in(line, sizeof line);
    bw_put_fixed(&t, 100 * g->low, 1);
    bw_put(&t, " to ");
    bw_put_fixed(&t, 100 * g->high, 1);
    bw_put_cell(ink, BW_REGULAR, BW_LEFT_ALIGN, x + 168, y, line);
}

static double put_evidence(const bw_tune_report *r, const bw_sheet *sheet, double y) {
    bw_ink *ink = sheet->ink;
    const bw_box *b = &sheet->block;
    static const char *const heads[] = {"before", "after", "fewer"};
    const double cells = b->x + 270;
    bw_heading(ink, BW_TAG_H2, BW_ROLE_TEXT, BW_TYPE_SUBHEAD, b->x, y + 12, b->width,
               "Goals in 100 breaks of six seconds, before and after");
    y += 32;
    for (int c = 0; c < 3; c++)
        bw_put_cell(ink, BW_BOLD, BW_RIGHT_ALIGN, cells + 32 + 42 * c, y, heads[c]);
    bw_put_cell(ink, BW_BOLD, BW_LEFT_ALIGN, cells + 124, y, "chance");
    bw_put_cell(ink, BW_BOLD, BW_LEFT_ALIGN, cells + 168, y, "by seed");
    bw_put_rule(ink, sheet, y + 5);
    y += row + 3;
    for (int kind = 0; kind < BW_DRILL_KINDS; kind++) {
        if (r->evidence->drills[kind] == 0) continue;
        char line[LINE];
        bw_text t = bw_text_in(line, sizeof line);
        if (kind != BW_DRILL_TRAINING) bw_put(&t, "Held out: ");
        bw_put(&t, bw_drill_name((bw_drill_kind)kind));
        if (kind == BW_DRILL_LEVEL) {
            bw_put(&t, ", ");
            bw_put(&t, bw_level_at(r->evidence->level)->name);
        }
        bw_put_cell(ink, BW_BOLD, BW_LEFT_ALIGN, b->x, y, line);
        for (int best = 0; best < 2; best++) {
            bw_put_cell(ink, BW_REGULAR, BW_LEFT_ALIGN, b->x + 216, y, best ? "best" : "typical");
            put_gain_cells(ink, best ? &r->evidence->best[kind] : &r->evidence->typical[kind],
                           !best, cells, y);
            y += row;
        }
    }
    return y;
}

static void tune_page_changes(const bw_tune_report *r, bw_sheet *sheet) {
    const bw_box *b = &sheet->block;
    const bw_stage *stage = &r->def->scheme->stages[r->def->stage];
    char line[LINE];
    bw_put_estimate(sheet);
    bw_text t = bw_text_in(line, sizeof line);
    bw_put(&t, "A suggestion for the ");
    bw_put(&t, stage->shape);
    bw_heading(sheet->ink, BW_TAG_H1, BW_ROLE_TEXT, BW_TYPE_HEAD, b->x, b->y + 16, b->width - 90,
               line);
    const double left = 0.62 * (b->width - gutter), right = b->width - gutter - left;
    const double under = put_chart(r, sheet, b->x, b->y + 28, left);
    const double list = put_changes(r, sheet->ink, b->x + left + gutter, b->y + 28, right);
    double y = put_evidence(r, sheet, (under > list ? under : list) + 6);
    t = bw_text_in(line, sizeof line);
    bw_say_gain(r, &t);
    y += bw_paragraph(sheet->ink, BW_ROLE_TEXT, BW_BOLD, BW_TYPE_TEXT, BW_LEADING, b->x, y,
                      b->width, line);
    for (int i = 0;; i++) {
        t = bw_text_in(line, sizeof line);
        if (!bw_say_tune_limit(r, i, &t)) break;
        y += 3 + bw_paragraph(sheet->ink, BW_ROLE_TEXT, BW_REGULAR, BW_TYPE_SMALL, BW_LEADING_SMALL,
                              b->x, y + 3, b->width, line);
    }
}

int bw_tune_pages(const bw_tune_report *r) {
    return r->sense->scale_count > 0 ? 3 : 2;
}

bw_status bw_tune_page(const bw_tune_report *r, int page, bw_paper paper, bw_ink *ink) {
    static void (*const draw[])(const bw_tune_report *, bw_sheet *) = {
        tune_page_changes, bw_tune_page_homes, bw_tune_page_rule};
    if (page < 1 || page > bw_tune_pages(r)) return BW_NOT_FOUND;
    char name[2 * BW_NAME_SIZE + 40];
    bw_text t = bw_text_in(name, sizeof name);
    bw_say_owner(r->def->scheme, &t);
    const bw_foot foot = {.name = name,
                          .charts = page < 3,
                          .keys = page == 1 ? BW_KEY_DEFENDER | BW_KEY_RUN : BW_KEY_DEFENDER,
                          .page = page,
                          .pages = bw_tune_pages(r)};
    bw_sheet sheet = bw_sheet_begin(ink, paper, &foot);
    draw[page - 1](r, &sheet);
    return (bw_status)ink->status;
}
