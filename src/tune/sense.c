/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "tune/sense.h"
#include "core/maths.h"
#include <stdlib.h>
#include <string.h>

typedef struct mapping {
    const bw_tuning *def;
    const bw_scheme *scheme;
    bw_judge *judge;
    bw_break_def drills[BW_MAX_DRILLS];
    int drill_count;
    bw_scheme candidate;
    bw_judgement verdict, middle;
    double spread; ///< variance of the differences from the middle over breaks, summed
    int looked, done, of;
} mapping;

static double aim_of(const mapping *m, const bw_judgement *v) {
    return m->def->mix * v->typical + (1 - m->def->mix) * v->best;
}

static bw_status judge(mapping *m, bw_judgement *verdict) {
    const bw_status status = bw_judge_scheme(m->judge, &m->candidate, m->drills, m->drill_count,
                                             bw_judging_quick(), verdict);
    if (status != BW_OK) return status;
    bw_tell(&m->def->watch, ++m->done, m->of);
    return BW_OK;
}

/// Variance of the mean difference from the middle, from break to break.
static void note_spread(mapping *m) {
    double sum = 0, squares = 0;
    const int n = m->drill_count;
    for (int i = 0; i < n; i++) {
        const double d = m->def->mix * (m->verdict.typical_each[i] - m->middle.typical_each[i]) +
                         (1 - m->def->mix) * (m->verdict.best_each[i] - m->middle.best_each[i]);
        sum += d;
        squares += d * d;
    }
    if (n > 1) m->spread += (squares - sum * sum / n) / (n * (n - 1.0));
    m->looked++;
}

static bw_status cost_here(mapping *m, double *cost, bool *there) {
    *there = true;
    const bw_status status = judge(m, &m->verdict);
    if (status != BW_OK) return status;
    note_spread(m);
    *cost = aim_of(m, &m->verdict) - aim_of(m, &m->middle);
    return BW_OK;
}

/// Whether a home may be so: on the field side of the goal line, and a pair's right one on the right.
static bool may_be(const bw_sense_map *map, bw_vec home) {
    const double clear = 0.5 * BW_METRES_PER_YARD;
    if (home.y < 0) return false;
    return map->twin < 0 || map->twin == map->spot || home.x >= clear;
}

static bw_status map_home(mapping *m, bw_sense_map *map, double step) {
    for (int out = 0; out < BW_SENSE_SIDE; out++) {
        for (int across = 0; across < BW_SENSE_SIDE; across++) {
            const bool straight = map->twin == map->spot; // on the centre line there is no across
            const bw_vec by = bw_v((across - BW_SENSE_STEPS) * step, (out - BW_SENSE_STEPS) * step);
            const bw_vec home = bw_add(map->home, by);
            if (!may_be(map, home) || (straight && across != BW_SENSE_STEPS)) {
                m->done++;
                continue;
            }
            m->candidate = *m->scheme;
            bw_stage *stage = &m->candidate.stages[m->def->stage];
            stage->spots[map->spot].home = home;
            if (map->twin >= 0 && map->twin != map->spot)
                stage->spots[map->twin].home = bw_mirror(home);
            const bw_status status =
                cost_here(m, &map->cost[out][across], &map->there[out][across]);
            if (status != BW_OK) return status;
        }
    }
    return BW_OK;
}

static bw_status turn_rule(mapping *m, bw_sense_scale *scale) {
    for (int i = 0; i < BW_SENSE_SIDE; i++) {
        scale->at[i] = scale->knob.now + (i - BW_SENSE_STEPS) * scale->knob.scale / 2;
        if (scale->at[i] < scale->knob.low || scale->at[i] > scale->knob.high) {
            m->done++;
            continue;
        }
        m->candidate = *m->scheme;
        bw_knobs_turn(&scale->knob, 1, &scale->at[i], &m->candidate.stages[m->def->stage]);
        const bw_status status = cost_here(m, &scale->cost[i], &scale->there[i]);
        if (status != BW_OK) return status;
    }
    return BW_OK;
}

/// What there is to map around a scheme: all of it, whatever the coach kept when tuning.
static void list_all(const mapping *m, bw_sense *out) {
    bw_knob knobs[BW_MAX_KNOBS];
    const bw_knob_limits all = bw_knob_limits_default();
    const int count = bw_knobs(m->scheme, m->def->stage, &all, knobs);
    for (int k = 0; k < count; k++) {
        if (knobs[k].spot < 0) {
            out->scales[out->scale_count++].knob = knobs[k];
        } else if (knobs[k].kind == BW_KNOB_OUT) {
            bw_sense_map *map = &out->maps[out->map_count++];
            map->spot = knobs[k].spot;
            map->twin = knobs[k].twin;
            map->home = m->scheme->stages[m->def->stage].spots[map->spot].home;
        }
    }
}

static bw_status map_all(mapping *m, bw_sense *out) {
    m->candidate = *m->scheme;
    bw_status status = judge(m, &m->middle);
    for (int i = 0; i < out->map_count && status == BW_OK; i++)
        status = map_home(m, &out->maps[i], out->step);
    for (int i = 0; i < out->scale_count && status == BW_OK; i++)
        status = turn_rule(m, &out->scales[i]);
    if (m->looked > 0) out->flat = 2 * bw_sqrt(m->spread / m->looked);
    return status;
}

bw_status bw_sense_map_all(const bw_tuning *def, const bw_scheme *scheme, bw_sense *out) {
    *out = (bw_sense){.step = bw_unit_length(scheme->units)};
    mapping *m = calloc(1, sizeof *m);
    if (!m) return BW_NO_ROOM;
    m->def = def;
    m->scheme = scheme;
    m->drill_count =
        bw_drills(scheme, def->stage, BW_DRILL_TRAINING, def->training, def->seed, m->drills);
    for (int i = 0; i < m->drill_count; i++)
        memcpy(m->drills[i].legs, def->legs, sizeof def->legs);
    list_all(m, out);
    m->of = 1 + out->map_count * BW_SENSE_SIDE * BW_SENSE_SIDE + out->scale_count * BW_SENSE_SIDE;
    m->judge =
        m->drill_count > 0 ? bw_judge_open(scheme, NULL, def->threads, def->watch.cancel) : NULL;
    bw_status status = m->drill_count == 0 ? BW_BAD_INPUT : BW_NO_ROOM;
    if (m->judge) status = map_all(m, out);
    bw_judge_close(m->judge);
    free(m);
    return status;
}
