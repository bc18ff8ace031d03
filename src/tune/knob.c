/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "tune/knob.h"
#include "core/match.h"
#include "core/maths.h"
#include "scheme/fresh.h"
#include "scheme/rule_param.h"
#include <stdlib.h>

#define YD BW_METRES_PER_YARD

/// What a RULE_TUNED of core/rule_params.def says, yards and shares as they stand there.
typedef struct rule_knob {
    bw_rule_param_id param;
    const char *key, *rest;
    double low, high, step;
} rule_knob;

static const rule_knob rule_knobs[] = {
#define RULE_TUNED(ID, key, low, high, step, rest)                                                 \
    [BW_KNOB_##ID - BW_KNOB_RULE] = {BW_RULE_##ID, #key, rest, low, high, step},
#include "core/rule_params.def"
};

static const rule_knob *of_rule(bw_knob_kind kind) {
    return kind <= BW_KNOB_OUT ? NULL : &rule_knobs[kind - BW_KNOB_RULE];
}

bw_knob_limits bw_knob_limits_default(void) {
    return (bw_knob_limits){.most = 4 * YD};
}

const char *bw_knob_key(bw_knob_kind kind) {
    const rule_knob *rule = of_rule(kind);
    return rule ? rule->key : kind == BW_KNOB_WIDE ? "wide" : "out";
}

bool bw_knob_keep(const bw_stage *stage, const char *word, bw_knob_limits *limits) {
    const int spot = bw_stage_spot(stage, word);
    if (spot >= 0) {
        limits->keep[spot] = true;
        return true;
    }
    if (bw_same(word, "homes")) return limits->keep_homes = true;
    if (bw_same(word, "rule")) return limits->keep_rule = true;
    for (int k = BW_KNOB_RULE; k < BW_KNOB_KINDS; k++) {
        if (bw_same(word, bw_knob_key((bw_knob_kind)k))) return limits->keep_kind[k] = true;
    }
    return false;
}

/// Homes of the usual starting stage with as many defenders, each given to the spot of `stage` it is
/// nearest to (least worst distance); false when there is no such stage.
static bool practice_homes(const bw_scheme *scheme, const bw_stage *stage, bw_vec *home) {
    bw_scheme *usual = malloc(sizeof *usual);
    if (!usual) return false;
    bw_scheme_fresh(scheme->field, scheme->level, usual);
    const int like = bw_scheme_stage(usual, stage->defenders);
    const bool there = like >= 0 && bw_same(usual->stages[like].shape, stage->shape);
    if (there) {
        double cost[BW_MATCH_MAX][BW_MATCH_MAX];
        for (int s = 0; s < stage->defenders; s++) {
            for (int u = 0; u < stage->defenders; u++)
                cost[s][u] = bw_distance(stage->spots[s].home, usual->stages[like].spots[u].home);
        }
        const bw_matching m = bw_match(cost, stage->defenders, stage->defenders);
        for (int s = 0; s < stage->defenders; s++)
            home[s] = usual->stages[like].spots[m.taken[s]].home;
    }
    free(usual);
    return there;
}

/// His mirror image when their homes are exact images; -1 otherwise.
static int true_twin(const bw_stage *stage, int spot) {
    const int twin = stage->spots[spot].twin;
    if (twin < 0) return -1;
    const bw_vec image = bw_mirror(stage->spots[twin].home);
    return bw_distance(stage->spots[spot].home, image) > 0 ? -1 : twin;
}

static void add_home(const bw_stage *stage, int spot, int twin, double most, const bw_vec *practice,
                     bw_knob *list, int *count) {
    const bw_vec home = stage->spots[spot].home;
    bw_knob wide = {.kind = BW_KNOB_WIDE,
                    .spot = spot,
                    .twin = twin,
                    .low = home.x - most,
                    .high = home.x + most,
                    .now = home.x,
                    .practice = practice[spot].x,
                    .scale = 2 * YD};
    // The right one of a pair stays on the right, half a yard clear of his image's line.
    if (twin >= 0 && twin != spot) wide.low = bw_max(wide.low, bw_min(home.x, 0.75 * YD));
    if (twin != spot) list[(*count)++] = wide;
    bw_knob out = wide;
    out.kind = BW_KNOB_OUT;
    out.low = bw_max(home.y - most, bw_min(home.y, 0.5 * YD));
    out.high = home.y + most;
    out.now = home.y;
    out.practice = practice[spot].y;
    list[(*count)++] = out;
}

int bw_knobs(const bw_scheme *scheme, int stage, const bw_knob_limits *limits, bw_knob *list) {
    const bw_stage *t = &scheme->stages[stage];
    bw_vec practice[BW_MAX_SPOTS];
    if (!practice_homes(scheme, t, practice)) {
        for (int s = 0; s < t->defenders; s++)
            practice[s] = t->spots[s].home;
    }
    int count = 0;
    for (int s = 0; s < t->defenders && !limits->keep_homes; s++) {
        const int twin = true_twin(t, s);
        // Of a pair the right one speaks for both.
        if (twin >= 0 && twin != s && t->spots[s].home.x < 0) continue;
        if (limits->keep[s] || (twin >= 0 && limits->keep[twin])) continue;
        add_home(t, s, twin, limits->most, practice, list, &count);
    }
    bw_rule now = t->rule, usual = bw_rule_default();
    for (int k = BW_KNOB_RULE; k < BW_KNOB_KINDS && !limits->keep_rule; k++) {
        if (limits->keep_kind[k]) continue;
        // Nobody covers the crease: there is nothing to turn.
        if (k == BW_KNOB_CREASE && now.crease == BW_CREASE_NONE) continue;
        const rule_knob *r = of_rule((bw_knob_kind)k);
        const double unit = bw_rule_param_at(r->param)->length ? YD : 1;
        const double value = *bw_rule_param_in(&now, r->param);
        list[count++] = (bw_knob){.kind = (bw_knob_kind)k,
                                  .spot = -1,
                                  .twin = -1,
                                  .low = bw_min(r->low * unit, value),
                                  .high = bw_max(r->high * unit, value),
                                  .now = value,
                                  .practice = *bw_rule_param_in(&usual, r->param),
                                  .scale = r->step * unit};
    }
    return count;
}

void bw_knobs_turn(const bw_knob *list, int count, const double *at, bw_stage *stage) {
    for (int k = 0; k < count; k++) {
        const bw_knob *knob = &list[k];
        if (knob->spot < 0) {
            *bw_rule_param_in(&stage->rule, of_rule(knob->kind)->param) = at[k];
            continue;
        }
        bw_vec *home = &stage->spots[knob->spot].home;
        *(knob->kind == BW_KNOB_WIDE ? &home->x : &home->y) = at[k];
        if (knob->twin >= 0 && knob->twin != knob->spot)
            stage->spots[knob->twin].home = bw_mirror(*home);
    }
}

bool bw_knob_is_length(const bw_knob *knob) {
    const rule_knob *rule = of_rule(knob->kind);
    return !rule || bw_rule_param_at(rule->param)->length;
}

void bw_knob_name(const bw_stage *stage, const bw_knob *knob, bw_text *out) {
    const rule_knob *rule = of_rule(knob->kind);
    if (knob->spot >= 0) {
        if (knob->twin >= 0 && knob->twin != knob->spot) {
            bw_put(out, stage->spots[knob->twin].name);
            bw_put(out, " and ");
        }
        bw_put(out, stage->spots[knob->spot].name);
        bw_put(out, ", ");
    }
    bw_put(out, bw_knob_key(knob->kind));
    if (rule) bw_put(out, rule->rest);
}
