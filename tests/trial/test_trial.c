/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Who is told to be late in a trial, and which rotations a report shows.
#include "breaks.h"
#include "harness.h"
#include "trial/weak_rotations.h"

static bw_break b;

/// Six against four, all in place, and one more who is a long way off.
static bw_state all_in_place(void) {
    bw_break_def def = breaks_def(6, 4, "2-2-2", "top");
    def.late_count = 1;
    def.late[0] = 40;
    CHECK_INT(bw_break_begin(&breaks_ground, &def, &b, NULL), BW_OK);
    return b.start;
}

static void nobody_is_late_who_stands_in_his_place(void) {
    const bw_state s = all_in_place();
    const bw_straggler late = bw_latest(&b, &s, s.holder);
    CHECK_INT(late.man, -1); // nor is the man still on his way, of whom all know it
    CHECK_SAME(late.seconds, 0);
}

static void of_two_late_men_the_later_is_named(void) {
    for (int one = 0; one < 4; one++) {
        for (int two = 0; two < 4; two++) {
            if (one == two) continue;
            bw_state s = all_in_place();
            s.y[BW_MAX_ATTACKERS + one] += 2;
            bw_straggler late = bw_latest(&b, &s, s.holder);
            CHECK_INT(late.man, one);
            CHECK_NEAR(late.metres, 2, 1e-9);
            const double alone = late.seconds;
            s.y[BW_MAX_ATTACKERS + two] += 5;
            late = bw_latest(&b, &s, s.holder);
            CHECK_INT(late.man, two);
            CHECK_NEAR(late.metres, 5, 1e-9);
            CHECK(late.seconds > alone);
        }
    }
}

static void five_rotations_are_shown_and_none_that_costs_nothing(void) {
    static bw_trial trial;
    for (int count = 0; count <= BW_WEAK_MAX; count++) {
        trial.whatif.count = count;
        for (int i = 0; i < count; i++)
            trial.whatif.weak[i].cost = 0.02;
        CHECK_INT(bw_weak_shown(&trial), count < 5 ? count : 5);
    }
    trial.whatif.weak[2].cost = 0.0005;
    CHECK_INT(bw_weak_shown(&trial), 5);
    trial.whatif.weak[2].cost = 0.00049;
    CHECK_INT(bw_weak_shown(&trial), 2);
}

int main(int argc, char **argv) {
    breaks_ready("high-school");
    RUN(nobody_is_late_who_stands_in_his_place);
    RUN(of_two_late_men_the_later_is_named);
    RUN(five_rotations_are_shown_and_none_that_costs_nothing);
    return test_report(argc, argv);
}
