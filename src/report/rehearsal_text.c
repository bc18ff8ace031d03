/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The rehearsal on a terminal of 80 columns.
#include "report/cautions.h"
#include "report/column.h"
#include "report/rehearsal_words.h"
#include "scheme/caption.h"
#include "trial/words.h"

enum { LINE = 1600, WIDTH = 78, INDENT = 5 };

typedef void say_script(const bw_script *script, bw_text *out);

static void put_said(const bw_script *script, say_script *say, const char *before, bw_text *out) {
    char line[LINE];
    bw_text t = bw_text_in(line, sizeof line);
    bw_put(&t, before);
    say(script, &t);
    bw_put_wrapped(out, line, 0, 0, WIDTH);
}

static void put_stop(const bw_script *script, int i, bw_text *out) {
    const bw_script_stop *stop = &script->stops[i];
    const bw_stage *stage = &script->scheme->stages[script->stage];
    char ball[LINE], on_ball[LINE], farthest[LINE], weak[32];
    bw_text t = bw_text_in(ball, sizeof ball);
    bw_say_ball(script->scheme, script->scheme->landmarks[stop->to].at, &t);
    t = bw_text_in(on_ball, sizeof on_ball);
    if (stop->on_ball < 0) {
        bw_put(&t, "the low pair hold");
    } else {
        bw_put(&t, stage->spots[stop->on_ball].id);
        bw_put(&t, " ");
        bw_put(&t, stage->spots[stop->on_ball].call);
    }
    t = bw_text_in(farthest, sizeof farthest);
    bw_put(&t, stage->spots[stop->farthest].id);
    bw_put(&t, " ");
    bw_say_length(script->scheme->units, stop->metres, &t);
    t = bw_text_in(weak, sizeof weak);
    if (stop->rank > 0) {
        bw_put(&t, "weak ");
        bw_put_int(&t, stop->rank);
    }
    bw_put_right(out, i + 1, 0, 4);
    bw_put(out, "  ");
    const char *crease = stop->crease < 0 ? "-" : stage->spots[stop->crease].id;
    const bw_column row[] = {{ball, 26}, {on_ball, 22}, {crease, 8}, {farthest, 12}, {weak, 12}};
    bw_put_row(out, 6, row, BW_COUNT(row));
}

static void put_script(const bw_script *script, bw_text *out) {
    put_said(script, bw_say_unit_name, "Script: ", out);
    put_said(script, bw_say_script, "", out);
    put_said(script, bw_say_script_length, "", out);
    put_said(script, bw_say_codes, "Spots: ", out);
    bw_put(out, "\n      Ball to                   takes it, calls       crease  longest way\n");
    bw_put(out, "   0  ");
    bw_say_ball(script->scheme, script->scheme->landmarks[script->start].at, out);
    bw_put(out, ": the start\n");
    for (int i = 0; i < script->stop_count; i++)
        put_stop(script, i, out);
}

static void put_plan(const bw_rehearsal *r, const bw_rehearsal_stage *stage, bw_text *out) {
    char line[LINE];
    bw_put(out, "\nPlan\n");
    bw_text t = bw_text_in(line, sizeof line);
    bw_say_plan(r, stage, &t);
    bw_put_wrapped(out, line, 0, 0, WIDTH);
    for (int i = 0; i < stage->plan.round_count; i++) {
        bw_say_round(stage, i, out);
        bw_put(out, "\n");
        t = bw_text_in(line, sizeof line);
        bw_say_round_men(r, stage, i, " ", &t);
        for (int k = 0; k < INDENT; k++)
            bw_put(out, " ");
        bw_put_wrapped(out, line, INDENT, INDENT, WIDTH);
    }
    t = bw_text_in(line, sizeof line);
    bw_put(&t, "Game, ");
    bw_say_game(stage, &t);
    bw_put_wrapped(out, line, 0, 0, WIDTH);
}

void bw_rehearsal_text(const bw_rehearsal *r, bw_text *out) {
    char line[LINE];
    bw_text title = bw_text_in(line, sizeof line);
    bw_say_owner(r->scheme, &title);
    bw_put(&title, ": what to rehearse");
    bw_put_wrapped(out, line, 0, 0, WIDTH);
    bw_put(out, "\n");
    for (int i = 0; i < r->stage_count; i++) {
        put_script(&r->stages[i].script, out);
        put_plan(r, &r->stages[i], out);
        bw_put(out, "\n");
    }
    bw_text t = bw_text_in(line, sizeof line);
    bw_say_script_time(&t);
    bw_put_wrapped(out, line, 0, 0, WIDTH);
    bw_put(out, "\n");
    bw_cautions_text(r->scheme, out);
}
