/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The judge: the same verdict on any number of threads, from one question to the next.
#include "harness.h"
#include "scheme/fresh.h"
#include "tune/judge.h"
#include <pthread.h>

enum { DRILLS = 5, STAGE = 0 };

/// Two schemes that a judge can be asked about in turn.
static bw_scheme fresh, moved;
static bw_break_def drills[BW_MAX_DRILLS];

static bw_judgement ask(bw_judge *judge, const bw_scheme *scheme) {
    static const bw_judging light = {.seconds = 3, .rollouts = 3, .look_ahead = 0, .depth = 2};
    bw_judgement verdict = {.count = 0};
    CHECK_INT(bw_judge_scheme(judge, scheme, drills, DRILLS, light, &verdict), BW_OK);
    CHECK_INT(verdict.count, DRILLS);
    return verdict;
}

static void check_same(const bw_judgement *a, const bw_judgement *b) {
    CHECK_SAME(a->typical, b->typical);
    CHECK_SAME(a->best, b->best);
    for (int i = 0; i < DRILLS; i++) {
        CHECK_SAME(a->typical_each[i], b->typical_each[i]);
        CHECK_SAME(a->best_each[i], b->best_each[i]);
    }
}

static void any_number_of_threads_judges_the_same(void) {
    bw_judgement first = {.count = 0}, second = {.count = 0};
    for (int threads = 1; threads <= 16; threads = 2 * threads + (threads == 1)) {
        bw_judge *judge = bw_judge_open(&fresh, NULL, threads, NULL);
        CHECK(judge != NULL);
        if (!judge) return;
        const bw_judgement a = ask(judge, &fresh), b = ask(judge, &moved),
                           again = ask(judge, &fresh);
        CHECK_INT(bw_judge_done(judge), 3 * DRILLS);
        check_same(&again, &a);
        if (threads == 1) {
            first = a;
            second = b;
            CHECK(first.typical != second.typical);
        }
        check_same(&a, &first);
        check_same(&b, &second);
        bw_judge_close(judge);
    }
}

static void a_judge_nobody_asks_ends(void) {
    for (int threads = 1; threads <= 16; threads += 5)
        bw_judge_close(bw_judge_open(&fresh, NULL, threads, NULL));
}

/// Somebody else ends a question that would take long.
static void *cancel_soon(void *self) {
    atomic_store((atomic_bool *)self, true);
    return NULL;
}

static void cancelling_is_met_before_and_within_a_break(void) {
    static bw_judgement verdict;
    atomic_bool cancel = true;
    bw_judge *judge = bw_judge_open(&fresh, NULL, 2, &cancel);
    bw_judging how = bw_judging_quick();
    CHECK_INT(bw_judge_scheme(judge, &fresh, drills, DRILLS, how, &verdict), BW_LIMIT);
    CHECK_INT(bw_judge_done(judge), 0);

    atomic_store(&cancel, false);
    how.rollouts = 6000;
    pthread_t somebody;
    CHECK_INT(pthread_create(&somebody, NULL, cancel_soon, &cancel), 0);
    CHECK_INT(bw_judge_scheme(judge, &fresh, drills, 1, how, &verdict), BW_LIMIT);
    CHECK_INT(bw_judge_done(judge), 0);
    pthread_join(somebody, NULL);

    // The same judge goes on when it may again.
    atomic_store(&cancel, false);
    ask(judge, &fresh);
    CHECK_INT(bw_judge_done(judge), DRILLS);
    bw_judge_close(judge);
}

int main(int argc, char **argv) {
    bw_scheme_fresh(0, 3, &fresh);
    moved = fresh;
    moved.stages[STAGE].rule.pickup *= 1.5;
    CHECK(bw_drills(&fresh, STAGE, BW_DRILL_TRAINING, DRILLS, 1, drills) == DRILLS);
    RUN(any_number_of_threads_judges_the_same);
    RUN(a_judge_nobody_asks_ends);
    RUN(cancelling_is_met_before_and_within_a_break);
    return test_report(argc, argv);
}
