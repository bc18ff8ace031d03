/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Breaks on many threads: the same results for any number of them, refusals kept apart, cancelling,
/// progress, and the standard set itself.
#include "harness.h"
#include "report/battery.h"
#include "scheme/fresh.h"
#include "trial/ranking.h"
#include "trial/standard.h"
#include <stdlib.h>
#include <string.h>

enum { TRIALS = 7 };

static bw_scheme scheme;
static bw_ground ground;

static bw_effort light(void) {
    bw_effort effort = bw_effort_default();
    effort.seconds = 3;
    effort.curve.search.depth = 2;
    effort.curve.typical.rollouts = 3;
    return effort;
}

/// Small breaks of different weight; number 3 is one that cannot be played.
static void fill(bw_trial *trials) {
    static const char *const sets[] = {"2-2-2", "1-4-1", "spread", "no-set",
                                       "3-3",   "1-3-2", "2-3-1"};
    memset(trials, 0, TRIALS * sizeof *trials);
    for (int i = 0; i < TRIALS; i++) {
        trials[i].def = bw_standard_def(&scheme, 4, 3, sets[i], i % 2 ? "x" : "top");
        trials[i].effort = light();
        trials[i].effort.with_weak = i == 0;
    }
}

static bool same_results(const bw_trial *a, const bw_trial *b) {
    if (a->status != b->status || strcmp(a->why, b->why) != 0) return false;
    if (a->status != BW_OK) return true;
    const bw_curve *c = &a->curve, *d = &b->curve;
    return memcmp(c->best, d->best, sizeof c->best) == 0 &&
           memcmp(c->typical, d->typical, sizeof c->typical) == 0 &&
           memcmp(c->settled, d->settled, sizeof c->settled) == 0 &&
           memcmp(c->late_s, d->late_s, sizeof c->late_s) == 0 && c->bought_s == d->bought_s &&
           c->answer.worth == d->answer.worth && c->answer.count == d->answer.count &&
           a->whatif.count == b->whatif.count &&
           (a->whatif.count == 0 || a->whatif.weak[0].cost == b->whatif.weak[0].cost);
}

static void any_number_of_threads_says_the_same(void) {
    static bw_trial one[TRIALS], many[TRIALS];
    fill(one);
    bw_battery battery = {.ground = &ground, .trials = one, .count = TRIALS, .threads = 1};
    CHECK_INT(bw_battery_run(&battery), BW_OK);
    for (int threads = 2; threads <= 9; threads += 7) {
        fill(many);
        battery.trials = many;
        battery.threads = threads;
        CHECK_INT(bw_battery_run(&battery), BW_OK);
        for (int i = 0; i < TRIALS; i++)
            CHECK(same_results(&one[i], &many[i]));
    }
    CHECK(one[0].curve.best[3] > 0);
    CHECK(one[0].curve.typical[10] > 0);
}

static void a_refused_break_does_not_stop_the_rest(void) {
    static bw_trial trials[TRIALS];
    fill(trials);
    bw_battery battery = {.ground = &ground, .trials = trials, .count = TRIALS};
    CHECK_INT(bw_battery_run(&battery), BW_OK);
    for (int i = 0; i < TRIALS; i++)
        CHECK_INT(trials[i].status, i == 3 ? BW_NOT_FOUND : BW_OK);
    CHECK(strstr(trials[3].why, "no-set") != NULL);
    bw_ranking ranking;
    bw_ranking_build(trials, TRIALS, &ranking);
    CHECK_INT(ranking.rows, TRIALS - 1);
    CHECK_INT(ranking.columns, 2);
    for (int r = 1; r < ranking.rows; r++)
        CHECK(ranking.row[r].worst <= ranking.row[r - 1].worst);
}

typedef struct seen {
    int calls, last;
    bool wrong;
    atomic_bool *cancel;
} seen;

static void watch(void *self, int done, int count) {
    seen *s = self;
    s->wrong |= count != TRIALS || done <= s->last || done > count;
    s->last = done;
    s->calls++;
    if (s->cancel) atomic_store(s->cancel, true);
}

static void progress_counts_up_to_all(void) {
    static bw_trial trials[TRIALS];
    fill(trials);
    seen s = {0};
    bw_battery battery = {
        .ground = &ground, .trials = trials, .count = TRIALS, .watch = {watch, &s, NULL}};
    CHECK_INT(bw_battery_run(&battery), BW_OK);
    CHECK_INT(s.last, TRIALS);
    CHECK(!s.wrong);
}

static void cancelling_ends_it(void) {
    static bw_trial trials[TRIALS];
    atomic_bool cancel = true;
    fill(trials);
    bw_battery battery = {
        .ground = &ground, .trials = trials, .count = TRIALS, .watch = {NULL, NULL, &cancel}};
    CHECK_INT(bw_battery_run(&battery), BW_LIMIT);
    for (int i = 0; i < TRIALS; i++)
        CHECK_INT(trials[i].status, BW_LIMIT);

    fill(trials);
    atomic_store(&cancel, false);
    seen s = {.cancel = &cancel};
    battery.threads = 1;
    battery.watch = (bw_watcher){watch, &s, &cancel};
    CHECK_INT(bw_battery_run(&battery), BW_LIMIT);
    CHECK(s.calls >= 1);
}

static void memory_stays_below_64_mb(void) {
    CHECK(BW_BATTERY_BYTES + (BW_STANDARD_MAX + 1) * sizeof(bw_trial) + sizeof(bw_ground) <
          ((size_t)64 << 20));
    CHECK(bw_trial_size() < BW_BATTERY_BYTES);
}

static void the_standard_set_covers_stages_sets_and_starts(void) {
    static bw_break_def list[BW_STANDARD_MAX];
    const int count = bw_standard_set(&scheme, list);
    CHECK_INT(count, 4 * 6 * 3);
    int pairs[7][7] = {{0}};
    for (int i = 0; i < count; i++) {
        static bw_break b;
        CHECK_INT(bw_break_begin(&ground, &list[i], &b, NULL), BW_OK);
        CHECK_INT(b.defenders, b.attackers);
        pairs[list[i].offence][list[i].defence]++;
        for (int k = 0; k < i; k++)
            CHECK(list[i].offence != list[k].offence || list[i].defence != list[k].defence ||
                  strcmp(list[i].set, list[k].set) != 0 ||
                  strcmp(list[i].start, list[k].start) != 0);
    }
    CHECK_INT(pairs[6][4], 18);
    CHECK_INT(pairs[6][5], 18);
    CHECK_INT(pairs[5][4], 18);
    CHECK_INT(pairs[4][3], 18);
}

static void sides_that_differ_are_both_tested(void) {
    static bw_scheme other;
    static bw_break_def list[BW_STANDARD_MAX];
    other = scheme;
    other.stages[1].spots[0].home.x -= 1;
    CHECK_INT(bw_standard_set(&other, list), 4 * 6 * 4);
    static bw_scheme image;
    bw_scheme_mirror(&scheme, &image);
    CHECK_INT(bw_standard_set(&image, list), 4 * 6 * 3);
}

static void a_short_scheme_is_tested_as_far_as_it_goes(void) {
    static bw_scheme other;
    static bw_break_def list[BW_STANDARD_MAX];
    for (int i = 0; i < scheme.stage_count; i++) {
        other = scheme;
        CHECK_INT(bw_scheme_only(&other, scheme.stages[i].shape), BW_OK);
        static bw_ground own;
        CHECK_INT(bw_ground_build(&other, NULL, &own, NULL), BW_OK);
        bw_break_def def = bw_standard_break(&other);
        static bw_break b;
        CHECK_INT(bw_break_begin(&own, &def, &b, NULL), BW_OK);
        CHECK_INT(def.defence, scheme.stages[i].defenders);
        const int count = bw_standard_set(&other, list);
        for (int k = 0; k < count; k++)
            CHECK_INT(bw_break_begin(&own, &list[k], &b, NULL), BW_OK);
    }
}

int main(int argc, char **argv) {
    bw_scheme_fresh(0, 3, &scheme);
    bw_ground_build(&scheme, NULL, &ground, NULL);
    RUN(any_number_of_threads_says_the_same);
    RUN(a_refused_break_does_not_stop_the_rest);
    RUN(progress_counts_up_to_all);
    RUN(cancelling_ends_it);
    RUN(memory_stays_below_64_mb);
    RUN(the_standard_set_covers_stages_sets_and_starts);
    RUN(sides_that_differ_are_both_tested);
    RUN(a_short_scheme_is_tested_as_far_as_it_goes);
    return test_report(argc, argv);
}
