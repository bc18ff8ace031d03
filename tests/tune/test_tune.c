/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The tuning: the same whatever the threads, gone on with as if never broken off, within what the coach
/// allows, and not fooled.
#include "core/maths.h"
#include "harness.h"
#include "scheme/fresh.h"
#include "tune/evidence.h"
#include "tune/sense.h"
#include "tune/tune.h"
#include <stdlib.h>

#define YD BW_METRES_PER_YARD

static bw_scheme scheme;

enum { TRIES = 24, MOST = 200 };

typedef struct log {
    double values[MOST];
    int count, cancel_at; ///< 0: never
    int steps, cancel_at_step;
    atomic_bool cancel;
} log_of;

static void record(void *self, double value) {
    log_of *l = self;
    if (l->count < MOST) l->values[l->count++] = value;
    if (l->count == l->cancel_at) atomic_store(&l->cancel, true);
}

static void count_step(void *self, int done, int of) {
    log_of *l = self;
    CHECK(done >= 1 && done <= of);
    l->steps++;
    if (l->steps == l->cancel_at_step) atomic_store(&l->cancel, true);
}

static void follow(bw_tuning *def, log_of *l) {
    def->recorder = l;
    def->watch = (bw_watcher){count_step, l, &l->cancel};
}

/// A small tuning: one attack set's worth of breaks, few candidates.
static bw_tuning small(log_of *l) {
    bw_scheme_fresh(0, 3, &scheme);
    bw_tuning def = bw_tuning_default(&scheme, 0);
    def.budget = TRIES;
    def.training = 2;
    def.record = record;
    follow(&def, l);
    return def;
}

static void check_same(const bw_tuned *a, const bw_tuned *b) {
    CHECK_INT(a->knob_count, b->knob_count);
    for (int k = 0; k < a->knob_count; k++)
        CHECK_SAME(a->at[k], b->at[k]);
    CHECK_SAME(a->aim_after, b->aim_after);
}

static void same_on_any_number_of_threads(void) {
    static bw_tuned one, three, other;
    log_of l = {.count = 0};
    bw_tuning def = small(&l);
    def.threads = 1;
    CHECK_INT(bw_tune(&def, &one), BW_OK);
    def.threads = 3;
    CHECK_INT(bw_tune(&def, &three), BW_OK);
    check_same(&one, &three);
    CHECK_INT(one.tried, TRIES);
    def.seed = 2;
    CHECK_INT(bw_tune(&def, &other), BW_OK);
    bool differs = false;
    for (int k = 0; k < one.knob_count; k++)
        differs |= one.at[k] != other.at[k];
    CHECK(differs);
}

static void goes_on_as_if_never_broken_off(void) {
    static bw_tuned whole, part, again;
    log_of l = {.count = 0};
    bw_tuning def = small(&l);
    CHECK_INT(bw_tune(&def, &whole), BW_OK);
    log_of broken = {.cancel_at = 9};
    follow(&def, &broken);
    CHECK_INT(bw_tune(&def, &part), BW_LIMIT);
    CHECK_INT(part.tried, 9);
    CHECK_INT(broken.count, 9);
    def.known = broken.values;
    def.known_count = broken.count;
    log_of rest = {.count = 0};
    follow(&def, &rest);
    CHECK_INT(bw_tune(&def, &again), BW_OK);
    check_same(&whole, &again);
    CHECK_INT(rest.count, TRIES - 9);
}

static void keeps_within_what_is_allowed(void) {
    static bw_tuned out;
    log_of l = {.count = 0};
    bw_tuning def = small(&l);
    def.limits.most = 0.5 * YD;
    def.limits.keep_rule = true;
    CHECK_INT(bw_tune(&def, &out), BW_OK);
    CHECK(out.aim_after + out.pull_after <= out.aim_before + out.pull_before + 0.01);
    const bw_stage *before = &scheme.stages[0], *after = &out.scheme.stages[0];
    CHECK_SAME(after->rule.pickup, before->rule.pickup);
    for (int s = 0; s < before->defenders; s++) {
        const bw_vec a = after->spots[s].home, b = before->spots[s].home;
        // Half a yard, and what rounding to a tenth may add.
        CHECK(bw_abs(a.x - b.x) <= 0.551 * YD && bw_abs(a.y - b.y) <= 0.551 * YD);
        const double tenths = a.y / YD * 10;
        CHECK_NEAR(tenths, bw_floor(tenths + 0.5), 1e-6);
    }
    CHECK(bw_tune_errors(&out.scheme) <= bw_tune_errors(&scheme));
    // Other stages and everything else are not touched.
    CHECK_SAME(out.scheme.stages[1].spots[0].home.x, scheme.stages[1].spots[0].home.x);
}

static void refuses_what_cannot_be_tuned(void) {
    static bw_tuned out;
    log_of l = {.count = 0};
    bw_tuning def = small(&l);
    def.limits.keep_homes = def.limits.keep_rule = true;
    CHECK_INT(bw_tune(&def, &out), BW_BAD_INPUT);
    def = small(&l);
    def.stage = 3; // six: even numbers
    CHECK_INT(bw_tune(&def, &out), BW_BAD_INPUT);
}

/// A scheme against itself gains nothing, whatever the seed.
static void nothing_gained_by_nothing(void) {
    log_of l = {.count = 0};
    bw_tuning def = small(&l);
    static bw_evidence e;
    CHECK_INT(bw_evidence_collect(&def, &scheme, 1, 2, &e), BW_OK);
    for (int kind = 0; kind < BW_DRILL_KINDS; kind++) {
        CHECK_INT(e.drills[kind], 2);
        CHECK_SAME(e.typical[kind].gain, 0);
        CHECK_SAME(e.best[kind].gain, 0);
        CHECK_SAME(e.typical[kind].error, 0);
        CHECK(!bw_gain_is_real(&e.typical[kind]));
        CHECK(e.typical[kind].before > 0 && e.typical[kind].before < 1);
    }
}

/// Held-out breaks are none of the training ones.
static void held_out_is_held_out(void) {
    bw_scheme_fresh(0, 3, &scheme);
    for (int stage = 0; stage < 3; stage++) {
        bw_break_def train[BW_MAX_DRILLS], held[BW_MAX_DRILLS];
        const int n = bw_drills(&scheme, stage, BW_DRILL_TRAINING, BW_MAX_DRILLS, 1, train);
        CHECK(n > 0);
        for (int kind = BW_DRILL_SETS; kind <= BW_DRILL_STARTS; kind++) {
            const int m = bw_drills(&scheme, stage, (bw_drill_kind)kind, BW_MAX_DRILLS, 1, held);
            CHECK(m > 0);
            for (int i = 0; i < n * m; i++) {
                const bw_break_def *a = &train[i / m], *b = &held[i % m];
                CHECK(!(bw_same(a->set, b->set) && bw_same(a->start, b->start)));
            }
        }
    }
}

/// The map costs nothing at its middle's very place, which is left out, and is there where men may stand.
static void maps_what_a_yard_costs(void) {
    log_of l = {.count = 0};
    bw_tuning def = small(&l);
    def.training = 1;
    static bw_sense sense;
    CHECK_INT(bw_sense_map_all(&def, &scheme, &sense), BW_OK);
    CHECK_INT(sense.map_count, 2);
    CHECK_INT(sense.scale_count, 7);
    for (int i = 0; i < sense.map_count; i++)
        CHECK_SAME(sense.maps[i].cost[BW_SENSE_STEPS][BW_SENSE_STEPS], 0);
    for (int i = 0; i < sense.scale_count; i++) {
        CHECK(sense.scales[i].there[BW_SENSE_STEPS]);
        CHECK_SAME(sense.scales[i].cost[BW_SENSE_STEPS], 0);
    }
}

/// Cancelled before it began, nothing is tried and nothing recorded; cancelled at a step of what follows the
/// search, no further step is made.
static void cancelling_ends_every_part(void) {
    static bw_tuned out;
    static bw_evidence evidence;
    static bw_sense sense;
    log_of l = {.cancel = true};
    bw_tuning def = small(&l);
    CHECK_INT(bw_tune(&def, &out), BW_LIMIT);
    CHECK_INT(out.tried, 0);
    CHECK_INT(l.count, 0);
    CHECK_INT(bw_evidence_collect(&def, &scheme, 1, 2, &evidence), BW_LIMIT);
    CHECK_INT(bw_sense_map_all(&def, &scheme, &sense), BW_LIMIT);
    CHECK_INT(l.steps, 0);
    log_of first = {.cancel_at_step = 1};
    follow(&def, &first);
    CHECK_INT(bw_evidence_collect(&def, &scheme, 2, 2, &evidence), BW_LIMIT);
    CHECK_INT(first.steps, 1);
    log_of third = {.cancel_at_step = 3};
    follow(&def, &third);
    CHECK_INT(bw_sense_map_all(&def, &scheme, &sense), BW_LIMIT);
    CHECK_INT(third.steps, 3);
}

int main(int argc, char **argv) {
    RUN(same_on_any_number_of_threads);
    RUN(goes_on_as_if_never_broken_off);
    RUN(keeps_within_what_is_allowed);
    RUN(refuses_what_cannot_be_tuned);
    RUN(nothing_gained_by_nothing);
    RUN(held_out_is_held_out);
    RUN(maps_what_a_yard_costs);
    RUN(cancelling_ends_every_part);
    return test_report(argc, argv);
}
