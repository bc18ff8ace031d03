/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "trial/standard.h"

#include "core/attack_set.h"
#include "core/text.h"

#define YD BW_METRES_PER_YARD

static bool has_stage(const bw_scheme *scheme, int defenders) {
    return bw_scheme_stage(scheme, defenders) >= 0;
}

/// Late men the break can use: each makes a stage the scheme has, or the numbers even.
static int late_men(const bw_scheme *scheme, int offence, int defence) {
    int count = 0;
    for (int n = defence + 1; n <= offence && count < scheme->late_count; n++, count++) {
        if (n < offence && !has_stage(scheme, n)) break;
    }
    return count;
}

bw_break_def bw_standard_def(const bw_scheme *scheme, int offence, int defence, const char *set,
                             const char *start) {
    bw_break_def def = bw_break_default();
    def.offence = offence;
    def.defence = defence;
    bw_copy(def.set, sizeof def.set, set);
    bw_copy(def.start, sizeof def.start, start);
    def.late_from_scheme = false;
    def.late_count = late_men(scheme, offence, defence);
    for (int i = 0; i < def.late_count; i++)
        def.late[i] = scheme->late[i].behind;
    return def;
}

static int landmark_near(const bw_scheme *scheme, double x, double y) {
    const bw_vec p = bw_scale(bw_v(x, y), YD);
    int best = 0;
    for (int l = 1; l < scheme->landmark_count; l++) {
        if (bw_distance(scheme->landmarks[l].at, p) < bw_distance(scheme->landmarks[best].at, p))
            best = l;
    }
    return best;
}

bw_break_def bw_standard_break(const bw_scheme *scheme) {
    static const int numbers[][2] = {{6, 4}, {6, 5}, {4, 3}, {6, 6}};
    const char *start = scheme->landmarks[landmark_near(scheme, 0, 15)].id;
    for (int i = 0; i < BW_COUNT(numbers); i++) {
        if (has_stage(scheme, numbers[i][1]))
            return bw_standard_def(scheme, numbers[i][0], numbers[i][1], "2-2-2", start);
    }
    return bw_standard_def(scheme, 6, 6, "2-2-2", start);
}

const char *bw_standard_behind(const bw_scheme *scheme) {
    return scheme->landmarks[landmark_near(scheme, 0, -4)].id;
}

static bool mirrored_spots(const bw_stage *stage, const bw_scheme *scheme) {
    for (int s = 0; s < stage->defenders; s++) {
        const int twin = stage->spots[s].twin;
        if (twin < 0) return false;
        const bw_vec image = bw_mirror(stage->spots[twin].home);
        if (bw_distance(stage->spots[s].home, image) > 0) return false;
        for (int l = 0; l < scheme->landmark_count; l++) {
            const int other = scheme->landmarks[l].twin;
            if (!stage->pinned[l][s] != !stage->pinned[other][twin]) return false;
            if (!stage->pinned[l][s]) continue;
            if (bw_distance(stage->pins[l][s], bw_mirror(stage->pins[other][twin])) > 0)
                return false;
        }
    }
    return true;
}

/// Whether left and right are the same to the scheme, so that one side speaks for both.
static bool same_sides(const bw_scheme *scheme) {
    for (int l = 0; l < scheme->landmark_count; l++) {
        if (scheme->landmarks[l].twin < 0) return false;
    }
    for (int i = 0; i < scheme->stage_count; i++) {
        if (!mirrored_spots(&scheme->stages[i], scheme)) return false;
    }
    return true;
}

static int choose_starts(const bw_scheme *scheme, int *start) {
    static const double places[][2] = {{0, 15}, {10, 9}, {0, -4}, {-10, 9}};
    const int wanted = same_sides(scheme) ? 3 : 4;
    int count = 0;
    for (int i = 0; i < wanted; i++) {
        const int l = landmark_near(scheme, places[i][0], places[i][1]);
        bool known = false;
        for (int k = 0; k < count; k++)
            known |= start[k] == l;
        if (!known) start[count++] = l;
    }
    return count;
}

int bw_standard_sets(const bw_scheme *scheme, int men, const char **set) {
    int count = 0;
    for (int i = 0; i < bw_attack_set_count(); i++)
        set[count++] = bw_attack_set_at(i)->id;
    for (int i = 0; i < scheme->set_count; i++) {
        // One that takes a built-in set's name stands in for it.
        if (scheme->sets[i].count < men || bw_attack_set_find(scheme->sets[i].id)) continue;
        set[count++] = scheme->sets[i].id;
    }
    return count;
}

int bw_standard_set(const bw_scheme *scheme, bw_break_def *list) {
    static const int numbers[][2] = {{6, 4}, {6, 5}, {5, 4}, {4, 3}};
    const char *sets[BW_MAX_SETS + 8];
    int starts[4], count = 0;
    const int start_count = choose_starts(scheme, starts);
    for (int n = 0; n < BW_COUNT(numbers); n++) {
        const int offence = numbers[n][0], defence = numbers[n][1];
        if (!has_stage(scheme, defence)) continue;
        const int set_count = bw_standard_sets(scheme, offence, sets);
        for (int i = 0; i < set_count; i++) {
            for (int k = 0; k < start_count && count < BW_STANDARD_MAX; k++)
                list[count++] = bw_standard_def(scheme, offence, defence, sets[i],
                                                scheme->landmarks[starts[k]].id);
        }
    }
    return count;
}
