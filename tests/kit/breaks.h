/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Breaks to test with: the starting scheme on the boys' field, and a def filled in one line.
#ifndef BW_TESTS_BREAKS_H
#define BW_TESTS_BREAKS_H

#include "core/attack_set.h"
#include "core/curve.h"
#include "core/whatif.h"
#include "scheme/fresh.h"
#include <stdlib.h>

static bw_scheme breaks_scheme;
static bw_ground breaks_ground;
static void *breaks_memory;

/// The starting scheme at a level, ready to be played on.
static inline void breaks_ready(const char *level) {
    bw_scheme_fresh(0, 3, &breaks_scheme);
    bw_ground_build(&breaks_scheme, bw_level_find(level), &breaks_ground, NULL);
    if (!breaks_memory) breaks_memory = malloc(bw_curve_size() + bw_whatif_size());
}

static inline bw_break_def breaks_def(int offence, int defence, const char *set,
                                      const char *start) {
    bw_break_def def = bw_break_default();
    def.offence = offence;
    def.defence = defence;
    def.late_from_scheme = false;
    bw_copy(def.set, sizeof def.set, set);
    bw_copy(def.start, sizeof def.start, start);
    return def;
}

static inline bw_answer breaks_best(const bw_break *b, int depth, double seconds, bool prune,
                                    bool order) {
    bw_search_def def = bw_search_default();
    def.depth = depth;
    def.seconds = seconds;
    def.prune = prune;
    def.order = order;
    def.budget = UINT64_MAX;
    bw_answer answer;
    bw_best(b, &def, breaks_memory, bw_search_size(), &answer);
    return answer;
}

static inline bw_forecast breaks_typical(const bw_break *b, int rollouts, uint64_t seed) {
    bw_typical_def def = bw_typical_default();
    def.rollouts = rollouts;
    def.seed = seed;
    bw_forecast forecast;
    bw_typical(b, &def, breaks_memory, bw_typical_size(), &forecast);
    return forecast;
}

#endif
