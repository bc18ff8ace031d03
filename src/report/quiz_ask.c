/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report/quiz_ask.h"

#include "core/random.h"

/// Questions gathered so far.
typedef struct quiz {
    const bw_teach *teach;
    bw_question *list;
    int count;
} quiz;

static bool same(const bw_question *a, const bw_question *b) {
    return a->ask == b->ask && a->stage == b->stage && a->spot == b->spot &&
           a->landmark == b->landmark;
}

/// Adds a question that concerns the quizzed player and has not been asked. `most` questions at most.
static void add(quiz *q, bw_question question, int most) {
    const int only = bw_teach_spot(q->teach, question.stage);
    if (q->count == most || only == -2) return;
    if (only >= 0 && question.ask != BW_QUIZ_STAGE && question.spot != only) return;
    for (int i = 0; i < q->count; i++) {
        if (same(&q->list[i], &question)) return;
    }
    q->list[q->count++] = question;
}

/// Where the late men should have been when the ball came: the dearest rotation first.
static void add_weak(quiz *q) {
    for (int i = 0; i < q->teach->weak->count; i++) {
        const bw_weak *weak = &q->teach->weak->weak[i];
        if (weak->to_at < 0) continue;
        for (int k = 0; k < weak->men; k++)
            add(q, (bw_question){BW_QUIZ_WHERE, weak->stage, weak->man[k].spot, weak->to_at},
                BW_QUIZ_PLACES / 2);
    }
}

static int draw(bw_random *random, int count) {
    return (int)(bw_random_unit(random) * count);
}

/// A question of this kind at random.
static bw_question draw_question(const bw_scheme *scheme, bw_quiz_kind ask, bw_random *random) {
    bw_question question = {.ask = ask};
    question.stage = draw(random, scheme->stage_count);
    question.spot = draw(random, scheme->stages[question.stage].defenders);
    question.landmark = draw(random, scheme->landmark_count);
    if (ask == BW_QUIZ_CALL || ask == BW_QUIZ_STAGE) question.landmark = 0;
    if (ask == BW_QUIZ_STAGE) question.spot = 0;
    return question;
}

/// Whether the scheme has an answer to it.
static bool has_answer(const bw_scheme *scheme, const bw_question *question) {
    const bw_stage *stage = &scheme->stages[question->stage];
    if (question->ask == BW_QUIZ_CALL) return stage->spots[question->spot].call[0] != '\0';
    if (question->ask == BW_QUIZ_STAGE) return stage->call[0] != '\0';
    return true;
}

int bw_quiz_ask(const bw_teach *teach, bw_question *list) {
    static const bw_quiz_kind words[] = {BW_QUIZ_DUTY, BW_QUIZ_CALL, BW_QUIZ_DUTY, BW_QUIZ_STAGE};
    enum { TRIES = 4000 }; // a small scheme has fewer questions than there is room for
    quiz q = {.teach = teach, .list = list};
    bw_random random = {.state = teach->seed};
    add_weak(&q);
    for (int i = 0; i < TRIES && q.count < BW_QUIZ_PLACES; i++)
        add(&q, draw_question(teach->scheme, BW_QUIZ_WHERE, &random), BW_QUIZ_PLACES);
    const int most = q.count + BW_QUIZ_WORDS;
    for (int i = 0; i < TRIES && q.count < most; i++) {
        const bw_quiz_kind ask = words[i % BW_COUNT(words)];
        const bw_question question = draw_question(teach->scheme, ask, &random);
        if (has_answer(teach->scheme, &question)) add(&q, question, most);
    }
    return q.count;
}
