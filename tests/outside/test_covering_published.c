/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The optimiser on the abstract form of a zone defence: n spots in the unit square, the farthest
/// point of it as near as can be. Published optima: K. J. Nurmela, P. R. J. Ostergard, "Covering a
/// square with up to 30 equal circles", Helsinki 2000; A. Heppes, H. Melissen, Period. Math. Hung. 34,
/// 1997. And on a minimax problem with a known optimum.
#include "harness.h"
#include "tune/minimise.h"

enum { MOST_SPOTS = 8 };

typedef struct cover {
    int spots;
    int evaluations;
} cover;

static double nearest(const double *x, int spots, double px, double py) {
    double best = 9;
    for (int i = 0; i < spots; i++)
        best = fmin(best, hypot(x[2 * i] - px, x[2 * i + 1] - py));
    return best;
}

static double inside(const double *x, int spots, double px, double py, double worst) {
    if (!(px >= 0 && px <= 1 && py >= 0 && py <= 1)) return worst;
    return fmax(worst, nearest(x, spots, px, py));
}

/// Where the bisector of spots i and j meets the four sides.
static double bisector(const double *x, int spots, int i, int j, double worst) {
    const double dx = x[2 * j] - x[2 * i], dy = x[2 * j + 1] - x[2 * i + 1];
    const double mx = (x[2 * j] + x[2 * i]) / 2, my = (x[2 * j + 1] + x[2 * i + 1]) / 2;
    for (int side = 0; side < 2; side++) {
        if (dy != 0) worst = inside(x, spots, side, my - (side - mx) * dx / dy, worst);
        if (dx != 0) worst = inside(x, spots, mx - (side - my) * dy / dx, side, worst);
    }
    return worst;
}

/// The point as far from three spots.
static double centre(const double *x, int spots, int i, int j, int k, double worst) {
    const double ax = x[2 * j] - x[2 * i], ay = x[2 * j + 1] - x[2 * i + 1];
    const double bx = x[2 * k] - x[2 * i], by = x[2 * k + 1] - x[2 * i + 1];
    const double twice = 2 * (ax * by - ay * bx);
    if (fabs(twice) < 1e-12) return worst;
    const double a = ax * ax + ay * ay, b = bx * bx + by * by;
    return inside(x, spots, x[2 * i] + (by * a - ay * b) / twice,
                  x[2 * i + 1] + (ax * b - bx * a) / twice, worst);
}

/// Exact: the farthest point is a corner, a bisector on a side, or as far from three spots.
static double farthest(void *self, const double *x) {
    cover *c = self;
    c->evaluations++;
    double worst = 0;
    for (int corner = 0; corner < 4; corner++)
        worst = inside(x, c->spots, corner & 1, corner >> 1, worst);
    for (int i = 0; i < c->spots; i++) {
        for (int j = 0; j < i; j++) {
            worst = bisector(x, c->spots, i, j, worst);
            for (int k = 0; k < j; k++)
                worst = centre(x, c->spots, i, j, k, worst);
        }
    }
    return worst;
}

static double best_cover(int spots, uint64_t seed, double *x) {
    static double low[2 * MOST_SPOTS], high[2 * MOST_SPOTS], step[2 * MOST_SPOTS];
    unsigned long long state = seed;
    for (int i = 0; i < 2 * spots; i++) {
        high[i] = 1;
        step[i] = 0.05;
        x[i] = test_uniform(&state, 0, 1);
    }
    cover c = {spots, 0};
    const bw_minimise problem = {.n = 2 * spots,
                                 .low = low,
                                 .high = high,
                                 .step = step,
                                 .budget = 60000,
                                 .polish = 0.15,
                                 .rounds = 6,
                                 .seed = seed,
                                 .value = farthest,
                                 .self = &c};
    double least;
    CHECK_INT(bw_minimise_run(&problem, x, &least), BW_OK);
    CHECK(c.evaluations <= 60000);
    CHECK_SAME(farthest(&c, x), least);
    return least;
}

static void covers_the_square(void) {
    static const struct {
        int spots;
        double radius;
    } known[] = {{4, 0.35355339}, {5, 0.32616058}, {6, 0.29872706}, {8, 0.26030010}};
    for (int i = 0; i < BW_COUNT(known); i++) {
        for (uint64_t seed = 1; seed <= 3; seed++) {
            double x[2 * MOST_SPOTS];
            const double least = best_cover(known[i].spots, seed, x);
            CHECK(least >= known[i].radius - 1e-7);
            CHECK_NEAR(least, known[i].radius, 0.01 * known[i].radius);
        }
    }
}

static void same_seed_same_answer(void) {
    double a[2 * MOST_SPOTS], b[2 * MOST_SPOTS], c[2 * MOST_SPOTS];
    CHECK_SAME(best_cover(5, 7, a), best_cover(5, 7, b));
    for (int i = 0; i < 10; i++)
        CHECK_SAME(a[i], b[i]);
    best_cover(5, 8, c);
    CHECK(memcmp(a, c, 10 * sizeof *a) != 0);
}

/// CB2 (C. Charalambous, J. W. Bandler 1976; L. Luksan, J. Vlcek, report 798, 2000): 1.9522245.
static double cb2(void *self, const double *x) {
    (void)self;
    const double a = x[0] * x[0] + pow(x[1], 4);
    const double b = (2 - x[0]) * (2 - x[0]) + (2 - x[1]) * (2 - x[1]);
    return fmax(a, fmax(b, 2 * exp(x[1] - x[0])));
}

static void minimax(void) {
    const double low[] = {-3, -3}, high[] = {3, 3}, step[] = {0.2, 0.2};
    double x[] = {2, 2}, least;
    const bw_minimise problem = {.n = 2,
                                 .low = low,
                                 .high = high,
                                 .step = step,
                                 .budget = 4000,
                                 .polish = 0.5,
                                 .rounds = 1,
                                 .seed = 1,
                                 .value = cb2};
    CHECK_INT(bw_minimise_run(&problem, x, &least), BW_OK);
    CHECK_NEAR(least, 1.9522245, 1e-5);
}

static bool enough(void *self) {
    return ((cover *)self)->evaluations >= 100;
}

static void stops_when_told_and_refuses_nonsense(void) {
    cover c = {2, 0};
    double x[] = {.1, .2, .3, .4}, least;
    const double low[4] = {0}, high[] = {1, 1, 1, 1}, step[] = {.1, .1, .1, .1};
    bw_minimise p = {.n = 4,
                     .low = low,
                     .high = high,
                     .step = step,
                     .budget = 1000,
                     .polish = 0.2,
                     .rounds = 1,
                     .seed = 1,
                     .value = farthest,
                     .stop = enough,
                     .self = &c};
    CHECK_INT(bw_minimise_run(&p, x, &least), BW_LIMIT);
    CHECK_INT(c.evaluations, 100);
    CHECK_SAME(farthest(&c, x), least);
    x[0] = 2;
    CHECK_INT(bw_minimise_run(&p, x, &least), BW_BAD_INPUT);
    x[0] = .5;
    p.n = 0;
    CHECK_INT(bw_minimise_run(&p, x, &least), BW_BAD_INPUT);
    p.n = 4;
    p.budget = 3;
    CHECK_INT(bw_minimise_run(&p, x, &least), BW_BAD_INPUT);
}

int main(int argc, char **argv) {
    RUN(covers_the_square);
    RUN(same_seed_same_answer);
    RUN(minimax);
    RUN(stops_when_told_and_refuses_nonsense);
    return test_report(argc, argv);
}
