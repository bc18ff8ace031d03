/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Motion against the GNU Scientific Library: its Runge-Kutta integrator for the equation of motion
/// x'' = (effort - x') / tau, its Lambert W function for arrival from rest.
#include "core/motion.h"

#include "harness.h"
#include <gsl/gsl_errno.h>
#include <gsl/gsl_odeiv2.h>
#include <gsl/gsl_sf_lambert.h>

static unsigned long long seed = 41;

typedef struct drive {
    double tau;
    bw_vec effort;
} drive;

/// State: x, y, x', y'.
static int equation(double t, const double state[], double rate[], void *data) {
    (void)t;
    const drive *d = data;
    rate[0] = state[2];
    rate[1] = state[3];
    rate[2] = (d->effort.x - state[2]) / d->tau;
    rate[3] = (d->effort.y - state[3]) / d->tau;
    return GSL_SUCCESS;
}

static bw_body integrated(bw_legs legs, bw_body body, bw_vec effort, double t) {
    drive d = {legs.tau, effort};
    gsl_odeiv2_system system = {equation, NULL, 4, &d};
    gsl_odeiv2_driver *driver =
        gsl_odeiv2_driver_alloc_y_new(&system, gsl_odeiv2_step_rk8pd, 1e-3, 1e-13, 1e-13);
    double state[4] = {body.at.x, body.at.y, body.velocity.x, body.velocity.y};
    double now = 0;
    CHECK_INT(gsl_odeiv2_driver_apply(driver, &now, t, state), GSL_SUCCESS);
    gsl_odeiv2_driver_free(driver);
    return (bw_body){bw_v(state[0], state[1]), bw_v(state[2], state[3])};
}

static bw_vec around(double radius) {
    const double angle = test_uniform(&seed, -BW_PI, BW_PI);
    return bw_v(radius * cos(angle), radius * sin(angle));
}

static void advance_solves_the_equation(void) {
    for (int i = 0; i < 1000; i++) {
        const double vmax = test_uniform(&seed, 3, 10);
        const bw_legs legs = {vmax, test_uniform(&seed, 0.3, 2.5)};
        const double x = test_uniform(&seed, -30, 30);
        const double y = test_uniform(&seed, -14, 40);
        const bw_body body = {.at = bw_v(x, y), .velocity = around(test_uniform(&seed, 0, vmax))};
        const bw_vec effort = around(test_uniform(&seed, 0, vmax));
        const double t = test_uniform(&seed, 0.001, 8);
        const bw_body want = integrated(legs, body, effort, t);
        const bw_body got = bw_advance(legs, body, effort, t);
        CHECK_NEAR(bw_distance(got.at, want.at), 0, 1e-9);
        CHECK_NEAR(bw_distance(got.velocity, want.velocity), 0, 1e-9);
    }
}

/// Integrated at full drive for the time of arrival, the player is on the target.
static void arrivals_replayed(void) {
    for (int i = 0; i < 1000; i++) {
        const double vmax = test_uniform(&seed, 3, 10);
        const bw_legs legs = {vmax, test_uniform(&seed, 0.3, 2.5)};
        const bw_body body = {.at = bw_v(0, 0), .velocity = around(test_uniform(&seed, 0, vmax))};
        const bw_vec target = around(test_uniform(&seed, 0.05, 30));
        const double t = bw_arrive(legs, body, target, i % 2 ? BW_FIRST_TOUCH : BW_HOLD_FROM);
        const bw_vec carried = bw_scale(body.velocity, bw_coast(legs, t));
        const bw_vec effort = bw_scale(bw_unit(bw_sub(target, carried)), vmax);
        CHECK_NEAR(bw_distance(integrated(legs, body, effort, t).at, target), 0, 5e-9);
    }
}

/// T = tau + d/vmax + tau W0(-exp(-1 - d/(vmax tau))), from the mono-exponential sprint. Nearer than
/// a few centimetres this form loses its own digits.
static void arrival_from_rest_by_lambert(void) {
    for (int i = 0; i < 100000; i++) {
        const double vmax = test_uniform(&seed, 3, 12);
        const double tau = test_uniform(&seed, 0.3, 2.5);
        const double d = test_uniform(&seed, 0.05, 100);
        const double w = gsl_sf_lambert_W0(-exp(-1 - d / (vmax * tau)));
        const double want = tau + d / vmax + tau * w;
        const bw_body standing = {.at = bw_v(0, 0)};
        const double got = bw_arrive((bw_legs){vmax, tau}, standing, bw_v(0, d), BW_FIRST_TOUCH);
        CHECK_NEAR(got, want, 1e-9);
    }
}

int main(int argc, char **argv) {
    RUN(advance_solves_the_equation);
    RUN(arrivals_replayed);
    RUN(arrival_from_rest_by_lambert);
    return test_report(argc, argv);
}
