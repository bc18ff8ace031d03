/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Sentences of the book that are not captions: a stage's title, its rule, who completes it.
#include "draw/book_words.h"

#include "core/rule.h"
#include "draw/view.h"

static const char *const counts[] = {"none", "one", "two", "three", "four", "five", "six"};

static void put_length(bw_text *out, bw_units units, double metres) {
    bw_put_number(out, metres / bw_unit_length(units), 1);
    bw_put(out, "\xC2\xA0"); // no line ends between a figure and its unit
    bw_put(out, bw_unit_short(units));
}

void bw_say_stage(const bw_stage *stage, bw_text *out) {
    bw_put(out, bw_same(stage->shape, "match-up") ? "Match-up" : stage->shape);
    bw_put(out, ", ");
    bw_put(out, counts[stage->defenders]);
    bw_put(out, " in");
}

static void say_ball(const bw_stage *stage, bw_units units, bw_text *out) {
    const bw_rule *rule = &stage->rule;
    const double far = 1000; // a ball so far out that only the meeting distance counts
    const double wing = bw_abs(bw_rule_on_ball(rule, bw_v(far, 0)).x);
    bw_put(out, "Meet the ball ");
    put_length(out, units, rule->pickup);
    bw_put(out, " out in front");
    if (wing < rule->pickup - 0.5) {
        bw_put(out, ", ");
        put_length(out, units, wing);
        bw_put(out, " out on the wings");
    }
    bw_put(out, ". Leave ");
    put_length(out, units, rule->cushion);
    bw_put(out, " to the carrier.\n");
}

static void say_shift(const bw_rule *rule, bw_units units, bw_text *out) {
    if (rule->shift <= 0) return;
    bw_put(out, "Move as one: for every 10 ");
    bw_put(out, bw_unit_short(units));
    bw_put(out, " the ball goes sideways, go ");
    bw_put_number(out, 10 * rule->shift, 1);
    bw_put(out, ".\n");
}

static void say_behind(const bw_rule *rule, bw_units units, bw_text *out) {
    if (!rule->hold_behind) {
        bw_put(out, "Ball behind: the low man on its side goes with it.\n");
        return;
    }
    bw_put(out, "Ball behind: the low pair hold, ");
    put_length(out, units, bw_abs(rule->hold_at.x));
    bw_put(out, " either side and ");
    put_length(out, units, rule->hold_at.y);
    bw_put(out, " out. The near one meets it at goal-line extended.\n");
}

static void say_crease(const bw_stage *stage, bw_units units, bw_text *out) {
    const bw_rule *rule = &stage->rule;
    if (rule->crease == BW_CREASE_NONE) return;
    if (rule->crease == BW_CREASE_FARTHEST) {
        bw_put(out, "The man farthest from the ball has the crease");
    } else {
        bw_put(out, stage->spots[rule->crease].id);
        bw_put(out, " always has the crease");
    }
    bw_put(out, ", ");
    put_length(out, units, rule->crease_at.y);
    bw_put(out, " out.\n");
}

static void say_shade(const bw_rule *rule, bw_units units, bw_text *out) {
    if (rule->pull <= 0 || rule->area <= 0) return;
    bw_put(out, "An attacker within ");
    put_length(out, units, rule->area);
    bw_put(out, " of your place: shade to him.\n");
}

void bw_say_rule(const bw_scheme *scheme, int stage_index, bw_text *out) {
    const bw_stage *stage = &scheme->stages[stage_index];
    if (stage->match_up) bw_put(out, "Everyone takes the nearest man. Until he has one:\n");
    say_ball(stage, scheme->units, out);
    say_shift(&stage->rule, scheme->units, out);
    say_behind(&stage->rule, scheme->units, out);
    say_crease(stage, scheme->units, out);
    say_shade(&stage->rule, scheme->units, out);
}

void bw_say_completes(const bw_scheme *scheme, int stage_index, bw_text *out) {
    const bw_stage *stage = &scheme->stages[stage_index];
    const int index = stage->defenders - scheme->stages[0].defenders - 1;
    if (index < 0 || index >= scheme->late_count) return;
    const bw_late *late = &scheme->late[index];
    bw_put(out, late->role);
    bw_put(out, " takes ");
    if (late->take_count == 0) bw_put(out, "the nearest man");
    for (int i = 0; i < late->take_count; i++) {
        if (i > 0) bw_put(out, i == late->take_count - 1 ? " or " : ", ");
        bw_put(out, late->takes[i]);
    }
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
