/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/shape.h"
#include "core/rule.h"
#include "core/shade.h"

/// The anchors that hold a pin's effect to zero at the field's edge stand this far outside it, so
/// that no landmark can coincide with one.
static const double anchor_margin = 1.0;

/// Zone men stand at least this far outside the crease line, m.
static const double crease_margin = 0.2;

static bool flipped(const bw_plan *plan, bw_vec ball) {
    return ball.x < 0 || (ball.x == 0 && plan->lead == BW_LEFT);
}

static bw_vec in_frame(bool flip, bw_vec p) {
    return flip ? bw_mirror(p) : p;
}

/// The unit as the rule wants it: ball on the right.
static bw_formation formation_in_frame(const bw_plan *plan, bool flip) {
    bw_formation unit = {.spots = plan->spots,
                         .match_up = plan->match_up,
                         .rule = &plan->rule,
                         .keep_out = plan->field.crease + crease_margin,
                         .crease_x = flip ? -plan->rule.crease_at.x : plan->rule.crease_at.x,
                         .low_near = plan->low[flip][1],
                         .low_far = plan->low[flip][0]};
    for (int i = 0; i < plan->spots; i++)
        unit.home[i] = in_frame(flip, plan->home[i]);
    return unit;
}

/// Adds to each place the pins' differences from the rule, blended between landmarks. Summed in an
/// order that depends on where the landmarks lie, so that mirror images agree to the last bit.
static void add_pins(const bw_plan *plan, bw_vec ball, bool flip, bw_ruled *places) {
    double weight[BW_MAX_SITES];
    bw_neighbour_weights(&plan->sites, ball, weight);
    for (int k = 0; k < plan->pin_sites; k++) {
        int l = plan->order[flip][k];
        if (weight[l] == 0) continue;
        for (int s = 0; s < plan->spots; s++) {
            bw_vec pull = in_frame(flip, plan->pull[flip][l][s]);
            places[s].at = bw_add(places[s].at, bw_scale(pull, weight[l]));
        }
    }
}

void bw_where(const bw_plan *plan, bw_vec ball, const bw_vec *attackers, int count,
              bw_station *out) {
    const bool flip = flipped(plan, ball);
    const bw_formation unit = formation_in_frame(plan, flip);
    const bw_vec seen = in_frame(flip, ball);

    bw_ruled places[BW_MAX_SPOTS];
    bw_rule_places(&unit, seen, places);
    if (plan->pin_sites > 0) add_pins(plan, ball, flip, places);
    for (int i = 0; i < plan->spots; i++)
        out[i] = (bw_station){places[i].at, places[i].duty, -1};

    if (count > 0) {
        bw_vec others[BW_MAX_ATTACKERS];
        if (count > BW_MAX_ATTACKERS) count = BW_MAX_ATTACKERS;
        for (int a = 0; a < count; a++)
            others[a] = in_frame(flip, attackers[a]);
        if (plan->match_up)
            bw_shade_match(&unit, seen, others, count, out);
        else
            bw_shade_zone(&unit, seen, others, count, out);
    }
    for (int i = 0; i < plan->spots; i++) {
        out[i].at = bw_field_clamp(&plan->field, in_frame(flip, out[i].at));
    }
}

/// A ring of sites outside the field that pull nothing.
static void add_anchors(const bw_field *field, bw_sites *sites) {
    double right = field->width / 2 + anchor_margin;
    double low = -field->end_line - anchor_margin, high = field->midline + anchor_margin;
    double mid = high / 2;
    const bw_vec ring[] = {{right, low},  {right, 0},    {right, mid},  {right, high},
                           {0, low},      {0, high},     {-right, low}, {-right, 0},
                           {-right, mid}, {-right, high}};
    for (int i = 0; i < BW_COUNT(ring); i++)
        sites->at[sites->count++] = ring[i];
}

static void order_landmarks(const bw_scheme *scheme, bool flip, uint8_t *order) {
    for (int l = 0; l < scheme->landmark_count; l++) {
        bw_vec p = in_frame(flip, scheme->landmarks[l].at);
        int k = l;
        for (; k > 0; k--) {
            bw_vec q = in_frame(flip, scheme->landmarks[order[k - 1]].at);
            if (q.y < p.y || (q.y == p.y && q.x < p.x)) break;
            order[k] = order[k - 1];
        }
        order[k] = (uint8_t)l;
    }
}

static bool any_pin(const bw_scheme *scheme, const bw_stage *stage) {
    for (int l = 0; l < scheme->landmark_count; l++) {
        for (int s = 0; s < stage->defenders; s++) {
            if (stage->pinned[l][s]) return true;
        }
    }
    return false;
}

/// The rule's places at a landmark with the ball taken to be on the left (flip) or the right.
static void by_rule_at(const bw_plan *plan, bw_vec ball, bool flip, bw_vec *at) {
    const bw_formation unit = formation_in_frame(plan, flip);
    bw_ruled places[BW_MAX_SPOTS];
    bw_rule_places(&unit, in_frame(flip, ball), places);
    for (int s = 0; s < plan->spots; s++)
        at[s] = in_frame(flip, places[s].at);
}

/// Pulls of one landmark. Off the centre line both frames have the same. On it a pin speaks for the
/// side that takes a tie; for a ball that comes from the other side it speaks for the twin.
static void build_pulls(const bw_landmark *landmark, const bw_stage *stage, int l, bw_plan *plan) {
    const bool centred = landmark->at.x == 0;
    const bool lead = flipped(plan, landmark->at);
    bw_vec here[BW_MAX_SPOTS], there[BW_MAX_SPOTS];
    by_rule_at(plan, landmark->at, lead, here);
    if (centred) by_rule_at(plan, landmark->at, !lead, there);
    for (int s = 0; s < plan->spots; s++) {
        if (!stage->pinned[l][s]) continue;
        bw_vec pin = stage->pins[l][s];
        plan->pull[lead][l][s] = bw_sub(pin, here[s]);
        int twin = stage->spots[s].twin;
        if (!centred) {
            plan->pull[!lead][l][s] = plan->pull[lead][l][s];
        } else if (twin >= 0) {
            plan->pull[!lead][l][twin] = bw_sub(bw_mirror(pin), there[twin]);
        } else {
            plan->pull[!lead][l][s] = bw_sub(pin, there[s]);
        }
    }
}

void bw_plan_build(const bw_scheme *scheme, int stage_index, bw_plan *plan) {
    BW_ASSERT(stage_index >= 0 && stage_index < scheme->stage_count);
    const bw_stage *stage = &scheme->stages[stage_index];
    *plan = (bw_plan){.spots = stage->defenders,
                      .match_up = stage->match_up,
                      .rule = stage->rule,
                      .field = *bw_field_at(scheme->field),
                      .lead = scheme->lead};
    for (int s = 0; s < plan->spots; s++)
        plan->home[s] = stage->spots[s].home;
    for (int flip = 0; flip < 2; flip++) {
        bw_vec home[BW_MAX_SPOTS];
        for (int s = 0; s < plan->spots; s++)
            home[s] = in_frame(flip, plan->home[s]);
        bw_rule_low_pair(home, plan->spots, plan->low[flip]);
    }
    if (!any_pin(scheme, stage)) return;

    for (int l = 0; l < scheme->landmark_count; l++) {
        plan->sites.at[plan->sites.count++] = scheme->landmarks[l].at;
        build_pulls(&scheme->landmarks[l], stage, l, plan);
    }
    add_anchors(&plan->field, &plan->sites);
    order_landmarks(scheme, false, plan->order[0]);
    order_landmarks(scheme, true, plan->order[1]);
    plan->pin_sites = scheme->landmark_count;
}
