/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report/review_board.h"

#include "draw/svg.h"
#include "file/json_stream.h"
#include "report/beta.h"
#include "report/review_part.h"
#include <stdlib.h>

enum { LINE = 1024, SVG_BYTES = 128 * 1024, ROWS = BW_SEASON_GAMES };

typedef struct maker {
    bw_json json;
    const bw_review *review;
    double width;
    void *ink;
    char *svg;
} maker;

static void put_row(maker *m, const char *label, const char *words) {
    bw_json_open(&m->json, '{');
    bw_json_put_text(&m->json, "label", label);
    bw_json_put_text(&m->json, "words", words);
    bw_json_close(&m->json, '}');
}

static void begin_part(maker *m, const char *title) {
    bw_json_open(&m->json, '{');
    bw_json_put_text(&m->json, "title", title);
}

static void begin_list(maker *m, const char *key) {
    bw_json_put_open(&m->json, key, '[');
}

static void put_counted(maker *m, const char *label, bw_count count, const char *what) {
    char line[LINE];
    bw_text t = bw_text_in(line, sizeof line);
    bw_say_count(count, what, &t);
    put_row(m, label, line);
}

static void put_whole(maker *m) {
    const bw_group *all = &m->review->season->all;
    char line[LINE];
    begin_part(m, "All breaks");
    begin_list(m, "rows");
    put_counted(m, "Goals against", all->goals, "breaks");
    put_counted(m, "Shots let go", all->shots, "breaks");
    put_counted(m, "Goals a shot", all->on_shot, "shots");
    bw_text t = bw_text_in(line, sizeof line);
    bw_say_outcomes(all, &t);
    if (all->breaks > 0) put_row(m, "How they ended", line);
    t = bw_text_in(line, sizeof line);
    bw_put_fixed(&t, all->seconds, 1);
    bw_put(&t, " s on average, over the ");
    bw_put_int(&t, all->timed);
    bw_put(&t, " that were timed");
    if (all->timed > 0) put_row(m, "How long", line);
    bw_json_close(&m->json, ']');
    bw_json_close(&m->json, '}');
}

/// The rows as a picture in every theme.
static void put_pictures(maker *m, const char *what, const bw_plot_row *rows, int count) {
    const bw_box block = {2, 2, m->width - 4, bw_rates_height(count)};
    begin_list(m, "pictures");
    for (int theme = 0; theme < BW_THEME_COUNT; theme++) {
        bw_sheet sheet = {.ink = bw_ink_in(m->ink, BW_INK_PAGE_BYTES), .block = block};
        bw_ink_page(sheet.ink, m->width, block.height + 4);
        bw_put_rates(&sheet, block.y, what, rows, count);
        bw_text out = bw_text_in(m->svg, SVG_BYTES);
        bw_svg(sheet.ink, bw_theme_at((bw_theme_id)theme), NULL, &out);
        bw_json_text(&m->json, out.full ? "" : m->svg);
    }
    bw_json_close(&m->json, ']');
    bw_json_put_text(&m->json, "alt", "The rows above as dots with their likely ranges.");
}

static void say_group(const maker *m, const bw_group *g, bool shots, bool leaning, bw_text *out) {
    bw_say_count(g->goals, shots ? "shots" : "breaks", out);
    char beside[LINE];
    bw_text t = bw_text_in(beside, sizeof beside);
    if (!shots) bw_say_expected(m->review, g, &t);
    if (t.used > 0) {
        bw_put(out, "; ");
        bw_put(out, beside);
    }
    if (!leaning) return;
    bw_put(out, "; ");
    bw_say_leaning(g, out);
}

static void put_groups(maker *m, const char *title, const bw_group *list, int count, bool shots,
                       bool leaning) {
    bw_plot_row rows[ROWS];
    char line[2 * LINE];
    int used = 0;
    for (int i = 0; i < count && used < ROWS; i++) {
        if (list[i].breaks == 0) continue;
        const bool forecast = m->review->modelled && !shots;
        rows[used] = (bw_plot_row){.label = list[i].label,
                                   .seen = list[i].goals,
                                   .expected = list[i].expected,
                                   .forecast = forecast ? list[i].forecast_breaks : 0};
        if (leaning) {
            rows[used].leaning = bw_belief_interval(list[i].leaning);
            rows[used].lean = bw_belief_mean(list[i].leaning);
        }
        used++;
    }
    if (used == 0) return;
    begin_part(m, title);
    begin_list(m, "rows");
    for (int i = 0; i < count; i++) {
        if (list[i].breaks == 0) continue;
        bw_text t = bw_text_in(line, sizeof line);
        say_group(m, &list[i], shots, leaning, &t);
        put_row(m, list[i].label, line);
    }
    bw_json_close(&m->json, ']');
    put_pictures(m, shots ? "goals in 100 shots" : "goals in 100 breaks", rows, used);
    bw_json_close(&m->json, '}');
}

static void put_change(maker *m) {
    const bw_review *r = m->review;
    if (r->before < 0 || r->after < 0) return;
    const bw_group *before = &r->season->revisions[r->before],
                   *after = &r->season->revisions[r->after];
    const bw_plot_row rows[] = {{.label = before->label, .seen = before->goals},
                                {.label = after->label, .seen = after->goals}};
    char line[LINE];
    bw_text t = bw_text_in(line, sizeof line);
    begin_part(m, "The change of the scheme: goals against");
    begin_list(m, "rows");
    put_counted(m, before->label, before->goals, "breaks");
    put_counted(m, after->label, after->goals, "breaks");
    bw_json_close(&m->json, ']');
    begin_list(m, "notes");
    bw_say_difference(after->goals, before->goals, &t);
    bw_json_text(&m->json, line);
    bw_json_close(&m->json, ']');
    put_pictures(m, "goals in 100 breaks", rows, 2);
    bw_json_close(&m->json, '}');
}

static void put_named(maker *m) {
    const bw_season *s = m->review->season;
    if (s->named_count == 0) return;
    begin_part(m, "Named out of place");
    begin_list(m, "rows");
    for (int i = 0; i < s->named_count; i++) {
        const bw_named *n = &s->named[i];
        char line[LINE], label[BW_ID_SIZE + 4];
        bw_text t = bw_text_in(label, sizeof label);
        if (n->who[0] >= '0' && n->who[0] <= '9') bw_put_char(&t, '#');
        bw_put(&t, n->who);
        t = bw_text_in(line, sizeof line);
        bw_put(&t, "in ");
        bw_put_int(&t, n->times);
        bw_put(&t, n->times == 1 ? " break" : " breaks");
        bw_put(&t, ", scored on in ");
        bw_put_int(&t, n->goals);
        put_row(m, label, line);
    }
    bw_json_close(&m->json, ']');
    begin_list(m, "notes");
    bw_json_text(&m->json,
                 "A count of notes, not of mistakes: whoever has the hardest job is named "
                 "most.");
    bw_json_close(&m->json, ']');
    bw_json_close(&m->json, '}');
}

static void put_model(maker *m) {
    if (!m->review->modelled) return;
    char line[LINE];
    bw_text t = bw_text_in(line, sizeof line);
    bw_say_calibration(m->review, &t);
    begin_part(m, "The model beside it");
    begin_list(m, "notes");
    bw_json_text(&m->json, line);
    bw_json_close(&m->json, ']');
    bw_json_close(&m->json, '}');
}

static void put_limits(maker *m) {
    char line[LINE];
    begin_part(m, "How to read this");
    begin_list(m, "notes");
    for (int i = 0;; i++) {
        bw_text t = bw_text_in(line, sizeof line);
        if (!bw_say_review_limit(m->review, i, &t)) break;
        bw_json_text(&m->json, line);
    }
    bw_json_close(&m->json, ']');
    bw_json_close(&m->json, '}');
}

static void put_parts(maker *m) {
    const bw_season *s = m->review->season;
    put_whole(m);
    put_groups(m, "Goals against by numbers", s->numbers, s->number_count, false, false);
    put_groups(m, "Goals against by stage", s->stages, s->stage_count, false, false);
    put_groups(m, "Goals by where the shot came from", s->places, s->place_count, true, false);
    put_change(m);
    put_groups(m, "Goals against by game", s->games, s->game_count, false, true);
    put_named(m);
    put_model(m);
    put_limits(m);
}

bool bw_review_board(FILE *stream, const bw_review *r, int width) {
    maker m = {.json = bw_json_to(stream), .review = r, .width = width};
    char line[LINE];
    bw_text t = bw_text_in(line, sizeof line);
    m.ink = malloc(BW_INK_PAGE_BYTES);
    m.svg = malloc(SVG_BYTES);
    if (m.ink && m.svg) {
        bw_json_open(&m.json, '{');
        if (r->team[0]) {
            bw_put(&t, r->team);
            bw_put(&t, ": ");
        }
        bw_say_season(r, &t);
        bw_json_put_text(&m.json, "title", line);
        bw_json_put_text(&m.json, "about", r->about ? r->about : "");
        bw_json_put_bool(&m.json, "modelled", r->modelled);
        begin_list(&m, "parts");
        put_parts(&m);
        bw_json_close(&m.json, ']');
        bw_json_close(&m.json, '}');
        bw_json_end(&m.json);
    }
    const bool made = m.ink && m.svg;
    free(m.ink);
    free(m.svg);
    return made;
}
