/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The core's exponential and arrival times inside a published model that is not ours: competing-rate
/// control of a place (W. Spearman 2018), sigma 0.45 s, lambda 4.3 1/s, with the drag motion of A.
/// Fujimura and K. Sugihara 2005, vmax 7.8, alpha 1.3.
#include "core/ball.h"
#include "core/motion.h"
#include "harness.h"

static const double scale = 0.2480980029; // sigma sqrt(3) / pi
static const double rate = 4.3;

static double arrived(double t, double at) {
    return 1 / (1 + bw_exp(-(t - at) / scale));
}

static void sigmoid(void) {
    const double late[] = {-1, -0.5, 0, 0.25, 0.5, 1};
    const double want[] = {0.01745251, 0.11760247, 0.5, 0.73256319, 0.88239753, 0.98254749};
    for (int i = 0; i < 6; i++)
        CHECK_NEAR(arrived(late[i], 0), want[i], 1e-8);
}

/// Shares of control of up to three players who could be there at the times `at`, from t0 on.
static void compete(const double *at, const double *weight, int n, double t0, double *share) {
    const double dt = 1e-3;
    for (int i = 0; i < n; i++)
        share[i] = 0;
    for (double t = t0; t < t0 + 14; t += dt) {
        // Midpoint rule on the free share.
        double free = 1, pull = 0;
        for (int i = 0; i < n; i++) {
            free -= share[i];
            pull += rate * weight[i] * arrived(t + 0.5 * dt, at[i]);
        }
        const double taken = free * (1 - bw_exp(-pull * dt));
        for (int i = 0; i < n; i++)
            share[i] += taken * rate * weight[i] * arrived(t + 0.5 * dt, at[i]) / pull;
    }
}

static void two_and_three_players(void) {
    double share[3];
    const double even[] = {1, 1, 1}, strong[] = {1, 1.72, 1};
    compete((const double[]){2, 2.5}, even, 2, 0, share);
    CHECK_NEAR(share[0], 0.80110818, 1e-5);
    compete((const double[]){2, 2.5}, strong, 2, 0, share);
    CHECK_NEAR(share[0], 0.71590661, 1e-5);
    compete((const double[]){2, 2.2, 2.6}, even, 3, 0, share);
    CHECK_NEAR(share[0], 0.58350197, 1e-5);
    CHECK_NEAR(share[2], 0.08651391, 1e-5);
    compete((const double[]){2, 2.5}, even, 2, 3, share);
    CHECK_NEAR(share[0], 0.51829242, 1e-5);
}

/// Lane margin of a 20 m, 25 m/s pass without drag: how much a defender misses it by.
static double margin(bw_vec from) {
    const bw_legs legs = {7.8, 1 / 1.3};
    double least = 1e9;
    for (double t = 0; t <= 0.8; t += 1e-4) {
        const double gap = bw_distance(bw_v(25 * t, 0), from) - bw_reach(legs, t);
        least = gap < least ? gap : least;
    }
    return least;
}

static void lanes(void) {
    CHECK_NEAR(margin(bw_v(12, 4)), 2.997515, 1e-5);
    CHECK_NEAR(margin(bw_v(12, 2)), 1.019754, 1e-5);
    CHECK_NEAR(margin(bw_v(18, 2)), -0.005930, 1e-5);
}

int main(int argc, char **argv) {
    RUN(sigmoid);
    RUN(two_and_three_players);
    RUN(lanes);
    return test_report(argc, argv);
}
