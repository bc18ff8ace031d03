/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Everything that depends on scheme, field and level only.
#include "core/ground.h"

#include "core/catalogue.h"

/// Places inside that a break is fought over; added where the scheme has no landmark near. Common
/// practice, no source; yards.
static const struct {
    const char *id;
    double x, y;
} inside[] = {{"crease", 0, 5},     {"slot", 0, 10},     {"hash-left", -5, 8},
              {"hash-right", 5, 8}, {"low-left", -5, 3}, {"low-right", 5, 3}};

/// An inside place this near a landmark, m, is that landmark.
#define SAME_PLACE (2.5 * BW_METRES_PER_YARD)
/// Nobody carries or cuts farther than this in one go, m.
#define LONGEST_LINK (10.0 * BW_METRES_PER_YARD)
/// Seconds a hold lasts (assumed).
#define HOLD 0.5

static int whole_ticks(double seconds) {
    return (int)(seconds / BW_TICK + 0.5);
}

void bw_stride_build(bw_legs legs, bw_stride *stride) {
    for (int i = 0; i < BW_STEP_TABLE; i++) {
        const double t = i * BW_TICK;
        stride->fade[i] = bw_exp(-t / legs.tau);
        stride->coast[i] = legs.tau * (1 - stride->fade[i]);
        stride->drive[i] = t - stride->coast[i];
    }
    stride->ahead_coast = bw_coast(legs, BW_HORIZON);
    stride->ahead_gain = 1 / (BW_HORIZON - stride->ahead_coast);
    stride->vmax = legs.vmax;
}

static void add_place(bw_ground *g, bw_vec at, const char *id, int landmark) {
    bw_node *node = &g->places[g->place_count++];
    node->at = at;
    node->landmark = landmark;
    bw_copy(node->id, sizeof node->id, id);
}

static void gather_places(bw_ground *g) {
    g->place_count = 0;
    for (int l = 0; l < g->scheme->landmark_count; l++)
        add_place(g, g->scheme->landmarks[l].at, g->scheme->landmarks[l].id, l);
    for (int i = 0; i < BW_COUNT(inside) && g->place_count < BW_MAX_PLACES; i++) {
        const bw_vec at = bw_scale(bw_v(inside[i].x, inside[i].y), BW_METRES_PER_YARD);
        const int near = bw_ground_nearest(g, at);
        if (near < 0 || bw_distance(g->places[near].at, at) > SAME_PLACE)
            add_place(g, at, inside[i].id, -1);
    }
}

/// Attackers may not run through the crease: distance of the goal's centre from the segment a-b.
static double goal_from_run(bw_vec a, bw_vec b) {
    const bw_vec run = bw_sub(b, a);
    const double l2 = bw_length2(run);
    const double t = l2 > 0 ? bw_clamp(-bw_dot(a, run) / l2, 0, 1) : 0;
    return bw_length(bw_lerp(a, b, t));
}

static void link_places(bw_ground *g) {
    bw_vec at[BW_MAX_PLACES];
    for (int i = 0; i < g->place_count; i++)
        at[i] = g->places[i].at;
    bw_graph_build(at, g->place_count, LONGEST_LINK, &g->graph);
    for (int i = 0; i < g->place_count; i++) {
        for (int k = 0; k < g->place_count; k++) {
            if (goal_from_run(at[i], at[k]) < g->field->crease) g->graph.linked[i][k] = 0;
        }
    }
}

bw_status bw_ground_build(const bw_scheme *scheme, const bw_level *level, bw_ground *g,
                          bw_text *why) {
    g->scheme = scheme;
    g->level = level ? level : bw_level_at(scheme->level);
    g->field = bw_field_at(scheme->field);
    if (scheme->landmark_count == 0 || scheme->stage_count == 0) {
        if (why) bw_put_plain_sentence(why, bw_voice_of(scheme), &bw_s_break_no_ground);
        return BW_BAD_INPUT;
    }
    for (int n = 0; n <= BW_MAX_SPOTS; n++) {
        const int stage = bw_scheme_stage(scheme, n);
        g->plans[n].spots = 0;
        if (stage >= 0) bw_plan_build(scheme, stage, &g->plans[n]);
    }
    bw_stride_build(g->level->attacker, &g->attacker);
    bw_legs carrying = g->level->attacker;
    carrying.vmax = bw_min(carrying.vmax, g->level->carry_speed);
    bw_stride_build(carrying, &g->carrier);
    gather_places(g);
    link_places(g);
    g->release = whole_ticks(g->level->release);
    g->shoot = whole_ticks(g->level->shoot);
    g->hold = whole_ticks(HOLD);
    for (int t = 0; t <= BW_MAX_FLIGHT; t++)
        g->flown[t] = bw_ball_distance(g->level->pass_speed, BW_BALL_DRAG, t * BW_TICK);
    g->carry_least = whole_ticks(BW_CARRY_LEAST);
    g->carry_most = whole_ticks(BW_CARRY_MOST);
    g->longest_ply = g->release + bw_ground_flight(g, BW_LONGEST_PASS);
    if (g->longest_ply < g->carry_most) g->longest_ply = g->carry_most;
    if (g->longest_ply < g->hold) g->longest_ply = g->hold;
    for (int t = 0; t <= BW_MAX_TICKS; t++)
        g->reach[t] = bw_reach(g->level->attacker, t * BW_TICK);
    bw_shot_build(g->level, g->field, &g->shot);
    for (int i = 0; i < g->place_count; i++)
        g->worth[i] = bw_shot_worth(&g->shot, g->places[i].at);
    return BW_OK;
}

int bw_ground_flight(const bw_ground *g, double d) {
    // The ball only slows down, so the time without drag is never too long a start.
    int t = (int)(d / (g->level->pass_speed * BW_TICK));
    if (t < 1) t = 1;
    while (t < BW_MAX_FLIGHT && g->flown[t] < d)
        t++;
    return t;
}

int bw_ground_nearest(const bw_ground *g, bw_vec p) {
    int best = -1;
    double best_d = 0;
    for (int i = 0; i < g->place_count; i++) {
        const double d = bw_length2(bw_sub(g->places[i].at, p));
        if (best < 0 || d < best_d) {
            best = i;
            best_d = d;
        }
    }
    return best;
}
