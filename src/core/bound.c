/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/bound.h"

/// Figures are raised by this, more than their own rounding.
#define RAISED (1 + 1e-9)
/// A man who comes within 0.05 m of where he is bound is put there: what that may add to his reach
/// for each run he ends.
#define SNAP 0.05

/// Farthest a man can be from where he is after some ticks: what his speed carries him and what his
/// legs add (the reachable disc of the motion model).
static double reach(const bw_bound *bound, int man, int ticks) {
    const bw_state *s = bound->s;
    const bw_ground *g = bound->b->ground;
    if (ticks > BW_MAX_TICKS) ticks = BW_MAX_TICKS;
    const double speed = bw_sqrt(s->u[man] * s->u[man] + s->v[man] * s->v[man]);
    return speed * g->level->attacker.tau + g->reach[ticks] + SNAP * (bound->depth + 2);
}

void bw_bound_begin(const bw_break *b, const bw_state *s, int depth, int left, bw_bound *bound) {
    *bound = (bw_bound){.b = b, .s = s, .depth = depth, .left = left};
    const bw_ground *g = b->ground;
    const int h = s->holder;
    const bw_vec at = bw_man(s, h);
    bound->shot_now = RAISED * (s->moving[h] ? bw_shot_most(&g->shot, at, reach(bound, h, g->shoot))
                                             : bw_shot_worth(&g->shot, at));
    if (depth == 0) return;
    int time = depth * g->longest_ply + g->shoot;
    if (time > left) time = left;
    for (int a = 0; a < b->attackers; a++) {
        bound->most[a] = RAISED * bw_shot_most(&g->shot, bw_man(s, a), reach(bound, a, time));
        bound->best = bw_max(bound->best, bound->most[a]);
    }
}

/// Shortest the pass to j can turn out, m.
static double shortest(const bw_bound *bound, int j, bool runs) {
    const bw_state *s = bound->s;
    const bw_ground *g = bound->b->ground;
    const int h = s->holder;
    double length = bw_distance(bw_man(s, h), bw_man(s, j));
    if (s->moving[h]) length -= reach(bound, h, g->release);
    if (runs) length -= reach(bound, j, g->longest_ply);
    return bw_max(length, 0);
}

static double bound_pass(const bw_bound *bound, bw_ply p) {
    const bw_state *s = bound->s;
    const bw_ground *g = bound->b->ground;
    const bool runs = s->moving[(int)p.to] || p.cutter == p.to;
    const double length = shortest(bound, p.to, runs);
    const double seconds = bw_ball_time(g->level->pass_speed, BW_BALL_DRAG, length);
    const int flight = (int)(seconds / BW_TICK); // rounded down: never longer than the true flight
    if (g->release + flight + g->shoot > bound->left) return 0;
    const double thrown = RAISED * bw_pass_thrown(g->level, length);
    if (bound->depth == 1 && !runs)
        return thrown * RAISED * bw_shot_worth(&g->shot, bw_man(s, p.to));
    const double after = bound->depth == 1
                             ? bound->most[(int)p.to]
                             : bw_max(bound->most[(int)p.to], g->level->pass_sure * bound->best);
    return thrown * after;
}

double bw_bound_ply(const bw_bound *bound, bw_ply p) {
    const bw_ground *g = bound->b->ground;
    const int h = bound->s->holder;
    if (p.kind == BW_PASS) return bound_pass(bound, p);
    const int least = p.kind == BW_HOLD ? g->hold : g->carry_least;
    if (least + g->shoot > bound->left) return 0;
    if (bound->depth > 1) return bw_max(bound->most[h], g->level->pass_sure * bound->best);
    if (p.kind == BW_HOLD && !bound->s->moving[h]) return bound->shot_now;
    const int time = (p.kind == BW_HOLD ? g->hold : g->carry_most) + g->shoot;
    return RAISED * bw_shot_most(&g->shot, bw_man(bound->s, h), reach(bound, h, time));
}

double bw_bound_all(const bw_bound *bound) {
    if (bound->left < bound->b->ground->shoot) return 0;
    if (bound->depth == 0) return bound->shot_now;
    const int h = bound->s->holder;
    return bw_max(bound->most[h], bound->b->ground->level->pass_sure * RAISED * bound->best);
}
