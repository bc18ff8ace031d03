/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Gauss-Newton with a Levenberg damping, on vmax, tau and, when asked, one start parameter.
#include "core/sprint.h"
#include "core/maths.h"

enum { TERMS = 3, STEPS = 60, TRIES = 30 };

/// How the start enters the recorded time.
typedef enum start_kind { START_GIVEN, START_LATE, START_BEHIND } start_kind;

typedef struct problem {
    const bw_split *splits;
    int count, terms;
    start_kind start;
    double late; ///< when given
} problem;

/// Fastest anybody has been measured over a stretch, m/s: 12.35 (IAAF 2009, men's 100 m final).
#define FASTEST 12.6

/// A split at five yards shows the start, one at thirty the top speed; a hand's breadth of grace, m.
#define NEAR_ENOUGH 4.7
#define FAR_ENOUGH 27.3

double bw_sprint_time(bw_legs legs, double d) {
    if (d <= 0) return 0;
    return bw_arrive(legs, (bw_body){{0, 0}, {0, 0}}, bw_v(d, 0), BW_FIRST_TOUCH);
}

/// Seconds to run d, and its slopes by vmax, tau and d.
static double time_and_slopes(bw_legs legs, double d, double slope[TERMS]) {
    const double t = bw_sprint_time(legs, d);
    if (t <= 0) {
        slope[0] = slope[1] = slope[2] = 0;
        return 0;
    }
    const double left = bw_exp(-t / legs.tau), gained = 1 - left;
    slope[2] = 1 / (legs.vmax * gained);
    slope[0] = -d / legs.vmax * slope[2];
    slope[1] = (gained - left * t / legs.tau) / gained;
    return t;
}

/// Modelled time of split i and its slopes by the problem's terms.
static double model(const problem *p, const double *at, int i, double *slope) {
    const bw_legs legs = {at[0], at[1]};
    const double d = p->splits[i].distance;
    if (p->start != START_BEHIND) {
        const double late = p->start == START_LATE ? at[2] : p->late;
        const double t = time_and_slopes(legs, d, slope) - late;
        slope[2] = -1;
        return t;
    }
    double first[TERMS];
    const double whole = time_and_slopes(legs, d + at[2], slope);
    const double before = time_and_slopes(legs, at[2], first);
    for (int k = 0; k < TERMS; k++)
        slope[k] -= first[k];
    return whole - before;
}

static double squares(const problem *p, const double *at) {
    double sum = 0, slope[TERMS];
    for (int i = 0; i < p->count; i++) {
        const double off = p->splits[i].seconds - model(p, at, i, slope);
        sum += off * off;
    }
    return sum;
}

/// Inverse of a symmetric positive matrix of n <= 3 by Gauss-Jordan; false when it is singular.
static bool invert(double m[TERMS][TERMS], int n, double out[TERMS][TERMS]) {
    double a[TERMS][2 * TERMS];
    for (int r = 0; r < n; r++) {
        for (int c = 0; c < n; c++) {
            a[r][c] = m[r][c];
            a[r][n + c] = r == c;
        }
    }
    for (int k = 0; k < n; k++) {
        if (a[k][k] < 1e-14 * m[k][k]) return false;
        const double pivot = a[k][k];
        for (int c = 0; c < 2 * n; c++)
            a[k][c] /= pivot;
        for (int r = 0; r < n; r++) {
            const double factor = a[r][k];
            for (int c = 0; r != k && c < 2 * n; c++)
                a[r][c] -= factor * a[k][c];
        }
    }
    for (int r = 0; r < n; r++) {
        for (int c = 0; c < n; c++)
            out[r][c] = a[r][n + c];
    }
    return true;
}

/// J'J and J'r at a point.
static void normal(const problem *p, const double *at, double m[TERMS][TERMS], double v[TERMS]) {
    for (int r = 0; r < TERMS; r++) {
        v[r] = 0;
        for (int c = 0; c < TERMS; c++)
            m[r][c] = 0;
    }
    for (int i = 0; i < p->count; i++) {
        double slope[TERMS];
        const double off = p->splits[i].seconds - model(p, at, i, slope);
        for (int r = 0; r < p->terms; r++) {
            v[r] += slope[r] * off;
            for (int c = 0; c < p->terms; c++)
                m[r][c] += slope[r] * slope[c];
        }
    }
}

static void keep_within(double *at, start_kind start) {
    at[0] = bw_clamp(at[0], 1, 14);
    at[1] = bw_clamp(at[1], 0.05, 6);
    at[2] = start == START_BEHIND ? bw_clamp(at[2], 1e-4, 5) : bw_clamp(at[2], -1, 1.5);
}

/// One damped step; false when no shorter step makes the sum less.
static bool improve(const problem *p, double *at, double *damp, double *least) {
    double m[TERMS][TERMS], v[TERMS], inverse[TERMS][TERMS];
    normal(p, at, m, v);
    for (int tries = 0; tries < TRIES; tries++, *damp *= 4) {
        double damped[TERMS][TERMS];
        for (int r = 0; r < TERMS; r++) {
            for (int c = 0; c < TERMS; c++)
                damped[r][c] = m[r][c] * (r == c ? 1 + *damp : 1);
        }
        if (!invert(damped, p->terms, inverse)) continue;
        double next[TERMS] = {at[0], at[1], at[2]};
        for (int r = 0; r < p->terms; r++) {
            for (int c = 0; c < p->terms; c++)
                next[r] += inverse[r][c] * v[c];
        }
        keep_within(next, p->start);
        const double sum = squares(p, next);
        if (sum >= *least) continue;
        const bool moved =
            bw_abs(next[0] - at[0]) > 1e-12 * at[0] || bw_abs(next[1] - at[1]) > 1e-12;
        for (int r = 0; r < TERMS; r++)
            at[r] = next[r];
        *least = sum;
        *damp = bw_max(*damp / 10, 1e-12);
        return moved;
    }
    return false;
}

static bw_sprint_verdict look(const bw_split *splits, int count, int terms) {
    if (count < terms || count > BW_MAX_SPLITS) return BW_SPRINT_FEW;
    for (int i = 0; i < count; i++) {
        const bw_split s = splits[i];
        if (!(s.distance > 0 && s.distance <= 200 && s.seconds > 0 && s.seconds <= 60))
            return BW_SPRINT_RANGE;
        if (i == 0) continue;
        const bw_split before = splits[i - 1];
        // The same distance twice is two runs put together; then the times say nothing of order.
        if (s.distance < before.distance) return BW_SPRINT_ORDER;
        if (s.distance == before.distance) continue;
        if (s.seconds <= before.seconds) return BW_SPRINT_ORDER;
    }
    return BW_SPRINT_FITTED;
}

/// Whether the longest stretch asks for more than anybody has run.
static bool too_fast(const bw_split *splits, int count) {
    for (int i = 1; i < count; i++) {
        const double d = splits[i].distance - splits[i - 1].distance;
        if (d > 2 && d > FASTEST * (splits[i].seconds - splits[i - 1].seconds)) return true;
    }
    return false;
}

/// Whether the fit means anything: top speed and start both lie within what the splits show. What is
/// refused is never put down to a split that is there.
static bw_sprint_verdict judge(const bw_split *splits, const bw_sprint *fit) {
    const double nearest = splits[0].distance, farthest = splits[fit->splits - 1].distance;
    const bw_sprint_verdict no_top = farthest < FAR_ENOUGH ? BW_SPRINT_NO_TOP : BW_SPRINT_SCATTERED;
    if (fit->residual > 0.25) return BW_SPRINT_NOT_A_RUN;
    // The start is over after 3 tau (95 % of top speed).
    if (fit->legs.tau < 0.1 || bw_sprint_time(fit->legs, nearest) > 3 * fit->legs.tau)
        return nearest > NEAR_ENOUGH ? BW_SPRINT_NO_START : BW_SPRINT_CLOCK;
    // After 1.2 tau he runs at 70 % of top speed; before that the top is a guess.
    const double last = bw_sprint_time(fit->legs, farthest);
    if (fit->legs.vmax > FASTEST || fit->legs.tau > 3 || last < 1.2 * fit->legs.tau) return no_top;
    if (fit->vmax_error > 0.15 * fit->legs.vmax) return no_top;
    if (fit->tau_error > 0.5 * fit->legs.tau)
        return nearest > NEAR_ENOUGH ? BW_SPRINT_NO_START : BW_SPRINT_SCATTERED;
    return BW_SPRINT_FITTED;
}

/// First guess: 1.1 times the fastest stretch, and a time constant of a second.
static double fastest_stretch(const bw_split *splits, int count) {
    double best = splits[0].distance / splits[0].seconds;
    for (int i = 1; i < count; i++) {
        const double t = splits[i].seconds - splits[i - 1].seconds;
        if (t > 0) best = bw_max(best, (splits[i].distance - splits[i - 1].distance) / t);
    }
    return best;
}

static bw_sprint solve(const problem *p, double *at) {
    bw_sprint fit = {.verdict = look(p->splits, p->count, p->terms), .splits = p->count};
    if (fit.verdict != BW_SPRINT_FITTED) return fit;
    if (too_fast(p->splits, p->count)) {
        fit.verdict = BW_SPRINT_TOO_FAST;
        return fit;
    }
    at[0] = 1.1 * fastest_stretch(p->splits, p->count);
    at[1] = 1;
    at[2] = p->start == START_BEHIND ? 0.3 : 0;
    keep_within(at, p->start);
    double damp = 1e-3, least = squares(p, at);
    for (int step = 0; step < STEPS && improve(p, at, &damp, &least); step++) {
    }

    fit.legs = (bw_legs){at[0], at[1]};
    fit.residual = fit.vmax_error = fit.tau_error = -1;
    fit.late = p->start == START_LATE ? at[2] : p->late;
    fit.start_estimated = p->start != START_GIVEN;
    double m[TERMS][TERMS], v[TERMS], inverse[TERMS][TERMS];
    normal(p, at, m, v);
    if (!invert(m, p->terms, inverse)) {
        fit.verdict = BW_SPRINT_NO_START;
        return fit;
    }
    const int spare = p->count - p->terms;
    if (spare > 0) {
        fit.residual = bw_sqrt(least / spare);
        fit.vmax_error = fit.residual * bw_sqrt(inverse[0][0]);
        fit.tau_error = fit.residual * bw_sqrt(inverse[1][1]);
        if (fit.start_estimated) fit.late_error = fit.residual * bw_sqrt(inverse[2][2]);
    } else if (least > 1e-4) {
        fit.verdict = BW_SPRINT_NOT_A_RUN;
        return fit;
    }
    fit.verdict = judge(p->splits, &fit);
    return fit;
}

bw_sprint bw_sprint_fit_late(const bw_split *splits, int count, double late, bool estimate) {
    const problem p = {splits, count, estimate ? 3 : 2, estimate ? START_LATE : START_GIVEN, late};
    double at[TERMS];
    return solve(&p, at);
}

bw_sprint bw_sprint_fit_behind(const bw_split *splits, int count, double *behind) {
    const problem p = {splits, count, 3, START_BEHIND, 0};
    double at[TERMS] = {0, 0, 0};
    bw_sprint fit = solve(&p, at);
    *behind = at[2];
    if (fit.verdict != BW_SPRINT_FITTED) return fit;
    double slope[TERMS];
    fit.late = time_and_slopes(fit.legs, at[2], slope);
    fit.late_error *= slope[2];
    return fit;
}

static bw_sprint fit_free(const bw_split *splits, int count, bw_clock clock) {
    double behind;
    return clock == BW_CLOCK_SIGNAL ? bw_sprint_fit_late(splits, count, 0, true)
                                    : bw_sprint_fit_behind(splits, count, &behind);
}

bw_sprint bw_sprint_fit(const bw_split *splits, int count, bw_clock clock, double reaction) {
    if (clock == BW_CLOCK_MOVE) return bw_sprint_fit_late(splits, count, 0, false);
    if (count >= BW_SPLITS_FOR_SHIFT) {
        const bw_sprint free = fit_free(splits, count, clock);
        if (free.verdict == BW_SPRINT_FITTED) return free;
    }
    // A late clock and a slow start look alike: a few hundredths of scatter, or a man who tires, and five
    // splits cannot tell them apart. They can still tell his legs when the start is as usual.
    const double usual = clock == BW_CLOCK_GATE ? BW_GATE_SECONDS : -reaction;
    return bw_sprint_fit_late(splits, count, usual, false);
}

const char *bw_clock_id(bw_clock clock) {
    static const char *const ids[] = {"move", "signal", "gate"};
    return (int)clock >= 0 && clock < BW_CLOCK_COUNT ? ids[clock] : "";
}

const char *bw_sprint_why(bw_sprint_verdict verdict) {
    switch (verdict) {
    case BW_SPRINT_FEW:
        return "From two to 24 splits are needed, for instance at 5, 10 and 30 yards.";
    case BW_SPRINT_ORDER:
        return "Splits of one run rise together: each farther split needs a later time.";
    case BW_SPRINT_RANGE:
        return "A split is a distance up to 200 m and a time up to 60 s, both above zero.";
    case BW_SPRINT_TOO_FAST:
        return "Between two splits he would be faster than anybody has run; look at the times "
               "again.";
    case BW_SPRINT_NO_TOP:
        return "He is still speeding up at the last split, so his top speed cannot be told; add a "
               "split at 30 yards or more.";
    case BW_SPRINT_NO_START: return "The splits do not show his start; add one at 5 yards.";
    case BW_SPRINT_CLOCK:
        return "By the first split he would be at full speed at once; look at that time again, and "
               "at how the clock was started (--clock).";
    case BW_SPRINT_SCATTERED:
        return "The times are too uneven for one sprint to be told from them; look at them again, "
               "or time him once more.";
    case BW_SPRINT_NOT_A_RUN:
        return "No sprint fits these times within a quarter of a second; look at the times again.";
    case BW_SPRINT_FITTED: break;
    }
    return "";
}
