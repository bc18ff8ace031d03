/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report/quiz_sheet.h"

#include "draw/chart.h"
#include "draw/key.h"
#include "draw/own.h"
#include "draw/path.h"
#include "report/own_cell.h"
#include "report/packet_parts.h"
#include "report/quiz_ask.h"
#include "scheme/caption.h"

/// A quiz being put on paper.
typedef struct quiz {
    const bw_scheme *scheme;
    bw_question list[BW_QUIZ_QUESTIONS];
    int count, places;
} quiz;

static const double chart_wide = 178; // of the empty charts
static const double row_gap = 10;

static const char *const numbers[] = {"", "", "", "Three", "Four", "Five", "Six"};

/// "3. Four in. You are low left. Ball behind the goal. Where do you stand?"
static void say_question(const quiz *q, int index, bw_text *out) {
    const bw_question *question = &q->list[index];
    const bw_stage *stage = &q->scheme->stages[question->stage];
    bw_put_int(out, index + 1);
    bw_put(out, ". ");
    bw_put(out, numbers[stage->defenders]);
    bw_put(out, question->ask == BW_QUIZ_STAGE ? " are in." : " in.");
    if (question->ask != BW_QUIZ_STAGE) {
        bw_put(out, " You are ");
        bw_put(out, stage->spots[question->spot].name);
        bw_put(out, ".");
    }
    if (question->ask == BW_QUIZ_WHERE || question->ask == BW_QUIZ_DUTY) {
        bw_put(out, " Ball ");
        bw_say_at(q->scheme, q->scheme->landmarks[question->landmark].at, out);
        bw_put(out, ".");
    }
    switch (question->ask) {
    case BW_QUIZ_WHERE: bw_put(out, " Where?"); break;
    case BW_QUIZ_DUTY: bw_put(out, " What do you do?"); break;
    case BW_QUIZ_CALL: bw_put(out, " What do you call when you are in your place?"); break;
    case BW_QUIZ_STAGE: bw_put(out, " What is called?"); break;
    }
}

/// The question over an empty chart with the ball on it. Returns its height.
static double put_place(bw_ink *ink, const quiz *q, int index, double x, double y, double width) {
    char words[BW_PACKET_LINE];
    bw_text t = bw_text_in(words, sizeof words);
    say_question(q, index, &t);
    const double text = bw_put_column(ink, BW_ROLE_TEXT, BW_BOLD, x, y, width, words) + 5;
    const bw_view view = bw_view_fit(bw_window_unit(q->scheme), x + BW_BORDER, y + text + BW_BORDER,
                                     chart_wide - 2 * BW_BORDER);
    if (ink) {
        const bw_own own = {.scheme = q->scheme,
                            .ball = q->scheme->landmarks[q->list[index].landmark].at};
        bw_ink_begin(ink, BW_TAG_FIGURE, "An empty chart to mark your place on");
        bw_draw_own(ink, &own, &view);
        bw_ink_end(ink);
    }
    return text + view.box.height + 2 * BW_BORDER;
}

static void put_places(bw_paging *p, const quiz *q) {
    double width;
    const int columns = bw_packet_columns(p, &width);
    for (int i = 0; i < q->places; i += columns) {
        const int here = q->places - i < columns ? q->places - i : columns;
        double height = 0;
        for (int c = 0; c < here; c++)
            height = bw_max(height, put_place(NULL, q, i + c, 0, 0, width));
        bw_paging_room(p, height);
        for (int c = 0; c < here && p->ink; c++)
            put_place(p->ink, q, i + c, p->x + c * (width + BW_PACKET_GUTTER), p->y, width);
        bw_paging_scale(p, bw_packet_scale(q->scheme, chart_wide));
        p->y += height + row_gap;
    }
}

/// A question and a line to write on.
static void put_word(bw_paging *p, const quiz *q, int index) {
    char words[BW_PACKET_LINE];
    bw_text t = bw_text_in(words, sizeof words);
    say_question(q, index, &t);
    const double text = bw_put_column(NULL, BW_ROLE_TEXT, BW_BOLD, 0, 0, p->width, words);
    bw_paging_room(p, text + 32);
    bw_put_column(p->ink, BW_ROLE_TEXT, BW_BOLD, p->x, p->y, p->width, words);
    p->y += text + 32;
    if (!p->ink) return;
    bw_ink_stroke(p->ink, BW_ROLE_SOFT_LINE, 0.75);
    bw_path_segment(p->ink, bw_v(p->x + 16, p->y - 6), bw_v(p->x + p->width, p->y - 6));
}

static void say_answer(const quiz *q, const bw_question *question, bw_text *out) {
    const bw_stage *stage = &q->scheme->stages[question->stage];
    if (question->ask == BW_QUIZ_CALL) bw_put_call(out, stage->spots[question->spot].call);
    if (question->ask == BW_QUIZ_STAGE) bw_put_call(out, stage->call);
    if (question->ask != BW_QUIZ_DUTY) return;
    bw_plan plan;
    bw_station stations[BW_MAX_SPOTS];
    const bw_vec ball = q->scheme->landmarks[question->landmark].at;
    bw_plan_build(q->scheme, question->stage, &plan);
    bw_where(&plan, ball, NULL, 0, stations);
    char job[BW_PACKET_LINE];
    bw_text t = bw_text_in(job, sizeof job);
    bw_say_your_job(q->scheme, question->stage, question->spot, &stations[question->spot], ball,
                    &t);
    bw_say_first(job, out);
    bw_put(out, ".");
}

/// Number and spot stand where a player's page has the ball.
static void fill_answer(const quiz *q, int index, bw_own_cell *cell) {
    const bw_question *question = &q->list[index];
    bw_plan plan;
    bw_plan_build(q->scheme, question->stage, &plan);
    bw_own_cell_fill(q->scheme, &plan, question->stage, question->spot, question->landmark, cell);
    bw_text t = bw_text_in(cell->title, sizeof cell->title);
    bw_put_int(&t, index + 1);
    bw_put(&t, ". ");
    bw_say_first(q->scheme->stages[question->stage].spots[question->spot].name, &t);
}

static void put_key(bw_paging *p, const quiz *q) {
    double width;
    const int columns = bw_packet_columns(p, &width);
    for (int i = 0; i < q->places; i += columns) {
        const int here = q->places - i < columns ? q->places - i : columns;
        bw_own_cell cells[2];
        double height = 0;
        for (int c = 0; c < here; c++) {
            fill_answer(q, i + c, &cells[c]);
            height = bw_max(height, bw_own_cell_put(NULL, &cells[c], 0, 0, width));
        }
        bw_paging_room(p, height);
        for (int c = 0; c < here && p->ink; c++)
            bw_own_cell_put(p->ink, &cells[c], p->x + c * (width + BW_PACKET_GUTTER), p->y, width);
        bw_paging_scale(p, bw_own_cell_scale(q->scheme));
        p->y += height + row_gap - 2;
    }
    bw_paging_room(p, (q->count - q->places) * (BW_LEADING + 3)); // these stay together
    for (int i = q->places; i < q->count; i++) {
        char words[BW_PACKET_LINE];
        bw_text t = bw_text_in(words, sizeof words);
        bw_put_int(&t, i + 1);
        bw_put(&t, ". ");
        say_answer(q, &q->list[i], &t);
        bw_paging_text(p, BW_ROLE_TEXT, 3, words);
    }
}

static void walk(bw_paging *p) {
    quiz q = {.scheme = p->teach->scheme};
    q.count = bw_quiz_ask(p->teach, q.list);
    while (q.places < q.count && q.list[q.places].ask == BW_QUIZ_WHERE)
        q.places++;
    bw_paging_page(p, BW_KEY_BALL, "Quiz", false);
    bw_paging_heading(p, BW_TAG_H1, BW_TYPE_HEAD, "Quiz: where do you stand?");
    bw_paging_text(p, BW_ROLE_TEXT, 10,
                   "Without looking anything up. Mark your place on the chart with a cross. The "
                   "charts are to scale. Your number: ________");
    put_places(p, &q);
    if (q.count > q.places) {
        bw_paging_page(p, 0, "Quiz", false);
        bw_paging_heading(p, BW_TAG_H1, BW_TYPE_HEAD, "Quiz: what do you do, what do you call?");
        p->y += 6;
        for (int i = q.places; i < q.count; i++)
            put_word(p, &q, i);
    }
    bw_paging_page(p, BW_KEY_YOU | BW_KEY_MATE | BW_KEY_BALL | BW_KEY_FROM_HOME, "Key", false);
    bw_paging_heading(p, BW_TAG_H1, BW_TYPE_HEAD, "Key to the quiz");
    bw_paging_text(p, BW_ROLE_TEXT, 8,
                   p->teach->scheme->units == BW_METRES
                       ? "A cross within 2 m of the place counts as right (our own figure)."
                       : "A cross within 2 yd of the place counts as right (our own figure).");
    put_key(p, &q);
}

int bw_quiz_pages(const bw_teach *teach) {
    return bw_paging_count(teach, walk);
}

bw_status bw_quiz_page(const bw_teach *teach, int page, int pages, bw_ink *ink) {
    return bw_paging_draw(teach, walk, page, pages, ink);
}
