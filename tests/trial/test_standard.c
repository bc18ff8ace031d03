/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Who comes back in a standard break: as many as make a stage the scheme has, or the numbers even.
#include "harness.h"
#include "scheme/fresh.h"
#include "trial/standard.h"

static bw_scheme scheme;

static int late(int offence, int defence) {
    const bw_break_def def = bw_standard_def(&scheme, offence, defence, "2-2-2", "top");
    for (int i = 0; i < def.late_count; i++)
        CHECK_SAME(def.late[i], scheme.late[i].behind);
    return def.late_count;
}

static void the_late_men_make_the_numbers_even(void) {
    bw_scheme_fresh(0, 3, &scheme);
    CHECK_INT(scheme.late_count, 3);
    CHECK_INT(late(6, 4), 2);
    CHECK_INT(late(6, 5), 1);
    CHECK_INT(late(4, 3), 1);
    CHECK_INT(late(6, 3), 3);
    CHECK_INT(late(6, 6), 0);
    scheme.late_count = 1;
    CHECK_INT(late(6, 4), 1);
}

static void nobody_comes_into_a_stage_the_scheme_has_not(void) {
    bw_scheme_fresh(0, 3, &scheme);
    const int five = bw_scheme_stage(&scheme, 5);
    CHECK(five >= 0);
    for (int s = five + 1; s < scheme.stage_count; s++)
        scheme.stages[s - 1] = scheme.stages[s];
    scheme.stage_count--;
    CHECK_INT(late(6, 4), 0);
    CHECK_INT(late(6, 3), 1); // up to four in
    CHECK_INT(late(5, 4), 1); // numbers are even: everyone has a man
}

int main(int argc, char **argv) {
    RUN(the_late_men_make_the_numbers_even);
    RUN(nobody_comes_into_a_stage_the_scheme_has_not);
    return test_report(argc, argv);
}
