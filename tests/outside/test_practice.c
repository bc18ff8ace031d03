/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The shape against what coaches teach. "Common practice, no source" is marked so; published figures
/// name their source. Checked on the starting scheme and, where a check does not forbid pins, on the
/// demo scheme too.
#include "core/shape.h"
#include "file/document.h"
#include "harness.h"
#include "scheme/fresh.h"
#include <stdlib.h>

static const double yd = BW_METRES_PER_YARD;

enum { HIGH_SCHOOL = 3, SCHEMES = 2 };

static bw_scheme schemes[SCHEMES]; ///< the starting scheme, then the demo
static int scheme_count;

static void load(void) {
    char path[4096];
    bw_source source;
    bw_error error = {0};
    const char *root = getenv("BW_ROOT");
    bw_scheme_fresh(0, HIGH_SCHOOL, &schemes[scheme_count++]);
    snprintf(path, sizeof path, "%s/examples/terns.json", root ? root : ".");
    bw_status status = bw_document_load(path, &schemes[scheme_count], &source, &error);
    if (status != BW_OK) fprintf(stderr, "%s: %s\n", path, error.message);
    CHECK_INT(status, BW_OK);
    if (status != BW_OK) return;
    bw_source_drop(&source);
    scheme_count++;
}

static const bw_stage *stage_of(const bw_scheme *scheme, int defenders) {
    int index = bw_scheme_stage(scheme, defenders);
    CHECK(index >= 0);
    return index >= 0 ? &scheme->stages[index] : NULL;
}

static void within(double value, double low, double high) {
    if (!(value >= low - 1e-9 && value <= high + 1e-9))
        fprintf(stderr, "%g yd is not from %g to %g\n", value, low, high);
    CHECK(value >= low - 1e-9 && value <= high + 1e-9);
}

/// The pair of a stage that stands lowest, or highest, by home.
static void pair(const bw_stage *stage, bool low, bw_vec out[2]) {
    int taken = -1;
    for (int k = 0; k < 2; k++) {
        int best = -1;
        for (int s = 0; s < stage->defenders; s++) {
            if (s == taken) continue;
            double y = stage->spots[s].home.y;
            if (best < 0 || (low ? y < stage->spots[best].home.y : y > stage->spots[best].home.y))
                best = s;
        }
        out[k] = stage->spots[best].home;
        taken = best;
    }
}

/// Common practice, no source: low pair 2-3 yd above the goal line and 3-4 yd outside; top pair about
/// 13 yd from the goal and 5-6 yd out. Four back stand as a box, five with a man in the middle (youth
/// coaching sheets): shapes 2-2 and 2-1-2.
static void homes_of_four_and_five(void) {
    for (int n = 0; n < scheme_count; n++) {
        for (int men = 4; men <= 5; men++) {
            const bw_stage *stage = stage_of(&schemes[n], men);
            if (!stage) continue;
            bw_vec low[2], top[2];
            pair(stage, true, low);
            pair(stage, false, top);
            for (int k = 0; k < 2; k++) {
                within(low[k].y / yd, 2, 3);
                within(fabs(low[k].x) / yd, 3, 4);
                within(top[k].y / yd, 12, 14);
                within(fabs(top[k].x) / yd, 5, 6);
            }
            CHECK(low[0].x * low[1].x < 0 && top[0].x * top[1].x < 0);
            CHECK_TEXT(stage->shape, men == 4 ? "2-2" : "2-1-2");
        }
    }
}

/// T. Hallissey, "Fast Break Defense", 2016: the point about 12 yd above the goal line, the two backs
/// about 2 yd above it and 3 ft wide of the posts, which are 3 ft from the centre. Half a yard more is
/// allowed to keep them out of the crease.
static void the_triangle_of_three(void) {
    for (int n = 0; n < scheme_count; n++) {
        const bw_stage *stage = stage_of(&schemes[n], 3);
        if (!stage) continue;
        bw_vec back[2], top[2];
        pair(stage, true, back);
        pair(stage, false, top);
        within(top[0].y / yd, 11, 13);
        within(top[0].x / yd, -0.5, 0.5);
        for (int k = 0; k < 2; k++) {
            within(back[k].y / yd, 1.5, 2.5);
            within(fabs(back[k].x) / yd, 1.5, 2.75);
        }
    }
}

static int count(const bw_station *at, int spots, bw_duty duty) {
    int n = 0;
    for (int s = 0; s < spots; s++)
        n += at[s].duty == duty;
    return n;
}

/// Common practice, no source: one man on the ball, or the low pair holding while it is behind; one
/// man at the crease; at every landmark of every stage.
static void one_on_the_ball_one_at_the_crease(void) {
    for (int n = 0; n < scheme_count; n++) {
        for (int g = 0; g < schemes[n].stage_count; g++) {
            bw_plan plan;
            bw_plan_build(&schemes[n], g, &plan);
            for (int l = 0; l < schemes[n].landmark_count; l++) {
                bw_station at[BW_MAX_SPOTS];
                bw_where(&plan, schemes[n].landmarks[l].at, NULL, 0, at);
                int on_ball = count(at, plan.spots, BW_DUTY_BALL);
                int holding = count(at, plan.spots, BW_DUTY_HOLD);
                CHECK(on_ball == 1 ||
                      (on_ball == 0 && holding == 2 && schemes[n].landmarks[l].at.y < 0));
                CHECK_INT(count(at, plan.spots, BW_DUTY_CREASE), 1);
            }
        }
    }
}

/// Common practice, no source: while the ball is behind, the low pair hold beside the posts; the one
/// on the carrier's side picks him up around goal-line extended, not before.
static void the_low_pair_hold_then_pick_up(void) {
    const bw_scheme *scheme = &schemes[0];
    for (int men = 3; men <= 5; men++) {
        bw_plan plan;
        bw_plan_build(scheme, bw_scheme_stage(scheme, men), &plan);
        for (double x = -2; x <= 2; x += 0.5) {
            bw_station at[BW_MAX_SPOTS];
            bw_where(&plan, bw_v(x * yd, -5 * yd), NULL, 0, at);
            CHECK_INT(count(at, plan.spots, BW_DUTY_HOLD), 2);
            for (int k = 0; k < 2; k++) {
                const bw_station *low = &at[plan.low[0][k]];
                CHECK_INT(low->duty, BW_DUTY_HOLD);
                within(low->at.y / yd, 0.5, 3);
                within(fabs(low->at.x) / yd, 2, 4);
            }
        }
        bw_station at[BW_MAX_SPOTS];
        bw_where(&plan, bw_v(8 * yd, 0), NULL, 0, at);
        CHECK_INT(at[plan.low[0][1]].duty, BW_DUTY_BALL);
        within(at[plan.low[0][1]].at.x / yd, 4, 8);
        within(at[plan.low[0][1]].at.y / yd, 0, 2);
        bw_where(&plan, bw_v(4 * yd, -5 * yd), NULL, 0, at);
        CHECK_INT(at[plan.low[0][1]].duty, BW_DUTY_HOLD);
    }
}

static const bw_station *on_ball(const bw_station *at, int spots) {
    for (int s = 0; s < spots; s++) {
        if (at[s].duty == BW_DUTY_BALL) return &at[s];
    }
    CHECK(false);
    return at;
}

/// Common practice, no source: straight in front the ball is met at the pickup line; on the wings it
/// is played softly: nearer the goal and from farther off.
static void wings_are_played_softly(void) {
    const bw_scheme *scheme = &schemes[0];
    for (int men = 3; men <= 5; men++) {
        bw_plan plan;
        bw_plan_build(scheme, bw_scheme_stage(scheme, men), &plan);
        bw_vec top = bw_v(0, 14 * yd), wing = bw_v(13 * yd, 6 * yd);
        bw_station a[BW_MAX_SPOTS], b[BW_MAX_SPOTS];
        bw_where(&plan, top, NULL, 0, a);
        bw_where(&plan, wing, NULL, 0, b);
        bw_vec front = on_ball(a, plan.spots)->at, side = on_ball(b, plan.spots)->at;
        within(bw_length(front) / yd, 11, 13);
        CHECK(bw_length(side) < bw_length(front) - yd);
        CHECK(bw_distance(side, wing) > bw_distance(front, top) + yd);
        // Goal side of the ball, in both.
        CHECK(bw_length(front) < bw_length(top) && bw_length(side) < bw_length(wing));
    }
}

/// Common practice, no source: the man farthest from the ball has the crease (by where the unit stands,
/// the man on the ball left out).
static void the_farthest_has_the_crease(void) {
    const bw_scheme *scheme = &schemes[0];
    const bw_stage *stage = stage_of(scheme, 4);
    unsigned long long random = 3;
    bw_plan plan;
    bw_plan_build(scheme, bw_scheme_stage(scheme, 4), &plan);
    for (int k = 0; k < 500; k++) {
        bw_vec ball;
        ball.x = test_uniform(&random, -14, 14);
        ball.y = test_uniform(&random, 1, 16);
        bw_station at[BW_MAX_SPOTS];
        bw_where(&plan, ball, NULL, 0, at);
        double crease = 0;
        for (int s = 0; s < plan.spots; s++) {
            if (at[s].duty == BW_DUTY_CREASE) crease = bw_distance(stage->spots[s].home, ball);
        }
        for (int s = 0; s < plan.spots; s++) {
            // The unit has shifted by up to 3 m, which moves these distances apart by as much.
            if (at[s].duty != BW_DUTY_BALL)
                CHECK(bw_distance(stage->spots[s].home, ball) < crease + 3.5);
        }
    }
}

/// Common practice, no source: the unit moves together: a small step of the ball moves every man off
/// the ball and the crease by the same step, toward the ball's side.
static void the_unit_moves_together(void) {
    const bw_scheme *scheme = &schemes[0];
    unsigned long long random = 9;
    for (int men = 4; men <= 5; men++) {
        bw_plan plan;
        bw_plan_build(scheme, bw_scheme_stage(scheme, men), &plan);
        for (int k = 0; k < 200; k++) {
            bw_vec ball;
            ball.x = test_uniform(&random, 1, 10);
            ball.y = test_uniform(&random, 8, 14);
            bw_station a[BW_MAX_SPOTS], b[BW_MAX_SPOTS];
            bw_where(&plan, ball, NULL, 0, a);
            bw_where(&plan, bw_add(ball, bw_v(0.2, 0)), NULL, 0, b);
            bool same = true;
            for (int s = 0; s < plan.spots; s++)
                same = same && a[s].duty == b[s].duty;
            bw_vec step = {0};
            for (int s = 0; same && s < plan.spots; s++) {
                if (a[s].duty == BW_DUTY_BALL || a[s].duty == BW_DUTY_CREASE) continue;
                // At the crease's edge he slides round it instead.
                if (bw_length(a[s].at) < plan.field.crease + 0.3) continue;
                bw_vec mine = bw_sub(b[s].at, a[s].at);
                CHECK(mine.x > 0);
                if (step.x > 0) CHECK_NEAR(bw_distance(mine, step), 0, 1e-9);
                step = mine;
            }
        }
    }
}

/// Common practice, no source: the first midfielder back makes the fourth and takes a top spot, the
/// second makes the fifth and takes the middle with the crease, the third makes even numbers.
static void late_men_fill_in_order(void) {
    for (int n = 0; n < scheme_count; n++) {
        const bw_scheme *scheme = &schemes[n];
        CHECK(scheme->late_count >= 3);
        if (scheme->late_count < 3) continue;
        const bw_stage *four = stage_of(scheme, 4), *five = stage_of(scheme, 5);
        if (!four || !five) continue;
        bw_vec top[2];
        pair(four, false, top);
        for (int k = 0; k < scheme->late[0].take_count; k++) {
            int spot = bw_stage_spot(four, scheme->late[0].takes[k]);
            CHECK(spot >= 0);
            if (spot >= 0) CHECK(four->spots[spot].home.y >= top[1].y);
        }
        CHECK(scheme->late[0].take_count > 0 && scheme->late[1].take_count > 0);
        int middle = bw_stage_spot(five, scheme->late[1].takes[0]);
        CHECK(middle >= 0);
        CHECK_INT(five->rule.crease, middle);
        CHECK_INT(scheme->late[2].take_count, 0);
        for (int k = 1; k < 3; k++)
            CHECK(scheme->late[k].behind >= scheme->late[k - 1].behind);
        const bw_stage *even = stage_of(scheme, 6);
        if (even) CHECK(even->match_up);
    }
}

/// Common practice, no source: at even numbers everyone takes the nearest man. Attackers stand by the
/// homes, so that each defender has one who is his alone, wherever the ball is.
static void at_even_numbers_everyone_takes_the_nearest(void) {
    const bw_scheme *scheme = &schemes[0];
    const bw_stage *stage = stage_of(scheme, 6);
    if (!stage) return;
    bw_plan plan;
    bw_plan_build(scheme, bw_scheme_stage(scheme, 6), &plan);
    bw_vec men[BW_MAX_ATTACKERS];
    for (int s = 0; s < 6; s++)
        men[s] = bw_scale(stage->spots[s].home, 1.15);
    for (int holder = 0; holder < 6; holder++) {
        bw_station at[BW_MAX_SPOTS];
        bw_where(&plan, men[holder], men, 6, at);
        for (int s = 0; s < 6; s++)
            CHECK_INT(at[s].man, s);
        CHECK_INT(at[holder].duty, BW_DUTY_BALL);
    }
}

/// Zimmerman and England, "Men's Lacrosse" (Human Kinetics): recover to the hole first, the area out
/// to 12 yd from goal-line extended. Nobody off the ball is drawn far beyond it, whatever the ball.
static void nobody_off_the_ball_leaves_the_hole_far(void) {
    for (int n = 0; n < scheme_count; n++) {
        for (int g = 0; g < schemes[n].stage_count; g++) {
            bw_plan plan;
            bw_plan_build(&schemes[n], g, &plan);
            for (int l = 0; l < schemes[n].landmark_count; l++) {
                bw_station at[BW_MAX_SPOTS];
                bw_where(&plan, schemes[n].landmarks[l].at, NULL, 0, at);
                for (int s = 0; s < plan.spots; s++) {
                    if (at[s].duty == BW_DUTY_BALL) continue;
                    within(at[s].at.y / yd, 0, 15);
                    within(bw_length(at[s].at) / yd, 0, 16);
                }
            }
        }
    }
}

int main(int argc, char **argv) {
    load();
    RUN(homes_of_four_and_five);
    RUN(the_triangle_of_three);
    RUN(one_on_the_ball_one_at_the_crease);
    RUN(the_low_pair_hold_then_pick_up);
    RUN(wings_are_played_softly);
    RUN(the_farthest_has_the_crease);
    RUN(the_unit_moves_together);
    RUN(late_men_fill_in_order);
    RUN(at_even_numbers_everyone_takes_the_nearest);
    RUN(nobody_off_the_ball_leaves_the_hole_far);
    return test_report(argc, argv);
}
