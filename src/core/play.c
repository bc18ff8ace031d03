/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What each ply does, and the chance that it keeps the ball. All constants here are assumed unless
/// the level carries them; docs/model.md tells what rests on them.
#include "core/play.h"
#include "core/play_part.h"
#include "core/ramp.h"

/// A pass loses to each defender who can reach its lane at most this share.
#define PICKED_OFF 0.7
/// Shares of a pass's length between which a defender may pick it off.
#define LANE_FROM 0.08
#define LANE_TO 1.05
/// A lane's edge is this soft, m.
#define LANE_FADE 0.9
/// A defender who has begun to move gains this much of the lane a second, m/s.
#define LANE_SPEED 2.0
/// Share of a pass lost when the receiver catches in a crowd, how near a crowd is, and how soft, m.
#define CROWD 0.35
#define CROWD_NEAR 1.1
#define CROWD_FADE 0.9
/// The goal and the goalkeeper's stick take this share of passes that cross within 1.2 m of it.
#define GOAL_BLOCKS 0.4
#define GOAL_NEAR 1.2
#define GOAL_FADE 0.5
/// Beyond this a pass loses chance with length, m.
#define SHORT_PASS 8.0
/// No pass is worse than this before defenders count.
#define WORST_PASS 0.3
/// A carry meets a man this near, and how soft, m.
#define DODGE_NEAR 1.0
#define CONTACT_FADE 0.75
/// Share of holds a man on the carrier takes away.
#define HOLD_LOSS 0.12
/// Seconds a carry takes beyond distance over speed.
#define CARRY_START 0.15
/// A pass is led by this many seconds of the receiver's run when its flight is timed.
#define PASS_LEAD 0.5

double bw_pass_thrown(const bw_level *level, double length) {
    const double p = level->pass_sure - level->pass_fall * bw_max(length - SHORT_PASS, 0);
    return bw_max(p, WORST_PASS);
}

static void begin_cut(const bw_break *b, bw_state *s, bw_ply ply) {
    if (ply.cutter == BW_NOBODY) return;
    const int a = ply.cutter;
    s->place[a] = ply.cut_place;
    s->to_x[a] = b->ground->places[(int)ply.cut_place].at.x;
    s->to_y[a] = b->ground->places[(int)ply.cut_place].at.y;
    s->moving[a] = 1;
}

/// Where the man with the ball is coming to rest.
static bw_vec resting(const bw_state *s) {
    const int a = s->holder;
    return s->moving[a] ? bw_v(s->to_x[a], s->to_y[a]) : bw_man(s, a);
}

static double stand(const bw_break *b, bw_state *s, int ticks, const bw_onlooker *onlooker) {
    const bw_stretch still = {.ball = resting(s),
                              .man = s->holder,
                              .ticks = ticks,
                              .carrier = s->holder,
                              .onlooker = onlooker};
    return bw_run(b, s, &still);
}

void bw_play_windup(const bw_break *b, const bw_state *from, bw_ply ply, bw_state *to,
                    const bw_onlooker *onlooker) {
    *to = *from;
    begin_cut(b, to, ply);
    stand(b, to, b->ground->release, onlooker);
}

double bw_lane_left(const bw_break *b, const bw_state *s, bw_vec from, bw_vec at, double length,
                    double flight) {
    const bw_vec along = bw_scale(bw_sub(at, from), 1 / length);
    const double react = b->reaction[(int)s->in] * BW_TICK, reach = b->ground->level->pass_reach;
    const double farthest = reach + LANE_FADE + LANE_SPEED * LANE_TO * flight;
    double left = 1;
    for (int d = 0; d < b->defenders; d++) {
        const bw_vec man = bw_sub(bw_man(s, BW_MAX_ATTACKERS + d), from);
        const double foot = bw_dot(man, along), off = bw_abs(bw_cross(along, man));
        if (foot < LANE_FROM * length || foot > LANE_TO * length || off > farthest) continue;
        const double gained = bw_max(foot / length * flight - react, 0) * LANE_SPEED;
        left *= 1 - PICKED_OFF * bw_ramp((reach + gained - off) / LANE_FADE);
    }
    const double foot = -bw_dot(from, along);
    if (foot > 0 && foot < length) {
        const double off = bw_abs(bw_cross(along, from));
        left *= 1 - GOAL_BLOCKS * bw_ramp((GOAL_NEAR - off) / GOAL_FADE);
    }
    return left;
}

int bw_flight_ticks(const bw_ground *g, bw_vec from, bw_vec at, bw_vec v) {
    const bw_vec led = bw_add(at, bw_scale(v, PASS_LEAD));
    const int ticks = bw_ground_flight(g, bw_distance(from, led)),
              most = g->longest_ply - g->release;
    return ticks > most ? most : ticks;
}

void bw_play_release(const bw_break *b, const bw_state *s, int to_man, bw_flight *f) {
    const bw_ground *g = b->ground;
    bw_runner r = bw_runner_of(s, to_man);
    f->from = bw_man(s, s->holder);
    f->ticks = bw_flight_ticks(g, f->from, bw_v(r.x, r.y), bw_v(r.u, r.v));
    f->freeze = b->reaction[(int)s->in];
    bw_runner_go(&r, &g->attacker, f->ticks, f->freeze);
    f->aim = bw_v(r.x, r.y);
    const double length = bw_max(bw_distance(f->from, f->aim), 0.1);
    f->chance = bw_pass_thrown(g->level, length) *
                bw_lane_left(b, s, f->from, f->aim, length, f->ticks * BW_TICK);
}

double bw_play_flight(const bw_break *b, const bw_state *released, int to_man, const bw_flight *f,
                      bw_state *to, const bw_onlooker *onlooker) {
    *to = *released;
    bw_onlooker flying = {0};
    if (onlooker) flying = (bw_onlooker){onlooker->watch, onlooker->self, true, f->from};
    const bw_stretch flight = {.ball = f->aim,
                               .man = to_man,
                               .ticks = f->ticks,
                               .freeze = f->freeze,
                               .carrier = BW_NOBODY,
                               .onlooker = onlooker ? &flying : NULL};
    bw_run(b, to, &flight);
    double nearest = 1e9, chance = f->chance;
    for (int d = 0; d < b->defenders; d++)
        nearest = bw_min(nearest, bw_length2(bw_sub(bw_man(to, BW_MAX_ATTACKERS + d), f->aim)));
    if (nearest < (CROWD_NEAR + CROWD_FADE) * (CROWD_NEAR + CROWD_FADE))
        chance *= 1 - CROWD * bw_ramp((CROWD_NEAR - bw_sqrt(nearest)) / CROWD_FADE);
    to->holder = (int8_t)to_man;
    bw_run_stop(b, to, to_man);
    return chance;
}

int bw_carry_ticks(const bw_ground *g, double d) {
    const double seconds = d / g->carrier.vmax + CARRY_START;
    return (int)(bw_clamp(seconds, BW_CARRY_LEAST, BW_CARRY_MOST) / BW_TICK + 0.5);
}

static double carry(const bw_break *b, bw_state *s, int place, const bw_onlooker *onlooker) {
    const int a = s->holder;
    const bw_vec there = b->ground->places[place].at;
    const int ticks = bw_carry_ticks(b->ground, bw_distance(bw_man(s, a), there));
    const int freeze = b->reaction[(int)s->in];
    s->to_x[a] = there.x;
    s->to_y[a] = there.y;
    s->place[a] = (int8_t)place;
    s->moving[a] = 1;
    bw_runner ahead = bw_runner_of(s, a);
    bw_runner_go(&ahead, &b->ground->carrier, ticks, freeze);
    const bw_stretch run = {.ball = bw_v(ahead.x, ahead.y),
                            .man = a,
                            .ticks = ticks,
                            .freeze = freeze,
                            .carrier = a,
                            .onlooker = onlooker};
    const double closest = bw_run(b, s, &run);
    bw_run_stop(b, s, a);
    return 1 - b->ground->level->dodge_loss * bw_ramp((DODGE_NEAR - closest) / CONTACT_FADE);
}

double bw_play(const bw_break *b, const bw_state *from, bw_ply ply, bw_state *to, bw_watch *watch,
               void *self) {
    const bw_onlooker looking = {.watch = watch, .self = self};
    const bw_onlooker *onlooker = watch ? &looking : NULL;
    BW_ASSERT(ply.kind != BW_SHOOT);
    if (ply.kind == BW_PASS) {
        bw_state released;
        bw_flight flight;
        bw_play_windup(b, from, ply, &released, onlooker);
        bw_play_release(b, &released, ply.to, &flight);
        return bw_play_flight(b, &released, ply.to, &flight, to, onlooker);
    }
    *to = *from;
    begin_cut(b, to, ply);
    if (ply.kind == BW_CARRY) return carry(b, to, ply.to, onlooker);
    const double nearest = stand(b, to, b->ground->hold, onlooker);
    return 1 - HOLD_LOSS * bw_ramp((CROWD_NEAR - nearest) / CONTACT_FADE);
}

double bw_shot_open(const bw_break *b, const bw_state *s, bw_vec at) {
    return bw_shot_left_all(b->ground->level, at, s->x + BW_MAX_ATTACKERS, s->y + BW_MAX_ATTACKERS,
                            b->defenders);
}

bw_shot_terms bw_play_shot(const bw_break *b, const bw_state *from, bw_state *end, bw_watch *watch,
                           void *self) {
    const bw_onlooker looking = {.watch = watch, .self = self};
    bw_state s = *from;
    stand(b, &s, b->ground->shoot, watch ? &looking : NULL);
    const bw_vec at = bw_man(&s, s.holder);
    if (end) *end = s;
    return (bw_shot_terms){
        .place = bw_shot_worth(&b->ground->shot, at), .left = bw_shot_open(b, &s, at), .at = at};
}
