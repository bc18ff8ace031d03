/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "web/hand_page.h"

#include "draw/theme.h"
#include "scheme/tree_build.h"
#include "web/abi.h"
#include "web/export.h"
#include "web/hand_say.h"

/// The one hand-out, in no other memory than the module's own.
static bw_hand hand;
static bw_hand_frame frame;
static char layout[512];

static const bw_abi_field man_fields[] = {
    BW_ABI_F64(bw_hand_man, x),
    BW_ABI_F64(bw_hand_man, y),
    BW_ABI_F64(bw_hand_man, needs),
    BW_ABI_I32(bw_hand_man, duty),
};
static const bw_abi_field frame_fields[] = {
    BW_ABI_F64(bw_hand_frame, x),
    BW_ABI_F64(bw_hand_frame, y),
    BW_ABI_I32(bw_hand_frame, moving),
    BW_ABI_I32(bw_hand_frame, count),
    BW_ABI_BLOCKS(bw_hand_frame, men, "man", bw_hand_man),
};
static const bw_abi_block blocks[] = {
    {"man", sizeof(bw_hand_man), man_fields, BW_COUNT(man_fields)},
    {"frame", sizeof(bw_hand_frame), frame_fields, BW_COUNT(frame_fields)},
};

static bw_text answer(void) {
    return bw_text_in(hand.output, sizeof hand.output);
}

static int said(const bw_text *out) {
    return out->full ? 0 : (int)out->used;
}

static bool stage_is(int stage) {
    return hand.open && stage >= 0 && stage < hand.scheme.stage_count;
}

static bool spot_is(int stage, int spot) {
    return stage_is(stage) && spot >= 0 && spot < hand.scheme.stages[stage].defenders;
}

static bool landmark_is(int landmark) {
    return hand.open && landmark >= 0 && landmark < hand.scheme.landmark_count;
}

static bool finite(double x, double y) {
    return bw_page_number(x) && bw_page_number(y);
}

BW_EXPORT(bw_hand_layout)
const char *bw_hand_page_layout(void) {
    bw_text out = bw_text_in(layout, sizeof layout);
    bw_put_abi(&out, blocks, BW_COUNT(blocks), NULL, 0);
    BW_ASSERT(!out.full);
    return layout;
}

BW_EXPORT(bw_hand_input)
char *bw_hand_page_input(void) {
    return hand.input;
}

BW_EXPORT(bw_hand_output)
const char *bw_hand_page_output(void) {
    return hand.output;
}

BW_EXPORT(bw_hand_feed)
void bw_hand_page_feed(int event, double value) {
    bw_tree_feed(&hand.tree, event, hand.input, sizeof hand.input, value);
}

BW_EXPORT(bw_hand_take)
int bw_hand_page_take(void) {
    return (int)bw_hand_take(&hand);
}

BW_EXPORT(bw_hand_about)
int bw_hand_page_about(void) {
    bw_text out = answer();
    if (hand.open) bw_hand_say_about(&hand, &out);
    return said(&out);
}

BW_EXPORT(bw_hand_weak)
void bw_hand_page_weak(int stage, int landmark, int spot, double weakness) {
    if (spot_is(stage, spot) && landmark_is(landmark) && weakness == weakness)
        bw_hand_weak(&hand, stage, landmark, spot, weakness);
}

BW_EXPORT(bw_hand_pick)
void bw_hand_page_pick(int stage, int spot) {
    if (stage_is(stage) && (spot == -1 || spot_is(stage, spot))) bw_hand_pick(&hand, stage, spot);
}

BW_EXPORT(bw_hand_cards)
int bw_hand_page_cards(void) {
    return hand.count;
}

BW_EXPORT(bw_hand_card)
int bw_hand_page_card(int card) {
    bw_text out = answer();
    if (card >= 0 && card < hand.count) bw_hand_say_card(&hand, card, &out);
    return said(&out);
}

BW_EXPORT(bw_hand_put_card)
void bw_hand_page_put_card(int card, double ease, int streak, int interval, int due, int answers) {
    if (card >= 0 && card < hand.count)
        bw_hand_put_card(&hand, card, ease, streak, interval, due, answers);
}

BW_EXPORT(bw_hand_rotate)
double bw_hand_page_rotate(int stage, int from, int to) {
    hand.walking = false;
    if (!stage_is(stage) || !landmark_is(from) || !landmark_is(to) || from == to) return 0;
    bw_hand_rotation(&hand, stage, from, to);
    return bw_walk_seconds(&hand.walk);
}

BW_EXPORT(bw_hand_frame)
const bw_hand_frame *bw_hand_page_frame(double seconds) {
    bw_walk_moment moment;
    if (!hand.walking || !finite(seconds, 0)) return &frame;
    bw_walk_at(&hand.walk, seconds, &moment);
    const bw_vec ball = bw_view_point(&hand.chart, moment.ball);
    frame.x = ball.x;
    frame.y = ball.y;
    frame.moving = moment.way != BW_WAY_NONE;
    frame.count = hand.walk.spots;
    for (int s = 0; s < hand.walk.spots; s++) {
        const bw_vec at = bw_view_point(&hand.chart, moment.men[s].body.at);
        frame.men[s] = (bw_hand_man){.x = at.x,
                                     .y = at.y,
                                     .needs = moment.men[s].needs,
                                     .duty = (int32_t)moment.men[s].station.duty};
    }
    return &frame;
}

BW_EXPORT(bw_hand_lateness)
int bw_hand_page_lateness(int spot) {
    bw_text out = answer();
    if (hand.walking && spot < hand.walk.spots) bw_hand_say_lateness(&hand, spot, &out);
    return said(&out);
}

BW_EXPORT(bw_hand_quiz)
int bw_hand_page_quiz(int day, int seed) {
    return hand.open && day >= 0 && day < 65536 ? bw_hand_quiz(&hand, day, (uint64_t)(unsigned)seed)
                                                : 0;
}

BW_EXPORT(bw_hand_ask)
int bw_hand_page_ask(int number) {
    bw_text out = answer();
    if (number >= 0 && number < hand.asked) {
        bw_hand_show(&hand, number);
        bw_hand_say_question(&hand, &out);
    }
    return said(&out);
}

static bool waits_for(bool place) {
    return hand.asked > 0 && !hand.answered &&
           (bw_hand_asked(&hand)->kind == BW_ASK_WHERE) == place;
}

BW_EXPORT(bw_hand_answer_place)
int bw_hand_page_answer_place(double px, double py, double finger) {
    bw_text out = answer();
    if (waits_for(true) && finite(px, py) && finger >= 0 && finger < 1000) {
        const bw_vec at = bw_view_place(&hand.chart, bw_v(px, py));
        const bw_mark_given mark = bw_hand_answer_place(&hand, at, finger / hand.chart.scale);
        bw_hand_say_place_mark(&hand, at, &mark, &out);
    }
    return said(&out);
}

BW_EXPORT(bw_hand_answer_option)
int bw_hand_page_answer_option(int option) {
    bw_text out = answer();
    if (waits_for(false) && option >= 0 && option < hand.option_count)
        bw_hand_say_option_mark(&hand, bw_hand_answer_option(&hand, option), &out);
    return said(&out);
}

BW_EXPORT(bw_hand_result)
int bw_hand_page_result(unsigned document) {
    bw_text out = answer();
    if (hand.asked > 0) bw_hand_say_result(&hand, document, &out);
    return said(&out);
}

BW_EXPORT(bw_hand_point)
int bw_hand_page_point(double right, double out_yd) {
    bw_text out = answer();
    if (hand.open && finite(right, out_yd)) {
        const double unit = bw_unit_length(hand.scheme.units);
        const bw_vec at = bw_scale(bw_v(bw_clamp(right, -99, 99), bw_clamp(out_yd, -99, 99)), unit);
        bw_hand_say_place(&hand, at, &out);
    }
    return said(&out);
}

BW_EXPORT(bw_hand_place)
int bw_hand_page_place(double px, double py) {
    bw_text out = answer();
    if (hand.open && finite(px, py))
        bw_hand_say_place(&hand, bw_view_place(&hand.chart, bw_v(px, py)), &out);
    return said(&out);
}

static bool known(int theme) {
    return theme >= 0 && theme < BW_THEME_COUNT;
}

BW_EXPORT(bw_hand_colour)
int bw_hand_page_colour(int theme, int role) {
    if (!known(theme) || role < 0 || role >= BW_ROLE_COUNT) return 0;
    return (int)bw_theme_at((bw_theme_id)theme)->colour[role];
}

BW_EXPORT(bw_hand_theme)
const char *bw_hand_page_theme(int theme) {
    return known(theme) ? bw_theme_at((bw_theme_id)theme)->id : "";
}

BW_EXPORT(bw_hand_role)
const char *bw_hand_page_role(int role) {
    return role >= 0 && role < BW_ROLE_COUNT ? bw_role_name((bw_role)role) : "";
}
