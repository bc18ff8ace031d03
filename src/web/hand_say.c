/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "web/hand_say.h"

#include "core/json.h"
#include "scheme/caption.h"
#include "scheme/rotation.h"

enum { SENTENCE = 500 };

static void say_rotations(const bw_rotations *rotations, int count, bw_json *json) {
    bw_json_open(json, '[');
    for (int a = 0; a < count; a++) {
        for (int b = 0; b < count; b++) {
            if (!rotations->rotation[a][b]) continue;
            bw_json_open(json, '[');
            bw_json_number(json, a);
            bw_json_number(json, b);
            bw_json_close(json, ']');
        }
    }
    bw_json_close(json, ']');
}

void bw_hand_say_about(const bw_hand *hand, bw_text *out) {
    const bw_scheme *scheme = &hand->scheme;
    bw_rotations rotations;
    bw_rotations_of(scheme, &rotations);
    bw_json json = bw_json_in(out);
    bw_json_open(&json, '{');
    bw_json_put_open(&json, "stages", '[');
    for (int i = 0; i < scheme->stage_count; i++) {
        const bw_stage *stage = &scheme->stages[i];
        bw_json_open(&json, '{');
        bw_json_put_number(&json, "defenders", stage->defenders);
        bw_json_put_open(&json, "spots", '[');
        for (int s = 0; s < stage->defenders; s++) {
            bw_json_open(&json, '{');
            bw_json_put_text(&json, "id", stage->spots[s].id);
            bw_json_put_text(&json, "name", stage->spots[s].name);
            bw_json_close(&json, '}');
        }
        bw_json_close(&json, ']');
        bw_json_close(&json, '}');
    }
    bw_json_close(&json, ']');
    bw_json_key(&json, "rotations");
    say_rotations(&rotations, scheme->landmark_count, &json);
    bw_json_put_open(&json, "places", '[');
    for (int l = 0; l < scheme->landmark_count; l++) {
        const bw_vec at = bw_view_point(&hand->chart, scheme->landmarks[l].at);
        bw_json_open(&json, '{');
        bw_json_put_text(&json, "name", scheme->landmarks[l].name);
        bw_json_put_number(&json, "x", at.x);
        bw_json_put_number(&json, "y", at.y);
        bw_json_close(&json, '}');
    }
    bw_json_close(&json, ']');
    bw_json_put_text(&json, "unit", bw_unit_long(scheme->units));
    bw_json_close(&json, '}');
}

void bw_hand_say_card(bw_hand *hand, int card, bw_text *out) {
    const bw_card *c = &hand->card[card];
    bw_json json = bw_json_in(out);
    bw_json_open(&json, '{');
    bw_json_put_text(&json, "key", bw_hand_key(hand, card));
    bw_json_put_number(&json, "ease", c->ease);
    bw_json_put_number(&json, "streak", c->streak);
    bw_json_put_number(&json, "interval", c->interval);
    bw_json_put_number(&json, "due", c->due);
    bw_json_put_number(&json, "answers", c->answers);
    bw_json_close(&json, '}');
}

static int latest(const bw_walk_moment *moment, int spots) {
    int spot = 0;
    for (int s = 1; s < spots; s++) {
        if (moment->men[s].late > moment->men[spot].late) spot = s;
    }
    return spot;
}

void bw_hand_say_lateness(const bw_hand *hand, int spot, bw_text *out) {
    const bw_walk *walk = &hand->walk;
    const bw_walk_stop *stop = &walk->stops[walk->count - 1];
    char words[SENTENCE];
    bw_text t = bw_text_in(words, sizeof words);
    bw_walk_moment moment;
    bw_walk_at(walk, stop->come * BW_FOLLOW_STEP, &moment);
    const int who = spot >= 0 ? spot : latest(&moment, walk->spots);
    const double late = moment.men[who].late;
    bw_put(&t, "The ball is there after ");
    bw_put_fixed(&t, (stop->come - stop->left) * BW_FOLLOW_STEP, 1);
    bw_put(&t, " s. ");
    if (spot >= 0)
        bw_put(&t, "You");
    else
        bw_say_first(hand->scheme.stages[walk->stage].spots[who].name, &t);
    if (late < 0.05) {
        bw_put(&t, spot >= 0 ? " are in place by then." : " is the last, and in place by then.");
    } else {
        bw_put(&t, spot >= 0 ? " are in place " : " is the last, in place ");
        bw_put_fixed(&t, late, 1);
        bw_put(&t, " s later: go early.");
    }
    bw_put(&t, " By the model, for the usual player of your level.");
    bw_json json = bw_json_in(out);
    bw_json_open(&json, '{');
    bw_json_put_text(&json, "words", words);
    bw_json_close(&json, '}');
}

void bw_hand_say_place(const bw_hand *hand, bw_vec at, bw_text *out) {
    const double unit = bw_unit_length(hand->scheme.units);
    char words[SENTENCE];
    bw_text t = bw_text_in(words, sizeof words);
    bw_say_place(hand->scheme.units, at, &t);
    const bw_vec point = bw_view_point(&hand->chart, at);
    bw_json json = bw_json_in(out);
    bw_json_open(&json, '{');
    bw_json_put_number(&json, "x", point.x);
    bw_json_put_number(&json, "y", point.y);
    bw_json_put_number(&json, "right", bw_round_to(at.x / unit, 10));
    bw_json_put_number(&json, "out", bw_round_to(at.y / unit, 10));
    bw_json_put_text(&json, "words", words);
    bw_json_close(&json, '}');
}
