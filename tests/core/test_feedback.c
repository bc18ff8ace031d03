/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A level moved by a log: nothing seen, nothing moved; more seen, more moved; always between the two.
#include "core/feedback.h"
#include "harness.h"

/// Stands for the shot table: more exact shots go in more often.
static double danger(const bw_level *level, void *self) {
    (void)self;
    return 0.5 / (1 + 200 * level->shot_error);
}

static const bw_feedback_own own = {.completion = 0.9, .shot = 0.3, .goal_s = 4};

static bw_entry entry(bw_outcome outcome, int passes, double seconds) {
    bw_entry e = bw_entry_default();
    e.outcome = outcome;
    e.passes = passes;
    e.seconds = seconds;
    return e;
}

static void nothing_seen_nothing_moved(void) {
    const bw_level *level = bw_level_find("high-school");
    bw_feedback f;
    bw_feedback_of(NULL, 0, level, own, danger, NULL, &f);
    CHECK_SAME(f.completion.after, own.completion);
    CHECK_SAME(f.shot.after, own.shot);
    CHECK_SAME(f.goal_s.after, own.goal_s);
    CHECK_NEAR(f.level.pass_sure, level->pass_sure, 1e-12);
    CHECK_NEAR(f.level.release, level->release, 1e-12);
    CHECK_NEAR(f.level.shot_error, level->shot_error, 1e-5);
}

static void between_the_level_and_what_was_seen(void) {
    const bw_level *level = bw_level_find("college");
    bw_entry log[300];
    double before = own.shot;
    for (int n = 20; n <= 300; n += 40) {
        for (int i = 0; i < n; i++)
            log[i] = i % 2 ? entry(BW_OUTCOME_GOAL, 2, 7) : entry(BW_OUTCOME_SAVE, 1, 6);
        bw_feedback f;
        bw_feedback_of(log, n, level, own, danger, NULL, &f);
        CHECK_INT(f.shot.cases, n);
        CHECK_NEAR(f.shot.seen, 0.5, 1e-12);
        CHECK(f.shot.after > before && f.shot.after < 0.5);
        before = f.shot.after;
        CHECK(f.level.shot_error < level->shot_error);
        CHECK_NEAR(danger(&f.level, NULL) / danger(level, NULL), f.shot.after / own.shot, 1e-3);
        CHECK(f.goal_s.after > 4 && f.goal_s.after < 7 && f.level.release > level->release);
        CHECK(f.completion.after > own.completion && f.level.pass_sure >= level->pass_sure);
    }
}

/// 60 passes of the level and 30 seen, 24 of them caught: (60 x .9 + 24) / 90.
static void passes_are_counted(void) {
    const bw_level *level = bw_level_find("high-school");
    bw_entry log[12];
    for (int i = 0; i < 12; i++)
        log[i] = entry(i < 6 ? BW_OUTCOME_FORCED : BW_OUTCOME_SAVE, 2, -1);
    bw_feedback f;
    bw_feedback_of(log, 12, level, own, danger, NULL, &f);
    CHECK_INT(f.completion.cases, 30);
    CHECK_NEAR(f.completion.after, (60 * 0.9 + 24) / 90, 1e-12);
    log[0].passes = -1; // not noted: left out
    bw_feedback_of(log, 12, level, own, danger, NULL, &f);
    CHECK_INT(f.completion.cases, 27);
    CHECK_INT(f.goal_s.cases, 0);
}

static void the_time_to_a_goal_is_learnt_from_goals_alone(void) {
    const bw_level *level = bw_level_find("high-school");
    bw_entry log[30];
    for (int i = 0; i < 30; i++)
        log[i] = entry(i < 20 ? BW_OUTCOME_SAVE : BW_OUTCOME_GOAL, -1, i < 20 ? 2 : 7);
    log[29].seconds = -1; // not noted: left out
    bw_feedback f;
    bw_feedback_of(log, 30, level, own, danger, NULL, &f);
    CHECK_INT(f.goal_s.cases, 9);
    CHECK_NEAR(f.goal_s.seen, 7, 1e-12);
    CHECK(f.goal_s.after > own.goal_s && f.level.release > level->release);
}

int main(int argc, char **argv) {
    RUN(nothing_seen_nothing_moved);
    RUN(between_the_level_and_what_was_seen);
    RUN(passes_are_counted);
    RUN(the_time_to_a_goal_is_learnt_from_goals_alone);
    return test_report(argc, argv);
}
