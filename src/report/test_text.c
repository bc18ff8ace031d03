/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Section by section, in the order in which a coach asks.
#include "report/test_text.h"

#include "report/column.h"
#include "trial/catalogue.h"
#include "trial/limits.h"
#include "trial/ranking.h"
#include "trial/sentences.h"
#include "trial/weak_rotations.h"
#include "trial/words.h"

enum { WIDTH = 79, LABEL = 17, LINE = 1024, BAR = 39 };

/// A label at the left and its words wrapped beside it.
static void put_item(bw_text *out, const char *label, const char *words) {
    bw_put_left(out, label, LABEL);
    bw_put_wrapped(out, words, LABEL, LABEL, WIDTH);
}

static void put_head(const bw_report *r, bw_text *out) {
    char line[LINE];
    bw_text t = bw_text_in(line, sizeof line);
    bw_put(&t, r->ground->scheme->name);
    bw_put(&t, ": what a break is worth");
    bw_put(out, line);
    bw_put(out, "\n\n");
    t = bw_text_in(line, sizeof line);
    bw_say_break(r->ground, &r->headline->def, &t);
    bw_put(&t, " ");
    bw_say_late_men(r->ground, &r->headline->begun, &t);
    put_item(out, "The break", line);
}

static void put_worth(const bw_report *r, bw_text *out) {
    char line[LINE];
    bw_text t = bw_text_in(line, sizeof line);
    bw_say_worth_now(r->headline, &t);
    put_item(out, "Worth now", line);
    t = bw_text_in(line, sizeof line);
    bw_say_bought(r->headline, r->headline->effort.curve.margin, &t);
    put_item(out, "Time bought", line);
    t = bw_text_in(line, sizeof line);
    bw_say_plateau(r->headline, &t);
    put_item(out, "Plateau", line);
    t = bw_text_in(line, sizeof line);
    bw_say_missing(r->headline, &t);
    put_item(out, "Seconds missing", line);
}

/// A bar: # up to typical, o at best; one column is `goals` goals in a hundred.
static void put_bar(bw_text *out, int typical, int best, int goals) {
    const int bar = (typical + goals / 2) / goals, mark = (best + goals / 2) / goals;
    if (bar > 0 || mark > 0) bw_put(out, "       ");
    for (int i = 1; i <= bar || i <= mark; i++)
        bw_put_char(out, i == mark ? 'o' : (i <= bar ? '#' : ' '));
}

static void put_arrivals(const bw_report *r, int second, bw_text *out) {
    const bw_curve *c = &r->headline->curve;
    for (int i = 0; i < c->late_count; i++) {
        if (c->late_s[i] < second - 1 || c->late_s[i] >= second) continue;
        bw_put_right(out, c->late_s[i], 1, 8);
        bw_put(out, "  ---- ");
        bw_say_late_man(r->ground->scheme, i, out);
        bw_put(out, " is in ----\n");
    }
}

static void put_curve(const bw_report *r, bw_text *out) {
    const bw_curve *c = &r->headline->curve;
    int most = 1;
    for (int t = 1; t <= BW_MAX_SECONDS; t++) {
        if (bw_in_100(c->best[t]) > most) most = bw_in_100(c->best[t]);
    }
    const int goals = 1 + (most - 1) / BAR;
    bw_put(out, "\nWorth over time: goals in 100 such breaks (# typical, o best)\n"
                " seconds  typical   best   even numbers\n");
    for (int t = 1; t <= BW_MAX_SECONDS; t++) {
        put_arrivals(r, t, out);
        bw_put_right(out, t, 0, 6);
        bw_put_right(out, bw_in_100(c->typical[t]), 0, 10);
        bw_put_right(out, bw_in_100(c->best[t]), 0, 8);
        bw_put_right(out, bw_in_100(c->settled[t]), 0, 10);
        put_bar(out, bw_in_100(c->typical[t]), bw_in_100(c->best[t]), goals);
        bw_put_char(out, '\n');
    }
}

static void put_step(const bw_report *r, int i, bw_text *out) {
    const bw_trial *trial = r->headline;
    const bw_answer_ply *step = &trial->curve.answer.plies[i];
    char line[LINE];
    bw_put_right(out, i + 1, 0, 3);
    bw_put(out, ".");
    bw_put_right(out, step->at_s, 1, 6);
    bw_put(out, " s  ");
    bw_text t = bw_text_in(line, sizeof line);
    bw_say_step(trial, i, &t);
    bw_put(&t, ". About ");
    bw_say_seconds(step->end_s - step->at_s, &t);
    bw_put(&t, ", ");
    bw_say_step_chance(trial, i, &t);
    bw_put(&t, ".");
    if (trial->straggler[i].man >= 0) bw_put(&t, " ");
    bw_say_straggler(trial, &trial->straggler[i], &t);
    bw_put_wrapped(out, line, 14, 14, WIDTH);
}

static void put_answer(const bw_report *r, bw_text *out) {
    const bw_answer *a = &r->headline->curve.answer;
    char line[LINE];
    bw_text t = bw_text_in(line, sizeof line);
    bw_put_char(out, '\n');
    bw_say_answer(r->headline, &t);
    bw_put_wrapped(out, line, 0, 0, WIDTH);
    for (int i = 0; i < a->count; i++)
        put_step(r, i, out);
}

static void put_rotation(const bw_report *r, int i, bw_text *out) {
    const bw_rotation *row = &r->headline->whatif.weak[i];
    char line[LINE];
    bw_text t = bw_text_in(line, sizeof line);
    bw_say_rotation(r->ground, row, &t);
    bw_put_right(out, i + 1, 0, 3);
    bw_put(out, ". ");
    char figures[64];
    bw_text f = bw_text_in(figures, sizeof figures);
    bw_put_right(&f, row->cost * 100, 1, 5);
    bw_put_right(&f, bw_in_100(row->use), 0, 8);
    bw_put_right(&f, bw_in_100(row->moving), 0, 12);
    bw_put_right(&f, bw_in_100(row->set), 0, 12);
    bw_put_row(out, 5, (bw_column[]){{line, 37}, {figures, 40}}, 2);
    t = bw_text_in(line, sizeof line);
    bw_say_behind(r->ground, row, &t);
    if (!line[0]) return;
    bw_put(out, "     ");
    bw_put_wrapped(out, line, 5, 5, WIDTH);
}

static void put_weak(const bw_report *r, bw_text *out) {
    const int count = bw_weak_shown(r->headline);
    if (count == 0) {
        bw_put_char(out, '\n');
        bw_put_plain_sentence(out, bw_voice_of(r->ground->scheme), &bw_s_weak_none_text);
        bw_put_char(out, '\n');
        return;
    }
    bw_put(out,
           "\nThe weakest rotations of this break: what to rehearse (in 100 breaks or passes)\n"
           "                                          costs  thrown  as it is    all set\n");
    for (int i = 0; i < count; i++)
        put_rotation(r, i, out);
}

static void put_faults(const bw_report *r, bw_text *out) {
    const bw_whatif *w = &r->headline->whatif;
    if (w->fault_count == 0) return;
    char line[LINE];
    bw_text t = bw_text_in(line, sizeof line);
    bw_say_faults(r->headline, &t);
    bw_put_wrapped(out, line, 0, 0, WIDTH);
}

static void put_row(const bw_ranking *table, const bw_ranking_row *row, bw_text *out) {
    bw_put(out, "  ");
    bw_put_int(out, row->offence);
    bw_put(out, "v");
    bw_put_int(out, row->defence);
    bw_put(out, "   ");
    bw_put_left(out, row->set, BW_ID_SIZE);
    for (int c = 0; c < table->columns; c++) {
        const bw_trial *cell = row->cell[c];
        if (!cell) {
            bw_put(out, "     -         ");
            continue;
        }
        if (c > 0) bw_put(out, "   ");
        bw_put_right(out, bw_in_100(cell->curve.plateau), 0, 4);
        bw_put_right(out, cell->curve.bought_s, 1, 6);
        bw_put(out, cell->curve.ever_beaten ? " s" : "+s");
    }
    bw_put(out, "\n");
}

static void put_standard(const bw_report *r, bw_text *out) {
    if (!r->standard || r->standard_count == 0) return;
    bw_ranking table;
    bw_ranking_build(r->standard, r->standard_count, &table);
    char line[LINE];
    bw_text t = bw_text_in(line, sizeof line);
    bw_say_standard(&table, &t);
    bw_put(out, "\nThe standard set of breaks, worst first\n");
    bw_put_wrapped(out, line, 0, 0, WIDTH);
    bw_column heads[2 + BW_RANKING_COLUMNS] = {{"break", 6}, {"set", BW_ID_SIZE + 1}};
    for (int c = 0; c < table.columns; c++) {
        const int l = bw_scheme_landmark(r->ground->scheme, table.start[c]);
        heads[2 + c] = (bw_column){r->ground->scheme->landmarks[l].name, 15};
    }
    bw_put(out, "  ");
    bw_put_row(out, 2, heads, 2 + table.columns);
    for (int i = 0; i < table.rows; i++)
        put_row(&table, &table.row[i], out);
}

static void put_limits(const bw_report *r, bw_text *out) {
    bw_put(out, "\nHow to read this\n");
    char line[LINE];
    for (int i = 0;; i++) {
        bw_text t = bw_text_in(line, sizeof line);
        if (!bw_say_limit(r->headline, i, &t)) return;
        bw_put(out, "  ");
        bw_put_wrapped(out, line, 2, 2, WIDTH);
    }
}

void bw_report_text(const bw_report *report, bw_text *out) {
    put_head(report, out);
    put_worth(report, out);
    put_curve(report, out);
    put_answer(report, out);
    put_weak(report, out);
    put_faults(report, out);
    put_standard(report, out);
    put_limits(report, out);
}
