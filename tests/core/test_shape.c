/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The shape: mirror symmetry to the last bit, one man a duty, pins obeyed, bounded shading.
#include "core/shape.h"
#include "core/text.h"
#include "harness.h"
#include "scheme/fresh.h"
#include "scheme/twin.h"

/// One number after the other: C leaves the order of arguments open.
static bw_vec random_place(unsigned long long *random, double left, double right, double low,
                           double high) {
    double x = test_uniform(random, left, right);
    double y = test_uniform(random, low, high);
    return bw_v(x, y);
}

static bw_scheme fresh(void) {
    static bw_scheme scheme;
    bw_scheme_fresh(0, 3, &scheme);
    return scheme;
}

/// A scheme with no left-right symmetry left: homes nudged, a few places pinned on one side only.
static bw_scheme lopsided(unsigned long long seed) {
    bw_scheme scheme = fresh();
    unsigned long long random = seed;
    for (int g = 0; g < scheme.stage_count; g++) {
        bw_stage *stage = &scheme.stages[g];
        for (int s = 0; s < stage->defenders; s++) {
            stage->spots[s].home.x += test_uniform(&random, -2, 2);
            stage->spots[s].home.y += test_uniform(&random, -0.5, 2);
        }
        for (int k = 0; k < 6; k++) {
            int l = (int)(test_random(&random) % (unsigned)scheme.landmark_count);
            int s = (int)(test_random(&random) % (unsigned)stage->defenders);
            stage->pinned[l][s] = 1;
            stage->pins[l][s] = random_place(&random, -8, 8, 1, 14);
        }
    }
    return scheme;
}

/// Pins one of each pair everywhere and lets the mirror pin the other, the centre line included.
static bw_scheme pinned_symmetric(void) {
    bw_scheme scheme = fresh();
    for (int g = 0; g < scheme.stage_count; g++) {
        bw_stage *stage = &scheme.stages[g];
        for (int l = 0; l < scheme.landmark_count; l++) {
            int spot = l % stage->defenders;
            if (scheme.landmarks[l].at.x < 0) continue;
            stage->pinned[l][spot] = 1;
            stage->pins[l][spot] = bw_v(-2.25 - 0.37 * l, 3.1 + 0.21 * l);
        }
        bw_mirror_pins(&scheme, stage);
    }
    return scheme;
}

static bw_vec random_ball(unsigned long long *random) {
    return random_place(random, -20, 20, -12, 25);
}

static void check_mirrored(const bw_station *a, const bw_station *b, int spots) {
    for (int i = 0; i < spots; i++) {
        CHECK_SAME(a[i].at.x, -b[i].at.x);
        CHECK_SAME(a[i].at.y, b[i].at.y);
        CHECK_INT(a[i].duty, b[i].duty);
        CHECK_INT(a[i].man, b[i].man);
    }
}

static void mirrored_scheme_mirrors_exactly(void) {
    unsigned long long random = 7;
    for (int trial = 0; trial < 60; trial++) {
        bw_scheme scheme = lopsided(100 + (unsigned)trial), image;
        bw_scheme_mirror(&scheme, &image);
        for (int g = 0; g < scheme.stage_count; g++) {
            bw_plan plan, plan_image;
            bw_plan_build(&scheme, g, &plan);
            bw_plan_build(&image, g, &plan_image);
            for (int k = 0; k < 40; k++) {
                bw_vec ball = random_ball(&random), men[6], men_image[6];
                if (k % 5 == 0) ball.x = 0;
                if (k % 7 == 0) ball = scheme.landmarks[k % scheme.landmark_count].at;
                for (int a = 0; a < 6; a++) {
                    men[a] = random_ball(&random);
                    men_image[a] = bw_mirror(men[a]);
                }
                int count = k % 2 ? 6 : 0;
                bw_station out[BW_MAX_SPOTS], out_image[BW_MAX_SPOTS];
                bw_where(&plan, ball, men, count, out);
                bw_where(&plan_image, bw_mirror(ball), men_image, count, out_image);
                check_mirrored(out, out_image, plan.spots);
            }
        }
    }
}

static void symmetric_scheme_mirrors_itself(void) {
    unsigned long long random = 11;
    const bw_scheme schemes[] = {fresh(), pinned_symmetric()};
    for (int n = 0; n < 2; n++) {
        for (int g = 0; g < schemes[n].stage_count; g++) {
            const bw_stage *stage = &schemes[n].stages[g];
            bw_plan plan;
            bw_plan_build(&schemes[n], g, &plan);
            for (int k = 0; k < 500; k++) {
                bw_vec ball = random_ball(&random);
                if (k % 9 == 0) ball = schemes[n].landmarks[k % schemes[n].landmark_count].at;
                if (ball.x == 0) continue; // a dead tie goes to the lead side
                bw_station right[BW_MAX_SPOTS], left[BW_MAX_SPOTS];
                bw_where(&plan, ball, NULL, 0, right);
                bw_where(&plan, bw_mirror(ball), NULL, 0, left);
                for (int s = 0; s < plan.spots; s++) {
                    int twin = stage->spots[s].twin;
                    CHECK(twin >= 0);
                    if (twin < 0) continue;
                    CHECK_SAME(left[twin].at.x, -right[s].at.x);
                    CHECK_SAME(left[twin].at.y, right[s].at.y);
                    CHECK_INT(left[twin].duty, right[s].duty);
                }
            }
        }
    }
}

static void every_duty_is_held_once(void) {
    unsigned long long random = 13;
    bw_scheme scheme = fresh();
    for (int g = 0; g < scheme.stage_count; g++) {
        bw_plan plan;
        bw_plan_build(&scheme, g, &plan);
        for (int k = 0; k < 2000 + scheme.landmark_count; k++) {
            bw_vec ball = k < scheme.landmark_count ? scheme.landmarks[k].at : random_ball(&random);
            bw_station out[BW_MAX_SPOTS];
            int count[BW_DUTY_COUNT] = {0};
            bw_where(&plan, ball, NULL, 0, out);
            for (int s = 0; s < plan.spots; s++)
                count[out[s].duty]++;
            CHECK(count[BW_DUTY_BALL] == 1 ||
                  (count[BW_DUTY_BALL] == 0 && count[BW_DUTY_HOLD] == 2));
            if (count[BW_DUTY_BALL] == 0) CHECK(ball.y < 0);
            CHECK_INT(count[BW_DUTY_CREASE], 1);
        }
    }
}

static void pins_are_obeyed_at_their_landmark(void) {
    for (unsigned trial = 0; trial < 40; trial++) {
        bw_scheme scheme = lopsided(500 + trial);
        for (int g = 0; g < scheme.stage_count; g++) {
            bw_plan plan;
            bw_plan_build(&scheme, g, &plan);
            for (int l = 0; l < scheme.landmark_count; l++) {
                bw_station out[BW_MAX_SPOTS];
                bw_where(&plan, scheme.landmarks[l].at, NULL, 0, out);
                for (int s = 0; s < plan.spots; s++) {
                    if (!scheme.stages[g].pinned[l][s]) continue;
                    CHECK_NEAR(out[s].at.x, scheme.stages[g].pins[l][s].x, 1e-12);
                    CHECK_NEAR(out[s].at.y, scheme.stages[g].pins[l][s].y, 1e-12);
                }
            }
        }
    }
}

/// Where nobody changes his duty the shape is continuous: a small step of the ball, a small step of
/// every man.
static void places_are_continuous_between_changes_of_duty(void) {
    unsigned long long random = 17;
    int compared = 0;
    for (unsigned trial = 0; trial < 10; trial++) {
        bw_scheme scheme = lopsided(900 + trial);
        for (int g = 0; g < scheme.stage_count; g++) {
            bw_plan plan;
            bw_plan_build(&scheme, g, &plan);
            for (int k = 0; k < 400; k++) {
                bw_vec ball = random_ball(&random);
                if (bw_length(ball) < 2 || (ball.y < 0.01 && ball.y > -0.01)) continue;
                bw_vec near = bw_add(ball, bw_v(1e-4, -0.5e-4));
                bw_station a[BW_MAX_SPOTS], b[BW_MAX_SPOTS];
                bw_where(&plan, ball, NULL, 0, a);
                bw_where(&plan, near, NULL, 0, b);
                bool same = true;
                for (int s = 0; s < plan.spots; s++)
                    same = same && a[s].duty == b[s].duty;
                if (!same) continue;
                compared++;
                for (int s = 0; s < plan.spots; s++)
                    CHECK(bw_distance(a[s].at, b[s].at) < 2e-3);
            }
        }
    }
    CHECK(compared > 8000);
}

static void order_of_spots_does_not_matter(void) {
    bw_scheme scheme = fresh(), shuffled = fresh();
    int g = bw_scheme_stage(&scheme, 5);
    bw_stage *stage = &shuffled.stages[g];
    for (int s = 0; s < 5; s++)
        stage->spots[s] = scheme.stages[g].spots[4 - s];
    stage->rule.crease = 4 - scheme.stages[g].rule.crease;
    bw_plan a, b;
    bw_plan_build(&scheme, g, &a);
    bw_plan_build(&shuffled, g, &b);
    unsigned long long random = 19;
    for (int k = 0; k < 1000; k++) {
        bw_vec ball = random_ball(&random);
        if (k % 4 == 0) ball.x = 0;
        bw_station x[BW_MAX_SPOTS], y[BW_MAX_SPOTS];
        bw_where(&a, ball, NULL, 0, x);
        bw_where(&b, ball, NULL, 0, y);
        for (int s = 0; s < 5; s++) {
            CHECK_SAME(x[s].at.x, y[4 - s].at.x);
            CHECK_SAME(x[s].at.y, y[4 - s].at.y);
            CHECK_INT(x[s].duty, y[4 - s].duty);
        }
    }
}

static void shading_is_bounded_and_toward_the_man(void) {
    bw_scheme scheme = fresh();
    int g = bw_scheme_stage(&scheme, 4);
    bw_plan plan;
    bw_plan_build(&scheme, g, &plan);
    unsigned long long random = 23;
    int moved = 0;
    for (int k = 0; k < 2000; k++) {
        bw_vec ball = random_place(&random, -14, 14, 2, 16), man;
        bw_station alone[BW_MAX_SPOTS], shaded[BW_MAX_SPOTS];
        bw_where(&plan, ball, NULL, 0, alone);
        man = random_place(&random, -8, 8, 1, 12);
        bw_where(&plan, ball, &man, 1, shaded);
        for (int s = 0; s < plan.spots; s++) {
            double step = bw_distance(alone[s].at, shaded[s].at);
            CHECK(step <= plan.rule.area + 1e-12);
            CHECK_INT(alone[s].duty, shaded[s].duty);
            if (step > 0) moved++;
        }
    }
    CHECK(moved > 300);
}

/// A man who shades all the way stands between the attacker and the goal, on the ball's side.
static void who_shades_stands_goal_side_and_ball_side(void) {
    bw_scheme scheme = fresh();
    bw_plan plan;
    bw_plan_build(&scheme, bw_scheme_stage(&scheme, 4), &plan);
    plan.rule.pull = 1;
    plan.rule.area = 8;
    unsigned long long random = 29;
    int seen = 0;
    for (int k = 0; k < 500; k++) {
        const bw_vec ball = random_place(&random, -14, 14, 4, 16);
        const bw_vec man = random_place(&random, -7, 7, 3, 11);
        if (bw_distance(ball, man) < 2) continue;
        bw_station alone[BW_MAX_SPOTS], shaded[BW_MAX_SPOTS];
        bw_where(&plan, ball, NULL, 0, alone);
        bw_where(&plan, ball, &man, 1, shaded);
        for (int s = 0; s < plan.spots; s++) {
            const bw_vec at = shaded[s].at;
            // Not all the way, where that is farther than his area.
            if (shaded[s].man != 0 || bw_distance(alone[s].at, at) > 7.9) continue;
            seen++;
            CHECK(bw_length(at) < bw_length(man) - 0.4);
            const double side = bw_cross(man, bw_sub(at, man)),
                         of_ball = bw_cross(man, bw_sub(ball, man));
            CHECK(side * of_ball >= 0);
        }
    }
    CHECK(seen > 100);
}

static void match_up_gives_every_man_one_attacker(void) {
    bw_scheme scheme = fresh();
    int g = bw_scheme_stage(&scheme, 6);
    bw_plan plan;
    bw_plan_build(&scheme, g, &plan);
    unsigned long long random = 29;
    for (int k = 0; k < 300; k++) {
        bw_vec men[6];
        for (int a = 0; a < 6; a++)
            men[a] = random_ball(&random);
        bw_station out[BW_MAX_SPOTS];
        bw_where(&plan, men[2], men, 6, out);
        unsigned seen = 0;
        for (int s = 0; s < 6; s++) {
            CHECK(out[s].man >= 0);
            seen |= 1u << out[s].man;
            if (out[s].duty == BW_DUTY_BALL) CHECK_INT(out[s].man, 2);
        }
        CHECK_INT(seen, 63);
    }
}

static void check_same_place(bw_vec a, bw_vec b) {
    CHECK_SAME(a.x, b.x);
    CHECK_SAME(a.y, b.y);
}

/// Field by field: a copy of a structure need not copy its padding.
static void mirror_twice_is_the_same_scheme(void) {
    bw_scheme scheme = lopsided(3), once, twice;
    bw_scheme_mirror(&scheme, &once);
    bw_scheme_mirror(&once, &twice);
    CHECK_INT(once.lead, !scheme.lead);
    CHECK_INT(twice.lead, scheme.lead);
    for (int l = 0; l < scheme.landmark_count; l++)
        check_same_place(scheme.landmarks[l].at, twice.landmarks[l].at);
    for (int g = 0; g < scheme.stage_count; g++) {
        const bw_stage *a = &scheme.stages[g], *b = &twice.stages[g];
        check_same_place(a->rule.hold_at, b->rule.hold_at);
        check_same_place(a->rule.crease_at, b->rule.crease_at);
        for (int s = 0; s < a->defenders; s++) {
            check_same_place(a->spots[s].home, b->spots[s].home);
            for (int l = 0; l < scheme.landmark_count; l++) {
                CHECK_INT(a->pinned[l][s], b->pinned[l][s]);
                if (a->pinned[l][s]) check_same_place(a->pins[l][s], b->pins[l][s]);
            }
        }
    }
}

/// A stage of three with these homes, in metres, and everything else by the rule.
static bw_scheme three(bw_vec a, bw_vec b, bw_vec c) {
    bw_scheme scheme = fresh();
    scheme.stages[0].spots[0].home = a;
    scheme.stages[0].spots[1].home = b;
    scheme.stages[0].spots[2].home = c;
    bw_find_twins(&scheme);
    return scheme;
}

/// Shapes that are their own mirror image but have no two lowest men side by side: one low man, and
/// three in a line. A low pair chosen by numbering would favour one side.
static void odd_low_pairs_mirror_exactly(void) {
    const bw_scheme shapes[] = {three(bw_v(0, 2), bw_v(-4, 8), bw_v(4, 8)),
                                three(bw_v(0, 2), bw_v(0, 6), bw_v(0, 11))};
    for (int k = 0; k < BW_COUNT(shapes); k++) {
        bw_plan plan;
        bw_plan_build(&shapes[k], 0, &plan);
        unsigned long long random = 77;
        for (int i = 0; i < 2000; i++) {
            const bw_vec ball = random_ball(&random);
            bw_station right[BW_MAX_SPOTS], left[BW_MAX_SPOTS];
            bw_where(&plan, ball, NULL, 0, right);
            bw_where(&plan, bw_mirror(ball), NULL, 0, left);
            for (int s = 0; s < plan.spots; s++) {
                const int twin = shapes[k].stages[0].spots[s].twin;
                CHECK_SAME(left[twin].at.x, -right[s].at.x);
                CHECK_SAME(left[twin].at.y, right[s].at.y);
                CHECK_INT(left[twin].duty, right[s].duty);
            }
        }
    }
}

/// Fewer men than attackers: whatever their numbering, the ball is never left alone and the farthest
/// from the goal go free. Common practice, no source.
static void match_up_out_of_men_keeps_the_ball(void) {
    bw_scheme scheme = fresh();
    bw_plan plan;
    scheme.stages[1].match_up = true;
    bw_plan_build(&scheme, 1, &plan);
    const bw_vec men[] = {bw_v(5, 5),  bw_v(-5, 5), bw_v(3, 9),
                          bw_v(-3, 9), bw_v(0, 4),  bw_v(1, 15)};
    const bool free[] = {false, false, true, true, false, false};
    const bw_vec ball = men[5];
    for (int turn = 0; turn < BW_MAX_ATTACKERS; turn++) {
        bw_vec attackers[BW_MAX_ATTACKERS];
        for (int a = 0; a < BW_MAX_ATTACKERS; a++)
            attackers[a] = men[(a + turn) % BW_MAX_ATTACKERS];
        bw_station out[BW_MAX_SPOTS];
        bw_where(&plan, ball, attackers, BW_MAX_ATTACKERS, out);
        for (int s = 0; s < plan.spots; s++) {
            CHECK(out[s].man >= 0);
            if (out[s].man < 0) continue;
            const int whom = (out[s].man + turn) % BW_MAX_ATTACKERS;
            CHECK(!free[whom]);
            CHECK_INT(out[s].duty == BW_DUTY_BALL, whom == 5);
        }
    }
}

int main(int argc, char **argv) {
    RUN(mirrored_scheme_mirrors_exactly);
    RUN(symmetric_scheme_mirrors_itself);
    RUN(every_duty_is_held_once);
    RUN(pins_are_obeyed_at_their_landmark);
    RUN(places_are_continuous_between_changes_of_duty);
    RUN(order_of_spots_does_not_matter);
    RUN(shading_is_bounded_and_toward_the_man);
    RUN(who_shades_stands_goal_side_and_ball_side);
    RUN(match_up_gives_every_man_one_attacker);
    RUN(odd_low_pairs_mirror_exactly);
    RUN(match_up_out_of_men_keeps_the_ball);
    RUN(mirror_twice_is_the_same_scheme);
    return test_report(argc, argv);
}
