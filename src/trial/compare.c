/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "trial/compare.h"

#include "trial/catalogue.h"

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

static bw_voice voice_of(const bw_trial *trial) {
    return bw_voice_of(trial->begun.ground->scheme);
}

static const bw_sentence *gap_of(const bw_gap *g, int a, int b) {
    if (!g->clear || a == b) return &bw_s_gap_noise;
    return a > b ? &bw_s_gap_b_fewer : &bw_s_gap_a_fewer;
}

static void say_gap(const bw_trial *trial, const bw_sentence *sentence, const bw_gap *g,
                    bw_text *out) {
    const int a = bw_in_100(g->a), b = bw_in_100(g->b), doubt = bw_in_100(g->doubt);
    bw_put_sentence(out, voice_of(trial), sentence, bw_as_count("seconds", trial->curve.answer_s),
                    bw_as_part("gap", gap_of(g, a, b)), bw_as_count("a", a), bw_as_count("b", b),
                    bw_as_count("apart", a > b ? a - b : b - a),
                    bw_as_count("doubt", doubt < 1 ? 1 : doubt));
}

void bw_say_compare(const bw_trial *a, const bw_trial *b, bw_text *out) {
    const bw_gap g = bw_gap_at(a, b, a->curve.answer_s);
    say_gap(a, &bw_s_compare_now, &g, out);
}

void bw_say_compare_plateau(const bw_trial *a, const bw_trial *b, bw_text *out) {
    const bw_gap g = bw_gap_plateau(a, b);
    say_gap(a, &bw_s_compare_plateau, &g, out);
}

void bw_say_compare_best(const bw_trial *a, const bw_trial *b, bw_text *out) {
    bw_put_sentence(out, voice_of(a), &bw_s_compare_best,
                    bw_as_in_100("a", a->curve.best[a->curve.answer_s]),
                    bw_as_in_100("b", b->curve.best[b->curve.answer_s]));
}
