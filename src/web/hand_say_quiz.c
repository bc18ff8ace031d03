/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Questions, marks and results of the hand-out's quiz.
#include "core/json.h"
#include "scheme/caption.h"
#include "scheme/quiz_words.h"
#include "web/hand_say.h"

enum { SENTENCE = 500 };

static const char *const kinds[] = {"where", "duty", "stage", "call"};

static void say_question(const bw_hand *hand, const bw_hand_ask *ask, bw_text *out) {
    const bw_scheme *scheme = &hand->scheme;
    const bw_stage *stage = &scheme->stages[ask->stage];
    switch (ask->kind) {
    case BW_ASK_WHERE:
        bw_ask_where(scheme, ask->stage, ask->spot, scheme->landmarks[ask->landmark].at, out);
        break;
    case BW_ASK_DUTY:
        bw_ask_duty(scheme, ask->stage, ask->spot, scheme->landmarks[ask->landmark].at, out);
        break;
    case BW_ASK_STAGE:
        bw_put_int(out, stage->defenders);
        bw_put(out, " of you are in. Which word calls it?");
        break;
    case BW_ASK_CALL:
        bw_put(out, "You are ");
        bw_put(out, stage->spots[ask->spot].name);
        bw_put(out, " and in your place. What do you call?");
    }
}

/// A place that can be answered by its name.
static void say_name(const bw_hand *hand, const char *name, const char *after, bw_vec at,
                     bw_json *json) {
    char words[BW_NAME_SIZE + 40];
    bw_text t = bw_text_in(words, sizeof words);
    bw_say_first(name, &t);
    bw_put(&t, after);
    const bw_vec point = bw_view_point(&hand->chart, at);
    bw_json_open(json, '{');
    bw_json_put_text(json, "name", words);
    bw_json_put_number(json, "x", point.x);
    bw_json_put_number(json, "y", point.y);
    bw_json_close(json, '}');
}

static void say_names(const bw_hand *hand, const bw_stage *stage, bw_json *json) {
    bw_json_put_open(json, "names", '[');
    for (int s = 0; s < stage->defenders; s++)
        say_name(hand, stage->spots[s].name, ": the starting place", stage->spots[s].home, json);
    say_name(hand, "the crease", ", in front of it", stage->rule.crease_at, json);
    const bw_vec post = stage->rule.hold_at;
    say_name(hand, "left post", "", bw_mirror(post), json);
    say_name(hand, "right post", "", post, json);
    for (int l = 0; l < hand->scheme.landmark_count; l++)
        say_name(hand, hand->scheme.landmarks[l].name, "", hand->scheme.landmarks[l].at, json);
    bw_json_close(json, ']');
}

void bw_hand_say_question(const bw_hand *hand, bw_text *out) {
    const bw_hand_ask *ask = bw_hand_asked(hand);
    char words[SENTENCE];
    bw_text t = bw_text_in(words, sizeof words);
    say_question(hand, ask, &t);
    bw_json json = bw_json_in(out);
    bw_json_open(&json, '{');
    bw_json_put_text(&json, "kind", kinds[ask->kind]);
    bw_json_put_number(&json, "stage", ask->stage);
    bw_json_put_number(&json, "spot", ask->spot);
    bw_json_put_number(&json, "landmark", ask->landmark);
    bw_json_put_text(&json, "words", words);
    bw_json_put_open(&json, "options", '[');
    for (int i = 0; i < hand->option_count; i++)
        bw_json_text(&json, hand->option[i]);
    bw_json_close(&json, ']');
    if (ask->kind == BW_ASK_WHERE) say_names(hand, &hand->scheme.stages[ask->stage], &json);
    bw_json_close(&json, '}');
}

/// The answer and its reason for a question about a ball place.
static void say_answer(const bw_hand *hand, const bw_hand_ask *ask, bw_json *json) {
    const bw_scheme *scheme = &hand->scheme;
    const bw_vec ball = scheme->landmarks[ask->landmark].at;
    bw_station here[BW_MAX_SPOTS];
    char words[SENTENCE];
    bw_hand_stations(hand, ask->stage, ball, here);
    bw_text t = bw_text_in(words, sizeof words);
    bw_answer_where(scheme, ask->stage, ask->spot, &here[ask->spot], ball, &t);
    bw_json_put_text(json, "answer", words);
    t = bw_text_in(words, sizeof words);
    bw_say_reason(scheme, ask->stage, ask->spot, &here[ask->spot], ask->landmark, &t);
    bw_json_put_text(json, "why", words);
}

void bw_hand_say_place_mark(const bw_hand *hand, bw_vec at, const bw_mark_given *mark,
                            bw_text *out) {
    const bw_hand_ask *ask = bw_hand_asked(hand);
    bw_station here[BW_MAX_SPOTS];
    char words[SENTENCE];
    bw_text t = bw_text_in(words, sizeof words);
    bw_hand_stations(hand, ask->stage, hand->scheme.landmarks[ask->landmark].at, here);
    bw_say_mark(&hand->scheme, ask->stage, mark, &t);
    const bw_vec place = bw_view_point(&hand->chart, here[ask->spot].at);
    const bw_vec tap = bw_view_point(&hand->chart, at);
    bw_json json = bw_json_in(out);
    bw_json_open(&json, '{');
    bw_json_put_bool(&json, "right", mark->marks >= 1);
    bw_json_put_number(&json, "marks", mark->marks);
    bw_json_put_text(&json, "words", words);
    say_answer(hand, ask, &json);
    bw_json_put_number(&json, "x", place.x);
    bw_json_put_number(&json, "y", place.y);
    bw_json_put_number(&json, "tapX", tap.x);
    bw_json_put_number(&json, "tapY", tap.y);
    bw_json_put_number(&json, "tolerance", mark->tolerance * hand->chart.scale);
    bw_json_put_number(&json, "mate", mark->mate);
    bw_json_put_number(&json, "errorX", mark->error.x);
    bw_json_put_number(&json, "errorY", mark->error.y);
    bw_json_close(&json, '}');
}

void bw_hand_say_option_mark(const bw_hand *hand, bool right, bw_text *out) {
    const bw_hand_ask *ask = bw_hand_asked(hand);
    bw_json json = bw_json_in(out);
    bw_json_open(&json, '{');
    bw_json_put_bool(&json, "right", right);
    bw_json_put_text(&json, "words", right ? "Right." : "Not that one.");
    if (ask->landmark >= 0) {
        say_answer(hand, ask, &json);
    } else {
        char words[SENTENCE];
        bw_text t = bw_text_in(words, sizeof words);
        bw_put(&t, "It is \xE2\x80\x9C");
        bw_put(&t, hand->option[hand->option_right]);
        bw_put(&t, "\xE2\x80\x9D.");
        bw_json_put_text(&json, "answer", words);
        bw_json_put_text(&json, "why",
                         ask->kind == BW_ASK_CALL
                             ? "Whoever hears it knows that the place is taken."
                             : "One word, and everyone knows the shape.");
    }
    bw_json_put_number(&json, "option", hand->option_right);
    bw_json_close(&json, '}');
}

void bw_hand_say_result(const bw_hand *hand, uint32_t document, bw_text *out) {
    const bw_hand_ask *ask = bw_hand_asked(hand);
    bw_quiz_said said = {.document = document,
                         .day = hand->day,
                         .asked = hand->asked,
                         .right = hand->right,
                         .tries = hand->tally.tries,
                         .bias = bw_tally_bias(&hand->tally),
                         .spread = bw_tally_spread(&hand->tally)};
    bw_copy(said.spot, sizeof said.spot, hand->scheme.stages[ask->stage].spots[ask->spot].id);
    char words[SENTENCE], code[BW_QUIZ_CODE_BYTES];
    bw_text t = bw_text_in(words, sizeof words), c = bw_text_in(code, sizeof code);
    bw_say_bias(hand->scheme.units, &hand->tally, &t);
    bw_quiz_write(&said, &c);
    bw_json json = bw_json_in(out);
    bw_json_open(&json, '{');
    bw_json_put_number(&json, "asked", hand->asked);
    bw_json_put_number(&json, "right", hand->right);
    bw_json_put_text(&json, "words", words);
    bw_json_put_text(&json, "code", code);
    bw_json_close(&json, '}');
}
