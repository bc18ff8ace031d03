/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "trial/compare.h"

#include "trial/words.h"

/// Standard errors either side that hold 95 of 100 differences: Student's t with ten degrees of freedom,
/// for each error is the spread of six bundles of roll-outs.
static const double sides = 2.23;

static double between(const double *list, double seconds) {
    int i = (int)seconds;
    if (i >= BW_MAX_SECONDS) i = BW_MAX_SECONDS - 1;
    return list[i] + (list[i + 1] - list[i]) * (seconds - i);
}

static bw_gap gap(const bw_trial *a, double at_a, const bw_trial *b, double at_b) {
    const double ea = between(a->curve.error, at_a), eb = between(b->curve.error, at_b);
    bw_gap g = {.a = between(a->curve.typical, at_a), .b = between(b->curve.typical, at_b)};
    g.doubt = sides * bw_sqrt(ea * ea + eb * eb);
    g.clear = bw_abs(g.a - g.b) > g.doubt;
    return g;
}

bw_gap bw_gap_at(const bw_trial *a, const bw_trial *b, double seconds) {
    const double at = bw_clamp(seconds, 0, BW_MAX_SECONDS);
    return gap(a, at, b, at);
}

static double plateau_s(const bw_trial *trial) {
    const double even = trial->curve.even_s;
    return even < 0 ? BW_MAX_SECONDS : bw_min(even + 1, BW_MAX_SECONDS);
}

bw_gap bw_gap_plateau(const bw_trial *a, const bw_trial *b) {
    return gap(a, plateau_s(a), b, plateau_s(b));
}

static void say_gap(const bw_gap *g, bw_text *out) {
    const int a = bw_in_100(g->a), b = bw_in_100(g->b);
    const int apart = a > b ? a - b : b - a;
    int doubt = bw_in_100(g->doubt);
    if (doubt < 1) doubt = 1;
    bw_put_int(out, a);
    bw_put(out, " of 100 against A and ");
    bw_put_int(out, b);
    bw_put(out, " against B. ");
    if (!g->clear || apart == 0) {
        bw_put(out, "The difference is within the noise of the simulation (give or take ");
        bw_put_int(out, doubt);
        bw_put(out, "): this test does not tell them apart.");
        return;
    }
    bw_put(out, a > b ? "B gives up " : "A gives up ");
    bw_put_int(out, apart);
    bw_put(out, " fewer, give or take ");
    bw_put_int(out, doubt);
    bw_put(out, " by chance in the simulation: more than chance.");
}

void bw_say_compare(const bw_trial *a, const bw_trial *b, bw_text *out) {
    const bw_gap g = bw_gap_at(a, b, a->curve.answer_s);
    bw_put(out, "Within ");
    bw_put_int(out, a->curve.answer_s);
    bw_put(out, " s typical play, the forecast, scores in about ");
    say_gap(&g, out);
}

void bw_say_compare_plateau(const bw_trial *a, const bw_trial *b, bw_text *out) {
    const bw_gap g = bw_gap_plateau(a, b);
    bw_put(out, "At the plateau, once numbers are even, typical play scores in about ");
    say_gap(&g, out);
}

void bw_say_compare_best(const bw_trial *a, const bw_trial *b, bw_text *out) {
    bw_put(out, "Best play, the stress test, scores in ");
    bw_put_int(out, bw_in_100(a->curve.best[a->curve.answer_s]));
    bw_put(out, " against A and ");
    bw_put_int(out, bw_in_100(b->curve.best[b->curve.answer_s]));
    bw_put(out, " against B; there is no chance in that.");
}
