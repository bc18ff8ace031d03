/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "tune/evidence.h"
#include "core/maths.h"
#include <stdlib.h>
#include <string.h>

typedef struct tally {
    double before, after, sum, squares;
    double low, high;
    int count;
} tally;

typedef struct collecting {
    const bw_tuning *def;
    const bw_scheme *after;
    bw_evidence *out;
    bw_judgement a, b;
    bw_break_def drills[BW_MAX_DRILLS];
    int done, of;
} collecting;

static void count_seed(tally *t, const double *before, const double *after, int count, int seed) {
    double gain = 0;
    for (int i = 0; i < count; i++) {
        const double d = before[i] - after[i];
        t->before += before[i];
        t->after += after[i];
        t->sum += d;
        t->squares += d * d;
        gain += d / count;
    }
    t->count += count;
    t->low = seed == 0 ? gain : bw_min(t->low, gain);
    t->high = seed == 0 ? gain : bw_max(t->high, gain);
}

/// `apart`: cases that say something of their own. Roll-outs of one break with other seeds are not
/// other breaks, so the error is that of so many breaks, not of all plays of them.
static bw_gain gain_of(const tally *t, int apart) {
    bw_gain g = {t->before / t->count, t->after / t->count, t->sum / t->count, t->low, t->high, 0};
    const double variance = t->squares / t->count - g.gain * g.gain;
    if (apart > 1) g.error = bw_sqrt(bw_max(variance, 0) / (apart - 1));
    return g;
}

static bw_status collect_kind(collecting *c, bw_drill_kind kind, bw_judge *judge, int most) {
    tally typical = {.count = 0}, best = {.count = 0};
    int count = 0;
    for (int seed = 0; seed < c->out->seeds; seed++) {
        count = bw_drills(c->def->scheme, c->def->stage, kind, most,
                          c->def->seed + 1000 * (uint64_t)(seed + 1), c->drills);
        if (count == 0) return BW_OK;
        for (int i = 0; i < count; i++)
            memcpy(c->drills[i].legs, c->def->legs, sizeof c->def->legs);
        bw_status status =
            bw_judge_scheme(judge, c->def->scheme, c->drills, count, bw_judging_full(), &c->a);
        if (status == BW_OK)
            status = bw_judge_scheme(judge, c->after, c->drills, count, bw_judging_full(), &c->b);
        if (status != BW_OK) return status;
        count_seed(&typical, c->a.typical_each, c->b.typical_each, count, seed);
        count_seed(&best, c->a.best_each, c->b.best_each, count, seed);
        bw_tell(&c->def->watch, ++c->done, c->of);
    }
    c->out->drills[kind] = count;
    c->out->typical[kind] = gain_of(&typical, count);
    c->out->best[kind] = gain_of(&best, count);
    return BW_OK;
}

bw_status bw_evidence_collect(const bw_tuning *def, const bw_scheme *after, int seeds, int most,
                              bw_evidence *out) {
    BW_ASSERT(seeds >= 1 && seeds <= BW_EVIDENCE_SEEDS);
    *out = (bw_evidence){.seeds = seeds, .level = bw_drill_level(def->scheme->level)};
    collecting *c = calloc(1, sizeof *c);
    if (!c) return BW_NO_ROOM;
    c->def = def;
    c->after = after;
    c->out = out;
    c->of = seeds * BW_DRILL_KINDS;
    bw_status status = BW_OK;
    for (int kind = 0; kind < BW_DRILL_KINDS && status == BW_OK; kind++) {
        const bw_level *level = kind == BW_DRILL_LEVEL ? bw_level_at(out->level) : NULL;
        bw_judge *judge = bw_judge_open(def->scheme, level, def->threads, def->watch.cancel);
        status = judge ? collect_kind(c, (bw_drill_kind)kind, judge, most) : BW_NO_ROOM;
        bw_judge_close(judge);
    }
    free(c);
    return status;
}

bool bw_gain_is_real(const bw_gain *gain) {
    return gain->gain > 2 * gain->error && gain->low > 0;
}
