/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The hand-out's pictures with their words, and its questions with their answers.
#include "draw/book_words.h"
#include "draw/hand_chart.h"
#include "report/catalogue.h"
#include "report/handout_parts.h"
#include "report/html.h"
#include "scheme/caption.h"
#include "scheme/quiz_words.h"

enum { SENTENCE = 600 };

static void put_number(bw_text *out, const char *name, int value) {
    bw_put_html_number(out, name, value);
}

static void put_use(bw_text *out, bw_vec at) {
    bw_put_html_number(out, "x", at.x);
    bw_put_html_number(out, "y", at.y);
    bw_put(out, "/>");
}

static void put_man(const bw_handout_job *job, const bw_view *view, int stage, int spot, bw_vec at,
                    bw_duty duty) {
    bw_text *out = job->out;
    bw_put(out, "<use href=\"#m-");
    bw_put(out, job->teach->scheme->stages[stage].spots[spot].id);
    bw_put_char(out, '-');
    bw_put_int(out, duty);
    bw_put_char(out, '"');
    put_number(out, "data-spot", spot);
    put_use(out, bw_view_point(view, at));
}

/// The picture of a ball place with the unit on it.
static void put_picture(const bw_handout_job *job, int stage, const bw_station *station,
                        bw_vec ball, const char *caption) {
    const bw_scheme *scheme = job->teach->scheme;
    const bw_view view = bw_hand_view(scheme);
    bw_text *out = job->out;
    bw_put(out, "<svg class=\"chart\" role=\"img\" viewBox=\"0 0 ");
    bw_put_number(out, BW_HAND_WIDTH, 0);
    bw_put_char(out, ' ');
    bw_put_number(out, bw_hand_height(&view), 1);
    bw_put(out, "\" aria-label=\"");
    bw_put_html(out, caption);
    bw_put(out, "\"><use href=\"#chart\"/>");
    for (int s = 0; s < scheme->stages[stage].defenders; s++)
        put_man(job, &view, stage, s, station[s].at, station[s].duty);
    bw_put(out, "<use href=\"#ball\" class=\"ball-mark\"");
    put_use(out, bw_view_point(&view, ball));
    bw_put(out, "</svg>\n");
}

/// A spot's line: code, name, job, place.
static void put_job(const bw_handout_job *job, int stage, int spot, const bw_station *station,
                    bw_vec ball) {
    const bw_scheme *scheme = job->teach->scheme;
    const bw_spot *s = &scheme->stages[stage].spots[spot];
    char words[SENTENCE];
    bw_text *out = job->out, t = bw_text_in(words, sizeof words);
    bw_put(out, "<li");
    put_number(out, "data-spot", spot);
    bw_put(out, "><b class=\"code\">");
    bw_put_html(out, s->id);
    bw_put(out, "</b><span><b>");
    bw_say_first(s->name, &t);
    bw_put_html(out, words);
    bw_put(out, ":</b> ");
    t = bw_text_in(words, sizeof words);
    bw_say_your_job(scheme, stage, spot, station, ball, &t);
    bw_put_html(out, words);
    bw_put(out, ". <i>");
    t = bw_text_in(words, sizeof words);
    bw_teach_place(scheme, station->at, &t);
    char first[SENTENCE];
    t = bw_text_in(first, sizeof first);
    bw_say_first(words, &t);
    bw_put_html(out, first);
    bw_put(out, ".</i></span></li>\n");
}

/// "Ball at left wing"; and where everyone stands for it. Returns the ball's place.
static bw_vec put_ball(const bw_handout_job *job, int stage, int landmark, bw_station *station) {
    const bw_vec ball = job->teach->scheme->landmarks[landmark].at;
    char words[SENTENCE];
    bw_text t = bw_text_in(words, sizeof words);
    bw_put(job->out, "Ball ");
    bw_say_at(job->teach->scheme, ball, &t);
    bw_put_html(job->out, words);
    bw_where(&job->plan[stage], ball, NULL, 0, station);
    return ball;
}

static void put_place(const bw_handout_job *job, int stage, int landmark) {
    const bw_scheme *scheme = job->teach->scheme;
    bw_station station[BW_MAX_SPOTS];
    char words[SENTENCE];
    bw_text *out = job->out, t = bw_text_in(words, sizeof words);
    bw_put(out, "<article");
    put_number(out, "data-landmark", landmark);
    bw_put(out, "><h3>");
    const bw_vec ball = put_ball(job, stage, landmark, station);
    bw_put(out, "</h3>\n");
    bw_say_unit(scheme, stage, station, ball, &t);
    put_picture(job, stage, station, ball, words);
    bw_put(out, "<ul class=\"jobs\">\n");
    for (int s = 0; s < scheme->stages[stage].defenders; s++)
        put_job(job, stage, s, &station[s], ball);
    bw_put(out, "</ul></article>\n");
}

/// "4 in: 2-2".
static void put_stage_name(const bw_handout_job *job, int stage) {
    char words[SENTENCE];
    bw_text t = bw_text_in(words, sizeof words);
    bw_say_stage(&job->teach->scheme->stages[stage], &t);
    bw_put_html(job->out, words);
}

static void put_calls(const bw_handout_job *job, const bw_stage *stage) {
    bw_text *out = job->out;
    const bool called = stage->call[0];
    if (called || stage->match_up) bw_put(out, "<p>");
    if (called) {
        bw_put(out, "You go there on <b>\xE2\x80\x9C");
        bw_put_html(out, stage->call);
        bw_put(out, "\xE2\x80\x9D</b>.");
    }
    if (called && stage->match_up) bw_put_char(out, ' ');
    if (stage->match_up)
        bw_put_plain_sentence(out, bw_voice_of(job->teach->scheme), &bw_s_handout_man);
    if (called || stage->match_up) bw_put(out, "</p>\n");
    bw_put(out, "<ul class=\"calls\">");
    for (int s = 0; s < stage->defenders; s++) {
        bw_put(out, "<li");
        put_number(out, "data-spot", s);
        bw_put(out, "><b class=\"code\">");
        bw_put_html(out, stage->spots[s].id);
        bw_put(out, "</b> ");
        bw_put_html(out, stage->spots[s].name);
        if (stage->spots[s].call[0]) {
            bw_put(out, ", calls \xE2\x80\x9C");
            bw_put_html(out, stage->spots[s].call);
            bw_put(out, "\xE2\x80\x9D");
        }
        bw_put(out, "</li>");
    }
    bw_put(out, "</ul>\n");
}

void bw_handout_stages(const bw_handout_job *job) {
    const bw_scheme *scheme = job->teach->scheme;
    for (int s = 0; s < scheme->stage_count; s++) {
        bw_put(job->out, "<section class=\"stage\"");
        put_number(job->out, "data-stage", s);
        put_number(job->out, "data-in", scheme->stages[s].defenders);
        bw_put(job->out, "><h2>");
        put_stage_name(job, s);
        bw_put(job->out, "</h2>\n<div class=\"about\">");
        put_calls(job, &scheme->stages[s]);
        bw_put(job->out, "</div>\n");
        for (int l = 0; l < scheme->landmark_count; l++)
            put_place(job, s, l);
        bw_put(job->out, "</section>\n");
    }
}

static void put_answer(const bw_handout_job *job, int stage, int spot, int landmark) {
    const bw_scheme *scheme = job->teach->scheme;
    bw_station station[BW_MAX_SPOTS];
    char words[SENTENCE];
    bw_text *out = job->out, t = bw_text_in(words, sizeof words);
    bw_put(out, "<details><summary>");
    const bw_vec ball = put_ball(job, stage, landmark, station);
    bw_put(out, ". Where do you stand?</summary><p>");
    bw_answer_where(scheme, stage, spot, &station[spot], ball, &t);
    bw_put_char(&t, ' ');
    bw_say_reason(scheme, stage, spot, &station[spot], landmark, &t);
    bw_put_html(out, words);
    bw_put(out, "</p></details>\n");
}

void bw_handout_answers(const bw_handout_job *job) {
    const bw_scheme *scheme = job->teach->scheme;
    for (int s = 0; s < scheme->stage_count; s++) {
        for (int k = 0; k < scheme->stages[s].defenders; k++) {
            if (bw_teach_spot(job->teach, s) != -1 && bw_teach_spot(job->teach, s) != k) continue;
            char words[SENTENCE];
            bw_text t = bw_text_in(words, sizeof words);
            bw_put(job->out, "<section><h3>");
            bw_say_first(scheme->stages[s].spots[k].name, &t);
            bw_put_html(job->out, words);
            bw_put(job->out, ", ");
            put_stage_name(job, s);
            bw_put(job->out, "</h3>\n");
            for (int l = 0; l < scheme->landmark_count; l++)
                put_answer(job, s, k, l);
            bw_put(job->out, "</section>\n");
        }
    }
}
