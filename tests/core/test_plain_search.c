/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Best against a plain search: the same worth to the last bit and the same plies, on hundreds of
/// small breaks. The plain way prunes, orders, shares and remembers nothing, so what the two have in
/// common is the model alone.
#include "breaks.h"
#include "harness.h"

// Its own file to be shared with the bench, which is no room that a test could link.
#include "bench/plain_search.c"

typedef struct counts {
    int breaks;
    uint64_t played, plainly;
} counts;

static void compare(const bw_break_def *def, int depth, double seconds, counts *c) {
    static bw_break b;
    CHECK_INT(bw_break_begin(&breaks_ground, def, &b, NULL), BW_OK);
    plain_line plain;
    plain_search(&b, depth, seconds, &plain);
    const bw_answer answer = breaks_best(&b, depth, seconds, true, true);
    CHECK_SAME(answer.worth, plain.worth);
    CHECK(plain_agrees(&plain, &answer));
    c->breaks++;
    c->played += answer.played;
    c->plainly += plain.played;
}

/// Every set from every landmark, numbers, late men, time and depth changing from one to the next.
static void small_breaks(void) {
    static const int numbers[][2] = {{3, 3}, {4, 3}, {5, 4}, {6, 4}, {6, 5}, {6, 6}};
    counts c = {0};
    for (int set = 0; set < bw_attack_set_count(); set++) {
        for (int l = 0; l < breaks_scheme.landmark_count; l++) {
            for (int n = 0; n < BW_COUNT(numbers); n++) {
                bw_break_def def =
                    breaks_def(numbers[n][0], numbers[n][1], bw_attack_set_at(set)->id,
                               breaks_scheme.landmarks[l].id);
                def.late_count = (l + set + n) % 3;
                if (def.late_count > def.offence - def.defence)
                    def.late_count = def.offence - def.defence;
                def.late[0] = 9 + 1.7 * l;
                def.late[1] = 20 + 1.3 * set;
                def.set_already = (l + n) % 2;
                def.keep_zone = set % 2;
                compare(&def, (set + l + n) % 3, 1.3 + 0.4 * ((set + 2 * l) % 7), &c);
            }
        }
    }
    CHECK_INT(c.breaks, 6 * breaks_scheme.landmark_count * BW_COUNT(numbers));
    CHECK(c.breaks > 300);
    CHECK(c.played < c.plainly / 2);
}

static void three_plies_deep(void) {
    static const char *const starts[] = {"top", "wr", "x", "gl"};
    counts c = {0};
    for (int i = 0; i < 12; i++) {
        bw_break_def def =
            breaks_def(4 + i / 6, 3 + i / 6, bw_attack_set_at(i % 6)->id, starts[i % 4]);
        def.late_count = i % 2;
        def.late[0] = 13;
        compare(&def, 3, 2.4 + 0.3 * (i % 5), &c);
    }
    CHECK(c.played < c.plainly / 10);
}

/// A plain search that agreed with everything would be no check.
static void a_wrong_answer_is_seen(void) {
    bw_break_def def = breaks_def(6, 4, "2-2-2", "top");
    static bw_break b;
    bw_break_begin(&breaks_ground, &def, &b, NULL);
    plain_line plain;
    plain_search(&b, 1, 3, &plain);
    bw_answer answer = breaks_best(&b, 1, 3, true, true);
    CHECK(answer.worth > 0);
    CHECK(plain_agrees(&plain, &answer));
    answer.worth *= 1 + 1e-15;
    CHECK(!plain_agrees(&plain, &answer));
    answer = breaks_best(&b, 1, 3, true, true);
    answer.plies[0].ply.to++;
    CHECK(!plain_agrees(&plain, &answer));
    answer = breaks_best(&b, 1, 0.1, true, true);
    plain_search(&b, 1, 0.1, &plain);
    CHECK(plain_agrees(&plain, &answer));
    CHECK_INT(plain.count, 0);
}

int main(int argc, char **argv) {
    breaks_ready("high-school");
    RUN(small_breaks);
    RUN(three_plies_deep);
    RUN(a_wrong_answer_is_seen);
    return test_report(argc, argv);
}
