/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "trial/script.h"

#include "core/ball.h"
#include "core/motion.h"
#include "scheme/caption.h"
#include "trial/catalogue.h"

/// A pass costs this plus its milliseconds: the fewest passes first, then the least time in the air. No
/// script takes so long.
enum { A_PASS = 10000000 };

/// Attackers a man is thought to choose between: six against those who are in, as in the lint.
static const double attackers = 6;

/// Assumed: how fast people walk through a shape, and the look the coach takes when all stand, s.
static const double walking = 1.4;
static const double look[BW_PACE_COUNT] = {5, 2, 0};

const char *bw_pace_name(bw_pace pace) {
    static const char *const names[BW_PACE_COUNT] = {"walk", "half speed", "full speed"};
    return names[pace];
}

/// Landmarks in the order of where they lie: up-field first, of equals the middle first, then the
/// leading side; so that no tie is settled by an index.
typedef struct order {
    int count;
    int landmark[BW_MAX_LANDMARKS];
} order;

static bool before(const bw_scheme *scheme, int a, int b) {
    const bw_vec p = scheme->landmarks[a].at, q = scheme->landmarks[b].at;
    if (p.y != q.y) return p.y > q.y;
    if (bw_abs(p.x) != bw_abs(q.x)) return bw_abs(p.x) < bw_abs(q.x);
    return scheme->lead == BW_RIGHT ? p.x > q.x : p.x < q.x;
}

static order order_of(const bw_scheme *scheme) {
    order o = {0};
    for (int l = 0; l < scheme->landmark_count; l++) {
        int k = o.count++;
        for (; k > 0 && before(scheme, l, o.landmark[k - 1]); k--)
            o.landmark[k] = o.landmark[k - 1];
        o.landmark[k] = l;
    }
    return o;
}

static bool own_image(const bw_scheme *scheme, int stage) {
    for (int l = 0; l < scheme->landmark_count; l++) {
        if (scheme->landmarks[l].twin < 0) return false;
    }
    for (int s = 0; s < scheme->stages[stage].defenders; s++) {
        if (scheme->stages[stage].spots[s].twin < 0) return false;
    }
    return true;
}

static int rank_of(const bw_script *script, int from, int to) {
    for (int k = 0; k < script->weak_count; k++) {
        if (script->weak[k][0] == from && script->weak[k][1] == to) return k + 1;
    }
    return 0;
}

/// A pass past the neighbour counts too: the offence of the tested breaks uses it.
static void add_weak(const bw_rotations *rotations, int from, int to, double cost, bw_script *out) {
    if (!rotations->pass[from][to] || rank_of(out, from, to) > 0) return;
    const int k = out->weak_count++;
    out->weak[k][0] = from;
    out->weak[k][1] = to;
    out->cost[k] = cost;
}

static void take_weak(const bw_rotations *rotations, const bw_weak_list *list, bw_script *out) {
    const bw_landmark *landmarks = out->scheme->landmarks;
    const bool both = own_image(out->scheme, out->stage);
    for (int i = 0; i < list->count; i++) {
        const bw_weak *weak = &list->weak[i];
        if (weak->stage != out->stage || weak->from_at < 0 || weak->to_at < 0) continue;
        add_weak(rotations, weak->from_at, weak->to_at, weak->cost, out);
        if (both)
            add_weak(rotations, landmarks[weak->from_at].twin, landmarks[weak->to_at].twin,
                     weak->cost, out);
    }
}

/// How often a rotation is asked for: once, twice when it is weak, three times when it costs at least half
/// of what the weakest does.
static int times_of(const bw_script *script, int from, int to) {
    const int rank = rank_of(script, from, to);
    if (rank == 0) return 1;
    return 2 * script->cost[rank - 1] >= script->cost[0] ? 3 : 2;
}

static double flight_of(const bw_scheme *scheme, int from, int to) {
    const bw_level *level = bw_level_at(scheme->level);
    const double d = bw_distance(scheme->landmarks[from].at, scheme->landmarks[to].at);
    return bw_ball_time(level->pass_speed, BW_BALL_DRAG, d);
}

static void ask(const bw_rotations *rotations, const order *o, bw_script *out, bw_tour_def *def) {
    *def = (bw_tour_def){.count = o->count, .start = 0, .budget = BW_TOUR_BUDGET};
    for (int i = 0; i < o->count; i++) {
        for (int j = 0; j < o->count; j++) {
            const int a = o->landmark[i], b = o->landmark[j];
            if (!rotations->pass[a][b]) continue;
            def->cost[i][j] = A_PASS + (int32_t)(1000 * flight_of(out->scheme, a, b) + 0.5);
            const bool weak = rank_of(out, a, b) > 0;
            if (!rotations->rotation[a][b] && !weak) continue;
            out->rotations++;
            const int times = times_of(out, a, b);
            def->times[i][j] = (uint8_t)times;
            out->wanted += times;
        }
    }
}

/// Fills what the coach looks for when the ball has come to stop->to.
static void look_at(const bw_scheme *scheme, int stage, const bw_plan *plan, bw_script_stop *stop) {
    const bw_level *level = bw_level_at(scheme->level);
    bw_station was[BW_MAX_SPOTS], is[BW_MAX_SPOTS];
    bw_where(plan, scheme->landmarks[stop->from].at, NULL, 0, was);
    bw_where(plan, scheme->landmarks[stop->to].at, NULL, 0, is);
    stop->on_ball = stop->crease = -1;
    for (int s = 0; s < scheme->stages[stage].defenders; s++) {
        const double metres = bw_distance(was[s].at, is[s].at);
        if (s == 0 || metres > stop->metres) {
            stop->farthest = s;
            stop->metres = metres;
        }
        if (is[s].duty == BW_DUTY_BALL) stop->on_ball = s;
        if (is[s].duty == BW_DUTY_CREASE) stop->crease = s;
    }
    const double flight = flight_of(scheme, stop->from, stop->to);
    const double react = bw_reaction(level, attackers / scheme->stages[stage].defenders);
    bw_legs half = level->defender;
    half.vmax /= 2;
    const double run = react + bw_arrive_and_stop(level->defender, stop->metres);
    const double jog = react + bw_arrive_and_stop(half, stop->metres);
    stop->seconds[BW_WALK] =
        level->release + bw_max(2 * flight, stop->metres / walking) + look[BW_WALK];
    stop->seconds[BW_HALF_SPEED] = level->release + bw_max(2 * flight, jog) + look[BW_HALF_SPEED];
    stop->seconds[BW_FULL_SPEED] = level->release + bw_max(flight, run) + look[BW_FULL_SPEED];
}

static void fill_stops(const bw_tour *tour, const bw_tour_def *def, const order *o,
                       bw_script *out) {
    bw_plan plan;
    bw_plan_build(out->scheme, out->stage, &plan);
    uint16_t made[BW_TOUR_PLACES][BW_TOUR_PLACES] = {{0}};
    out->start = o->landmark[tour->at[0]];
    out->stop_count = tour->count;
    for (int i = 0; i < tour->count; i++) {
        const int from = tour->at[i], to = tour->at[i + 1];
        bw_script_stop *stop = &out->stops[i];
        *stop = (bw_script_stop){.from = o->landmark[from], .to = o->landmark[to]};
        stop->again = made[from][to]++;
        stop->link = stop->again >= def->times[from][to];
        stop->rank = rank_of(out, stop->from, stop->to);
        look_at(out->scheme, out->stage, &plan, stop);
        for (int p = 0; p < BW_PACE_COUNT; p++)
            out->seconds[p] += stop->seconds[p];
    }
}

typedef struct work {
    bw_tour_def def;
    bw_tour tour;
    double rest[1];
} work;

size_t bw_script_size(void) {
    return sizeof(work) + bw_tour_size();
}

static void say_why(bw_status status, const bw_scheme *scheme, const order *o, const bw_tour *tour,
                    bw_text *why) {
    if (!why) return;
    if (status == BW_LIMIT) {
        bw_put_plain_sentence(why, bw_voice_of(scheme), &bw_s_script_long);
        return;
    }
    bw_put_sentence(why, bw_voice_of(scheme), &bw_s_script_no_way,
                    bw_as_ball("from", scheme, scheme->landmarks[o->landmark[tour->from]].at),
                    bw_as_ball("to", scheme, scheme->landmarks[o->landmark[tour->to]].at));
}

bw_status bw_script_build(const bw_scheme *scheme, int stage, const bw_weak_list *weak,
                          void *memory, size_t size, bw_script *out, bw_text *why) {
    *out = (bw_script){.scheme = scheme, .stage = stage, .weighed = weak != NULL};
    if (size < bw_script_size()) return BW_NO_ROOM;
    work *w = memory;
    bw_rotations rotations;
    bw_rotations_of(scheme, &rotations);
    if (rotations.count == 0) {
        if (why) bw_put_plain_sentence(why, bw_voice_of(scheme), &bw_s_script_no_rotation);
        return BW_NOT_FOUND;
    }
    const order o = order_of(scheme);
    if (weak) take_weak(&rotations, weak, out);
    ask(&rotations, &o, out, &w->def);
    const bw_status status = bw_tour_find(&w->def, w->rest, size - offsetof(work, rest), &w->tour);
    if (status != BW_OK) {
        say_why(status, scheme, &o, &w->tour, why);
        return status;
    }
    out->pieces = w->tour.pieces;
    out->bound = (int)(w->tour.bound / A_PASS);
    fill_stops(&w->tour, &w->def, &o, out);
    return BW_OK;
}

void bw_say_script_time(bw_text *out) {
    bw_put_plain_sentence(out, (bw_voice){0}, &bw_s_script_time);
}
