/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Motion against figures from outside the program.
///
/// Model: A. Fujimura, K. Sugihara, "Geometric analysis and quantitative evaluation of sport
/// teamwork", Systems and Computers in Japan 36(6), 2005; top speed 7.8 m/s and drag 1.3 /s are their
/// choice, from memory. Figures with ten digits were worked out for that model outside this program,
/// by closed form and by integration to 1e-11, which agreed. Published measurements: see each test.
#include "core/base.h"
#include "core/motion.h"

#include "harness.h"

static const bw_legs reference = {7.8, 1 / 1.3};

static double from_rest(bw_legs legs, double d) {
    const bw_body standing = {.at = bw_v(0, 0)};
    return bw_arrive(legs, standing, bw_v(0, d), BW_HOLD_FROM);
}

static void reachable_disc(void) {
    static const struct {
        double t, reach, coast, speed;
    } rows[] = {
        {0.5, 1.0322746606, 0.3676570948, 3.7280429413},
        {1, 3.4351907582, 0.5595909284, 5.6742520143},
        {2, 10.0456414693, 0.7120972475, 7.2206660899},
        {3, 17.5214514687, 0.7536600681, 7.6421130907},
    };
    for (int i = 0; i < BW_COUNT(rows); i++) {
        CHECK_NEAR(bw_reach(reference, rows[i].t), rows[i].reach, 1e-9);
        CHECK_NEAR(bw_coast(reference, rows[i].t), rows[i].coast, 1e-10);
        const bw_body standing = {.at = bw_v(0, 0)};
        const bw_body b = bw_advance(reference, standing, bw_v(0, reference.vmax), rows[i].t);
        CHECK_NEAR(b.velocity.y, rows[i].speed, 1e-9);
        CHECK_NEAR(b.at.y, rows[i].reach, 1e-9);
    }
}

/// Twenty steps of 0.05 s must be the exact solution; explicit Euler would give 3.3645284604 and
/// semi-implicit Euler 3.6528341105.
static void steps_are_exact(void) {
    bw_body body = {.at = bw_v(0, 0)};
    for (int i = 0; i < 20; i++)
        body = bw_advance(reference, body, bw_v(reference.vmax, 0), 0.05);
    CHECK_NEAR(body.at.x, 3.4351907582, 1e-10);
    CHECK_NEAR(body.at.x, bw_reach(reference, 1), 1e-12);
}

static void arrivals(void) {
    static const struct {
        bw_vec to, velocity;
        double t, tolerance;
    } rows[] = {
        {{1, 0}, {0, 0}, 0.4912886524, 1e-9},  {{5, 0}, {0, 0}, 1.2609212107, 1e-9},
        {{10, 0}, {0, 0}, 1.9936769592, 1e-9}, {{20, 0}, {0, 0}, 3.3231030005, 1e-9},
        {{30, 0}, {0, 0}, 4.6134731390, 1e-9}, {{10, 0}, {5, 0}, 1.5199021, 1e-8},
        {{10, 0}, {-5, 0}, 2.49512155, 1e-8},  {{0, 10}, {5, 0}, 2.07983525, 1e-8},
        {{10, 0}, {7.8, 0}, 10 / 7.8, 1e-9},   {{3, 4}, {2, -3}, 1.44565544, 1e-8},
        {{-4, 0}, {6, 0}, 1.73022255, 1e-8},   {{20, 0}, {6, 0}, 2.736556527, 1e-9},
    };
    for (int i = 0; i < BW_COUNT(rows); i++) {
        const bw_body body = {.at = bw_v(0, 0), .velocity = rows[i].velocity};
        for (bw_arrival kind = BW_FIRST_TOUCH; kind <= BW_HOLD_FROM; kind++)
            CHECK_NEAR(bw_arrive(reference, body, rows[i].to, kind), rows[i].t, rows[i].tolerance);
    }
}

/// The direction of drive that gets there.
static void arrival_directions(void) {
    static const struct {
        bw_vec to, velocity, drive;
    } rows[] = {
        {{0, 10}, {5, 0}, {-0.33777339, 0.94122746}},
        {{3, 4}, {2, -3}, {0.27396271, 0.96174031}},
        {{-4, 0}, {6, 0}, {-1, 0}},
    };
    for (int i = 0; i < BW_COUNT(rows); i++) {
        const bw_body body = {.at = bw_v(0, 0), .velocity = rows[i].velocity};
        const double t = bw_arrive(reference, body, rows[i].to, BW_HOLD_FROM);
        const bw_vec effort = bw_effort_toward(reference, body, rows[i].to, t);
        CHECK_NEAR(effort.x / reference.vmax, rows[i].drive.x, 1e-7);
        CHECK_NEAR(effort.y / reference.vmax, rows[i].drive.y, 1e-7);
    }
}

/// Running at 7.8 m/s at a target just ahead: in reach, out of reach, in reach for good. The figures
/// come from a scan in steps of 1e-5 s.
static void three_crossings(void) {
    static const struct {
        bw_vec to;
        double first, hold;
    } rows[] = {{{0.5, 0}, 0.064101, 1.111791},
                {{1, 0}, 0.128201, 0.979841},
                {{0.3, 0.05}, 1.159091, 1.159091}};
    for (int i = 0; i < BW_COUNT(rows); i++) {
        const bw_body body = {.at = bw_v(0, 0), .velocity = bw_v(7.8, 0)};
        CHECK_NEAR(bw_arrive(reference, body, rows[i].to, BW_FIRST_TOUCH), rows[i].first, 1e-5);
        CHECK_NEAR(bw_arrive(reference, body, rows[i].to, BW_HOLD_FROM), rows[i].hold, 1e-5);
    }
}

/// So near that the Lambert form loses half its digits: worked out outside this program with 50.
static void arrival_very_near(void) {
    CHECK_NEAR(from_rest(reference, 1e-4), 0.0044454335, 1e-10);
    CHECK_NEAR(from_rest(reference, 1e-9), 1.40442108763308795e-05, 1e-18);
}

/// Standing at 10 m against running at 5 m/s from 0 m: where both arrive together.
static void balance_point(void) {
    const bw_body runner = {.at = bw_v(0, 0), .velocity = bw_v(5, 0)};
    const bw_body stander = {.at = bw_v(10, 0)};
    const bw_vec balance = bw_v(6.416391661, 0);
    CHECK_NEAR(bw_arrive(reference, runner, balance, BW_HOLD_FROM), 1.025993631, 1e-9);
    CHECK_NEAR(bw_arrive(reference, stander, balance, BW_HOLD_FROM), 1.025993631, 1e-9);
}

/// A man trailing the play, at rest, 0.30 s late to react.
static void trailing_man(void) {
    CHECK_NEAR(0.30 + from_rest(reference, 30), 4.913473139, 1e-9);
    CHECK_NEAR(0.30 + from_rest(reference, 20), 3.623103001, 1e-9);
}

/// Arrive and stop, with the phases of drive and brake and the speed between them. No publication
/// was found; a linear programme of 400 steps confirms that nothing is faster (last column).
static void arrive_and_stop(void) {
    static const struct {
        double d, t, drive, brake, peak, programme;
    } rows[] = {
        {1, 0.6368328073, 0.3825189678, 0.2543138396, 3.0561498421, 0},
        {2, 0.9130975405, 0.5847538984, 0.3283436420, 4.1528586618, 0},
        {5, 1.5036705661, 1.0723481036, 0.4313224626, 5.8650699053, 1.503675},
        {10, 2.2700243425, 1.7760378123, 0.4939865302, 7.0248706980, 2.270026},
        {20, 3.6165747970, 3.0903386806, 0.5262361165, 7.6596079694, 0},
    };
    for (int i = 0; i < BW_COUNT(rows); i++) {
        const double t = bw_arrive_and_stop(reference, rows[i].d);
        const double drive = 0.5 * (t + rows[i].d / reference.vmax);
        CHECK_NEAR(t, rows[i].t, 1e-9);
        CHECK_NEAR(drive, rows[i].drive, 1e-9);
        CHECK_NEAR(t - drive, rows[i].brake, 1e-9);
        CHECK_NEAR(reference.vmax * bw_coast(reference, drive) / reference.tau, rows[i].peak, 1e-9);
        if (rows[i].programme > 0) CHECK_NEAR(t, rows[i].programme, 6e-6);
    }
}

/// The mono-exponential sprint (K. Furusawa, A. V. Hill, J. L. Parkinson 1927; P. Samozino et al.
/// 2016): time at distance for the model alone, four digits in metres and three in yards.
static void sprint_tables(void) {
    static const struct {
        bw_legs legs;
        double t[5];
    } metres[] = {{{9.0, 9.0 / 7}, {1.4128, 2.1566, 3.4179, 4.5826, 5.7151}},
                  {{8.0, 8 / 7.5}, {1.4063, 2.1783, 3.5276, 4.8049, 6.0630}}};
    static const double at_metres[] = {5, 10, 20, 30, 40};
    static const struct {
        bw_legs legs;
        double t[6];
    } yards[] = {{{8.8, 1.20}, {1.320, 2.015, 2.624, 3.194, 4.283, 5.342}},
                 {{7.758, 1.205}, {1.425, 2.188, 2.861, 3.496, 4.717, 5.911}}};
    static const double at_yards[] = {5, 10, 15, 20, 30, 40};
    for (int i = 0; i < 2; i++) {
        for (int k = 0; k < 5; k++)
            CHECK_NEAR(from_rest(metres[i].legs, at_metres[k]), metres[i].t[k], 0.5001e-4);
        for (int k = 0; k < 6; k++)
            CHECK_NEAR(from_rest(yards[i].legs, at_yards[k] * BW_METRES_PER_YARD), yards[i].t[k],
                       0.5001e-3);
    }
}

/// 63.212 % of top speed after tau, 95 % after 2.9957 tau.
static void share_of_top_speed(void) {
    const bw_legs legs = {1, 1.2};
    CHECK_NEAR(bw_coast(legs, 1.2) / 1.2, 0.63212, 0.5e-5);
    CHECK_NEAR(bw_coast(legs, 2.9957 * 1.2) / 1.2, 0.95, 1e-5);
}

/// Open example splits of M. Jovanovic, J. D. Vescovi 2020 (doi 10.31236/osf.io/4jw62) with the fit
/// they print, vmax 8.5911 and tau 0.8113: the printed residuals, observed minus fitted.
static void published_fit(void) {
    static const double at[] = {5, 10, 15, 20, 30, 40};
    static const double seconds[] = {1.158, 1.893, 2.541, 3.149, 4.313, 5.444};
    static const double residual[] = {-0.053, -0.004, 0.020, 0.027, 0.014, -0.022};
    const bw_legs legs = {8.5911, 0.8113};
    for (int i = 0; i < 6; i++)
        CHECK_NEAR(seconds[i] - from_rest(legs, at[i]), residual[i], 0.0006);
}

/// Men's 100 m final, Berlin 2009 (R. Graubner, E. Nixdorf, IAAF biomechanics report): ten official
/// splits, reaction 0.146 s. The model's best fit to them, worked out outside this program, is
/// 12.2146 m/s and 1.2367 s with an RMS error of 0.0116 s and a worst of 0.0226 s.
static void world_final(void) {
    static const double split[] = {1.88, 2.88, 3.78, 4.64, 5.47, 6.29, 7.10, 7.92, 8.74, 9.58};
    const bw_legs legs = {12.2146, 1.2367};
    double squares = 0;
    double worst = 0;
    for (int i = 0; i < 10; i++) {
        const double error = fabs(0.146 + from_rest(legs, 10 * (i + 1)) - split[i]);
        squares += error * error;
        worst = error > worst ? error : worst;
    }
    CHECK_NEAR(sqrt(squares / 10), 0.0116, 1e-4);
    CHECK_NEAR(worst, 0.0226, 1e-4);
}

int main(int argc, char **argv) {
    RUN(reachable_disc);
    RUN(steps_are_exact);
    RUN(arrivals);
    RUN(arrival_directions);
    RUN(three_crossings);
    RUN(arrival_very_near);
    RUN(balance_point);
    RUN(trailing_man);
    RUN(arrive_and_stop);
    RUN(sprint_tables);
    RUN(share_of_top_speed);
    RUN(published_fit);
    RUN(world_final);
    return test_report(argc, argv);
}
