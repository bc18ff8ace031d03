/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The sentences of a tuning.
#include "core/maths.h"
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

/// Goals in 100 breaks, one decimal.
static void put_goals(bw_text *out, double goals) {
    bw_put_fixed(out, 100 * goals, 1);
}

void bw_say_kind(const bw_tune_report *r, bw_drill_kind kind, bool best, bw_text *out) {
    const bw_gain *g = best ? &r->evidence->best[kind] : &r->evidence->typical[kind];
    put_goals(out, g->before);
    bw_put(out, " before, ");
    put_goals(out, g->after);
    bw_put(out, " after: ");
    put_goals(out, bw_abs(g->gain));
    bw_put(out, g->gain >= 0 ? " fewer" : " more");
    bw_put(out, " (");
    // Best play has no chance in it: every seed says the same.
    if (!best) {
        bw_put(out, "by seed ");
        put_goals(out, g->low);
        bw_put(out, " to ");
        put_goals(out, g->high);
        bw_put(out, "; ");
    }
    bw_put(out, "two standard errors ");
    put_goals(out, 2 * g->error);
    bw_put(out, ")");
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
    if (kinds == 0) {
        bw_put(out, "There were no breaks to hold out, so nothing is shown to be better.");
    } else if (typical == kinds && best == kinds) {
        bw_put(
            out,
            "On every kind of break held out the gain is more than chance, for typical play (the "
            "forecast) and for best play (the stress test).");
    } else if (typical == 0 && best == 0) {
        bw_put(out,
               "Warning: on the breaks held out the gain is within chance. Keep what you have.");
    } else {
        bw_put(out, "In part: the gain is more than chance for typical play on ");
        bw_put_int(out, typical);
        bw_put(out, " and for best play on ");
        bw_put_int(out, best);
        bw_put(out, " of the ");
        bw_put_int(out, kinds);
        bw_put(out, " kinds of break held out. Take the changes one at a time.");
    }
}

void bw_say_why(const bw_tune_report *r, bw_text *out) {
    const bw_stage *stage = &r->def->scheme->stages[r->def->stage];
    bw_put(out, "Tuned ");
    bw_put(out, stage->shape);
    bw_put(out, " (seed ");
    bw_put_int(out, (long long)r->def->seed);
    bw_put(out, ", ");
    bw_put_int(out, r->tuned->tried);
    bw_put(out, " candidates, ");
    bw_put_int(out, r->tuned->drill_count);
    bw_put(out, " breaks):");
    bool first = true;
    for (int k = 0; k < r->tuned->knob_count; k++) {
        if (r->tuned->at[k] == r->tuned->knobs[k].now) continue;
        bw_put(out, first ? " " : "; ");
        first = false;
        bw_knob_name(stage, &r->tuned->knobs[k], out);
        bw_put(out, " ");
        bw_say_turn(r, k, out);
    }
    if (first) bw_put(out, " nothing better found");
    bw_put(out, ". By the model, other attack sets score ");
    put_goals(out, r->evidence->typical[BW_DRILL_SETS].gain);
    bw_put(out, " fewer in 100 breaks, typical play.");
}

bool bw_say_tune_limit(const bw_tune_report *r, int index, bw_text *out) {
    switch (index) {
    case 0:
        bw_put(
            out,
            "Goals are of a model of players as points, in 100 breaks of six seconds. Typical play "
            "is the forecast: use it to compare, not as a scoring rate. Best play is the stress "
            "test: perfect decisions, three plies deep.");
        return true;
    case 1:
        bw_put(out,
               "The search is held near practice: each step away (two yards of a home) counts as ");
        bw_put_fixed(out, 100 * r->def->pull, 2);
        bw_put(out, " goals in 100 breaks, squared. At the answer that pull is ");
        bw_put_fixed(out, 100 * r->tuned->pull_after, 1);
        bw_put(out, "; it is not part of the gains above.");
        return true;
    case 2:
        bw_put(
            out,
            "Left free, this model packs everyone close to the goal, more than any coach does: it "
            "has no contact, screens, rebounds or fatigue. Read \"closer in\" as a direction to "
            "try "
            "on the field, a yard at a time, and trust what your players can do over the program.");
        return true;
    default: return false;
    }
}
