/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "trial/weak_rotations.h"

#include "trial/standard.h"
#include "trial/words.h"

/// Of one break: times it is simulated, and rotations looked into. Enough to rank by, and no more than a
/// coach waits for.
enum { ROLLOUTS = 16, LOOKED_INTO = 4 };

/// Goals in one break below which a rotation is not worth a line.
static const double least = 0.0005;

/// So many of one break's a report shows.
enum { SHOWN = 5 };

int bw_weak_shown(const bw_trial *trial) {
    const bw_whatif *w = &trial->whatif;
    int count = 0;
    while (count < SHOWN && count < w->count && w->weak[count].cost >= least)
        count++;
    return count;
}

/// A break of a stage, for its rotations alone.
static bw_trial *add_break(const bw_scheme *scheme, int defence, const char *set, const char *start,
                           bw_trial *trial) {
    trial->def = bw_standard_def(scheme, defence == 3 ? 4 : 6, defence, set, start);
    trial->def.late_count = 0; // or the unit is in the next stage before the ball arrives
    trial->effort = bw_effort_standard();
    trial->effort.with_weak = true;
    trial->effort.weak_most = LOOKED_INTO;
    trial->effort.curve.typical.rollouts = ROLLOUTS;
    // Best play, the answer and the settled curve are not looked at.
    trial->effort.curve.with_best = false;
    trial->effort.seconds = 1;
    trial->effort.curve.search.depth = 1;
    trial->effort.curve.settled_rollouts = 1;
    return trial;
}

int bw_weak_trials(const bw_scheme *scheme, uint64_t seed, bw_trial *trials) {
    const bw_break_def usual = bw_standard_break(scheme);
    const char *const starts[] = {usual.start, bw_standard_behind(scheme)};
    const int several = bw_same(starts[0], starts[1]) ? 1 : BW_COUNT(starts);
    int count = 0;
    for (int s = scheme->stage_count - 1; s >= 0; s--) {
        if (scheme->stages[s].match_up) continue; // nothing rotates when everyone has a man
        for (int k = 0; k < several; k++)
            add_break(scheme, scheme->stages[s].defenders, usual.set, starts[k], &trials[count++])
                ->def.seed = seed;
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
