/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report/weak.h"

#include "trial/standard.h"
#include "trial/words.h"

/// Breaks simulated for each stage, and rotations looked into: enough to rank by, and no more than a coach
/// waits for.
enum { ROLLOUTS = 16, LOOKED_INTO = 7 };

/// Goals in one break below which a rotation is not worth a line (as in the test report).
static const double least = 0.0005;

int bw_weak_trials(const bw_scheme *scheme, uint64_t seed, bw_trial *trials) {
    const bw_break_def usual = bw_standard_break(scheme);
    int count = 0;
    for (int s = scheme->stage_count - 1; s >= 0; s--) {
        const int in = scheme->stages[s].defenders;
        if (scheme->stages[s].match_up) continue; // nothing rotates when everyone has a man
        bw_trial *trial = &trials[count++];
        trial->def = bw_standard_def(scheme, in == 3 ? 4 : 6, in, usual.set, usual.start);
        trial->def.late_count = 0; // or the unit is in the next stage before the ball arrives
        trial->def.seed = seed;
        trial->effort = bw_effort_standard();
        trial->effort.with_weak = true;
        trial->effort.weak_most = LOOKED_INTO;
        trial->effort.curve.typical.rollouts = ROLLOUTS;
        // Best play, the answer and the settled curve are not looked at.
        trial->effort.curve.with_best = false;
        trial->effort.seconds = 1;
        trial->effort.curve.search.depth = 1;
        trial->effort.curve.settled_rollouts = 1;
    }
    return count;
}

static bool same(const bw_weak *a, const bw_weak *b) {
    return a->stage == b->stage && bw_distance(a->from, b->from) == 0 &&
           bw_distance(a->to, b->to) == 0;
}

static void drop(bw_weak_list *list, int at) {
    for (int k = at + 1; k < list->count; k++)
        list->weak[k - 1] = list->weak[k];
    list->count--;
}

/// Leaves of a stage only so many, the dearest.
static void thin(bw_weak_list *list, int stage) {
    int count = 0;
    for (int i = 0; i < list->count; i++) {
        if (list->weak[i].stage == stage && ++count > BW_WEAK_EACH) drop(list, i--);
    }
}

/// Into its place by falling cost; of two alike the dearer stays.
static void insert(bw_weak_list *list, const bw_weak *weak) {
    for (int i = 0; i < list->count; i++) {
        if (!same(&list->weak[i], weak)) continue;
        if (list->weak[i].cost >= weak->cost) return;
        drop(list, i);
    }
    BW_ASSERT(list->count < BW_WEAK_LIST);
    int at = list->count++;
    for (; at > 0 && list->weak[at - 1].cost < weak->cost; at--)
        list->weak[at] = list->weak[at - 1];
    list->weak[at] = *weak;
    thin(list, weak->stage);
}

void bw_weak_take(const bw_ground *ground, const bw_trial *trial, bw_weak_list *list) {
    if (trial->status != BW_OK) return;
    for (int i = 0; i < trial->whatif.count; i++) {
        const bw_rotation *r = &trial->whatif.weak[i];
        const int stage = bw_scheme_stage(ground->scheme, r->stage);
        if (r->matched || stage < 0 || r->cost < least) continue;
        bw_weak weak = {.stage = stage,
                        .from = ground->places[r->from].at,
                        .to = ground->places[r->to].at,
                        .from_at = ground->places[r->from].landmark,
                        .to_at = ground->places[r->to].landmark,
                        .cost = r->cost};
        bw_text t = bw_text_in(weak.from_name, sizeof weak.from_name);
        bw_say_node(ground, r->from, &t);
        t = bw_text_in(weak.to_name, sizeof weak.to_name);
        bw_say_node(ground, r->to, &t);
        for (int k = 0; k < r->behind_count && weak.men < BW_WEAK_MEN; k++) {
            const bw_behind *man = &r->behind[k];
            if (!bw_is_late(man->seconds, man->metres)) continue;
            weak.man[weak.men++] = (bw_weak_man){man->spot, man->seconds, man->metres};
        }
        insert(list, &weak);
    }
}
