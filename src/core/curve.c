/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/curve.h"
#include "core/run.h"

typedef struct curve_work {
    bw_break even;
    bw_forecast settled;
    double scratch[1]; ///< the rest of the memory goes to the search or the forecast
} curve_work;

bw_curve_def bw_curve_default(void) {
    return (bw_curve_def){.search = bw_search_default(),
                          .typical = bw_typical_default(),
                          .settled_rollouts = 12,
                          .margin = 0.05,
                          .with_best = true};
}

size_t bw_curve_size(void) {
    const size_t a = bw_search_size(), b = bw_typical_size();
    return sizeof(curve_work) + (a > b ? a : b);
}

void bw_late_arrivals(const bw_break *b, double *late_s) {
    bw_state s = b->start;
    for (int i = 0; i < BW_MAX_LATE; i++)
        late_s[i] = -1;
    const bw_stretch wait = {
        .ball = bw_man(&s, s.holder), .man = s.holder, .ticks = BW_STEP_TICKS, .carrier = s.holder};
    while (s.in < b->defenders && s.tick < BW_MAX_SECONDS * BW_TICKS_PER_SECOND) {
        bw_run(b, &s, &wait);
        for (int d = b->def.defence; d < b->defenders; d++) {
            double *at = &late_s[d - b->def.defence];
            if (s.counted[d] && *at < 0) *at = s.tick * BW_TICK;
        }
    }
}

/// Seconds at which the typical curve first passes the settled one by the margin: between whole
/// seconds in a straight line. 10 when it never does.
static double time_bought(const bw_curve *c, double margin, bool *ever) {
    *ever = true;
    double before = -margin;
    for (int t = 1; t <= BW_MAX_SECONDS; t++) {
        const double over = c->typical[t] - c->settled[t] - margin;
        if (over > 0) return t - over / (over - before);
        before = over;
    }
    *ever = false;
    return BW_MAX_SECONDS;
}

/// Typical worth at a time between whole seconds.
static double worth_at(const double *worth, double t) {
    if (t >= BW_MAX_SECONDS) return worth[BW_MAX_SECONDS];
    const int i = (int)t;
    return worth[i] + (worth[i + 1] - worth[i]) * (t - i);
}

/// The same break with numbers even from the start: what a settled attack makes in that time.
static bw_status settle(const bw_break *b, const bw_curve_def *def, curve_work *w, size_t room,
                        bw_curve *out) {
    bw_break_def even = b->def;
    even.defence = even.offence;
    even.late_count = 0;
    even.late_from_scheme = false;
    even.set_already = true;
    bw_status status = bw_break_begin(b->ground, &even, &w->even, NULL);
    bw_typical_def typical = def->typical;
    typical.rollouts = def->settled_rollouts;
    if (status == BW_OK) status = bw_typical(&w->even, &typical, w->scratch, room, &w->settled);
    for (int t = 0; t <= BW_MAX_SECONDS && status == BW_OK; t++)
        out->settled[t] = w->settled.worth[t];
    return status;
}

/// The second in which a line's shot leaves the stick.
static int last_second(const bw_answer *a) {
    const double end = a->plies[a->count - 1].end_s;
    int t = (int)end;
    if (t < end) t++;
    return t < 1 ? 1 : t;
}

/// Best worth for every second, from the most time down: a line that is the best of ten seconds and
/// ends in the fourth is the best of four as well, so only a few searches are made.
static bw_status fill_best(const bw_break *b, const bw_curve_def *def, curve_work *w, size_t room,
                           bw_curve *out) {
    bw_search_def search = def->search;
    bw_status whole = BW_OK;
    const int least = def->with_best ? 1 : out->answer_s;
    for (int t = def->with_best ? BW_MAX_SECONDS : out->answer_s; t >= least;) {
        bw_answer answer;
        search.seconds = t;
        const bw_status status = bw_best(b, &search, w->scratch, room, &answer);
        if (status == BW_LIMIT) whole = status;
        if (status != BW_OK && status != BW_LIMIT) return status;
        if (answer.count == 0) break;
        for (const int end = last_second(&answer); t >= end && t >= least; t--) {
            out->best[t] = answer.worth;
            if (t == out->answer_s) out->answer = answer;
        }
    }
    // A budget that ends early may miss what less time already found: it is still there.
    for (int t = 1; t <= BW_MAX_SECONDS; t++)
        out->best[t] = bw_max(out->best[t], out->best[t - 1]);
    return whole;
}

bw_status bw_curve_run(const bw_break *b, const bw_curve_def *def, int answer_seconds, void *memory,
                       size_t size, bw_curve *out) {
    *out = (bw_curve){.answer_s = answer_seconds};
    if (size < bw_curve_size()) return BW_NO_ROOM;
    BW_ASSERT(answer_seconds >= 1 && answer_seconds <= BW_MAX_SECONDS);
    curve_work *w = memory;
    const size_t room = size - offsetof(curve_work, scratch);
    bw_status status = bw_typical(b, &def->typical, w->scratch, room, &out->forecast);
    if (status == BW_OK) status = settle(b, def, w, room, out);
    if (status != BW_OK) return status;
    for (int t = 0; t <= BW_MAX_SECONDS; t++) {
        out->typical[t] = out->forecast.worth[t];
        out->error[t] = out->forecast.error[t];
    }

    status = fill_best(b, def, w, room, out);
    if (status != BW_OK && status != BW_LIMIT) return status;
    out->late_count = b->defenders - b->def.defence;
    bw_late_arrivals(b, out->late_s);
    out->even_s = b->def.defence == b->attackers ? 0 : -1;
    if (out->late_count > 0 && b->defenders == b->attackers) {
        for (int i = 0; i < out->late_count; i++)
            out->even_s = bw_max(out->even_s, out->late_s[i]);
        for (int i = 0; i < out->late_count; i++) {
            if (out->late_s[i] < 0) out->even_s = -1;
        }
    }
    out->plateau = worth_at(out->typical, out->even_s < 0 ? BW_MAX_SECONDS : out->even_s + 1);
    out->bought_s = time_bought(out, def->margin, &out->ever_beaten);
    if (out->ever_beaten) {
        const double even = out->even_s < 0 ? BW_MAX_SECONDS : out->even_s;
        out->missing_s = bw_max(even - out->bought_s, 0);
    }
    return status;
}
