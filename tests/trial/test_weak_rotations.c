/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The list of weak rotations: by falling cost, none twice, a few of each stage, whatever comes in.
#include "harness.h"
#include "scheme/fresh.h"
#include "trial/weak_rotations.h"

enum { ROUNDS = 40 };

static bw_scheme scheme;
static bw_ground ground;
static bw_trial trial;

/// A trial as if the model had found these rotations.
static void make_trial(unsigned long long *state) {
    trial.status = BW_OK;
    trial.whatif.count = BW_WEAK_MAX;
    for (int i = 0; i < BW_WEAK_MAX; i++) {
        bw_rotation *r = &trial.whatif.weak[i];
        *r = (bw_rotation){.from = 0};
        r->from = (int)test_uniform(state, 0, 4);
        r->to = 4 + (int)test_uniform(state, 0, 4);
        r->stage = 3 + (int)test_uniform(state, 0, 4);
        r->cost = test_uniform(state, -0.01, 0.2);
        r->matched = test_uniform(state, 0, 1) < 0.2;
        r->behind_count = (int)test_uniform(state, 0, 4);
        for (int k = 0; k < r->behind_count; k++) {
            r->behind[k].spot = k;
            r->behind[k].seconds = test_uniform(state, 0, 2);
            r->behind[k].metres = test_uniform(state, 0, 8);
        }
    }
}

static void it_stays_in_order_and_within_its_room(void) {
    unsigned long long state = 99;
    static bw_weak_list list;
    for (int round = 0; round < ROUNDS; round++) {
        if (round % 10 == 0) list = (bw_weak_list){0};
        make_trial(&state);
        bw_weak_take(&ground, &trial, &list);
        int of_stage[BW_MAX_STAGES] = {0};
        for (int i = 0; i < list.count; i++) {
            const bw_weak *w = &list.weak[i];
            CHECK(w->cost > 0 && w->men <= BW_WEAK_MEN);
            CHECK(i == 0 || list.weak[i - 1].cost >= w->cost);
            CHECK(++of_stage[w->stage] <= BW_WEAK_EACH);
            for (int k = 0; k < w->men; k++)
                CHECK(bw_is_late(w->man[k].seconds, w->man[k].metres));
            for (int k = 0; k < i; k++)
                CHECK(list.weak[k].stage != w->stage || list.weak[k].from_at != w->from_at ||
                      list.weak[k].to_at != w->to_at);
        }
    }
    CHECK(list.count > BW_WEAK_EACH);
    // The dearest of all that came in is first.
    make_trial(&state);
    trial.whatif.weak[3].cost = 0.9;
    trial.whatif.weak[3].matched = false;
    bw_weak_take(&ground, &trial, &list);
    CHECK_SAME(list.weak[0].cost, 0.9);
    trial.status = BW_LIMIT;
    trial.whatif.weak[3].cost = 1;
    bw_weak_take(&ground, &trial, &list);
    CHECK_SAME(list.weak[0].cost, 0.9); // a trial without a result says nothing
}

/// Takes in one rotation, the same each time, at a cost.
static void take_at(double cost, bw_weak_list *list) {
    trial = (bw_trial){.status = BW_OK};
    trial.whatif.count = 1;
    trial.whatif.weak[0] = (bw_rotation){.from = 0, .to = 4, .stage = 4, .cost = cost};
    bw_weak_take(&ground, &trial, list);
}

static void of_two_alike_the_dearer_stays(void) {
    static bw_weak_list list;
    const double costs[][3] = {
        {0.02, 0.05, 0.03}, {0.05, 0.03, 0.02}, {0.02, 0.03, 0.05}, {0.05, 0.05, 0.05}};
    for (int order = 0; order < 4; order++) {
        list = (bw_weak_list){0};
        for (int k = 0; k < 3; k++)
            take_at(costs[order][k], &list);
        CHECK_INT(list.count, 1);
        CHECK_SAME(list.weak[0].cost, 0.05);
    }
}

static void every_stage_that_rotates_is_tried(void) {
    static bw_trial trials[BW_WEAK_TRIALS];
    int rotating = 0;
    for (int s = 0; s < scheme.stage_count; s++)
        rotating += !scheme.stages[s].match_up;
    const int count = bw_weak_trials(&scheme, 5, trials);
    CHECK_INT(count, 2 * rotating);
    int looked_into[BW_MAX_SPOTS + 1] = {0};
    for (int i = 0; i < count; i++) {
        CHECK(bw_scheme_stage(&scheme, trials[i].def.defence) >= 0);
        CHECK(trials[i].def.offence > trials[i].def.defence || trials[i].def.defence == 6);
        CHECK_INT(trials[i].def.late_count, 0);
        looked_into[trials[i].def.defence] += trials[i].effort.weak_most;
        CHECK(i % 2 == 0 || !bw_same(trials[i].def.start, trials[i - 1].def.start));
        CHECK(trials[i].effort.with_weak && !trials[i].effort.curve.with_best);
    }
    for (int i = 0; i < count; i++)
        CHECK(looked_into[trials[i].def.defence] >= BW_WEAK_EACH);
}

int main(int argc, char **argv) {
    bw_scheme_fresh(0, 3, &scheme);
    CHECK_INT(bw_ground_build(&scheme, NULL, &ground, NULL), BW_OK);
    RUN(it_stays_in_order_and_within_its_room);
    RUN(of_two_alike_the_dearer_stays);
    RUN(every_stage_that_rotates_is_tried);
    return test_report(argc, argv);
}
