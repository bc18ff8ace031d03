/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "scheme/quiz_words.h"

#include "scheme/caption.h"
#include "scheme/catalogue.h"

static void ask(const bw_scheme *scheme, int stage, int spot, bw_vec ball,
                const bw_sentence *question, bw_text *out) {
    bw_put_sentence(out, bw_voice_of(scheme), question, bw_as_at("at", scheme, ball),
                    bw_as_word("spot", scheme->stages[stage].spots[spot].name));
}

void bw_ask_where(const bw_scheme *scheme, int stage, int spot, bw_vec ball, bw_text *out) {
    ask(scheme, stage, spot, ball, &bw_s_ask_where, out);
}

void bw_ask_duty(const bw_scheme *scheme, int stage, int spot, bw_vec ball, bw_text *out) {
    ask(scheme, stage, spot, ball, &bw_s_ask_duty, out);
}

void bw_say_order(bw_voice voice, bw_duty duty, bw_text *out) {
    static const bw_sentence *const orders[BW_DUTY_COUNT] = {
        [BW_DUTY_BALL] = &bw_s_order_ball,     [BW_DUTY_ADJACENT] = &bw_s_order_adjacent,
        [BW_DUTY_CREASE] = &bw_s_order_crease, [BW_DUTY_BACKSIDE] = &bw_s_order_backside,
        [BW_DUTY_HOLD] = &bw_s_order_hold,     [BW_DUTY_MAN] = &bw_s_order_man};
    BW_ASSERT((unsigned)duty < BW_DUTY_COUNT);
    bw_put_plain_sentence(out, voice, orders[duty]);
}

void bw_answer_where(const bw_scheme *scheme, int stage, int spot, const bw_station *station,
                     bw_vec ball, bw_text *out) {
    char job[4 * BW_NAME_SIZE];
    bw_text t = bw_text_in(job, sizeof job);
    bw_say_your_job(scheme, stage, spot, station, ball, &t);
    bw_put_sentence(out, bw_voice_of(scheme), &bw_s_answer_where,
                    bw_as_place("place", scheme->units, station->at), bw_as_word("job", job));
}

static const bw_sentence *reason(const bw_stage *stage, int spot, bw_duty duty, int landmark) {
    if (landmark >= 0 && stage->pinned[landmark][spot]) return &bw_s_why_pin;
    switch (duty) {
    case BW_DUTY_BALL: return &bw_s_why_ball;
    case BW_DUTY_ADJACENT: return &bw_s_why_adjacent;
    case BW_DUTY_CREASE:
        return stage->rule.crease >= 0 ? &bw_s_why_always_crease : &bw_s_why_farthest;
    case BW_DUTY_BACKSIDE: return &bw_s_why_backside;
    case BW_DUTY_HOLD: return &bw_s_why_hold;
    default: return &bw_s_why_man;
    }
}

void bw_say_reason(const bw_scheme *scheme, int stage, int spot, const bw_station *station,
                   int landmark, bw_text *out) {
    bw_put_plain_sentence(out, bw_voice_of(scheme),
                          reason(&scheme->stages[stage], spot, station->duty, landmark));
}

void bw_say_offset(bw_units units, bw_vec error, bw_text *out) {
    const double least = bw_unit_length(units) / 2;
    const bw_sentence *across = bw_abs(error.x) < least ? NULL
                                : error.x > 0           ? &bw_s_off_right
                                                        : &bw_s_off_left;
    const bw_sentence *along = bw_abs(error.y) < least ? NULL
                               : error.y > 0           ? &bw_s_off_out
                                                       : &bw_s_off_deep;
    const bw_sentence *whole = across && along ? &bw_s_off_both : across ? across : along;
    if (!whole) return;
    bw_put_sentence(out, (bw_voice){.units = units}, whole, bw_as_part("across", across),
                    bw_as_part("along", along), bw_as_length("x", bw_abs(error.x)),
                    bw_as_length("y", bw_abs(error.y)));
}

/// How far off, as what fills a place; an empty word when it is hardly off.
static bw_arg as_offset(const char *name, bw_units units, bw_vec error) {
    bw_arg arg;
    bw_text own = bw_own_word(&arg, name);
    bw_say_offset(units, error, &own);
    return arg;
}

void bw_say_mark(const bw_scheme *scheme, int stage, const bw_mark_given *given, bw_text *out) {
    static const bw_sentence *const marks[] = {[BW_VERDICT_RIGHT] = &bw_s_mark_right,
                                               [BW_VERDICT_SWAP] = &bw_s_mark_swap,
                                               [BW_VERDICT_NEAR] = &bw_s_mark_near,
                                               [BW_VERDICT_OFF] = &bw_s_mark_wrong};
    const bool swap = given->verdict == BW_VERDICT_SWAP;
    const bw_arg off = as_offset("off", scheme->units, given->error);
    bw_put_sentence(out, bw_voice_of(scheme), marks[given->verdict],
                    bw_as_word("mate", swap ? scheme->stages[stage].spots[given->mate].name : ""),
                    off.own[0] ? off : bw_as_part("off", &bw_s_off_little),
                    bw_as_length("distance", given->distance));
}

void bw_say_bias(bw_units units, const bw_tally *tally, bw_text *out) {
    const bw_voice voice = {.units = units};
    if (tally->tries < BW_TRIES_FOR_BIAS) {
        bw_put_plain_sentence(out, voice, &bw_s_bias_too_few);
        return;
    }
    const bw_arg off = as_offset("off", units, bw_tally_bias(tally));
    bw_put_sentence(out, voice, off.own[0] ? &bw_s_bias : &bw_s_bias_none,
                    bw_as_count("tries", tally->tries), off,
                    bw_as_length("spread", bw_tally_spread(tally)));
}
