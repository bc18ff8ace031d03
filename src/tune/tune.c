/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "tune/tune.h"
#include "core/hash.h"
#include "core/maths.h"
#include "scheme/lint.h"
#include "scheme/write.h"
#include "tune/minimise.h"
#include <math.h>
#include <stdlib.h>
#include <string.h>

#define YD BW_METRES_PER_YARD

/// What a fault costs, goals: more than any scheme concedes.
#define FAULT 1.0

typedef struct run {
    const bw_tuning *def;
    bw_tuned *out;
    bw_judge *judge;
    bw_scheme candidate;
    bw_judgement verdict;
    int errors; ///< `check` finds in the scheme as it is
    bw_status status;
} run;

bw_tuning bw_tuning_default(const bw_scheme *scheme, int stage) {
    return (bw_tuning){.scheme = scheme,
                       .stage = stage,
                       .limits = bw_knob_limits_default(),
                       .mix = 0.5,
                       .pull = 0.002,
                       .spacing = 3 * YD,
                       .budget = 600,
                       .training = 24,
                       .seed = 1};
}

int bw_tune_errors(const bw_scheme *scheme) {
    bw_finding findings[BW_MAX_FINDINGS];
    int all = bw_scheme_lint(scheme, findings, BW_MAX_FINDINGS), errors = 0;
    if (all > BW_MAX_FINDINGS) all = BW_MAX_FINDINGS;
    for (int i = 0; i < all; i++)
        errors += findings[i].severity == BW_ERROR;
    return errors;
}

/// What the values at[] are away from practice, in goals.
static double practice_pull(const run *r, const double *at) {
    double sum = 0;
    for (int k = 0; k < r->out->knob_count; k++) {
        const bw_knob *knob = &r->out->knobs[k];
        const double off = (at[k] - knob->practice) / knob->scale;
        sum += off * off;
    }
    return r->def->pull * sum;
}

/// Homes nearer to each other than the coach wants, and faults `check` would find that were not there.
static double faults(const run *r) {
    const bw_stage *stage = &r->candidate.stages[r->def->stage];
    double sum = 0;
    for (int s = 0; s < stage->defenders; s++) {
        for (int q = 0; q < s; q++) {
            const double apart = bw_distance(stage->spots[s].home, stage->spots[q].home);
            const double want = bw_min(
                r->def->spacing, bw_distance(r->def->scheme->stages[r->def->stage].spots[s].home,
                                             r->def->scheme->stages[r->def->stage].spots[q].home));
            if (apart < want) sum += FAULT + (want - apart);
        }
    }
    const int errors = bw_tune_errors(&r->candidate);
    return errors > r->errors ? sum + FAULT * (errors - r->errors) : sum;
}

static void make_candidate(run *r, const double *at) {
    r->candidate = *r->def->scheme;
    bw_knobs_turn(r->out->knobs, r->out->knob_count, at, &r->candidate.stages[r->def->stage]);
}

/// Goals a break on the training breaks, by quick judging.
static double aim(run *r, const double *at) {
    make_candidate(r, at);
    const bw_status status = bw_judge_scheme(r->judge, &r->candidate, r->out->drills,
                                             r->out->drill_count, bw_judging_quick(), &r->verdict);
    if (status != BW_OK) r->status = status;
    return r->def->mix * r->verdict.typical + (1 - r->def->mix) * r->verdict.best;
}

static double value(void *self, const double *at) {
    run *r = self;
    const bw_tuning *def = r->def;
    const int i = r->out->tried;
    double sum;
    if (i < def->known_count) {
        sum = def->known[i];
    } else {
        make_candidate(r, at);
        sum = faults(r);
        if (sum == 0)
            sum = aim(r, at) + practice_pull(r, at);
        else
            sum += FAULT;
        if (r->status != BW_OK) return HUGE_VAL; // broken off half-way: no value of this candidate
        if (def->record) def->record(def->recorder, sum);
    }
    bw_tell(&def->watch, ++r->out->tried, def->budget);
    return sum;
}

static bool stop(void *self) {
    run *r = self;
    return r->status != BW_OK || bw_cancelled(&r->def->watch);
}

/// To a tenth of the shown unit, a hundredth for shares: what a coach would write down.
static double rounded(const bw_scheme *scheme, const bw_knob *knob, double at) {
    if (!bw_knob_is_length(knob)) return bw_round_to(at, 100);
    const double unit = bw_unit_length(scheme->units);
    return bw_round_to(at / unit, 10) * unit;
}

static bw_status search(run *r) {
    const bw_tuning *def = r->def;
    bw_tuned *out = r->out;
    double low[BW_MAX_KNOBS], high[BW_MAX_KNOBS], step[BW_MAX_KNOBS], at[BW_MAX_KNOBS];
    for (int k = 0; k < out->knob_count; k++) {
        const bw_knob *knob = &out->knobs[k];
        low[k] = knob->low;
        high[k] = knob->high;
        step[k] = bw_min(knob->scale / 2, (knob->high - knob->low) / 4);
        at[k] = knob->now;
    }
    const bw_minimise problem = {.n = out->knob_count,
                                 .low = low,
                                 .high = high,
                                 .step = step,
                                 .budget = def->budget,
                                 .polish = 0.4,
                                 .population = 4 * (out->knob_count + 1),
                                 .rounds = 1,
                                 .seed = def->seed,
                                 .value = value,
                                 .stop = stop,
                                 .self = r};
    double least;
    const bw_status status = bw_minimise_run(&problem, at, &least);
    for (int k = 0; k < out->knob_count; k++)
        out->at[k] = rounded(def->scheme, &out->knobs[k], at[k]);
    return status;
}

static bw_status conclude(run *r) {
    bw_tuned *out = r->out;
    double now[BW_MAX_KNOBS];
    for (int k = 0; k < out->knob_count; k++)
        now[k] = out->knobs[k].now;
    out->aim_before = aim(r, now);
    out->pull_before = practice_pull(r, now);
    out->aim_after = aim(r, out->at);
    out->pull_after = practice_pull(r, out->at);
    out->scheme = r->candidate;
    return r->status;
}

bw_status bw_tune(const bw_tuning *def, bw_tuned *out) {
    *out = (bw_tuned){.knob_count = 0};
    out->knob_count = bw_knobs(def->scheme, def->stage, &def->limits, out->knobs);
    out->drill_count = bw_drills(def->scheme, def->stage, BW_DRILL_TRAINING, def->training,
                                 def->seed, out->drills);
    if (out->knob_count == 0 || out->drill_count == 0) return BW_BAD_INPUT;
    for (int i = 0; i < out->drill_count; i++)
        memcpy(out->drills[i].legs, def->legs, sizeof def->legs);
    run *r = calloc(1, sizeof *r);
    if (!r) return BW_NO_ROOM;
    r->def = def;
    r->out = out;
    r->status = BW_OK;
    r->errors = bw_tune_errors(def->scheme);
    r->judge = bw_judge_open(def->scheme, NULL, def->threads, def->watch.cancel);
    bw_status status = r->judge ? search(r) : BW_NO_ROOM;
    if (r->status != BW_OK) status = r->status;
    if (status == BW_OK) status = conclude(r);
    bw_judge_close(r->judge);
    free(r);
    return status;
}

static uint64_t hash_bytes(uint64_t hash, const void *bytes, size_t length) {
    const uint8_t *b = bytes;
    for (size_t i = 0; i < length; i++)
        hash = (hash ^ b[i]) * 1099511628211ull;
    return hash;
}

uint64_t bw_tuning_hash(const bw_tuning *def) {
    static char room[64 * 1024];
    bw_text text = bw_text_in(room, sizeof room);
    bw_scheme_write(def->scheme, &text);
    uint64_t hash = hash_bytes(BW_HASH_START, room, text.used);
    hash = bw_hash_u64(hash, (uint64_t)def->stage);
    const double numbers[] = {def->limits.most, def->mix, def->pull, def->spacing};
    for (int i = 0; i < BW_COUNT(numbers); i++)
        hash = bw_hash_double(hash, numbers[i]);
    hash = bw_hash_u64(hash, (uint64_t)def->budget);
    hash = bw_hash_u64(hash, (uint64_t)def->training);
    hash = bw_hash_u64(hash, def->seed);
    hash = bw_hash_u64(hash, (uint64_t)def->limits.keep_rule << 1 | def->limits.keep_homes);
    for (int s = 0; s < BW_MAX_SPOTS; s++) {
        hash = bw_hash_u64(hash, def->limits.keep[s]);
        hash = bw_hash_double(hash, def->legs[s].vmax);
        hash = bw_hash_double(hash, def->legs[s].tau);
    }
    for (int k = 0; k < BW_KNOB_KINDS; k++)
        hash = bw_hash_u64(hash, def->limits.keep_kind[k]);
    return hash;
}
