/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Margins: faster legs have more to spare, mirrored spots the same, and the lint's warnings are the men
/// who are late.
#include "core/level.h"
#include "harness.h"
#include "scheme/fresh.h"
#include "scheme/margin.h"

static bw_scheme scheme;

static void faster_legs_have_more_to_spare(void) {
    for (int level = 0; level < bw_level_count(); level++) {
        bw_scheme_fresh(0, level, &scheme);
        for (int stage = 0; stage < 3; stage++) {
            bw_margin slow[BW_MAX_SPOTS], fast[BW_MAX_SPOTS], own[BW_MAX_SPOTS];
            bw_legs legs = bw_level_at(level)->defender;
            bw_margins(&scheme, stage, (bw_legs){0, 0}, own);
            bw_margins(&scheme, stage, (bw_legs){legs.vmax * 0.8, legs.tau}, slow);
            bw_margins(&scheme, stage, (bw_legs){legs.vmax * 1.2, legs.tau}, fast);
            int had = 0;
            for (int s = 0; s < scheme.stages[stage].defenders; s++) {
                // A middle man's places can lie within a stick's reach of each other.
                if (own[s].rotations == 0) continue;
                had++;
                CHECK_INT(own[s].rotations, slow[s].rotations);
                CHECK(slow[s].worst < own[s].worst && own[s].worst < fast[s].worst);
                CHECK(slow[s].late >= own[s].late && own[s].late >= fast[s].late);
                CHECK(own[s].worst <= own[s].mean);
                CHECK(own[s].late == 0 ? own[s].worst >= 0 : own[s].worst < 0);
            }
            CHECK(had >= 3);
        }
    }
}

static void the_mirror_image_has_the_same(void) {
    static bw_scheme image;
    bw_scheme_fresh(0, 3, &scheme);
    bw_scheme_mirror(&scheme, &image);
    for (int stage = 0; stage < 3; stage++) {
        bw_margin m[BW_MAX_SPOTS], n[BW_MAX_SPOTS];
        bw_margins(&scheme, stage, (bw_legs){8, 1.2}, m);
        bw_margins(&image, stage, (bw_legs){8, 1.2}, n);
        for (int s = 0; s < scheme.stages[stage].defenders; s++) {
            CHECK_SAME(m[s].worst, n[s].worst);
            CHECK_SAME(m[s].mean, n[s].mean);
            CHECK_INT(m[s].late, n[s].late);
        }
    }
}

static void man_to_man_has_none(void) {
    bw_scheme_fresh(0, 3, &scheme);
    bw_margin m[BW_MAX_SPOTS];
    bw_margins(&scheme, 3, (bw_legs){8, 1.2}, m);
    for (int s = 0; s < BW_MAX_SPOTS; s++)
        CHECK_INT(m[s].rotations, 0);
}

int main(int argc, char **argv) {
    RUN(faster_legs_have_more_to_spare);
    RUN(the_mirror_image_has_the_same);
    RUN(man_to_man_has_none);
    return test_report(argc, argv);
}
