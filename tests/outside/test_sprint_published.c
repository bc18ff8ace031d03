/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Sprint fits against published worked examples and against the GNU Scientific Library's own
/// nonlinear least squares.
#include "core/sprint.h"
#include "harness.h"
#include <gsl/gsl_multifit_nlinear.h>

/// Open example athlete of M. Jovanovic, J. D. Vescovi 2020, doi 10.31236/osf.io/4jw62: splits in m, s.
static const bw_split example[] = {{5, 1.158},  {10, 1.893}, {15, 2.541},
                                   {20, 3.149}, {30, 4.313}, {40, 5.444}};
enum { EXAMPLE = BW_COUNT(example) };

/// Published: vmax 8.5911 (se 0.1225), tau 0.8113 (0.0458), RSE 0.034; further digits worked out apart.
static void plain(void) {
    const bw_sprint f = bw_sprint_fit_late(example, EXAMPLE, 0, false);
    CHECK_INT(f.verdict, BW_SPRINT_FITTED);
    CHECK_NEAR(f.legs.vmax, 8.59114302, 1e-6);
    CHECK_NEAR(f.legs.tau, 0.81132852, 1e-6);
    CHECK_NEAR(f.vmax_error, 0.12250646, 1e-6);
    CHECK_NEAR(f.tau_error, 0.04581261, 1e-6);
    CHECK_NEAR(f.residual, 0.03403413, 1e-6);
}

/// Published: 9.1278 (0.0536), 1.3776 (0.0213), 0.010 with 0.3 s added to every time.
static void corrected(void) {
    const bw_sprint f = bw_sprint_fit_late(example, EXAMPLE, 0.3, false);
    CHECK_NEAR(f.legs.vmax, 9.12776908, 1e-6);
    CHECK_NEAR(f.legs.tau, 1.37762444, 1e-6);
    CHECK_NEAR(f.vmax_error, 0.05355353, 1e-6);
    CHECK_NEAR(f.tau_error, 0.02130632, 1e-6);
    CHECK_NEAR(f.residual, 0.00996926, 1e-6);
}

/// Published: 8.97, 1.23, correction 0.23 s, RSE 0.00113; and 9.0, 1.3, 0.3 m, RSE 0.00039.
static void start_estimated(void) {
    const bw_sprint late = bw_sprint_fit_late(example, EXAMPLE, 0, true);
    CHECK_INT(late.verdict, BW_SPRINT_FITTED);
    CHECK_NEAR(late.legs.vmax, 8.97483537, 1e-5);
    CHECK_NEAR(late.legs.tau, 1.23485657, 1e-5);
    CHECK_NEAR(late.late, 0.23465371, 1e-5);
    CHECK_NEAR(late.residual, 0.00112905, 1e-6);
    double behind;
    const bw_sprint moved = bw_sprint_fit_behind(example, EXAMPLE, &behind);
    CHECK_INT(moved.verdict, BW_SPRINT_FITTED);
    CHECK_NEAR(moved.legs.vmax, 9.00268081, 1e-5);
    CHECK_NEAR(moved.legs.tau, 1.28770079, 1e-5);
    CHECK_NEAR(behind, 0.30156349, 1e-5);
    CHECK_NEAR(moved.residual, 0.00039013, 1e-6);
}

/// Men's 100 m final, Berlin 2009: R. Graubner, E. Nixdorf, New Studies in Athletics; reaction 0.146 s.
/// Fits worked out apart.
static void berlin(void) {
    static const double at[] = {1.88, 2.88, 3.78, 4.64, 5.47, 6.29, 7.10, 7.92, 8.74, 9.58};
    bw_split run[10];
    for (int i = 0; i < 10; i++)
        run[i] = (bw_split){10 * (i + 1), at[i]};
    const bw_sprint all = bw_sprint_fit_late(run, 10, -0.146, false);
    CHECK_INT(all.verdict, BW_SPRINT_FITTED);
    CHECK_NEAR(all.legs.vmax, 12.21459808, 1e-6);
    CHECK_NEAR(all.legs.tau, 1.23671051, 1e-6);
    CHECK_NEAR(all.vmax_error, 0.0298, 5e-5);
    CHECK_NEAR(all.tau_error, 0.0139, 5e-5);
    CHECK_NEAR(all.residual, 0.01301632, 1e-7);
    const bw_sprint six = bw_sprint_fit_late(run, 6, -0.146, false);
    CHECK_NEAR(six.legs.vmax, 12.11845423, 1e-6);
    CHECK_NEAR(six.legs.tau, 1.21087446, 1e-6);
}

/// Times at distances of the model, worked out apart: vmax, tau, then 5, 10, 20, 30, 40 m.
static void times(void) {
    static const double far[] = {5, 10, 20, 30, 40};
    static const double nine[] = {1.4128, 2.1566, 3.4179, 4.5826, 5.7151};
    static const double eight[] = {1.4063, 2.1783, 3.5276, 4.8049, 6.0630};
    for (int i = 0; i < 5; i++) {
        CHECK_NEAR(bw_sprint_time((bw_legs){9, 9.0 / 7}, far[i]), nine[i], 6e-5);
        CHECK_NEAR(bw_sprint_time((bw_legs){8, 8 / 7.5}, far[i]), eight[i], 6e-5);
    }
}

typedef struct data {
    const bw_split *splits;
    size_t count;
} data;

static int residuals(const gsl_vector *x, void *params, gsl_vector *f) {
    const data *d = params;
    const bw_legs legs = {gsl_vector_get(x, 0), gsl_vector_get(x, 1)};
    if (!(legs.vmax > 0.5 && legs.tau > 0.02)) return GSL_EDOM;
    for (size_t i = 0; i < d->count; i++)
        gsl_vector_set(f, i, bw_sprint_time(legs, d->splits[i].distance) - d->splits[i].seconds);
    return GSL_SUCCESS;
}

/// Random runners with stopwatch errors: the same optimum as the library finds by differences.
static void against_library(void) {
    unsigned long long state = 11;
    for (int n = 0; n < 40; n++) {
        const double vmax = test_uniform(&state, 6, 9.5);
        const double tau = test_uniform(&state, 0.8, 1.5);
        bw_split run[5];
        for (int i = 0; i < 5; i++) {
            const double d = 5 + 8 * i, error = test_uniform(&state, -0.02, 0.02);
            run[i] = (bw_split){d, bw_sprint_time((bw_legs){vmax, tau}, d) + error};
        }
        data d = {run, 5};
        gsl_multifit_nlinear_parameters how = gsl_multifit_nlinear_default_parameters();
        gsl_multifit_nlinear_fdf fdf = {.f = residuals, .n = 5, .p = 2, .params = &d};
        gsl_multifit_nlinear_workspace *w =
            gsl_multifit_nlinear_alloc(gsl_multifit_nlinear_trust, &how, 5, 2);
        double guess[] = {8, 1};
        gsl_vector_view x = gsl_vector_view_array(guess, 2);
        gsl_multifit_nlinear_init(&x.vector, &fdf, w);
        int info;
        CHECK_INT(gsl_multifit_nlinear_driver(200, 1e-10, 1e-10, 0, NULL, NULL, &info, w),
                  GSL_SUCCESS);
        const bw_sprint f = bw_sprint_fit_late(run, 5, 0, false);
        CHECK_INT(f.verdict, BW_SPRINT_FITTED);
        CHECK_NEAR(f.legs.vmax, gsl_vector_get(w->x, 0), 1e-4);
        CHECK_NEAR(f.legs.tau, gsl_vector_get(w->x, 1), 1e-4);
        gsl_multifit_nlinear_free(w);
    }
}

int main(int argc, char **argv) {
    RUN(plain);
    RUN(corrected);
    RUN(start_estimated);
    RUN(berlin);
    RUN(times);
    RUN(against_library);
    return test_report(argc, argv);
}
