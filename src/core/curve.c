/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/curve.h"
#include "core/run.h"

typedef struct curve_work {
    const bw_break *b;
    bw_curve_def def;
    bw_curve *out;
    size_t room; ///< bytes from scratch on
    bw_curve_progress at;
    int next;         ///< seconds of the next search, at least `least`
    int least;        ///< 1, or with typical only the answer's
    bw_status search; ///< BW_LIMIT once a budget ended early
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
static bw_status begin_even(curve_work *w) {
    bw_break_def even = w->b->def;
    even.defence = even.offence;
    even.late_count = 0;
    even.late_from_scheme = false;
    even.set_already = true;
    const bw_status status = bw_break_begin(w->b->ground, &even, &w->even, NULL);
    if (status != BW_OK) return status;
    bw_typical_def typical = w->def.typical;
    typical.rollouts = w->def.settled_rollouts;
    return bw_typical_begin(&w->even, &w->even.start, &typical, w->scratch, w->room, &w->settled);
}

/// The second in which a line's shot leaves the stick.
static int last_second(const bw_answer *a) {
    const double end = a->plies[a->count - 1].end_s;
    int t = (int)end;
    if (t < end) t++;
    return t < 1 ? 1 : t;
}

/// Best worth for one more length of time, from the most time down: a line that is the best of ten
/// seconds and ends in the fourth is the best of four as well, so only a few searches are made.
static bw_status search_next(curve_work *w) {
    bw_curve *out = w->out;
    bw_search_def search = w->def.search;
    search.seconds = w->next;
    bw_answer answer;
    const bw_status status = bw_best(w->b, &search, w->scratch, w->room, &answer);
    if (status == BW_LIMIT) w->search = status;
    if (status != BW_OK && status != BW_LIMIT) return status;
    if (answer.count == 0) {
        w->next = w->least - 1;
        return BW_OK;
    }
    for (const int end = last_second(&answer); w->next >= end && w->next >= w->least; w->next--) {
        out->best[w->next] = answer.worth;
        if (w->next == out->answer_s) out->answer = answer;
    }
    return BW_OK;
}

/// When the late men are in, and what follows from it and the lines.
static void conclude(const curve_work *w) {
    bw_curve *out = w->out;
    const bw_break *b = w->b;
    // A budget that ends early may miss what less time already found: it is still there.
    for (int t = 1; t <= BW_MAX_SECONDS; t++)
        out->best[t] = bw_max(out->best[t], out->best[t - 1]);
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
    out->bought_s = time_bought(out, w->def.margin, &out->ever_beaten);
    if (out->ever_beaten) {
        const double even = out->even_s < 0 ? BW_MAX_SECONDS : out->even_s;
        out->missing_s = bw_max(even - out->bought_s, 0);
    }
}

bw_status bw_curve_begin(const bw_break *b, const bw_curve_def *def, int answer_seconds,
                         void *memory, size_t size, bw_curve *out) {
    *out = (bw_curve){.answer_s = answer_seconds};
    if (size < bw_curve_size()) return BW_NO_ROOM;
    BW_ASSERT(answer_seconds >= 1 && answer_seconds <= BW_MAX_SECONDS);
    curve_work *w = memory;
    w->b = b;
    w->def = *def;
    w->out = out;
    w->room = size - offsetof(curve_work, scratch);
    w->at = (bw_curve_progress){BW_CURVE_TYPICAL, 0, BW_BUNDLES};
    w->next = def->with_best ? BW_MAX_SECONDS : answer_seconds;
    w->least = def->with_best ? 1 : answer_seconds;
    w->search = BW_OK;
    return bw_typical_begin(b, &b->start, &def->typical, w->scratch, w->room, &out->forecast);
}

/// One more bundle of the forecast, or the last and then what comes after it.
static bw_status step_typical(curve_work *w) {
    w->at.done++;
    if (bw_typical_step(w->scratch)) return BW_OK;
    for (int t = 0; t <= BW_MAX_SECONDS; t++) {
        w->out->typical[t] = w->out->forecast.worth[t];
        w->out->error[t] = w->out->forecast.error[t];
    }
    w->at = (bw_curve_progress){BW_CURVE_EVEN, 0, BW_BUNDLES};
    return begin_even(w);
}

static bw_status step_even(curve_work *w) {
    w->at.done++;
    if (bw_typical_step(w->scratch)) return BW_OK;
    for (int t = 0; t <= BW_MAX_SECONDS; t++)
        w->out->settled[t] = w->settled.worth[t];
    w->at = (bw_curve_progress){BW_CURVE_BEST, 0, w->next - w->least + 1};
    return BW_OK;
}

static bw_status step_best(curve_work *w) {
    const bw_status status = search_next(w);
    if (status != BW_OK) return status;
    w->at.done = w->at.of - (w->next - w->least + 1);
    if (w->next >= w->least) return BW_OK;
    conclude(w);
    w->at = (bw_curve_progress){BW_CURVE_DONE, 0, 0};
    return w->search;
}

bw_status bw_curve_step(void *memory, bw_curve_progress *progress) {
    curve_work *w = memory;
    bw_status status = BW_OK;
    switch (w->at.part) {
    case BW_CURVE_TYPICAL: status = step_typical(w); break;
    case BW_CURVE_EVEN: status = step_even(w); break;
    case BW_CURVE_BEST: status = step_best(w); break;
    case BW_CURVE_DONE: break;
    }
    *progress = w->at;
    return status;
}

bw_status bw_curve_run(const bw_break *b, const bw_curve_def *def, int answer_seconds, void *memory,
                       size_t size, bw_curve *out) {
    bw_curve_progress progress = {BW_CURVE_TYPICAL, 0, 0};
    bw_status status = bw_curve_begin(b, def, answer_seconds, memory, size, out);
    while (status == BW_OK && progress.part != BW_CURVE_DONE)
        status = bw_curve_step(memory, &progress);
    return status;
}
