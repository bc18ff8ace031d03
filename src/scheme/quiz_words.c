/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "scheme/quiz_words.h"

#include "scheme/caption.h"

static void ask(const bw_scheme *scheme, int stage, int spot, bw_vec ball, const char *what,
                bw_text *out) {
    bw_put(out, "Ball ");
    bw_say_at(scheme, ball, out);
    bw_put(out, ". You are ");
    bw_put(out, scheme->stages[stage].spots[spot].name);
    bw_put(out, ". ");
    bw_put(out, what);
}

void bw_ask_where(const bw_scheme *scheme, int stage, int spot, bw_vec ball, bw_text *out) {
    ask(scheme, stage, spot, ball, "Where do you stand?", out);
}

void bw_ask_duty(const bw_scheme *scheme, int stage, int spot, bw_vec ball, bw_text *out) {
    ask(scheme, stage, spot, ball, "What do you do?", out);
}

const char *bw_duty_order(bw_duty duty) {
    static const char *const orders[BW_DUTY_COUNT] = {
        [BW_DUTY_BALL] = "Take the ball",
        [BW_DUTY_ADJACENT] = "Be next to the ball, ready to help",
        [BW_DUTY_CREASE] = "Cover the crease",
        [BW_DUTY_BACKSIDE] = "Stay on the backside",
        [BW_DUTY_HOLD] = "Hold your post",
        [BW_DUTY_MAN] = "Take your man"};
    BW_ASSERT((unsigned)duty < BW_DUTY_COUNT);
    return orders[duty];
}

void bw_answer_where(const bw_scheme *scheme, int stage, int spot, const bw_station *station,
                     bw_vec ball, bw_text *out) {
    char job[4 * BW_NAME_SIZE];
    bw_text t = bw_text_in(job, sizeof job);
    bw_say_your_job(scheme, stage, spot, station, ball, &t);
    bw_put(out, "Your place: ");
    bw_say_place(scheme->units, station->at, out);
    bw_put(out, ". ");
    bw_say_first(job, out);
    bw_put_char(out, '.');
}

void bw_say_reason(const bw_scheme *scheme, int stage, int spot, const bw_station *station,
                   int landmark, bw_text *out) {
    const bw_stage *s = &scheme->stages[stage];
    if (landmark >= 0 && s->pinned[landmark][spot]) {
        bw_put(out, "Your coach has set this place for this ball.");
        return;
    }
    switch (station->duty) {
    case BW_DUTY_BALL: bw_put(out, "It is your part of the field, so the ball is yours."); break;
    case BW_DUTY_ADJACENT:
        bw_put(out, "The ball is one pass away: near enough to help, near enough to get out.");
        break;
    case BW_DUTY_CREASE:
        bw_put(out, s->rule.crease >= 0
                        ? "In this shape the crease is always yours."
                        : "You are the farthest from the ball, so the crease is yours.");
        break;
    case BW_DUTY_BACKSIDE:
        bw_put(out, "The ball is two passes away: stay in, where you see ball and men.");
        break;
    case BW_DUTY_HOLD:
        bw_put(out, "With the ball behind, the low pair hold the posts until it comes out.");
        break;
    default: bw_put(out, "Numbers are even: the nearest man is yours.");
    }
}

void bw_say_offset(bw_units units, bw_vec error, bw_text *out) {
    const double least = bw_unit_length(units) / 2;
    const bool across = bw_abs(error.x) >= least, along = bw_abs(error.y) >= least;
    if (across) {
        bw_say_length(units, bw_abs(error.x), out);
        bw_put(out, error.x > 0 ? " too far right" : " too far left");
    }
    if (across && along) bw_put(out, " and ");
    if (along) {
        bw_say_length(units, bw_abs(error.y), out);
        bw_put(out, error.y > 0 ? " too far out" : " too deep");
    }
}

static void say_off(bw_units units, const bw_mark_given *given, const char *head, bw_text *out) {
    char words[80];
    bw_text t = bw_text_in(words, sizeof words);
    bw_say_offset(units, given->error, &t);
    bw_put(out, head);
    if (t.used) {
        bw_put(out, words);
    } else {
        bw_say_length(units, given->distance, out);
        bw_put(out, " off");
    }
    bw_put_char(out, '.');
}

void bw_say_mark(const bw_scheme *scheme, int stage, const bw_mark_given *given, bw_text *out) {
    switch (given->verdict) {
    case BW_VERDICT_RIGHT:
        bw_put(out, "Right: ");
        bw_say_length(scheme->units, given->distance, out);
        bw_put(out, " from your place.");
        break;
    case BW_VERDICT_SWAP:
        bw_put(out, "Right too: that is ");
        bw_put(out, scheme->stages[stage].spots[given->mate].name);
        bw_put(out, "'s place, and you two may swap. Tell him.");
        break;
    case BW_VERDICT_NEAR: say_off(scheme->units, given, "Close: ", out); break;
    default: say_off(scheme->units, given, "Not there: ", out);
    }
}

void bw_say_bias(bw_units units, const bw_tally *tally, bw_text *out) {
    char words[80];
    bw_text t = bw_text_in(words, sizeof words);
    if (tally->tries < BW_TRIES_FOR_BIAS) {
        bw_put(out, "Answer three places and you are told which way you lean.");
        return;
    }
    bw_say_offset(units, bw_tally_bias(tally), &t);
    bw_put(out, "Over ");
    bw_put_int(out, tally->tries);
    bw_put(out, t.used ? " places you stand " : " places you lean to no side");
    bw_put(out, words);
    bw_put(out, "; one answer differs from the next by about ");
    bw_say_length(units, bw_tally_spread(tally), out);
    bw_put_char(out, '.');
}
