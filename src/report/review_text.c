/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A season's review on a terminal.
#include "report/column.h"
#include "report/review.h"
#include "trial/words.h"

enum { WIDTH = 79, LABEL = 18, LINE = 1024 };

static void put_item(bw_text *out, const char *label, const char *words) {
    bw_put_left(out, label, LABEL);
    bw_put_wrapped(out, words, LABEL, LABEL, WIDTH);
}

static void put_group(const bw_review *r, const bw_group *g, bool shots, bw_text *out) {
    char line[LINE], label[LABEL + 4];
    bw_text t = bw_text_in(label, sizeof label);
    bw_put(&t, "  ");
    bw_put(&t, g->label);
    t = bw_text_in(line, sizeof line);
    bw_say_count(g->goals, shots ? "shots" : "breaks", &t);
    char beside[LINE];
    bw_text b = bw_text_in(beside, sizeof beside);
    if (!shots) bw_say_expected(r, g, &b);
    if (beside[0]) {
        bw_put(&t, "; ");
        bw_put(&t, beside);
    }
    put_item(out, label, line);
}

static void put_groups(const bw_review *r, const char *head, const bw_group *list, int count,
                       bool shots, bw_text *out) {
    if (count == 0) return;
    bw_put(out, head);
    for (int i = 0; i < count; i++) {
        if (list[i].breaks > 0) put_group(r, &list[i], shots, out);
    }
}

static void put_games(const bw_review *r, bw_text *out) {
    bw_put(out, "\nGoals against by game\n");
    for (int i = 0; i < r->season->game_count; i++) {
        const bw_group *g = &r->season->games[i];
        if (g->breaks == 0) continue;
        char line[LINE];
        bw_put(out, "  ");
        bw_text t = bw_text_in(line, sizeof line);
        bw_put_int(&t, g->goals.hits);
        bw_put(&t, " of ");
        bw_put_int(&t, g->goals.cases);
        bw_put(&t, "; ");
        bw_say_leaning(g, &t);
        bw_put_row(out, 2, (bw_column[]){{g->label, 34}, {line, WIDTH - 35}}, 2);
    }
}

static void put_change(const bw_review *r, bw_text *out) {
    if (r->before < 0 || r->after < 0) return;
    char line[LINE];
    bw_put(out, "\nThe change of the scheme: goals against\n");
    bw_put(out, "  From: ");
    bw_put(out, r->season->revisions[r->before].label);
    bw_put(out, "\n  To:   ");
    bw_put(out, r->season->revisions[r->after].label);
    bw_put(out, "\n  ");
    bw_text t = bw_text_in(line, sizeof line);
    bw_say_difference(r->season->revisions[r->after].goals, r->season->revisions[r->before].goals,
                      &t);
    bw_put_wrapped(out, line, 2, 2, WIDTH);
}

static void put_named(const bw_review *r, bw_text *out) {
    if (r->season->named_count == 0) return;
    bw_put(out, "\nNamed out of place (a count of notes, not of mistakes)\n");
    for (int i = 0; i < r->season->named_count; i++) {
        const bw_named *n = &r->season->named[i];
        char line[LINE], label[BW_ID_SIZE + 4];
        bw_text t = bw_text_in(label, sizeof label);
        bw_put(&t, n->who[0] >= '0' && n->who[0] <= '9' ? "  #" : "  ");
        bw_put(&t, n->who);
        t = bw_text_in(line, sizeof line);
        bw_put(&t, n->times == 1 ? "in 1 break" : "in ");
        if (n->times > 1) {
            bw_put_int(&t, n->times);
            bw_put(&t, " breaks");
        }
        bw_put(&t, ", scored on in ");
        bw_put_int(&t, n->goals);
        put_item(out, label, line);
    }
}

static void put_calibration(const bw_review *r, bw_text *out) {
    char line[LINE];
    bw_text t = bw_text_in(line, sizeof line);
    bw_put(out, "\nThe model beside it\n");
    bw_say_calibration(r, &t);
    bw_put(out, "  ");
    bw_put_wrapped(out, line, 2, 2, WIDTH);
    if (r->season->calibration.cases < BW_CALIBRATION_LEAST) return;
    for (int k = 0; k < BW_CALIBRATION_BINS; k++) {
        const bw_calibration_bin *bin = &r->season->calibration.bin[k];
        if (bin->count.cases == 0) continue;
        bw_put(out, "  forecast about ");
        bw_put_right(out, bw_in_100(bin->chance), 0, 2);
        bw_put(out, " in 100: seen ");
        t = bw_text_in(line, sizeof line);
        bw_say_count(bin->count, "breaks", &t);
        bw_put(out, line);
        bw_put(out, "\n");
    }
}

void bw_review_text(const bw_review *r, bw_text *out) {
    const bw_season *s = r->season;
    char line[LINE];
    bw_text t = bw_text_in(line, sizeof line);
    if (r->team[0]) {
        bw_put(out, r->team);
        bw_put(out, ": ");
    }
    bw_say_season(r, &t);
    bw_put(out, line);
    bw_put(out, "\n");
    if (r->about) {
        bw_put(out, r->about);
        bw_put(out, "\n");
    }
    bw_put(out, "\n");
    t = bw_text_in(line, sizeof line);
    bw_say_count(s->all.goals, "breaks", &t);
    put_item(out, "Goals against", line);
    t = bw_text_in(line, sizeof line);
    bw_say_count(s->all.shots, "breaks", &t);
    put_item(out, "Shots let go", line);
    t = bw_text_in(line, sizeof line);
    bw_say_count(s->all.on_shot, "shots", &t);
    put_item(out, "Goals a shot", line);
    t = bw_text_in(line, sizeof line);
    bw_say_outcomes(&s->all, &t);
    put_item(out, "How they ended", line);
    if (s->all.timed > 0) {
        t = bw_text_in(line, sizeof line);
        bw_put_fixed(&t, s->all.seconds, 1);
        bw_put(&t, " s on average, over the ");
        bw_put_int(&t, s->all.timed);
        bw_put(&t, " that were timed");
        put_item(out, "How long", line);
    }
    put_groups(r, "\nGoals against by numbers\n", s->numbers, s->number_count, false, out);
    put_groups(r, "\nGoals against by stage\n", s->stages, s->stage_count, false, out);
    put_groups(r, "\nGoals by where the shot came from\n", s->places, s->place_count, true, out);
    put_games(r, out);
    put_change(r, out);
    put_named(r, out);
    if (r->modelled) put_calibration(r, out);
    bw_put(out, "\nHow to read this\n");
    for (int i = 0;; i++) {
        t = bw_text_in(line, sizeof line);
        if (!bw_say_review_limit(r, i, &t)) break;
        bw_put(out, "  ");
        bw_put_wrapped(out, line, 2, 2, WIDTH);
    }
}
