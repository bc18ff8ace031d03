/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/feedback.h"
#include "core/maths.h"

/// The mean of a figure after its cases: (weight level + sum) / (weight + cases).
static double feedback_mean(double level, double weight, double sum, int cases) {
    return (weight * level + sum) / (weight + cases);
}

static bw_feedback_figure figure(double level, double weight, double sum, int cases) {
    return (bw_feedback_figure){.cases = cases,
                                .level = level,
                                .seen = cases > 0 ? sum / cases : 0,
                                .after = feedback_mean(level, weight, sum, cases)};
}

static void passes(const bw_entry *entries, int count, const bw_level *level, double own,
                   bw_feedback *out) {
    int thrown = 0;
    double caught = 0;
    for (int i = 0; i < count; i++) {
        const bw_entry *e = &entries[i];
        if (e->passes < 0) continue;
        thrown +=
            e->passes + (e->outcome == BW_OUTCOME_FORCED || e->outcome == BW_OUTCOME_UNFORCED);
        caught += e->passes;
    }
    out->completion = figure(own, BW_FEEDBACK_PASSES, caught, thrown);
    out->level.pass_sure = bw_clamp(level->pass_sure + out->completion.after - own, 0.3, 1);
}

static void times(const bw_entry *entries, int count, const bw_level *level, double own,
                  bw_feedback *out) {
    int goals = 0;
    double seconds = 0;
    for (int i = 0; i < count; i++) {
        if (entries[i].outcome != BW_OUTCOME_GOAL || entries[i].seconds < 0) continue;
        goals++;
        seconds += entries[i].seconds;
    }
    out->goal_s = figure(own, BW_FEEDBACK_GOALS, seconds, goals);
    out->level.release = bw_clamp(level->release * out->goal_s.after / own, 0.2, 3);
}

static void shots(const bw_entry *entries, int count, const bw_level *level, double own,
                  double (*danger)(const bw_level *, void *), void *self, bw_feedback *out) {
    int taken = 0, goals = 0;
    for (int i = 0; i < count; i++) {
        taken += bw_outcome_shot(entries[i].outcome);
        goals += entries[i].outcome == BW_OUTCOME_GOAL;
    }
    out->shot = figure(own, BW_FEEDBACK_SHOTS, goals, taken);
    // Less error makes better shots: halve the interval until the worth has moved by as much.
    const double want = danger(level, self) * out->shot.after / out->shot.level;
    double low = 0.4, high = 2.5;
    for (int step = 0; step < 20; step++) {
        const double middle = (low + high) / 2;
        out->level.shot_error = level->shot_error * middle;
        if (danger(&out->level, self) > want)
            low = middle;
        else
            high = middle;
    }
    out->level.shot_error = level->shot_error * (low + high) / 2;
}

void bw_feedback_of(const bw_entry *entries, int count, const bw_level *level, bw_feedback_own own,
                    double (*danger)(const bw_level *, void *), void *self, bw_feedback *out) {
    BW_ASSERT(own.completion > 0 && own.completion < 1 && own.shot > 0 && own.shot < 1 &&
              own.goal_s > 0);
    *out = (bw_feedback){.level = *level};
    passes(entries, count, level, own.completion, out);
    shots(entries, count, level, own.shot, danger, self, out);
    times(entries, count, level, own.goal_s, out);
}
