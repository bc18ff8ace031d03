/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "tune/knob.h"
#include "core/match.h"
#include "core/maths.h"
#include "scheme/fresh.h"
#include <stdlib.h>

#define YD BW_METRES_PER_YARD

/// A number of the rule: its bounds within what a document may say and a coach would call sane
/// (assumed), and one step of it worth speaking of.
typedef struct rule_knob {
    bw_knob_kind kind;
    double low, high, scale;
} rule_knob;

static const rule_knob rule_knobs[] = {
    {BW_KNOB_PICKUP, 6 * YD, 18 * YD, 2 * YD},
    {BW_KNOB_CUSHION, 0.5 * YD, 4 * YD, 1 * YD},
    {BW_KNOB_SHIFT, 0, 0.6, 0.15},
    {BW_KNOB_SOFT, 0.3, 1, 0.15},
    {BW_KNOB_AREA, 0, 6 * YD, 2 * YD},
    {BW_KNOB_PULL, 0, 1, 0.3},
    {BW_KNOB_CREASE, 2.5 * YD, 8 * YD, 1.5 * YD},
};

static double *number(bw_rule *rule, bw_knob_kind kind) {
    switch (kind) {
    case BW_KNOB_PICKUP: return &rule->pickup;
    case BW_KNOB_CUSHION: return &rule->cushion;
    case BW_KNOB_SHIFT: return &rule->shift;
    case BW_KNOB_SOFT: return &rule->soft;
    case BW_KNOB_AREA: return &rule->area;
    case BW_KNOB_PULL: return &rule->pull;
    case BW_KNOB_CREASE: return &rule->crease_at.y;
    case BW_KNOB_WIDE:
    case BW_KNOB_OUT: break;
    }
    return NULL;
}

bw_knob_limits bw_knob_limits_default(void) {
    return (bw_knob_limits){.most = 4 * YD};
}

const char *bw_knob_key(bw_knob_kind kind) {
    static const char *const keys[] = {"wide", "out",  "pickup", "cushion", "shift",
                                       "soft", "area", "pull",   "crease"};
    return keys[kind];
}

bool bw_knob_keep(const bw_stage *stage, const char *word, bw_knob_limits *limits) {
    const int spot = bw_stage_spot(stage, word);
    if (spot >= 0) {
        limits->keep[spot] = true;
        return true;
    }
    if (bw_same(word, "homes")) return limits->keep_homes = true;
    if (bw_same(word, "rule")) return limits->keep_rule = true;
    for (int k = BW_KNOB_PICKUP; k <= BW_KNOB_CREASE; k++) {
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
    const bw_rule usual = bw_rule_default();
    for (int k = 0; k < BW_COUNT(rule_knobs) && !limits->keep_rule; k++) {
        const rule_knob *r = &rule_knobs[k];
        if (limits->keep_kind[r->kind]) continue;
        // Nobody covers the crease: there is nothing to turn.
        if (r->kind == BW_KNOB_CREASE && t->rule.crease == BW_CREASE_NONE) continue;
        bw_rule now = t->rule, practised = usual;
        const double value = *number(&now, r->kind);
        list[count++] = (bw_knob){.kind = r->kind,
                                  .spot = -1,
                                  .twin = -1,
                                  .low = bw_min(r->low, value),
                                  .high = bw_max(r->high, value),
                                  .now = value,
                                  .practice = *number(&practised, r->kind),
                                  .scale = r->scale};
    }
    return count;
}

void bw_knobs_turn(const bw_knob *list, int count, const double *at, bw_stage *stage) {
    for (int k = 0; k < count; k++) {
        const bw_knob *knob = &list[k];
        if (knob->spot < 0) {
            *number(&stage->rule, knob->kind) = at[k];
            continue;
        }
        bw_vec *home = &stage->spots[knob->spot].home;
        *(knob->kind == BW_KNOB_WIDE ? &home->x : &home->y) = at[k];
        if (knob->twin >= 0 && knob->twin != knob->spot)
            stage->spots[knob->twin].home = bw_mirror(*home);
    }
}

bool bw_knob_is_length(const bw_knob *knob) {
    return knob->kind != BW_KNOB_SHIFT && knob->kind != BW_KNOB_SOFT && knob->kind != BW_KNOB_PULL;
}

void bw_knob_name(const bw_stage *stage, const bw_knob *knob, bw_text *out) {
    static const char *const names[] = {"wide",
                                        "out",
                                        "pickup (how far out the ball is met)",
                                        "cushion (gap to the carrier)",
                                        "shift (share of the ball's move)",
                                        "soft (met nearer in on the wings)",
                                        "area (how far he looks for a man)",
                                        "pull (how far he shades to him)",
                                        "crease cover (how far out)"};
    if (knob->spot >= 0) {
        if (knob->twin >= 0 && knob->twin != knob->spot) {
            bw_put(out, stage->spots[knob->twin].name);
            bw_put(out, " and ");
        }
        bw_put(out, stage->spots[knob->spot].name);
        bw_put(out, ", ");
    }
    bw_put(out, names[knob->kind]);
}
