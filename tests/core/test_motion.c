/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Properties of motion, and arrival against a long double scan of the reachable disc that shares
/// nothing with the root finder. Published values are in tests/outside/test_motion_published.c.
#include "core/hash.h"
#include "core/motion.h"

#include "harness.h"
#include <stdbool.h>

static const bw_legs reference = {7.8, 1 / 1.3};
static unsigned long long seed = 21;

// One draw a statement throughout: the order of arguments is the compiler's choice.
static bw_legs some_legs(void) {
    const double vmax = test_uniform(&seed, 3, 10);
    const double tau = test_uniform(&seed, 0.4, 2);
    return (bw_legs){vmax, tau};
}

static bw_vec around(double radius) {
    const double angle = test_uniform(&seed, -BW_PI, BW_PI);
    return bw_v(radius * cos(angle), radius * sin(angle));
}

static bw_body some_body(bw_legs legs) {
    const double x = test_uniform(&seed, -30, 30);
    const double y = test_uniform(&seed, -15, 50);
    const bw_vec velocity = around(test_uniform(&seed, 0, legs.vmax));
    return (bw_body){.at = bw_v(x, y), .velocity = velocity};
}

static long double exact_coast(bw_legs legs, long double t) {
    return -(long double)legs.tau * expm1l(-t / legs.tau);
}

/// e^-u - 1 + u by its series where the closed form would cancel.
static long double exact_reach(bw_legs legs, long double t) {
    const long double u = t / legs.tau;
    if (u > 1) return legs.vmax * (long double)legs.tau * (expm1l(-u) + u);
    long double sum = 0;
    long double term = u * u / 2;
    for (int k = 3; fabsl(term) > 1e-22L * sum; k++) {
        sum += term;
        term *= -u / k;
    }
    return legs.vmax * (long double)legs.tau * sum;
}

static void coast_and_reach_keep_their_digits(void) {
    for (int i = 0; i < 100000; i++) {
        const bw_legs legs = some_legs();
        const double t = pow(10, test_uniform(&seed, -12, 1.5));
        CHECK_NEAR((double)(bw_coast(legs, t) / exact_coast(legs, t)), 1, 2e-15);
        CHECK_NEAR((double)(bw_reach(legs, t) / exact_reach(legs, t)), 1, 6e-15);
    }
    CHECK_SAME(bw_coast(reference, 0), 0);
    CHECK_SAME(bw_reach(reference, 0), 0);
}

static void reach_grows(void) {
    double before = 0;
    double coast_before = 0;
    for (int i = 1; i <= 200000; i++) {
        const double t = i * 5e-5;
        const double reach = bw_reach(reference, t);
        const double coast = bw_coast(reference, t);
        CHECK(reach > before);
        CHECK(coast > coast_before && coast < reference.tau);
        before = reach;
        coast_before = coast;
    }
}

/// Going on for t1 and then t2 is going on for t1 + t2: the step has no error of its own.
static void steps_join(void) {
    for (int i = 0; i < 50000; i++) {
        const bw_legs legs = some_legs();
        const bw_body start = some_body(legs);
        const bw_vec effort = around(test_uniform(&seed, 0, legs.vmax));
        const double t1 = test_uniform(&seed, 0, 3);
        const double t2 = test_uniform(&seed, 0, 3);
        const bw_body twice = bw_advance(legs, bw_advance(legs, start, effort, t1), effort, t2);
        const bw_body once = bw_advance(legs, start, effort, t1 + t2);
        CHECK_NEAR(bw_distance(twice.at, once.at), 0, 1e-12);
        CHECK_NEAR(bw_distance(twice.velocity, once.velocity), 0, 1e-12);
        CHECK(bw_length(once.velocity) <= legs.vmax * (1 + 1e-12));
    }
}

static void no_time_changes_nothing(void) {
    const bw_body start = some_body(reference);
    const bw_body same = bw_advance(reference, start, bw_v(3, -4), 0);
    CHECK_SAME(same.at.x, start.at.x);
    CHECK_SAME(same.at.y, start.at.y);
    CHECK_SAME(same.velocity.x, start.velocity.x);
    CHECK_SAME(same.velocity.y, start.velocity.y);
}

static bw_body mirrored(bw_body body) {
    return (bw_body){bw_mirror(body.at), bw_mirror(body.velocity)};
}

static void mirrors_to_the_last_bit(void) {
    for (int i = 0; i < 50000; i++) {
        const bw_legs legs = some_legs();
        const bw_body body = some_body(legs);
        const bw_vec target = bw_add(body.at, around(test_uniform(&seed, 0, 8)));
        const bw_vec effort = around(legs.vmax);
        const double t = test_uniform(&seed, 0.01, 2);
        const bw_body here = bw_advance(legs, body, effort, t);
        const bw_body there = bw_advance(legs, mirrored(body), bw_mirror(effort), t);
        CHECK_SAME(there.at.x, -here.at.x);
        CHECK_SAME(there.at.y, here.at.y);
        CHECK_SAME(there.velocity.x, -here.velocity.x);
        CHECK_SAME(there.velocity.y, here.velocity.y);
        for (bw_arrival kind = BW_FIRST_TOUCH; kind <= BW_HOLD_FROM; kind++)
            CHECK_SAME(bw_arrive(legs, mirrored(body), bw_mirror(target), kind),
                       bw_arrive(legs, body, target, kind));
        const bw_vec toward = bw_effort_toward(legs, body, target, t);
        const bw_vec mirror = bw_effort_toward(legs, mirrored(body), bw_mirror(target), t);
        CHECK_SAME(mirror.x, -toward.x);
        CHECK_SAME(mirror.y, toward.y);
    }
}

/// How far the target is outside the reachable disc at t, metres.
static long double outside_by(bw_legs legs, bw_body body, bw_vec target, long double t) {
    const long double coast = exact_coast(legs, t);
    const long double x = (long double)target.x - body.at.x - body.velocity.x * coast;
    const long double y = (long double)target.y - body.at.y - body.velocity.y * coast;
    return hypotl(x, y) - exact_reach(legs, t);
}

/// The crossing nearest t, by Newton's method on differences. At a grazing touch the crossing itself
/// is only as sharp as the root of the rounding error, so those are not compared.
static void check_crossing(bw_legs legs, bw_body body, bw_vec target, double t) {
    const long double step = 1e-7L * t;
    long double root = t;
    long double slope = 0;
    for (int i = 0; i < 4; i++) {
        slope = (outside_by(legs, body, target, root + step) -
                 outside_by(legs, body, target, root - step)) /
                (2 * step);
        if (fabsl(slope) < 1e-3L * bw_min(t, 1)) return;
        root -= outside_by(legs, body, target, root) / slope;
    }
    CHECK(slope < 0);
    CHECK_NEAR((double)(t - root), 0, 1e-9);
}

/// Looks at the whole disc on a grid: nothing is in reach before the first touch, and nothing falls
/// out of reach after the hold.
static void check_arrival(bw_legs legs, bw_body body, bw_vec target) {
    enum { GRID = 400 };
    const double first = bw_arrive(legs, body, target, BW_FIRST_TOUCH);
    const double hold = bw_arrive(legs, body, target, BW_HOLD_FROM);
    CHECK(first >= 0 && first <= hold);
    check_crossing(legs, body, target, first);
    check_crossing(legs, body, target, hold);
    for (int i = 0; i < GRID; i++) {
        const double before = first * i / GRID;
        const double after = hold + 2.5 * legs.tau * (i + 1) / GRID;
        CHECK(outside_by(legs, body, target, before) > -1e-9L);
        CHECK(outside_by(legs, body, target, after) < 1e-9L);
    }
}

static void arrivals_anywhere(void) {
    for (int i = 0; i < 3000; i++) {
        const bw_legs legs = some_legs();
        const bw_body body = some_body(legs);
        check_arrival(legs, body, bw_add(body.at, around(pow(10, test_uniform(&seed, -2, 2)))));
    }
}

/// Fast toward a target close ahead, a little to the side: where there are three crossings, or
/// nearly three. The count guards against a test that never meets the case.
static void arrivals_with_an_overrun(void) {
    int overruns = 0;
    for (int i = 0; i < 6000; i++) {
        const bw_legs legs = some_legs();
        const bw_vec velocity = around(legs.vmax * test_uniform(&seed, 0.3, 1));
        const bw_body body = {.at = bw_v(0, 0), .velocity = velocity};
        const double ahead = legs.tau * pow(10, test_uniform(&seed, -2, -0.3));
        const double aside = pow(10, test_uniform(&seed, -4, -0.5)) * ahead;
        const bw_vec side = bw_v(-velocity.y, velocity.x);
        const bw_vec target = bw_add(bw_scale(velocity, ahead), bw_scale(side, aside));
        check_arrival(legs, body, target);
        overruns += bw_arrive(legs, body, target, BW_HOLD_FROM) >
                    bw_arrive(legs, body, target, BW_FIRST_TOUCH) + 0.01;
    }
    CHECK(overruns > 600);
}

/// Straight at the target, where the miss is nothing at all.
static void arrivals_dead_ahead(void) {
    for (int i = 1; i <= 400; i++) {
        const bw_body body = {.at = bw_v(0, 0), .velocity = bw_v(0, 6)};
        check_arrival(reference, body, bw_v(0, i * 0.01));
        check_arrival(reference, body, bw_v(0, -i * 0.01));
    }
}

static void arrivals_at_the_edges(void) {
    const bw_body standing = {.at = bw_v(2, 3)};
    const bw_body moving = {.at = bw_v(2, 3), .velocity = bw_v(0, 5)};
    CHECK_SAME(bw_arrive(reference, standing, standing.at, BW_FIRST_TOUCH), 0);
    CHECK_SAME(bw_arrive(reference, standing, standing.at, BW_HOLD_FROM), 0);
    CHECK_SAME(bw_arrive(reference, moving, moving.at, BW_FIRST_TOUCH), 0);
    const double back = bw_arrive(reference, moving, moving.at, BW_HOLD_FROM);
    CHECK(back > 0.5 && back < 2);
    CHECK_NEAR((double)outside_by(reference, moving, moving.at, back), 0, 1e-9);
    // Continuous with a target a hair away, in any direction.
    for (int i = 0; i < 100; i++)
        CHECK_NEAR(bw_arrive(reference, moving, bw_add(moving.at, around(1e-9)), BW_HOLD_FROM),
                   back, 1e-8);
    check_arrival(reference, moving, bw_v(1000, 0));
    check_arrival(reference, moving, bw_v(2, -1000));
    // Pushed along faster than he can run himself: still an answer.
    const bw_body shoved = {.at = bw_v(0, 0), .velocity = bw_v(9, 0)};
    check_arrival(reference, shoved, bw_v(0.5, 0.01));
    check_arrival(reference, shoved, bw_v(8, 1));
}

static void farther_takes_longer_from_rest(void) {
    const bw_body standing = {.at = bw_v(0, 0)};
    double before = 0;
    for (double d = 1e-6; d < 1000; d *= 1.003) {
        const double t = bw_arrive(reference, standing, bw_v(0, d), BW_FIRST_TOUCH);
        CHECK(t > before);
        CHECK_SAME(bw_arrive(reference, standing, bw_v(0, d), BW_HOLD_FROM), t);
        CHECK_NEAR(bw_reach(reference, t), d, 1e-9 * (1 + d));
        before = t;
    }
}

/// Full effort along the direction that arrival implies ends on the target at that moment.
static void replayed_arrivals_land(void) {
    for (int i = 0; i < 20000; i++) {
        const bw_legs legs = some_legs();
        const bw_body body = some_body(legs);
        const bw_vec target = bw_add(body.at, around(test_uniform(&seed, 0.01, 30)));
        const double t = bw_arrive(legs, body, target, i % 2 ? BW_FIRST_TOUCH : BW_HOLD_FROM);
        const bw_vec carried = bw_scale(body.velocity, bw_coast(legs, t));
        const bw_vec need = bw_sub(bw_sub(target, body.at), carried);
        const bw_vec effort = bw_scale(bw_unit(need), legs.vmax);
        CHECK_NEAR(bw_distance(bw_advance(legs, body, effort, t).at, target), 0, 5e-9);
    }
}

/// Full drive for t1, full opposite drive for t2: t1 + t2 is the time, vmax (t1 - t2) the way.
static void replayed_stops_stop(void) {
    for (int i = 0; i < 20000; i++) {
        const bw_legs legs = some_legs();
        const double d = pow(10, test_uniform(&seed, -3, 2));
        const double t = bw_arrive_and_stop(legs, d);
        const double t1 = 0.5 * (t + d / legs.vmax);
        const double t2 = 0.5 * (t - d / legs.vmax);
        const bw_body rest = {.at = bw_v(0, 0)};
        const bw_body fast = bw_advance(legs, rest, bw_v(0, legs.vmax), t1);
        const bw_body end = bw_advance(legs, fast, bw_v(0, -legs.vmax), t2);
        CHECK_NEAR(end.at.y, d, 1e-12 * (1 + d));
        CHECK_NEAR(end.velocity.y, 0, 1e-12);
        CHECK(t > bw_arrive(legs, rest, bw_v(0, d), BW_HOLD_FROM));
    }
}

static void stops_keep_their_digits(void) {
    for (int i = 0; i < 50000; i++) {
        const bw_legs legs = some_legs();
        const double d = pow(10, test_uniform(&seed, -15, 3));
        const long double z = (long double)d / ((long double)legs.vmax * legs.tau);
        // For large z artanh's argument comes too near to 1: its expansion in e^-z instead.
        const long double e = expl(-z);
        const long double half =
            z < 10 ? atanhl(sqrtl(-expm1l(-z)))
                   : logl(2) + z / 2 - e / 4 - 3 * e * e / 32 - 5 * e * e * e / 96;
        CHECK_NEAR((double)(bw_arrive_and_stop(legs, d) / (2 * legs.tau * half)), 1, 2e-15);
    }
    CHECK_SAME(bw_arrive_and_stop(reference, 0), 0);
}

static void effort_lands_on_target(void) {
    int free = 0;
    for (int i = 0; i < 50000; i++) {
        const bw_legs legs = some_legs();
        const bw_body body = some_body(legs);
        const bw_vec target = bw_add(body.at, around(test_uniform(&seed, 0, 6)));
        const double horizon = test_uniform(&seed, 0.05, 2);
        const bw_vec effort = bw_effort_toward(legs, body, target, horizon);
        const bw_body there = bw_advance(legs, body, effort, horizon);
        const double reach = bw_reach(legs, horizon);
        const bw_body drift = bw_advance(legs, body, bw_v(0, 0), horizon);
        const double need = bw_distance(drift.at, target);
        CHECK(bw_length(effort) <= legs.vmax * (1 + 1e-15));
        if (need < reach) {
            free++;
            CHECK_NEAR(bw_distance(there.at, target), 0, 1e-12);
            CHECK(horizon >= bw_arrive(legs, body, target, BW_FIRST_TOUCH) - 1e-9);
        } else {
            CHECK_NEAR(bw_length(effort), legs.vmax, 1e-12);
            CHECK_NEAR(bw_distance(there.at, target), need - reach, 1e-11);
            CHECK(horizon <= bw_arrive(legs, body, target, BW_HOLD_FROM) + 1e-9);
        }
    }
    CHECK(free > 5000 && free < 45000);
}

static void effort_at_the_edges(void) {
    const bw_body standing = {.at = bw_v(1, 1)};
    const bw_vec none = bw_effort_toward(reference, standing, standing.at, 0.5);
    CHECK_SAME(none.x, 0);
    CHECK_SAME(none.y, 0);
    const bw_vec far = bw_effort_toward(reference, standing, bw_v(1, 1e6), 1e-9);
    CHECK_SAME(far.x, 0);
    CHECK_NEAR(far.y, reference.vmax, 1e-12);
}

static void speed_needed_is_the_speed_that_does_it(void) {
    for (int i = 0; i < 20000; i++) {
        const double tau = test_uniform(&seed, 0.4, 2);
        const double d = test_uniform(&seed, 0, 40);
        const double t = pow(10, test_uniform(&seed, -6, 1));
        const bw_legs legs = {bw_speed_needed(tau, d, t), tau};
        CHECK_NEAR(bw_reach(legs, t), d, 1e-13 * (1 + d));
    }
    CHECK_SAME(bw_speed_needed(1, 3, 0), INFINITY);
    CHECK_SAME(bw_speed_needed(1, 3, -1), INFINITY);
    CHECK_SAME(bw_speed_needed(1, 0, 2), 0);
}

/// See golden_bits in test_maths.c. Arrival branches on computed values, so here one bit counts.
static void golden_bits(void) {
    static const uint64_t golden = 0xa696f2c499c3523bull;
    uint64_t hash = BW_HASH_START;
    unsigned long long state = 22;
    for (int i = 0; i < 20000; i++) {
        double draw[6];
        for (int k = 0; k < 6; k++)
            draw[k] = test_uniform(&state, 0, 1);
        const bw_legs legs = {3 + 7 * draw[0], 0.4 + 1.6 * draw[1]};
        const bw_body body = {.velocity = bw_v(6 * draw[2] - 3, 6 * draw[3] - 3)};
        const bw_vec target = bw_v(8 * draw[4] - 4, 8 * draw[5] - 4);
        const bw_vec effort = bw_effort_toward(legs, body, target, 0.5);
        hash = bw_hash_vec(hash, effort);
        hash = bw_hash_vec(hash, bw_advance(legs, body, effort, 0.2).at);
        hash = bw_hash_double(hash, bw_arrive(legs, body, target, BW_FIRST_TOUCH));
        hash = bw_hash_double(hash, bw_arrive(legs, body, target, BW_HOLD_FROM));
        hash = bw_hash_double(hash, bw_arrive_and_stop(legs, bw_length(target)));
    }
    CHECK(hash == golden);
    if (hash != golden)
        fprintf(stderr, "the golden hash is now 0x%016llx\n", (unsigned long long)hash);
}

int main(int argc, char **argv) {
    RUN(coast_and_reach_keep_their_digits);
    RUN(reach_grows);
    RUN(steps_join);
    RUN(no_time_changes_nothing);
    RUN(mirrors_to_the_last_bit);
    RUN(arrivals_anywhere);
    RUN(arrivals_with_an_overrun);
    RUN(arrivals_dead_ahead);
    RUN(arrivals_at_the_edges);
    RUN(farther_takes_longer_from_rest);
    RUN(replayed_arrivals_land);
    RUN(replayed_stops_stop);
    RUN(stops_keep_their_digits);
    RUN(effort_lands_on_target);
    RUN(effort_at_the_edges);
    RUN(speed_needed_is_the_speed_that_does_it);
    RUN(golden_bits);
    return test_report(argc, argv);
}
