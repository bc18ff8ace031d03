/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Sentences of the book that are not captions: a stage's title, its rule, who completes it.
#include "draw/book_words.h"

#include "core/rule.h"
#include "draw/catalogue.h"

static const char *const counts[] = {"none", "one", "two", "three", "four", "five", "six"};

/// A length in which no line ends between the figure and its unit.
static bw_arg as_bound_length(const char *name, bw_units units, double metres) {
    bw_arg arg;
    bw_text own = bw_own_word(&arg, name);
    bw_put_number(&own, bw_in_unit(units, metres), 1);
    bw_put(&own, "\xC2\xA0");
    bw_put(&own, bw_unit_short(units));
    return arg;
}

void bw_say_stage(const bw_stage *stage, bw_text *out) {
    bw_put(out, bw_same(stage->shape, "match-up") ? "Match-up" : stage->shape);
    bw_put(out, ", ");
    bw_put(out, counts[stage->defenders]);
    bw_put(out, " in");
}

static void say_ball(const bw_rule *rule, bw_voice voice, bw_text *out) {
    const double far = 1000; // a ball so far out that only the meeting distance counts
    const double wing = bw_abs(bw_rule_on_ball(rule, bw_v(far, 0)).x);
    bw_put_sentence(out, voice, &bw_s_rule_ball,
                    as_bound_length("pickup", voice.units, rule->pickup),
                    bw_as_part("wings", wing < rule->pickup - 0.5 ? &bw_s_rule_wings : NULL),
                    as_bound_length("wing", voice.units, wing),
                    as_bound_length("cushion", voice.units, rule->cushion));
}

static void say_shift(const bw_rule *rule, bw_voice voice, bw_text *out) {
    if (rule->shift <= 0) return;
    bw_arg go;
    bw_text own = bw_own_word(&go, "go");
    bw_put_number(&own, 10 * rule->shift, 1);
    bw_put_sentence(out, voice, &bw_s_rule_shift, bw_as_word("unit", bw_unit_short(voice.units)),
                    go);
}

static void say_behind(const bw_rule *rule, bw_voice voice, bw_text *out) {
    bw_put_sentence(out, voice, rule->hold_behind ? &bw_s_rule_hold : &bw_s_rule_low,
                    as_bound_length("across", voice.units, bw_abs(rule->hold_at.x)),
                    as_bound_length("along", voice.units, rule->hold_at.y));
}

static void say_crease(const bw_stage *stage, bw_voice voice, bw_text *out) {
    const bw_rule *rule = &stage->rule;
    const bool fixed = rule->crease >= 0;
    if (rule->crease == BW_CREASE_NONE) return;
    bw_put_sentence(out, voice, fixed ? &bw_s_rule_always : &bw_s_rule_farthest,
                    bw_as_word("spot", fixed ? stage->spots[rule->crease].id : ""),
                    as_bound_length("crease", voice.units, rule->crease_at.y));
}

static void say_shade(const bw_rule *rule, bw_voice voice, bw_text *out) {
    if (rule->pull <= 0 || rule->area <= 0) return;
    bw_put_sentence(out, voice, &bw_s_rule_shade, as_bound_length("area", voice.units, rule->area));
}

void bw_say_rule(const bw_scheme *scheme, int stage_index, bw_text *out) {
    const bw_stage *stage = &scheme->stages[stage_index];
    const bw_voice voice = bw_voice_of(scheme);
    if (stage->match_up) bw_put_plain_sentence(out, voice, &bw_s_rule_men);
    say_ball(&stage->rule, voice, out);
    say_shift(&stage->rule, voice, out);
    say_behind(&stage->rule, voice, out);
    say_crease(stage, voice, out);
    say_shade(&stage->rule, voice, out);
}

void bw_say_completes(const bw_scheme *scheme, int stage_index, bw_text *out) {
    const bw_stage *stage = &scheme->stages[stage_index];
    const int index = stage->defenders - scheme->stages[0].defenders - 1;
    if (index < 0 || index >= scheme->late_count) return;
    const bw_late *late = &scheme->late[index];
    bw_arg takes;
    bw_text own = bw_own_word(&takes, "whom");
    for (int i = 0; i < late->take_count; i++) {
        if (i > 0) bw_put(&own, i == late->take_count - 1 ? " or " : ", ");
        bw_put(&own, late->takes[i]);
    }
    bw_put_sentence(out, bw_voice_of(scheme), &bw_s_completes, bw_as_word("role", late->role),
                    late->take_count > 0 ? takes : bw_as_part("whom", &bw_s_nearest_man));
}

void bw_put_duty_places(bw_text *out, const bw_scheme *scheme, const bw_plan *plan, int spot,
                        bw_duty duty, const char *lead) {
    bw_station stations[BW_MAX_SPOTS];
    int found = 0;
    for (int l = 0; l < scheme->landmark_count; l++) {
        bw_where(plan, scheme->landmarks[l].at, NULL, 0, stations);
        if (stations[spot].duty != duty) continue;
        bw_put(out, found++ ? ", " : lead);
        bw_put(out, scheme->landmarks[l].name);
    }
    if (found) bw_put(out, ". ");
}
