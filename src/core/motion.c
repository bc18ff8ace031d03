/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The laws of motion in closed form, and the search for the moment a point comes within reach.
/// Inside, time is counted in tau, speed in vmax and distance in vmax tau, which leaves one law for
/// every player: with u = t/tau, coast c = 1 - e^-u and reach r = u - c.
#include "core/motion.h"

#include "core/base.h"
#include "core/exp_tail.h"

/// What u seconds (in tau) of drag leave of a speed, how far it carried, and the reach won.
typedef struct drag {
    double left;  ///< e^-u
    double coast; ///< 1 - e^-u
    double reach; ///< u - coast
} drag;

static inline drag drag_after(double u) {
    if (u < BW_EXP_TAIL_RANGE) {
        const double reach = u * u * bw_exp_tail(-u);
        const double coast = u - reach;
        return (drag){1 - coast, coast, reach};
    }
    const double left = bw_exp(-u);
    const double coast = 1 - left;
    return (drag){left, coast, u - coast};
}

double bw_coast(bw_legs legs, double t) {
    return legs.tau * drag_after(t / legs.tau).coast;
}

double bw_reach(bw_legs legs, double t) {
    return legs.vmax * legs.tau * drag_after(t / legs.tau).reach;
}

bw_body bw_advance(bw_legs legs, bw_body body, bw_vec effort, double t) {
    const drag d = drag_after(t / legs.tau);
    const bw_vec carried = bw_scale(body.velocity, legs.tau * d.coast);
    const bw_vec driven = bw_scale(effort, legs.tau * d.reach);
    return (bw_body){
        .at = bw_add(body.at, bw_add(carried, driven)),
        .velocity = bw_add(bw_scale(body.velocity, d.left), bw_scale(effort, d.coast)),
    };
}

/// A run to be timed, in units of tau and vmax.
typedef struct timed_run {
    bw_vec gap;      ///< from the player to the target
    bw_vec velocity; ///< the speed he has
    double gap2;     ///< |gap|^2
    double speed2;   ///< |velocity|^2
    double along;    ///< gap . velocity
} timed_run;

/// How far the target lies outside the reachable disc at u, with two derivatives by u. Squares are
/// compared, f = |gap - velocity c|^2 - r^2: no root to take, and no corner at the target.
typedef struct margin {
    double f;
    double slope;
    double bend;
} margin;

static inline margin margin_at(const timed_run *run, double u) {
    const drag d = drag_after(u);
    const bw_vec rest = bw_sub(run->gap, bw_scale(run->velocity, d.coast));
    const double closing = bw_dot(rest, run->velocity);
    return (margin){
        .f = bw_length2(rest) - d.reach * d.reach,
        .slope = -2 * (closing * d.left + d.reach * d.coast),
        .bend = 2 * ((run->speed2 * d.left + closing - d.reach) * d.left - d.coast * d.coast),
    };
}

/// Halley's error is of the third order in the step: a step below this share of u, with the curve
/// as straight as that, leaves an error below 3e-10 (measured in tests/core/test_motion.c).
static const double last_step = 2e-4;

/// The crossing of the margin from plus (at `low`) to minus (at `high`), when there is just one
/// between them. Halley's method from `u`; a step out of the bracket is replaced by halving it, and
/// from the tenth on so is every other one.
static double crossing(const timed_run *run, double low, double high, double u) {
    if (!(u > low && u <= high)) u = 0.5 * (low + high);
    for (int i = 0; i < 120; i++) {
        const margin m = margin_at(run, u);
        if (m.f > 0)
            low = u;
        else
            high = u;
        const double straight = 2 * m.slope * m.slope;
        const double curved = m.f * m.bend;
        const double next = u - 2 * m.f * m.slope / (straight - curved);
        const bool inside = m.slope < 0 && next >= low && next <= high;
        if (!inside || (i > 8 && i % 2 == 0)) {
            u = 0.5 * (low + high);
            if (high - low <= 1e-14 * high) break;
            continue;
        }
        const bool done =
            bw_abs(m.f) <= -last_step * u * m.slope && bw_abs(curved) <= last_step * straight;
        u = next;
        if (done) break;
    }
    return u;
}

/// No run takes longer: even carried straight away first, he is back by then.
static double longest(const timed_run *run) {
    return bw_sqrt(run->gap2) + bw_sqrt(run->speed2) + 1;
}

/// A start for the search: distance `far`, closing speed `closing`. 1 - e^-u is replaced by
/// u / (1 + 0.55 u) for short runs and by 1 for long ones; from rest that is within 6 %, close
/// enough for two steps.
static double guess(double far, double closing) {
    const double h = 0.55 * far - closing;
    const double square = bw_max(h * h + 2.2 * far, 0);
    return bw_min((h + bw_sqrt(square)) / 1.1, far + 1 - closing);
}

/// Arrival when the margin falls through zero once, or rises and then does.
static double arrive_once(const timed_run *run) {
    const double far = bw_sqrt(run->gap2);
    const double closing = far > 0 ? run->along / far : -bw_sqrt(run->speed2);
    return crossing(run, 0, longest(run), guess(far, closing));
}

/// Slope of the margin by c instead of u, F' = -closing - c/(1 - c), and its own slope.
static double slope_by_coast(const timed_run *run, double c, double *bend) {
    const bw_vec rest = bw_sub(run->gap, bw_scale(run->velocity, c));
    const double far = bw_length(rest);
    const double miss = bw_cross(run->gap, run->velocity);
    const double left = 1 - c;
    *bend = miss * miss / (far * far * far) - 1 / (left * left);
    return -bw_dot(rest, run->velocity) / far - c / left;
}

/// Past the closest approach F' is concave, so Newton's method from either end creeps up on the
/// zero nearest to that end and never jumps it. Starts at `c`, where F' <= 0, walks towards `stop`;
/// returns `stop` when F' stays below zero.
static double turning_point(const timed_run *run, double c, double stop) {
    const double ahead = stop > c ? 1 : -1;
    for (int i = 0; i < 100; i++) {
        double bend;
        const double slope = slope_by_coast(run, c, &bend);
        if (!(bend * ahead > 0)) return slope >= 0 ? c : stop;
        const double step = -slope / bend;
        const double next = c + step;
        if (!((stop - next) * ahead > 0)) return stop;
        if (step * ahead <= 1e-15) return c;
        c = next;
    }
    return c;
}

static double time_of_coast(double c) {
    return -bw_log(1 - c);
}

/// A target close ahead of a player who is fast enough to overrun it. With c for a clock the margin
/// falls to the closest approach c = `pass`, may then rise between two turning points, and falls for
/// good from c = `end` on at the latest. So there are one or three crossings.
typedef struct overrun {
    double pass;
    double end;
    double toward; ///< where to look for the crossing on the way in
    double back;   ///< and for the one on the way back
} overrun;

/// The crossing before the margin rises, or the only one if it never does, or -1.
static double crossing_in(const timed_run *run, const overrun *near) {
    const double u_pass = time_of_coast(near->pass);
    if (margin_at(run, u_pass).f <= 0) return crossing(run, 0, u_pass, near->toward);
    const double lowest = turning_point(run, near->pass, near->end);
    const double u_lowest = time_of_coast(lowest);
    if (margin_at(run, u_lowest).f > 0) return -1;
    return crossing(run, u_pass, u_lowest, near->toward);
}

/// The crossing after the margin has risen, or from c = `end` on, or -1.
static double crossing_back(const timed_run *run, const overrun *near) {
    const double u_end = time_of_coast(near->end);
    if (margin_at(run, u_end).f > 0) return crossing(run, u_end, longest(run), near->back);
    const double highest = turning_point(run, near->end, near->pass);
    if (highest <= near->pass) return -1;
    const double u_highest = time_of_coast(highest);
    if (margin_at(run, u_highest).f <= 0) return -1;
    return crossing(run, u_highest, u_end, near->back);
}

/// Both kinds ask both questions, in opposite order, so that a lone crossing is the same double.
/// When rounding hides a turning point from either, there is no second crossing to tell apart.
static double arrive_near(const timed_run *run, bw_arrival kind) {
    const double speed = bw_sqrt(run->speed2);
    const double far = bw_sqrt(run->gap2);
    const overrun near = {
        .pass = run->along / run->speed2,
        .end = speed / (1 + speed),
        .toward = guess(far, run->along / far),
        .back = guess(-run->along / speed, -speed),
    };
    double u = kind == BW_FIRST_TOUCH ? crossing_in(run, &near) : crossing_back(run, &near);
    if (u < 0) u = kind == BW_FIRST_TOUCH ? crossing_back(run, &near) : crossing_in(run, &near);
    return u < 0 ? arrive_once(run) : u;
}

double bw_arrive(bw_legs legs, bw_body body, bw_vec target, bw_arrival kind) {
    timed_run run = {
        .gap = bw_scale(bw_sub(target, body.at), 1 / (legs.vmax * legs.tau)),
        .velocity = bw_scale(body.velocity, 1 / legs.vmax),
    };
    run.gap2 = bw_length2(run.gap);
    run.speed2 = bw_length2(run.velocity);
    run.along = bw_dot(run.gap, run.velocity);
    if (run.gap2 == 0 && (kind == BW_FIRST_TOUCH || run.speed2 == 0)) return 0;
    // along / speed < speed^2 / (1 + speed), without the root in the common case.
    const bool near = run.along > 0 && run.along < run.speed2 &&
                      run.along * (1 + bw_sqrt(run.speed2)) < run.speed2 * bw_sqrt(run.speed2);
    return legs.tau * (near ? arrive_near(&run, kind) : arrive_once(&run));
}

/// With s = sqrt(1 - e^-z), z = d/(vmax tau): artanh(s) = ln(1 + s) + z/2. The quotient puts back
/// what 1 + s loses of a small s.
double bw_arrive_and_stop(bw_legs legs, double d) {
    const double z = d / (legs.vmax * legs.tau);
    const double s = bw_sqrt(drag_after(z).coast);
    const double y = 1 + s;
    const double log_y = y > 1 ? bw_log(y) * (s / (y - 1)) : s;
    return 2 * legs.tau * (log_y + 0.5 * z);
}

bw_vec bw_effort_toward(bw_legs legs, bw_body body, bw_vec target, double horizon) {
    const drag d = drag_after(horizon / legs.tau);
    const bw_vec carried = bw_scale(body.velocity, legs.tau * d.coast);
    const bw_vec need = bw_sub(bw_sub(target, body.at), carried);
    const double unit_reach = legs.tau * d.reach;
    const double need2 = bw_length2(need);
    const double reach = legs.vmax * unit_reach;
    if (need2 < reach * reach) return bw_scale(need, 1 / unit_reach);
    return need2 > 0 ? bw_scale(need, legs.vmax / bw_sqrt(need2)) : need;
}

double bw_speed_needed(double tau, double d, double t) {
    if (!(t > 0)) return __builtin_inf();
    return d / (tau * drag_after(t / tau).reach);
}
