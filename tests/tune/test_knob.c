/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Knobs: what can be turned, within what, and that both sides turn alike.
#include "core/maths.h"
#include "harness.h"
#include "scheme/fresh.h"
#include "scheme/twin.h"
#include "tune/knob.h"

#define YD BW_METRES_PER_YARD

static bw_scheme scheme;

static int list(int stage, const bw_knob_limits *limits, bw_knob *knobs) {
    return bw_knobs(&scheme, stage, limits, knobs);
}

static void a_pair_is_one_knob_each_way(void) {
    bw_scheme_fresh(0, 3, &scheme);
    const bw_knob_limits all = bw_knob_limits_default();
    bw_knob knobs[BW_MAX_KNOBS];
    // 1-2: a pair and a man on the centre line; 2-2: two pairs; 2-1-2: two pairs and one. Seven of the rule.
    CHECK_INT(list(0, &all, knobs), 3 + 7);
    CHECK_INT(list(1, &all, knobs), 4 + 7);
    CHECK_INT(list(2, &all, knobs), 5 + 7);
    // Where left and right differ each man has his own.
    scheme.stages[1].spots[0].home.x -= 0.3;
    bw_find_twins(&scheme);
    CHECK_INT(list(1, &all, knobs), 6 + 7);
}

static void values_lie_within_their_bounds(void) {
    bw_scheme_fresh(0, 3, &scheme);
    const bw_knob_limits all = bw_knob_limits_default();
    for (int stage = 0; stage < scheme.stage_count; stage++) {
        bw_knob knobs[BW_MAX_KNOBS];
        const int count = list(stage, &all, knobs);
        for (int k = 0; k < count; k++) {
            CHECK(knobs[k].low < knobs[k].high && knobs[k].scale > 0);
            CHECK(knobs[k].low <= knobs[k].now && knobs[k].now <= knobs[k].high);
            // A fresh scheme is practice itself.
            CHECK_NEAR(knobs[k].practice, knobs[k].now, 1e-9);
        }
    }
}

static void turned_both_sides_stay_images(void) {
    bw_scheme_fresh(0, 3, &scheme);
    const bw_knob_limits all = bw_knob_limits_default();
    unsigned long long state = 3;
    for (int n = 0; n < 200; n++) {
        for (int stage = 0; stage < scheme.stage_count; stage++) {
            bw_knob knobs[BW_MAX_KNOBS];
            double at[BW_MAX_KNOBS];
            const int count = list(stage, &all, knobs);
            for (int k = 0; k < count; k++)
                at[k] = test_uniform(&state, knobs[k].low, knobs[k].high);
            bw_stage turned = scheme.stages[stage];
            bw_knobs_turn(knobs, count, at, &turned);
            for (int s = 0; s < turned.defenders; s++) {
                const bw_spot *spot = &turned.spots[s];
                CHECK(spot->twin >= 0);
                CHECK_SAME(turned.spots[spot->twin].home.x, -spot->home.x);
                CHECK_SAME(turned.spots[spot->twin].home.y, spot->home.y);
            }
            // Turned back it is the stage it was.
            for (int k = 0; k < count; k++)
                at[k] = knobs[k].now;
            bw_knobs_turn(knobs, count, at, &turned);
            for (int s = 0; s < turned.defenders; s++)
                CHECK_SAME(turned.spots[s].home.x, scheme.stages[stage].spots[s].home.x);
            CHECK_SAME(turned.rule.pickup, scheme.stages[stage].rule.pickup);
        }
    }
}

static void what_is_kept_is_no_knob(void) {
    bw_scheme_fresh(0, 3, &scheme);
    bw_knob_limits limits = bw_knob_limits_default();
    bw_knob knobs[BW_MAX_KNOBS];
    limits.keep[0] = true; // one of a pair keeps both
    limits.keep_kind[BW_KNOB_SHIFT] = true;
    const int count = list(1, &limits, knobs);
    CHECK_INT(count, 2 + 6);
    for (int k = 0; k < count; k++) {
        CHECK(knobs[k].kind != BW_KNOB_SHIFT);
        CHECK(knobs[k].spot != 0 && knobs[k].twin != 0);
    }
    limits.keep_rule = limits.keep_homes = true;
    CHECK_INT(list(1, &limits, knobs), 0);
    limits = bw_knob_limits_default();
    limits.most = 1 * YD;
    CHECK(list(1, &limits, knobs) > 0);
    for (int k = 0; knobs[k].spot >= 0; k++)
        CHECK(knobs[k].high - knobs[k].now <= 1 * YD + 1e-12);
}

int main(int argc, char **argv) {
    RUN(a_pair_is_one_knob_each_way);
    RUN(values_lie_within_their_bounds);
    RUN(turned_both_sides_stay_images);
    RUN(what_is_kept_is_no_knob);
    return test_report(argc, argv);
}
