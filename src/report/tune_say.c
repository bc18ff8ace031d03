/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The sentences of a tuning.
#include "core/maths.h"
#include "report/catalogue.h"
#include "report/tune_report.h"

static double shown(const bw_tune_report *r, const bw_knob *knob, double value) {
    return bw_knob_is_length(knob) ? value / bw_unit_length(r->def->scheme->units) : value;
}

void bw_say_turn(const bw_tune_report *r, int k, bw_text *out) {
    const bw_knob *knob = &r->tuned->knobs[k];
    const bool length = bw_knob_is_length(knob);
    bw_put_fixed(out, shown(r, knob, knob->now), length ? 1 : 2);
    bw_put(out, " to ");
    bw_put_fixed(out, shown(r, knob, r->tuned->at[k]), length ? 1 : 2);
    if (!length) return;
    bw_put(out, " ");
    bw_put(out, bw_unit_short(r->def->scheme->units));
}

static bw_voice voice_of(const bw_tune_report *r) {
    return bw_voice_of(r->def->scheme);
}

/// Goals in 100 breaks, one decimal.
static bw_arg as_goals(const char *name, double goals) {
    return bw_as_number(name, 100 * goals, 1);
}

void bw_say_kind(const bw_tune_report *r, bw_drill_kind kind, bool best, bw_text *out) {
    const bw_gain *g = best ? &r->evidence->best[kind] : &r->evidence->typical[kind];
    // Best play has no chance in it: every seed says the same.
    bw_put_sentence(out, voice_of(r), &bw_s_tune_kind, as_goals("before", g->before),
                    as_goals("after", g->after), as_goals("gain", bw_abs(g->gain)),
                    bw_as_part("less", g->gain >= 0 ? &bw_s_tune_fewer : &bw_s_tune_more),
                    bw_as_part("seeds", best ? NULL : &bw_s_tune_seeds), as_goals("low", g->low),
                    as_goals("high", g->high), as_goals("error", 2 * g->error));
}

/// Held-out kinds where a gain is more than chance, of those there are.
static void count_real(const bw_tune_report *r, bool best, int *real, int *kinds) {
    *real = *kinds = 0;
    for (int kind = BW_DRILL_SETS; kind < BW_DRILL_KINDS; kind++) {
        if (r->evidence->drills[kind] == 0) continue;
        ++*kinds;
        *real += bw_gain_is_real(best ? &r->evidence->best[kind] : &r->evidence->typical[kind]);
    }
}

void bw_say_gain(const bw_tune_report *r, bw_text *out) {
    int typical, best, kinds;
    count_real(r, true, &best, &kinds);
    count_real(r, false, &typical, &kinds);
    bw_put_sentence(out, voice_of(r),
                    kinds == 0                          ? &bw_s_gain_unknown
                    : typical == kinds && best == kinds ? &bw_s_gain_all
                    : typical == 0 && best == 0         ? &bw_s_gain_none
                                                        : &bw_s_gain_part,
                    bw_as_count("typical", typical), bw_as_count("best", best),
                    bw_as_count("kinds", kinds));
}

void bw_say_why(const bw_tune_report *r, bw_text *out) {
    const bw_stage *stage = &r->def->scheme->stages[r->def->stage];
    bw_put_sentence(out, voice_of(r), &bw_s_tuned, bw_as_word("shape", stage->shape),
                    bw_as_count("seed", (long long)r->def->seed),
                    bw_as_count("candidates", r->tuned->tried),
                    bw_as_count("breaks", r->tuned->drill_count));
    bool first = true;
    for (int k = 0; k < r->tuned->knob_count; k++) {
        if (r->tuned->at[k] == r->tuned->knobs[k].now) continue;
        bw_put(out, first ? " " : "; ");
        first = false;
        bw_knob_name(stage, &r->tuned->knobs[k], out);
        bw_put(out, " ");
        bw_say_turn(r, k, out);
    }
    if (first) bw_put_plain_sentence(out, voice_of(r), &bw_s_tuned_nothing);
    bw_put_sentence(out, voice_of(r), &bw_s_tuned_gain,
                    as_goals("gain", r->evidence->typical[BW_DRILL_SETS].gain));
}

bool bw_say_tune_limit(const bw_tune_report *r, int index, bw_text *out) {
    static const bw_sentence *const limits[] = {&bw_s_tune_limit_goals, &bw_s_tune_limit_pull,
                                                &bw_s_tune_limit_free};
    if (index >= BW_COUNT(limits)) return false;
    bw_put_sentence(out, voice_of(r), limits[index], bw_as_number("pull", 100 * r->def->pull, 2),
                    as_goals("after", r->tuned->pull_after));
    return true;
}
