/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Best: pruning changes neither worth nor answer, on hundreds of breaks, compared exactly; and the
/// properties a best line must have whatever the model.
#include "breaks.h"
#include "core/bound.h"
#include "core/replay.h"
#include "harness.h"

static bool same_line(const bw_answer *a, const bw_answer *b) {
    if (a->count != b->count || a->worth != b->worth) return false;
    for (int i = 0; i < a->count; i++) {
        if (bw_ply_rank(a->plies[i].ply) != bw_ply_rank(b->plies[i].ply)) return false;
    }
    return true;
}

/// Every set, every landmark, several numbers, with and without late men: depth 2.
static void pruning_changes_nothing(void) {
    static const int numbers[][2] = {{4, 3}, {5, 4}, {6, 4}, {6, 5}, {6, 6}};
    int breaks = 0;
    uint64_t played = 0, plainly = 0;
    for (int n = 0; n < BW_COUNT(numbers); n++) {
        for (int set = 0; set < bw_attack_set_count(); set++) {
            for (int l = 0; l < breaks_scheme.landmark_count; l++) {
                bw_break_def def =
                    breaks_def(numbers[n][0], numbers[n][1], bw_attack_set_at(set)->id,
                               breaks_scheme.landmarks[l].id);
                def.late_count = (l + set) % 3;
                def.late[0] = 14 + l;
                def.late[1] = 22 + l;
                static bw_break b;
                CHECK_INT(bw_break_begin(&breaks_ground, &def, &b, NULL), BW_OK);
                const bw_answer whole = breaks_best(&b, 2, 4, false, false);
                const bw_answer pruned = breaks_best(&b, 2, 4, true, true);
                const bw_answer unordered = breaks_best(&b, 2, 4, true, false);
                CHECK_SAME(pruned.worth, whole.worth);
                CHECK(same_line(&pruned, &whole));
                CHECK(same_line(&unordered, &whole));
                breaks++;
                played += pruned.played;
                plainly += whole.played;
            }
        }
    }
    CHECK_INT(breaks, 330);
    CHECK(played < plainly / 2);
}

static void pruning_changes_nothing_deeper(void) {
    static const char *const starts[] = {"top", "gr", "x"};
    for (int i = 0; i < 6; i++) {
        bw_break_def def =
            breaks_def(i % 2 ? 6 : 4, i % 2 ? 4 : 3, bw_attack_set_at(i)->id, starts[i % 3]);
        def.late_count = i % 2;
        def.late[0] = 18;
        static bw_break b;
        CHECK_INT(bw_break_begin(&breaks_ground, &def, &b, NULL), BW_OK);
        const bw_answer whole = breaks_best(&b, 3, 3.4, false, false);
        const bw_answer pruned = breaks_best(&b, 3, 3.4, true, true);
        CHECK(same_line(&pruned, &whole));
        CHECK(pruned.played < whole.played);
    }
}

static void more_time_and_more_plies_never_hurt(void) {
    bw_break_def def = breaks_def(6, 4, "2-3-1", "tl");
    static bw_break b;
    bw_break_begin(&breaks_ground, &def, &b, NULL);
    double last = 0;
    for (int t = 1; t <= 6; t++) {
        const double worth = breaks_best(&b, 2, t, true, true).worth;
        CHECK(worth >= last);
        last = worth;
    }
    last = 0;
    for (int depth = 0; depth <= 3; depth++) {
        const bw_answer a = breaks_best(&b, depth, 4, true, true);
        CHECK(a.worth >= last);
        CHECK_INT(a.depth, depth);
        last = a.worth;
    }
    CHECK(last > 0.2);
}

static void the_answer_adds_up(void) {
    bw_break_def def = breaks_def(6, 4, "2-2-2", "top");
    static bw_break b;
    bw_break_begin(&breaks_ground, &def, &b, NULL);
    const bw_answer a = breaks_best(&b, 3, 5, true, true);
    CHECK(a.count >= 2);
    double product = a.plies[a.count - 1].chance;
    for (int i = a.count - 2; i >= 0; i--)
        product = a.plies[i].chance * product;
    CHECK_SAME(a.worth, product);
    CHECK_NEAR(a.worth, a.kept * a.shot.place * a.shot.left, 1e-12);
    CHECK_INT(a.plies[a.count - 1].ply.kind, BW_SHOOT);
    for (int i = 1; i < a.count; i++)
        CHECK_SAME(a.plies[i].at_s, a.plies[i - 1].end_s);
    CHECK(a.plies[a.count - 1].end_s <= 5);

    static bw_frame frames[BW_MAX_FRAMES];
    int count;
    CHECK_INT(bw_replay(&b, &a, frames, BW_MAX_FRAMES, &count), BW_OK);
    CHECK_SAME(frames[0].at_s, 0);
    CHECK_SAME(frames[count - 1].at_s, a.plies[a.count - 1].end_s);
    for (int i = 1; i < count; i++) {
        const double dt = frames[i].at_s - frames[i - 1].at_s;
        CHECK(dt > 0 && dt < 0.5);
        for (int d = 0; d < b.defenders; d++) {
            const double run = bw_distance(frames[i].defenders[d], frames[i - 1].defenders[d]);
            CHECK(run <= b.paces.vmax[d] * dt + 1e-9);
        }
    }
    CHECK_INT(bw_replay(&b, &a, frames, 3, &count), BW_NO_ROOM);
    CHECK_INT(count, 3);
}

/// The hope of every ply is at least what comes of it, all the way down random lines.
static void hopes_are_never_too_low(void) {
    unsigned long long seed = 7;
    for (int n = 0; n < 60; n++) {
        bw_break_def def = breaks_def(6, 3 + n % 4, bw_attack_set_at(n % 6)->id,
                                      breaks_scheme.landmarks[n % 11].id);
        def.late_count = n % 2;
        def.late[0] = 12;
        static bw_break b;
        if (bw_break_begin(&breaks_ground, &def, &b, NULL) != BW_OK) continue;
        static bw_state s, next, end;
        s = b.start;
        for (int ply = 0; ply < 4; ply++) {
            bw_ply list[BW_MAX_PLIES];
            const int count = bw_plies(&b, &s, list), left = 400;
            bw_bound shallow, deep;
            bw_bound_begin(&b, &s, 1, left, &shallow);
            bw_bound_begin(&b, &s, 2, left, &deep);
            for (int i = 0; i < count; i++) {
                if (list[i].kind == BW_SHOOT) continue;
                const double kept = bw_play(&b, &s, list[i], &next, NULL, NULL);
                const bw_shot_terms t = bw_play_shot(&b, &next, &end, NULL, NULL);
                const bw_hope last = bw_bound_ply(&shallow, list[i]);
                CHECK(last.chance >= kept);
                CHECK(last.after >= t.place);
                CHECK(last.after <= t.place * (1 + 1e-6) || s.in < b.defenders);
                const bw_hope more = bw_bound_ply(&deep, list[i]);
                CHECK(more.chance >= kept);
                CHECK(more.after >= t.place);
                CHECK(next.tick - s.tick <= breaks_ground.longest_ply);
            }
            const bw_ply p = list[test_random(&seed) % (unsigned)count];
            if (p.kind == BW_SHOOT) continue;
            bw_play(&b, &s, p, &next, NULL, NULL);
            s = next;
        }
    }
}

/// The mirrored scheme with the mirrored set: the same worth to the last bit.
static void the_mirror_image_is_worth_the_same(void) {
    static bw_scheme scheme, image;
    scheme = breaks_scheme;
    const bw_vec set[6] = {{-6.1, 12.9}, {7.2, 13.1}, {-8.4, 2.3},
                           {9.3, 1.1},   {-2.2, 6.7}, {3.1, 7.4}};
    scheme.set_count = 1;
    bw_copy(scheme.sets[0].id, sizeof scheme.sets[0].id, "odd");
    scheme.sets[0].count = 6;
    for (int i = 0; i < 6; i++)
        scheme.sets[0].at[i] = set[i];
    bw_scheme_mirror(&scheme, &image);
    static bw_ground ground, other;
    bw_ground_build(&scheme, NULL, &ground, NULL);
    bw_ground_build(&image, NULL, &other, NULL);
    static const char *const starts[] = {"tl", "wr", "gl", "x", "top"};
    for (int i = 0; i < BW_COUNT(starts); i++) {
        for (int defence = 4; defence <= 6; defence++) {
            bw_break_def def = breaks_def(6, defence, "odd", starts[i]);
            static bw_break a, b;
            CHECK_INT(bw_break_begin(&ground, &def, &a, NULL), BW_OK);
            CHECK_INT(bw_break_begin(&other, &def, &b, NULL), BW_OK);
            CHECK_SAME(breaks_best(&a, 2, 4, true, true).worth,
                       breaks_best(&b, 2, 4, true, true).worth);
        }
    }
}

static void running_out_is_said(void) {
    bw_break_def def = breaks_def(6, 4, "2-2-2", "top");
    static bw_break b;
    bw_break_begin(&breaks_ground, &def, &b, NULL);
    bw_search_def search = bw_search_default();
    bw_answer a;
    CHECK_INT(bw_best(&b, &search, breaks_memory, bw_search_size() - 1, &a), BW_NO_ROOM);
    search.budget = 2000;
    CHECK_INT(bw_best(&b, &search, breaks_memory, bw_search_size(), &a), BW_LIMIT);
    CHECK(a.cut_short);
    CHECK(a.depth < search.depth);
    CHECK(a.played <= 2000 + 1);
    const bw_answer whole = breaks_best(&b, a.depth, search.seconds, false, false);
    CHECK(same_line(&a, &whole));
}

int main(int argc, char **argv) {
    breaks_ready("high-school");
    RUN(pruning_changes_nothing);
    RUN(pruning_changes_nothing_deeper);
    RUN(more_time_and_more_plies_never_hurt);
    RUN(the_answer_adds_up);
    RUN(hopes_are_never_too_low);
    RUN(the_mirror_image_is_worth_the_same);
    RUN(running_out_is_said);
    return test_report(argc, argv);
}
