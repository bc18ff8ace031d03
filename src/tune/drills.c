/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "tune/drills.h"
#include "core/level.h"
#include "trial/standard.h"

const char *bw_drill_name(bw_drill_kind kind) {
    static const char *const names[] = {"training breaks", "other attack sets", "other ball starts",
                                        "another level"};
    return (int)kind >= 0 && kind < BW_DRILL_KINDS ? names[kind] : "";
}

int bw_drill_level(int level) {
    return level + 1 < bw_level_count() ? level + 1 : level - 1;
}

/// Starts, those of the left left out where their mirror image stands in for them.
static int list_starts(const bw_scheme *scheme, int *start) {
    int count = 0;
    for (int l = 0; l < scheme->landmark_count; l++) {
        const bw_landmark *mark = &scheme->landmarks[l];
        if (mark->twin >= 0 && mark->at.x < 0) continue;
        start[count++] = l;
    }
    return count;
}

int bw_drills(const bw_scheme *scheme, int stage, bw_drill_kind kind, int most, uint64_t seed,
              bw_break_def *list) {
    const char *sets[BW_MAX_SETS + 8];
    int starts[BW_MAX_LANDMARKS], count = 0;
    const int defence = scheme->stages[stage].defenders;
    const int start_count = list_starts(scheme, starts);
    const int other_set = kind == BW_DRILL_SETS, other_start = kind == BW_DRILL_STARTS;
    if (most > BW_MAX_DRILLS) most = BW_MAX_DRILLS;
    for (int k = other_start; k < start_count; k += 2) {
        for (int extra = 1; extra <= 2; extra++) {
            const int offence = defence + extra;
            if (offence > BW_MAX_ATTACKERS) break;
            const int set_count = bw_standard_sets(scheme, offence, sets);
            for (int i = other_set; i < set_count && count < most; i += 2) {
                list[count] = bw_standard_def(scheme, offence, defence, sets[i],
                                              scheme->landmarks[starts[k]].id);
                list[count++].seed = seed;
            }
        }
    }
    return count;
}

int bw_drills_for(const bw_scheme *scheme, int stage, int offence, bw_break_def *list) {
    const char *sets[BW_MAX_SETS + 8];
    int starts[BW_MAX_LANDMARKS], count = 0;
    const int start_count = list_starts(scheme, starts);
    const int set_count = bw_standard_sets(scheme, offence, sets);
    for (int i = 0; i < set_count; i++) {
        for (int k = 0; k < start_count && count < BW_MAX_DRILLS; k++)
            list[count++] = bw_standard_def(scheme, offence, scheme->stages[stage].defenders,
                                            sets[i], scheme->landmarks[starts[k]].id);
    }
    return count;
}
