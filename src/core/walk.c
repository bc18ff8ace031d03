/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/walk.h"

#include "core/ball.h"

/// A ball going no farther than this is carried, m (assumed: a few steps).
static const double carried_within = 5 * BW_METRES_PER_YARD;

static int whole_steps(double seconds) {
    return (int)bw_floor(seconds / BW_FOLLOW_STEP + 0.5);
}

/// The first whole step by which `seconds` > 0 are over.
static int steps_over(double seconds) {
    return (int)-bw_floor(-seconds / BW_FOLLOW_STEP);
}

/// Distance of the goal's centre from the segment a-b, m.
static double goal_from_way(bw_vec a, bw_vec b) {
    const bw_vec way = bw_sub(b, a);
    const double t = bw_clamp(-bw_dot(a, way) / bw_length2(way), 0, 1);
    return bw_length(bw_lerp(a, b, t));
}

static bw_way way_between(const bw_field *field, bw_vec a, bw_vec b) {
    const double length = bw_distance(a, b);
    if (length <= 0) return BW_WAY_NONE;
    const bool carried = length <= carried_within && goal_from_way(a, b) >= field->crease;
    return carried ? BW_WAY_CARRY : BW_WAY_PASS;
}

static int steps_of_way(const bw_walk *walk, const bw_walk_stop *stop) {
    switch (stop->way) {
    case BW_WAY_PASS: return steps_over(bw_ball_time(walk->pass_speed, BW_BALL_DRAG, stop->length));
    case BW_WAY_CARRY: return steps_over(bw_arrive_and_stop(walk->carrying, stop->length));
    default: return 0;
    }
}

/// Metres a man has gone after t seconds, from rest to rest over d metres: full drive until braking
/// with full opposite drive brings him to rest there. With T seconds in all he brakes from
/// tau log((e^(T/tau) + 1) / 2) on: then his speed is gone at T.
static double carried(bw_legs legs, double d, double t) {
    const double all = bw_arrive_and_stop(legs, d);
    const double turn = legs.tau * bw_log((bw_exp(all / legs.tau) + 1) / 2);
    const bw_body start = {bw_v(0, 0), bw_v(0, 0)};
    const bw_body driven = bw_advance(legs, start, bw_v(legs.vmax, 0), bw_min(t, turn));
    if (t <= turn) return driven.at.x;
    return bw_advance(legs, driven, bw_v(-legs.vmax, 0), bw_min(t, all) - turn).at.x;
}

/// Where the ball is `seconds` after it left for a stop.
static bw_vec ball_on_way(const bw_walk *walk, int stop, double seconds) {
    const bw_walk_stop *to = &walk->stops[stop];
    const double gone = to->way == BW_WAY_PASS
                            ? bw_ball_distance(walk->pass_speed, BW_BALL_DRAG, seconds)
                            : carried(walk->carrying, to->length, seconds);
    return bw_lerp(walk->stops[stop - 1].ball, to->ball, bw_clamp(gone / to->length, 0, 1));
}

/// The last stop, not after `stop`, that the men have seen the ball leave for at a step.
static int seen(const bw_walk *walk, int stop, int step) {
    while (stop > 0 && step < walk->stops[stop].left + walk->delay)
        stop--;
    return stop;
}

/// Lets the unit run from step `from` to step `to`; the ball has not left `stop` by then.
static void run(const bw_walk *walk, int stop, int from, int to, bw_body *body, bw_vec *effort) {
    for (int step = from + 1; step <= to; step++) {
        const bw_station *station = walk->stops[seen(walk, stop, step)].station;
        for (int s = 0; s < walk->spots; s++)
            bw_follow(walk->legs, &body[s], &effort[s], station[s].at);
    }
}

/// The unit when the ball comes to a stop: it ran since the ball came to the one before.
static void run_to(bw_walk *walk, int stop) {
    bw_walk_stop *here = &walk->stops[stop];
    for (int s = 0; s < walk->spots; s++) {
        here->body[s] = (bw_body){here->station[s].at, bw_v(0, 0)};
        here->effort[s] = bw_v(0, 0);
    }
    if (stop == 0) return;
    const bw_walk_stop *last = here - 1;
    for (int s = 0; s < walk->spots; s++) {
        here->body[s] = last->body[s];
        here->effort[s] = last->effort[s];
    }
    run(walk, stop, last->come, here->come, here->body, here->effort);
}

void bw_walk_build(const bw_scheme *scheme, const bw_lesson *lesson, bw_walk *walk) {
    const bw_level *level = bw_level_at(scheme->level);
    const bw_field *field = bw_field_at(scheme->field);
    bw_plan plan;
    walk->stage = bw_scheme_stage(scheme, lesson->defenders);
    BW_ASSERT(walk->stage >= 0 && lesson->stop_count > 0);
    bw_plan_build(scheme, walk->stage, &plan);
    walk->count = lesson->stop_count;
    walk->spots = plan.spots;
    walk->delay = bw_follow_delay(level, 0, plan.spots);
    walk->legs = level->defender;
    walk->carrying = level->attacker;
    walk->carrying.vmax = bw_min(level->attacker.vmax, level->carry_speed);
    walk->pass_speed = level->pass_speed;
    for (int i = 0; i < walk->count; i++) {
        bw_walk_stop *stop = &walk->stops[i];
        const bw_vec ball = bw_stop_ball(scheme, &lesson->stops[i]);
        const bw_vec from = i > 0 ? stop[-1].ball : ball;
        stop->ball = ball;
        stop->way = way_between(field, from, ball);
        stop->length = bw_distance(from, ball);
        stop->left = i > 0 ? stop[-1].gone : 0;
        stop->come = stop->left + steps_of_way(walk, stop);
        stop->gone = stop->come + whole_steps(lesson->stops[i].pause);
        bw_where(&plan, ball, NULL, 0, stop->station);
        run_to(walk, i);
    }
}

double bw_walk_seconds(const bw_walk *walk) {
    return walk->stops[walk->count - 1].gone * BW_FOLLOW_STEP;
}

/// The stop the ball is at or on its way to at a step.
static int stop_at(const bw_walk *walk, int step) {
    int stop = 0;
    while (stop + 1 < walk->count && walk->stops[stop + 1].left <= step)
        stop++;
    return stop;
}

static bw_walker walker(const bw_walk *walk, const bw_walk_stop *stop, int spot, bw_body body,
                        double at_s, double to_come) {
    const double unseen = bw_max((stop->left + walk->delay) * BW_FOLLOW_STEP - at_s, 0);
    const bw_station station = stop->station[spot];
    const double needs = bw_follow_needs(walk->legs, body, station.at, unseen);
    return (bw_walker){body, station, needs, bw_max(needs - to_come, 0)};
}

void bw_walk_at(const bw_walk *walk, double seconds, bw_walk_moment *m) {
    m->at_s = bw_clamp(seconds, 0, bw_walk_seconds(walk));
    // The hair lets the product of a whole number and the step be that step.
    const int step = (int)bw_floor(m->at_s / BW_FOLLOW_STEP + 1e-9);
    const double rest = bw_max(m->at_s - step * BW_FOLLOW_STEP, 0);
    m->stop = stop_at(walk, step);
    const bw_walk_stop *stop = &walk->stops[m->stop];
    const bool moving = step < stop->come;
    const bw_walk_stop *since = moving ? stop - 1 : stop;
    m->way = moving ? stop->way : BW_WAY_NONE;
    m->ball =
        moving ? ball_on_way(walk, m->stop, m->at_s - stop->left * BW_FOLLOW_STEP) : stop->ball;
    m->from = since->ball;
    m->to_come = moving ? stop->come * BW_FOLLOW_STEP - m->at_s : 0;
    bw_vec effort[BW_MAX_SPOTS];
    bw_body body[BW_MAX_SPOTS];
    for (int s = 0; s < walk->spots; s++) {
        body[s] = since->body[s];
        effort[s] = since->effort[s];
    }
    run(walk, m->stop, since->come, step, body, effort);
    for (int s = 0; s < walk->spots; s++) {
        const bw_body now = bw_advance(walk->legs, body[s], effort[s], rest);
        m->men[s] = walker(walk, stop, s, now, m->at_s, m->to_come);
    }
}
