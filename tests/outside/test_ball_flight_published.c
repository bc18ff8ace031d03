/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Ball flight against worked values of quadratic drag (closed form of any mechanics text; J. E. Goff
/// 2013), in yards and miles an hour for Cd 0.5 and in metres for k = 0.006.
#include "core/ball.h"
#include "core/base.h"
#include "harness.h"

static void metres(void) {
    CHECK_NEAR(bw_ball_time(25, 0.006, 20), 0.8499790105, 1e-9);
    CHECK_NEAR(bw_ball_speed(25, 0.006, 20), 22.1730109179, 1e-9);
    CHECK_NEAR(bw_ball_time(38, 0.006, 11), 0.2992399876, 1e-9);
    CHECK_NEAR(bw_ball_speed(38, 0.006, 11), 35.5729728431, 1e-9);
    CHECK_NEAR(bw_ball_time(38, 0.006, 9.144), 0.2473549777, 1e-9);
    CHECK_NEAR(bw_ball_time(38, 0.006, 13.716), 0.3762155803, 1e-9);
    CHECK_NEAR(bw_ball_distance(25, 0.006, 1), 23.2936570625, 1e-9);
}

/// rho 1.225, Cd 0.5, a ball in the middle of the legal range: k = 0.0067111 per metre.
static void yards(void) {
    const double k = 0.0067111, mph = 0.44704, yd = BW_METRES_PER_YARD;
    static const struct {
        double mph, yards, seconds;
    } shots[] = {{60, 5, 0.1731}, {60, 15, 0.5356}, {75, 10, 0.2813},  {75, 15, 0.4285},
                 {90, 8, 0.1863}, {90, 12, 0.2830}, {100, 10, 0.2109}, {100, 15, 0.3214}};
    for (int i = 0; i < BW_COUNT(shots); i++)
        CHECK_NEAR(bw_ball_time(shots[i].mph * mph, k, shots[i].yards * yd), shots[i].seconds,
                   1.01e-4);
    CHECK_NEAR(bw_ball_speed(75 * mph, k, 15 * yd) / mph, 68.40, 0.006);
    CHECK_NEAR(bw_ball_speed(100 * mph, k, 15 * yd) / mph, 91.21, 0.006);
    CHECK_NEAR(bw_ball_time(15, k, 10 * yd), 0.629, 6e-4);
    CHECK_NEAR(bw_ball_time(20, k, 20 * yd), 0.973, 6e-4);
    CHECK_NEAR(bw_ball_time(25, k, 30 * yd), 1.205, 6e-4);
}

/// Against integrating v' = -k v^2 step by step.
static void stepwise(void) {
    double v = 18, x = 0;
    const double dt = 1e-5;
    for (int i = 0; i < 100000; i++) {
        const double middle = v - 0.5 * dt * BW_BALL_DRAG * v * v;
        x += dt * middle;
        v -= dt * BW_BALL_DRAG * middle * middle;
    }
    CHECK_NEAR(bw_ball_distance(18, BW_BALL_DRAG, 1), x, 1e-8);
    CHECK_NEAR(bw_ball_time(18, BW_BALL_DRAG, x), 1, 1e-8);
    CHECK_NEAR(bw_ball_speed(18, BW_BALL_DRAG, x), v, 1e-8);
}

int main(int argc, char **argv) {
    RUN(metres);
    RUN(yards);
    RUN(stepwise);
    return test_report(argc, argv);
}
