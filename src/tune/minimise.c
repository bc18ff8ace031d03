/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "tune/minimise.h"
#include <math.h>
#include <nlopt.h>
#include <string.h>

enum { MOST = 32 };

typedef struct run {
    const bw_minimise *problem;
    nlopt_opt opt;
    double best[MOST], least;
    int used;
    bool stopped;
} run;

/// NLopt calls it, with a gradient to fill for methods that use one; ours do not, and get none.
// NOLINTNEXTLINE(readability-non-const-parameter): the library's own signature
static double evaluate(unsigned n, const double *x, double *gradient, void *self) {
    (void)gradient;
    run *r = self;
    const bw_minimise *p = r->problem;
    if (r->stopped || (p->stop && p->stop(p->self))) {
        r->stopped = true;
        nlopt_force_stop(r->opt);
        return HUGE_VAL;
    }
    const double value = p->value(p->self, x);
    r->used++;
    if (value < r->least) {
        r->least = value;
        memcpy(r->best, x, n * sizeof *x);
    }
    return value;
}

static bool sound(const bw_minimise *p, const double *x) {
    if (p->n < 1 || p->n > MOST || p->budget < 10 || p->rounds < 1 ||
        !(p->polish >= 0 && p->polish <= 1))
        return false;
    for (int i = 0; i < p->n; i++) {
        if (!(p->low[i] < p->high[i] && p->step[i] > 0)) return false;
        if (!(x[i] >= p->low[i] && x[i] <= p->high[i])) return false;
    }
    return true;
}

/// One method from a point, with so many evaluations. False: no memory.
static bool stage(run *r, nlopt_algorithm method, const double *from, int evaluations) {
    const bw_minimise *p = r->problem;
    r->opt = nlopt_create(method, (unsigned)p->n);
    if (!r->opt) return false;
    nlopt_set_min_objective(r->opt, evaluate, r);
    nlopt_set_lower_bounds(r->opt, p->low);
    nlopt_set_upper_bounds(r->opt, p->high);
    nlopt_set_maxeval(r->opt, evaluations);
    if (method == NLOPT_GN_CRS2_LM && p->population > 0)
        nlopt_set_population(r->opt, (unsigned)p->population);
    else if (method != NLOPT_GN_CRS2_LM)
        nlopt_set_initial_step(r->opt, p->step);
    double x[MOST], value;
    memcpy(x, from, (size_t)p->n * sizeof *x);
    const nlopt_result result = nlopt_optimize(r->opt, x, &value);
    nlopt_destroy(r->opt);
    return result != NLOPT_OUT_OF_MEMORY;
}

bw_status bw_minimise_run(const bw_minimise *problem, double *x, double *least) {
    if (!sound(problem, x)) return BW_BAD_INPUT;
    run r = {.problem = problem, .least = HUGE_VAL};
    memcpy(r.best, x, (size_t)problem->n * sizeof *x);
    const int polish = (int)(problem->polish * problem->budget);
    const int each = (problem->budget - polish) / problem->rounds;
    bool room = true;
    for (int round = 0; round < problem->rounds && room && !r.stopped && each > 0; round++) {
        // The library keeps its generator by thread; 32 bits of the seed are all it takes.
        nlopt_srand((unsigned long)((problem->seed + (uint64_t)round * 0x9e3779b9u) & 0xffffffffu));
        room = stage(&r, NLOPT_GN_CRS2_LM, x, each);
    }
    const int left = problem->budget - r.used;
    if (room && !r.stopped && left > 0) room = stage(&r, NLOPT_LN_SBPLX, r.best, left);
    memcpy(x, r.best, (size_t)problem->n * sizeof *x);
    *least = r.least;
    if (!room) return BW_NO_ROOM;
    return r.stopped ? BW_LIMIT : BW_OK;
}
