/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The built-in sets. Common practice, no source; yards in the table, metres outside.
#include "core/attack_set.h"
#include "core/text.h"

#define YD(a, b)                                                                                   \
    { (a) * BW_METRES_PER_YARD, (b)*BW_METRES_PER_YARD }

static const bw_attack_set sets[] = {
    {"2-2-2",
     "two top, two inside, two low",
     6,
     {YD(-7, 14), YD(7, 14), YD(-9, 2), YD(9, 2), YD(-3, 7), YD(3, 7)}},
    {"1-4-1",
     "one top, four across, one behind",
     6,
     {YD(0, 15), YD(-10, 9), YD(10, 9), YD(0, -4), YD(-3.5, 7), YD(3.5, 7)}},
    {"2-3-1",
     "two top, two wings and the crease, one behind",
     6,
     {YD(-7, 14), YD(7, 14), YD(0, 6), YD(0, -4), YD(-10, 8), YD(10, 8)}},
    {"3-3",
     "three top, three low",
     6,
     {YD(0, 15), YD(-9, 3), YD(9, 3), YD(0, 6), YD(-9, 12), YD(9, 12)}},
    {"1-3-2",
     "one top, two wings and the crease, two behind",
     6,
     {YD(0, 15), YD(-10, 9), YD(10, 9), YD(0, 6), YD(-6, -3), YD(6, -3)}},
    {"spread",
     "three top, two low wings, one behind",
     6,
     {YD(0, 15), YD(-10, 4), YD(10, 4), YD(0, -4), YD(-9, 14), YD(9, 14)}},
};

int bw_attack_set_count(void) {
    return BW_COUNT(sets);
}

const bw_attack_set *bw_attack_set_at(int index) {
    BW_ASSERT(index >= 0 && index < BW_COUNT(sets));
    return &sets[index];
}

const bw_attack_set *bw_attack_set_find(const char *id) {
    for (int i = 0; i < BW_COUNT(sets); i++) {
        if (bw_same(sets[i].id, id)) return &sets[i];
    }
    return NULL;
}

/// The places of a set and how many they are; NULL when there is no such set.
static const bw_vec *find(const bw_scheme *scheme, const char *id, int *count) {
    for (int i = 0; i < scheme->set_count; i++) {
        if (!bw_same(scheme->sets[i].id, id)) continue;
        *count = scheme->sets[i].count;
        return scheme->sets[i].at;
    }
    const bw_attack_set *set = bw_attack_set_find(id);
    *count = set ? set->count : 0;
    return set ? set->at : NULL;
}

int bw_attack_set_men(const bw_scheme *scheme, const char *id) {
    int count;
    find(scheme, id, &count);
    return count;
}

bw_status bw_attack_set_place(const bw_scheme *scheme, const char *id, int men, bw_vec *at) {
    int count;
    const bw_vec *from = find(scheme, id, &count);
    if (!from) return BW_NOT_FOUND;
    if (men > count) return BW_LIMIT;
    for (int i = 0; i < men; i++)
        at[i] = from[i];
    return BW_OK;
}
