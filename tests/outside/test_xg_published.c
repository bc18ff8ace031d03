/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The shot model against the few published anchors, the table against a fine integral, and the
/// measures of calibration against a worked example.
#include "core/base.h"
#include "core/shot.h"
#include "harness.h"

static bw_shot_table table;
static const bw_field *field;

static double straight(double yards) {
    return bw_shot_worth(&table, bw_v(0, yards * BW_METRES_PER_YARD));
}

static void ready(void) {
    field = bw_field_find("men-ncaa");
    if (!field) field = bw_field_at(0);
    bw_shot_build(bw_level_find("college"), field, &table);
}

/// Professional men, 2015: 13.5 % of shots from beyond the 16 yd arc score (league figures reported in
/// a national magazine, 2016). A shot with time and room at 16 yd should be near that.
static void beyond_sixteen_yards(void) {
    CHECK(straight(16) > 0.10 && straight(16) < 0.14);
    CHECK(straight(18) > 0.05);
}

/// Division I men, 2022-23: 29.5 % of all shots score, mostly from 5 to 15 yd and most of them
/// troubled, so time and room must lie above it inside 10 yd and bracket it between 5 and 15.
static void all_shots(void) {
    CHECK(straight(5) > 0.55 && straight(5) < 0.75);
    CHECK(straight(10) > 0.295 && straight(10) < 0.45);
    CHECK(straight(15) < 0.295);
}

/// Farther or at a sharper angle is never better; left is right.
static void monotone(void) {
    for (double d = 2; d < 24; d += 0.25) {
        CHECK(bw_shot_worth(&table, bw_v(0, d + 0.25)) <= bw_shot_worth(&table, bw_v(0, d)));
        for (int a = 10; a < 90; a += 10) {
            const double r = a * BW_PI / 180, s = (a + 10) * BW_PI / 180;
            const double sharp = bw_shot_worth(&table, bw_v(d * cos(r), d * sin(r)));
            CHECK(sharp <= bw_shot_worth(&table, bw_v(d * cos(s), d * sin(s))) + 0.004);
            CHECK_SAME(sharp, bw_shot_worth(&table, bw_v(-d * cos(r), d * sin(r))));
        }
    }
    CHECK_SAME(bw_shot_worth(&table, bw_v(3, 0)), 0);
    CHECK_SAME(bw_shot_worth(&table, bw_v(1, -4)), 0);
}

/// Differential: the table against the integral on a grid ten times as fine.
static void table_is_the_integral(void) {
    unsigned long long seed = 5;
    for (int i = 0; i < 80; i++) {
        const bw_vec p = bw_v(test_uniform(&seed, -14, 14), test_uniform(&seed, 2, 20));
        const double d = bw_length(p);
        const double fine =
            bw_shot_integral(bw_level_find("college"), field->goal, d, p.y / d, 100);
        CHECK_NEAR(bw_shot_worth(&table, p), fine, 0.02);
    }
}

/// The search's hope really is the most within a disc.
static void most_is_the_most(void) {
    unsigned long long seed = 9;
    for (int i = 0; i < 20000; i++) {
        const bw_vec p = bw_v(test_uniform(&seed, -24, 24), test_uniform(&seed, -12, 30));
        const double r = test_uniform(&seed, 0, 25), a = test_uniform(&seed, 0, 2 * BW_PI);
        const double k = r * sqrt(test_uniform(&seed, 0, 1));
        const bw_vec q = bw_v(p.x + k * cos(a), p.y + k * sin(a));
        CHECK(bw_shot_most(&table, p, r) >= bw_shot_worth(&table, q));
    }
}

static void defenders_take_away(void) {
    const bw_level *level = bw_level_find("college");
    const bw_vec shooter = bw_v(2, 9);
    CHECK_SAME(bw_shot_left(level, shooter, bw_v(12, 2)), 1);
    CHECK(bw_shot_left(level, shooter, bw_v(1.8, 8)) < bw_shot_left(level, shooter, bw_v(2.2, 10)));
    CHECK(bw_shot_left(level, shooter, bw_v(1, 4.5)) < 0.75);
    unsigned long long seed = 4;
    for (int i = 0; i < 2000; i++) {
        const bw_vec s = bw_v(test_uniform(&seed, -9, 9), test_uniform(&seed, 1, 15));
        const bw_vec d = bw_v(test_uniform(&seed, -9, 9), test_uniform(&seed, 0, 15));
        const double left = bw_shot_left(level, s, d);
        CHECK(left > 0 && left <= 1);
        CHECK_SAME(left, bw_shot_left(level, bw_mirror(s), bw_mirror(d)));
    }
}

/// G. W. Brier 1950, A. H. Murphy 1973, D. J. Spiegelhalter 1986, on twenty forecasts: the message is
/// that twenty shots cannot reject a model.
static void twenty_shots_prove_nothing(void) {
    static const struct {
        double p;
        int goals, shots;
    } bins[] = {{0.1, 1, 8}, {0.3, 2, 5}, {0.5, 3, 4}, {0.8, 2, 3}};
    double brier = 0, z = 0, var = 0, loss = 0, expected = 0;
    for (int k = 0; k < 4; k++) {
        const double p = bins[k].p;
        for (int i = 0; i < bins[k].shots; i++) {
            const double o = i < bins[k].goals;
            brier += (p - o) * (p - o) / 20;
            loss -= (o > 0 ? bw_log(p) : bw_log(1 - p)) / 20;
            z += (o - p) * (1 - 2 * p);
            var += (1 - 2 * p) * (1 - 2 * p) * p * (1 - p);
            expected += p;
        }
    }
    CHECK_NEAR(brier, 0.1925, 1e-12);
    CHECK_NEAR(loss, 0.5673196440, 1e-9);
    CHECK_NEAR(z / sqrt(var), 0.6701505774, 1e-9);
    CHECK_NEAR(expected, 6.7, 1e-12);
}

int main(int argc, char **argv) {
    ready();
    RUN(beyond_sixteen_yards);
    RUN(all_shots);
    RUN(monotone);
    RUN(table_is_the_integral);
    RUN(most_is_the_most);
    RUN(defenders_take_away);
    RUN(twenty_shots_prove_nothing);
    return test_report(argc, argv);
}
