/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Steps of 0.2 s of constant effort, each the exact solution of the motion with drag; the first
/// stretch of a reaction is one step. The same arithmetic as bw_advance and bw_effort_toward, with
/// the exponentials looked up.
#include "core/run.h"

/// An attacker this near where he is bound and this slow stands, m and m/s.
#define ARRIVED 0.05
#define SLOW 0.2
/// A man who stops needs this many seconds of his speed to do it, about (assumed).
#define STOPPING 0.25

/// One step of one man toward where he is bound.
static void stride_on(bw_runner *r, const bw_stride *stride, int n) {
    double wx = (r->to_x - r->x - r->u * stride->ahead_coast) * stride->ahead_gain;
    double wy = (r->to_y - r->y - r->v * stride->ahead_coast) * stride->ahead_gain;
    const double w2 = wx * wx + wy * wy, vmax = stride->vmax;
    if (w2 > vmax * vmax) {
        const double k = vmax / bw_sqrt(w2);
        wx *= k;
        wy *= k;
    }
    const double c = stride->coast[n], d = stride->drive[n], e = stride->fade[n];
    r->x = r->x + r->u * c + wx * d;
    r->y = r->y + r->v * c + wy * d;
    r->u = wx + (r->u - wx) * e;
    r->v = wy + (r->v - wy) * e;
    const double dx = r->x - r->to_x, dy = r->y - r->to_y;
    if (dx * dx + dy * dy < ARRIVED * ARRIVED && r->u * r->u + r->v * r->v < SLOW * SLOW) {
        r->x = r->to_x;
        r->y = r->to_y;
        r->u = r->v = 0;
        r->moving = false;
    }
}

bw_runner bw_runner_of(const bw_state *s, int a) {
    return (bw_runner){s->x[a],    s->y[a],    s->u[a],          s->v[a],
                       s->to_x[a], s->to_y[a], s->moving[a] != 0};
}

void bw_runner_send(bw_runner *r, bw_vec to) {
    r->to_x = to.x;
    r->to_y = to.y;
    r->moving = true;
}

void bw_runner_stop(bw_runner *r) {
    if (!r->moving) return;
    r->to_x = r->x + STOPPING * r->u;
    r->to_y = r->y + STOPPING * r->v;
}

void bw_runner_go(bw_runner *r, const bw_stride *stride, int ticks, int freeze) {
    int n = freeze > 0 ? freeze : BW_STEP_TICKS;
    for (int left = ticks; left > 0 && r->moving; left -= n, n = BW_STEP_TICKS) {
        if (n > left) n = left;
        stride_on(r, stride, n);
    }
}

static void step_attackers(const bw_break *b, bw_state *s, int carrier, int n) {
    for (int a = 0; a < b->attackers; a++) {
        if (!s->moving[a]) continue;
        bw_runner r = bw_runner_of(s, a);
        stride_on(&r, a == carrier ? &b->ground->carrier : &b->ground->attacker, n);
        s->x[a] = r.x;
        s->y[a] = r.y;
        s->u[a] = r.u;
        s->v[a] = r.v;
        s->moving[a] = r.moving;
    }
}

/// Efforts that would put every defender on target half a second ahead. All six lanes are worked,
/// the idle ones on zeros, so that the loop has a fixed length.
static void aim_defenders(const bw_break *restrict b, bw_state *restrict s,
                          const double *restrict tx, const double *restrict ty) {
    const bw_paces *p = &b->paces;
    const double *x = s->x + BW_MAX_ATTACKERS, *y = s->y + BW_MAX_ATTACKERS;
    const double *u = s->u + BW_MAX_ATTACKERS, *v = s->v + BW_MAX_ATTACKERS;
    for (int d = 0; d < BW_MAX_SPOTS; d++) {
        const double wx = (tx[d] - x[d] - u[d] * p->ahead_coast[d]) * p->ahead_gain[d];
        const double wy = (ty[d] - y[d] - v[d] * p->ahead_coast[d]) * p->ahead_gain[d];
        const double w2 = wx * wx + wy * wy, most2 = p->vmax[d] * p->vmax[d];
        const double k = p->vmax[d] / bw_sqrt(w2 > most2 ? w2 : most2);
        s->ex[d] = w2 > most2 ? wx * k : wx;
        s->ey[d] = w2 > most2 ? wy * k : wy;
    }
}

static void step_defenders(const bw_break *restrict b, bw_state *restrict s, int n) {
    const double *c = b->paces.coast[n], *drive = b->paces.drive[n], *e = b->paces.fade[n];
    double *x = s->x + BW_MAX_ATTACKERS, *y = s->y + BW_MAX_ATTACKERS;
    double *u = s->u + BW_MAX_ATTACKERS, *v = s->v + BW_MAX_ATTACKERS;
    for (int d = 0; d < BW_MAX_SPOTS; d++) {
        x[d] = x[d] + u[d] * c[d] + s->ex[d] * drive[d];
        y[d] = y[d] + v[d] * c[d] + s->ey[d] * drive[d];
        u[d] = s->ex[d] + (u[d] - s->ex[d]) * e[d];
        v[d] = s->ey[d] + (v[d] - s->ey[d]) * e[d];
    }
}

static double nearest2(const bw_break *b, const bw_state *s, int man) {
    double least = 1e9;
    for (int d = 0; d < b->defenders; d++) {
        const double dx = s->x[BW_MAX_ATTACKERS + d] - s->x[man];
        const double dy = s->y[BW_MAX_ATTACKERS + d] - s->y[man];
        least = bw_min(least, dx * dx + dy * dy);
    }
    return least;
}

/// Attackers on the move, but for the man the ball is with or coming to: one bit each.
static unsigned running(const bw_break *b, const bw_state *s, int man) {
    unsigned men = 0;
    for (int a = 0; a < b->attackers; a++)
        men |= (unsigned)(s->moving[a] && a != man) << a;
    return men;
}

static void show(const bw_stretch *run, const bw_state *s, int done) {
    const bw_onlooker *o = run->onlooker;
    if (!o || !o->watch) return;
    const bw_vec ball =
        o->flying ? bw_lerp(o->from, run->ball, (double)done / run->ticks) : bw_man(s, run->man);
    o->watch(o->self, s, ball, o->flying && done < run->ticks);
}

double bw_run(const bw_break *b, bw_state *s, const bw_stretch *run) {
    double tx[BW_MAX_SPOTS] = {0}, ty[BW_MAX_SPOTS] = {0}, least = 1e9;
    bool frozen = run->freeze > 0, aimed = false;
    unsigned ran = 0;
    int n = frozen ? run->freeze : BW_STEP_TICKS;
    for (int left = run->ticks; left > 0; left -= n, n = BW_STEP_TICKS) {
        if (n > left) n = left;
        if (!frozen) {
            // A zone is placed once for each place of the ball; man to man follows the men who run.
            if (!aimed)
                bw_break_stations(b, s, run->ball, run->man, tx, ty);
            else if (s->matched)
                bw_break_follow(b, s, run->ball, ran, tx, ty);
            aimed = true;
            ran = running(b, s, run->man);
            aim_defenders(b, s, tx, ty);
        }
        frozen = false;
        step_attackers(b, s, run->carrier, n);
        step_defenders(b, s, n);
        s->tick += n;
        if (s->in < b->defenders && bw_break_join(b, s, run->ball)) aimed = false;
        if (run->carrier == run->man) least = bw_min(least, nearest2(b, s, run->man));
        show(run, s, run->ticks - left + n);
    }
    return bw_sqrt(least);
}

void bw_run_stop(const bw_break *b, bw_state *s, int a) {
    if (!s->moving[a]) return;
    bw_runner r = bw_runner_of(s, a);
    bw_runner_stop(&r);
    s->to_x[a] = r.to_x;
    s->to_y[a] = r.to_y;
    s->place[a] = (int8_t)bw_ground_nearest(b->ground, bw_v(r.to_x, r.to_y));
}
