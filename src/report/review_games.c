/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The third sheet: game by game, the change of the scheme, and the model beside what was seen.
#include "report/beta.h"
#include "report/pages_part.h"
#include "report/review_part.h"

enum { LINE = 1200, GAMES = 18 };

/// The newest games that a sheet has room for.
static double put_games(const bw_review *r, const bw_sheet *sheet, double y) {
    const bw_box *b = &sheet->block;
    bw_plot_row rows[GAMES];
    int used = 0, games = 0;
    for (int i = 0; i < r->season->game_count; i++)
        games += r->season->games[i].breaks > 0;
    int skip = games > GAMES ? games - GAMES : 0;
    for (int i = 0; i < r->season->game_count; i++) {
        const bw_group *g = &r->season->games[i];
        if (g->breaks == 0 || skip-- > 0) continue;
        rows[used++] = (bw_plot_row){.label = g->label,
                                     .seen = g->goals,
                                     .leaning = bw_belief_interval(g->leaning),
                                     .lean = bw_belief_mean(g->leaning)};
    }
    bw_heading(sheet->ink, BW_TAG_H1, BW_ROLE_TEXT, BW_TYPE_HEAD, b->x, b->y + 16, b->width,
               games > used ? "The newest games" : "Game by game");
    if (used == 0) return y;
    y = bw_put_rates(sheet, y, "goals in 100 breaks", rows, used);
    return y + bw_paragraph(sheet->ink, BW_ROLE_TEXT, BW_REGULAR, BW_TYPE_SMALL, BW_LEADING_SMALL,
                            b->x, y, b->width,
                            "Dashed: where the game's rate likely lies when it leans on all the "
                            "season's games (95 %). A "
                            "dot stands only where a game had ten breaks.");
}

static double put_change(const bw_review *r, const bw_sheet *sheet, double y) {
    if (r->before < 0 || r->after < 0) return y;
    const bw_box *b = &sheet->block;
    const bw_group *before = &r->season->revisions[r->before],
                   *after = &r->season->revisions[r->after];
    char line[LINE];
    bw_heading(sheet->ink, BW_TAG_H2, BW_ROLE_TEXT, BW_TYPE_SUBHEAD, b->x, y + 14, b->width,
               "The change of the scheme");
    const bw_plot_row rows[] = {{.label = before->label,
                                 .seen = before->goals,
                                 .expected = before->expected,
                                 .forecast = r->modelled ? before->forecast_breaks : 0},
                                {.label = after->label,
                                 .seen = after->goals,
                                 .expected = after->expected,
                                 .forecast = r->modelled ? after->forecast_breaks : 0}};
    y = bw_put_rates(sheet, y + 22, "goals in 100 breaks", rows, 2);
    bw_text t = bw_text_in(line, sizeof line);
    bw_say_difference(after->goals, before->goals, &t);
    return y + bw_paragraph(sheet->ink, BW_ROLE_TEXT, BW_REGULAR, BW_TYPE_TEXT, BW_LEADING, b->x, y,
                            b->width, line);
}

static void put_model(const bw_review *r, const bw_sheet *sheet, double y) {
    const bw_box *b = &sheet->block;
    char line[LINE];
    bw_heading(sheet->ink, BW_TAG_H2, BW_ROLE_TEXT, BW_TYPE_SUBHEAD, b->x, y + 16, b->width,
               "The model beside it");
    bw_text t = bw_text_in(line, sizeof line);
    bw_say_calibration(r, &t);
    y += 22 + bw_paragraph(sheet->ink, BW_ROLE_TEXT, BW_REGULAR, BW_TYPE_TEXT, BW_LEADING, b->x,
                           y + 22, b->width, line);
    if (r->season->calibration.cases < BW_CALIBRATION_LEAST) return;
    char labels[BW_CALIBRATION_BINS][48];
    bw_plot_row rows[BW_CALIBRATION_BINS];
    int used = 0;
    for (int k = 0; k < BW_CALIBRATION_BINS; k++) {
        const bw_calibration_bin *bin = &r->season->calibration.bin[k];
        if (bin->count.cases == 0) continue;
        t = bw_text_in(labels[used], sizeof labels[used]);
        bw_put(&t, "forecast ");
        bw_put_int(&t, 20LL * k);
        bw_put(&t, " to ");
        bw_put_int(&t, 20LL * (k + 1));
        bw_put(&t, " in 100");
        rows[used] = (bw_plot_row){.label = labels[used],
                                   .seen = bin->count,
                                   .expected = bin->chance * bin->count.cases,
                                   .forecast = bin->count.cases};
        used++;
    }
    bw_put_rates(sheet, y + 6, "goals in 100 breaks", rows, used);
}

void bw_review_page_games(const bw_review *r, bw_sheet *sheet) {
    double y = put_games(r, sheet, sheet->block.y + 28);
    y = put_change(r, sheet, y + 4);
    if (r->modelled) put_model(r, sheet, y);
}
