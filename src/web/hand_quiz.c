/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The quiz of the hand-out: asked in order, each question answered once.
#include "scheme/quiz_words.h"
#include "web/hand.h"

int bw_hand_quiz(bw_hand *hand, int day, uint64_t seed) {
    hand->day = day;
    hand->right = hand->now = 0;
    hand->tally = (bw_tally){0};
    hand->answered = true;
    hand->asked =
        bw_recall_pick(hand->card, hand->count, day, seed, BW_HAND_QUESTIONS, hand->order);
    return hand->asked;
}

const bw_hand_ask *bw_hand_asked(const bw_hand *hand) {
    return &hand->ask[hand->order[hand->now]];
}

/// A word to choose, each once; false when there is no room.
static void add_option(bw_hand *hand, const char *word, bool right) {
    int at = 0;
    while (at < hand->option_count && !bw_same(hand->option[at], word))
        at++;
    if (at == hand->option_count) {
        if (at == BW_HAND_OPTIONS) return;
        hand->option[hand->option_count++] = word;
    }
    if (right) hand->option_right = at;
}

static void offer_duties(bw_hand *hand, const bw_hand_ask *ask) {
    const bw_scheme *scheme = &hand->scheme;
    bw_station here[BW_MAX_SPOTS];
    bool used[BW_DUTY_COUNT] = {false};
    for (int l = 0; l < scheme->landmark_count; l++) {
        bw_hand_stations(hand, ask->stage, scheme->landmarks[l].at, here);
        for (int s = 0; s < scheme->stages[ask->stage].defenders; s++)
            used[here[s].duty] = true;
    }
    bw_hand_stations(hand, ask->stage, scheme->landmarks[ask->landmark].at, here);
    for (int d = 0; d < BW_DUTY_COUNT; d++) {
        if (!used[d]) continue;
        bw_text order = bw_text_in(hand->duty_order[d], sizeof hand->duty_order[d]);
        bw_say_order(bw_voice_of(scheme), (bw_duty)d, &order);
        add_option(hand, hand->duty_order[d], d == (int)here[ask->spot].duty);
    }
}

static void offer_words(bw_hand *hand, const bw_hand_ask *ask) {
    const bw_scheme *scheme = &hand->scheme;
    const bw_stage *stage = &scheme->stages[ask->stage];
    if (ask->kind == BW_ASK_STAGE) {
        for (int s = 0; s < scheme->stage_count; s++) {
            if (scheme->stages[s].call[0])
                add_option(hand, scheme->stages[s].call, s == ask->stage);
        }
    } else {
        for (int s = 0; s < stage->defenders; s++) {
            if (stage->spots[s].call[0]) add_option(hand, stage->spots[s].call, s == ask->spot);
        }
    }
}

void bw_hand_show(bw_hand *hand, int number) {
    hand->now = number;
    hand->answered = false;
    hand->option_count = 0;
    hand->option_right = -1;
    const bw_hand_ask *ask = bw_hand_asked(hand);
    if (ask->kind == BW_ASK_DUTY) offer_duties(hand, ask);
    if (ask->kind == BW_ASK_STAGE || ask->kind == BW_ASK_CALL) offer_words(hand, ask);
}

static void settle(bw_hand *hand, double marks) {
    hand->answered = true;
    hand->right += marks >= 1;
    bw_card_answer(&hand->card[hand->order[hand->now]], bw_recall_quality(marks), hand->day);
}

bw_mark_given bw_hand_answer_place(bw_hand *hand, bw_vec at, double finger) {
    const bw_hand_ask *ask = bw_hand_asked(hand);
    const bw_stage *stage = &hand->scheme.stages[ask->stage];
    const bw_vec ball = hand->scheme.landmarks[ask->landmark].at;
    bw_where_asked asked = {.count = stage->defenders, .spot = ask->spot, .finger = finger};
    bw_hand_stations(hand, ask->stage, ball, asked.station);
    for (int s = 0; s < asked.count; s++) {
        asked.home[s] = stage->spots[s].home;
        asked.tolerance[s] =
            bw_tolerance(&hand->model, ask->stage, ball, s, bw_sub(at, asked.station[s].at));
    }
    const bw_mark_given given = bw_recall_score(&asked, at);
    bw_tally_add(&hand->tally, given.error);
    settle(hand, given.marks);
    return given;
}

bool bw_hand_answer_option(bw_hand *hand, int option) {
    const bool right = option == hand->option_right;
    settle(hand, right ? 1 : 0);
    return right;
}
