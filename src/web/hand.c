/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Scheme, spots, cards and rotations of the hand-out.
#include "web/hand.h"

#include "draw/hand_chart.h"
#include "scheme/read.h"
#include "scheme/tree_build.h"

bw_status bw_hand_take(bw_hand *hand) {
    hand->error = (bw_error){0};
    if (!bw_tree_finish(&hand->tree)) {
        hand->error = hand->tree.error;
        return BW_BAD_INPUT;
    }
    const bw_status status = bw_scheme_read(&hand->tree, &hand->reading, &hand->error);
    if (status != BW_OK) return status;
    hand->scheme = hand->reading;
    hand->chart = bw_hand_view(&hand->scheme);
    bw_tolerances_build(&hand->scheme, &hand->model);
    hand->open = true;
    hand->walking = false;
    hand->count = hand->asked = 0;
    for (int s = 0; s < BW_MAX_STAGES; s++) {
        hand->spot[s] = -1;
        for (int l = 0; l < BW_MAX_LANDMARKS; l++) {
            for (int k = 0; k < BW_MAX_SPOTS; k++)
                hand->weakness[s][l][k] = 0;
        }
    }
    return BW_OK;
}

void bw_hand_stations(const bw_hand *hand, int stage, bw_vec ball, bw_station *out) {
    bw_where(&hand->model.plan[stage], ball, NULL, 0, out);
}

void bw_hand_weak(bw_hand *hand, int stage, int landmark, int spot, double weakness) {
    double *known = &hand->weakness[stage][landmark][spot];
    *known = bw_max(*known, bw_clamp(weakness, 0, 1));
}

static void add_card(bw_hand *hand, bw_ask_kind kind, int stage, int landmark, double weakness) {
    if (hand->count == BW_MAX_CARDS) return;
    hand->ask[hand->count] = (bw_hand_ask){kind, stage, hand->spot[stage], landmark};
    hand->card[hand->count++] = bw_card_new(weakness);
}

/// Whether the stages have at least two calls to choose between.
static bool calls_differ(const bw_scheme *scheme) {
    const char *first = NULL;
    for (int s = 0; s < scheme->stage_count; s++) {
        const char *call = scheme->stages[s].call;
        if (!call[0]) continue;
        if (first && !bw_same(first, call)) return true;
        first = call;
    }
    return false;
}

/// The same of the spots of a stage.
static bool words_differ(const bw_stage *stage) {
    int words = 0;
    for (int s = 0; s < stage->defenders; s++)
        words += stage->spots[s].call[0] != '\0';
    return words >= 2;
}

static bool duties_differ(const bw_hand *hand, int stage) {
    bw_station here[BW_MAX_SPOTS];
    int first = -1;
    for (int l = 0; l < hand->scheme.landmark_count; l++) {
        bw_hand_stations(hand, stage, hand->scheme.landmarks[l].at, here);
        for (int s = 0; s < hand->scheme.stages[stage].defenders; s++) {
            if (first >= 0 && (int)here[s].duty != first) return true;
            first = (int)here[s].duty;
        }
    }
    return false;
}

static void make_cards(bw_hand *hand) {
    const bw_scheme *scheme = &hand->scheme;
    hand->count = hand->asked = 0;
    for (int s = 0; s < scheme->stage_count; s++) {
        const int spot = hand->spot[s];
        if (spot < 0) continue;
        const bool duties = duties_differ(hand, s);
        for (int l = 0; l < scheme->landmark_count; l++) {
            const double weakness = hand->weakness[s][l][spot];
            add_card(hand, BW_ASK_WHERE, s, l, weakness);
            if (duties) add_card(hand, BW_ASK_DUTY, s, l, weakness / 2);
        }
        if (scheme->stages[s].call[0] && calls_differ(scheme))
            add_card(hand, BW_ASK_STAGE, s, -1, 0);
        if (scheme->stages[s].spots[spot].call[0] && words_differ(&scheme->stages[s]))
            add_card(hand, BW_ASK_CALL, s, -1, 0);
    }
}

void bw_hand_pick(bw_hand *hand, int stage, int spot) {
    hand->spot[stage] = spot;
    make_cards(hand);
}

const char *bw_hand_key(bw_hand *hand, int card) {
    static const char *const kinds[] = {"where", "duty", "stage", "call"};
    const bw_hand_ask *ask = &hand->ask[card];
    const bw_stage *stage = &hand->scheme.stages[ask->stage];
    bw_text out = bw_text_in(hand->key, sizeof hand->key);
    bw_put_int(&out, stage->defenders);
    bw_put_char(&out, '.');
    bw_put(&out, stage->spots[ask->spot].id);
    bw_put_char(&out, '.');
    if (ask->landmark >= 0) bw_put(&out, hand->scheme.landmarks[ask->landmark].id);
    bw_put_char(&out, '.');
    bw_put(&out, kinds[ask->kind]);
    return hand->key;
}

void bw_hand_put_card(bw_hand *hand, int card, double ease, int streak, int interval, int due,
                      int answers) {
    if (!(ease >= 1.3 && ease <= 100) || streak < 0 || streak > answers || interval < 0 ||
        interval > 3650 || due < 0 || due > 200000 || answers < 0 || answers > 100000)
        return;
    bw_card *c = &hand->card[card];
    c->ease = ease;
    c->streak = streak;
    c->interval = interval;
    c->due = due;
    c->answers = answers;
}

bool bw_hand_rotation(bw_hand *hand, int stage, int from, int to) {
    const bw_scheme *scheme = &hand->scheme;
    bw_lesson lesson = {.defenders = scheme->stages[stage].defenders, .stop_count = 2};
    lesson.stops[0] = (bw_stop){.at_landmark = true, .landmark = from, .pause = 0.6};
    lesson.stops[1] = (bw_stop){.at_landmark = true, .landmark = to, .pause = 3};
    bw_walk_build(scheme, &lesson, &hand->walk);
    hand->walking = true;
    return true;
}
