/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/bound.h"
#include "core/play.h"
#include "core/play_part.h"

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

/// A shot begun now by the man with the ball, with time and room: exact, for nothing but the defence
/// is left out.
static double shot_of(const bw_bound *bound, bw_runner r) {
    const bw_ground *g = bound->b->ground;
    bw_runner_go(&r, &g->carrier, g->shoot, 0);
    return bw_shot_worth(&g->shot, bw_v(r.x, r.y));
}

void bw_bound_begin(const bw_break *b, const bw_state *s, int depth, int left, bw_bound *bound) {
    *bound = (bw_bound){.b = b, .s = s, .depth = depth, .left = left, .need = -1};
    const bw_ground *g = b->ground;
    const int h = s->holder;
    bound->shot_now = shot_of(bound, bw_runner_of(s, h));
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

static bw_hope pass_hope(const bw_bound *bound, bw_ply p) {
    const bw_state *s = bound->s;
    const bw_ground *g = bound->b->ground;
    const bool runs = s->moving[(int)p.to] || p.cutter == p.to;
    const double length = shortest(bound, p.to, runs);
    if (g->release + bw_ground_flight(g, length) + g->shoot > bound->left) return (bw_hope){0, 0};
    return (bw_hope){RAISED * bw_pass_thrown(g->level, length),
                     bw_max(bound->most[(int)p.to], g->level->pass_sure * bound->best)};
}

/// The last pass before the shot: thrower and receiver are run by themselves, so length and place are
/// the true ones. How many defenders are in when it is thrown decides how the receiver's run is cut
/// into steps; every number that may be is tried.
static bw_hope last_pass_hope(const bw_bound *bound, bw_ply p) {
    const bw_state *s = bound->s;
    const bw_ground *g = bound->b->ground;
    // To run a man step by step is dear, and often it is plain beforehand that he gets nowhere.
    if (p.cutter == p.to || s->moving[(int)p.to]) {
        bw_hope rough = pass_hope(bound, p);
        rough.after = bound->most[(int)p.to];
        if (rough.chance * rough.after < bound->need) return rough;
    }
    bw_runner thrower = bw_runner_of(s, s->holder), receiver = bw_runner_of(s, p.to);
    if (p.cutter == p.to) bw_runner_send(&receiver, g->places[(int)p.cut_place].at);
    bw_runner_go(&thrower, &g->carrier, g->release, 0);
    bw_runner_go(&receiver, &g->attacker, g->release, 0);
    const bw_vec from = bw_v(thrower.x, thrower.y);
    const int ticks =
        bw_flight_ticks(g, from, bw_v(receiver.x, receiver.y), bw_v(receiver.u, receiver.v));
    bw_hope hope = {0, 0};
    if (g->release + ticks + g->shoot > bound->left) return hope;
    for (int in = s->in; in <= bound->b->defenders; in++) {
        bw_runner r = receiver;
        bw_runner_go(&r, &g->attacker, ticks, bound->b->reaction[in]);
        const double length = bw_max(bw_distance(from, bw_v(r.x, r.y)), 0.1);
        bw_runner_stop(&r);
        hope.chance = bw_max(hope.chance, RAISED * bw_pass_thrown(g->level, length));
        hope.after = bw_max(hope.after, shot_of(bound, r));
        if (!receiver.moving) break;
    }
    return hope;
}

/// The last ply before the shot is the carrier's own.
static bw_hope last_run_hope(const bw_bound *bound, bw_ply p) {
    const bw_state *s = bound->s;
    const bw_ground *g = bound->b->ground;
    bw_runner r = bw_runner_of(s, s->holder);
    int ticks = g->hold;
    if (p.kind == BW_CARRY) {
        const bw_vec there = g->places[(int)p.to].at;
        ticks = bw_carry_ticks(g, bw_distance(bw_v(r.x, r.y), there));
        const bw_hope rough = {1, RAISED * bw_shot_most(&g->shot, bw_v(r.x, r.y),
                                                        reach(bound, s->holder, ticks + g->shoot))};
        if (rough.after < bound->need) return rough;
        bw_runner_send(&r, there);
        bw_runner_go(&r, &g->carrier, ticks, bound->b->reaction[(int)s->in]);
        bw_runner_stop(&r);
    } else {
        bw_runner_go(&r, &g->carrier, ticks, 0);
    }
    if (ticks + g->shoot > bound->left) return (bw_hope){0, 0};
    return (bw_hope){1, RAISED * shot_of(bound, r)};
}

bw_hope bw_bound_ply(const bw_bound *bound, bw_ply p) {
    const bw_ground *g = bound->b->ground;
    if (bound->depth == 1)
        return p.kind == BW_PASS ? last_pass_hope(bound, p) : last_run_hope(bound, p);
    if (p.kind == BW_PASS) return pass_hope(bound, p);
    const int least = p.kind == BW_HOLD ? g->hold : g->carry_least;
    if (least + g->shoot > bound->left) return (bw_hope){0, 0};
    return (bw_hope){1,
                     bw_max(bound->most[(int)bound->s->holder], g->level->pass_sure * bound->best)};
}

double bw_bound_all(const bw_bound *bound) {
    if (bound->left < bound->b->ground->shoot) return 0;
    if (bound->depth == 0) return bound->shot_now;
    const int h = bound->s->holder;
    return bw_max(bound->most[h], bound->b->ground->level->pass_sure * RAISED * bound->best);
}
