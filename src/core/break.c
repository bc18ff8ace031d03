/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Putting a break together, and the defence's side of it: who has which job, and where it puts him.
#include "core/break.h"

#include "core/attack_set.h"
#include "core/catalogue.h"
#include "core/match.h"
#include "core/shade.h"

/// A man is judged by where his run carries him within this many seconds.
#define LEAD 0.4
/// A late man this near his spot, m, or lower than it, is in.
#define NEAR_SPOT 3.0
/// Share of his top speed a late man runs at when the break begins (assumed).
#define LATE_PACE 0.9

bw_break_def bw_break_default(void) {
    bw_break_def def = {
        .offence = 6, .defence = 4, .late_from_scheme = true, .set_already = true, .seed = 1};
    bw_copy(def.set, sizeof def.set, "2-2-2");
    bw_copy(def.start, sizeof def.start, "top");
    return def;
}

/// Where attacker a counts for the defence: a little ahead of where he is.
static bw_vec seen_at(const bw_state *s, int a) {
    return bw_v(s->x[a] + LEAD * s->u[a], s->y[a] + LEAD * s->v[a]);
}

static bw_vec carried_to(const bw_state *s, int d) {
    const int i = BW_MAX_ATTACKERS + d;
    return bw_v(s->x[i] + LEAD * s->u[i], s->y[i] + LEAD * s->v[i]);
}

static int seen_attackers(const bw_break *b, const bw_state *s, bw_vec ball, int man, bw_vec *at) {
    for (int a = 0; a < b->attackers; a++)
        at[a] = a == man ? ball : s->moving[a] ? seen_at(s, a) : bw_man(s, a);
    return b->attackers;
}

void bw_break_stations(const bw_break *b, const bw_state *s, bw_vec ball, int man, double *tx,
                       double *ty) {
    bw_vec at[BW_MAX_ATTACKERS];
    const int count = seen_attackers(b, s, ball, man, at);
    bw_station station[BW_MAX_SPOTS];
    if (!s->matched) bw_where(&b->ground->plans[s->in], ball, at, count, station);
    for (int d = 0; d < b->defenders; d++) {
        const int job = s->job[d];
        bw_vec to = b->late_spot[d];
        if (s->counted[d] && !s->matched)
            to = station[job].at;
        else if (s->counted[d])
            to = job == man ? bw_mark_place(ball, ball, true) : bw_sag_place(at[job], ball);
        tx[d] = to.x;
        ty[d] = to.y;
    }
}

void bw_break_follow(const bw_break *b, const bw_state *s, bw_vec ball, unsigned ran, double *tx,
                     double *ty) {
    for (int d = 0; d < b->defenders && ran; d++) {
        const int a = s->job[d];
        if (!s->counted[d] || !(ran >> a & 1u)) continue;
        const bw_vec to = bw_sag_place(s->moving[a] ? seen_at(s, a) : bw_man(s, a), ball);
        tx[d] = to.x;
        ty[d] = to.y;
    }
}

/// Everyone takes a man: least worst run, then least sum; kept from then on.
static void match_up(const bw_break *b, bw_state *s) {
    double cost[BW_MATCH_MAX][BW_MATCH_MAX] = {{0}};
    int men[BW_MAX_SPOTS], n = 0;
    for (int d = 0; d < b->defenders; d++) {
        if (s->counted[d]) men[n++] = d;
    }
    for (int r = 0; r < n; r++) {
        for (int a = 0; a < b->attackers; a++)
            cost[r][a] = bw_distance(carried_to(s, men[r]), bw_man(s, a)) / b->paces.vmax[men[r]];
    }
    const bw_matching m = bw_match(cost, n, b->attackers);
    for (int r = 0; r < n; r++)
        s->job[men[r]] = (int8_t)m.taken[r];
    s->matched = 1;
}

/// True when the late man may take this spot of a stage; a man whose spots are not in it may take any.
static bool may_take(const bw_break *b, int d, const bw_stage *stage, int spot) {
    if (b->late_takes[d] < 0) return true;
    const bw_late *late = &b->ground->scheme->late[b->late_takes[d]];
    bool any = false;
    for (int k = 0; k < late->take_count; k++) {
        const int i = bw_stage_spot(stage, late->takes[k]);
        if (i == spot) return true;
        any |= i >= 0;
    }
    return !any;
}

/// A man more: the unit forms the next stage, everyone the spot that gets all home soonest.
static void form_stage(const bw_break *b, bw_state *s, bw_vec ball, int newcomer) {
    const bw_plan *plan = &b->ground->plans[s->in];
    const bw_scheme *scheme = b->ground->scheme;
    const bw_stage *stage = &scheme->stages[bw_scheme_stage(scheme, s->in)];
    bw_station station[BW_MAX_SPOTS];
    bw_where(plan, ball, NULL, 0, station);
    double cost[BW_MATCH_MAX][BW_MATCH_MAX] = {{0}};
    int men[BW_MAX_SPOTS], n = 0;
    for (int d = 0; d < b->defenders; d++) {
        if (s->counted[d]) men[n++] = d;
    }
    for (int r = 0; r < n; r++) {
        for (int k = 0; k < plan->spots; k++) {
            cost[r][k] = men[r] == newcomer && !may_take(b, newcomer, stage, k)
                             ? BW_MATCH_NEVER
                             : bw_distance(carried_to(s, men[r]), station[k].at);
        }
    }
    const bw_matching m = bw_match(cost, n, plan->spots);
    for (int r = 0; r < n; r++)
        s->job[men[r]] = (int8_t)m.taken[r];
}

/// Whether numbers are even and the men match up.
static bool matches_up(const bw_break *b, int in) {
    return in == b->attackers && !(b->def.keep_zone && b->ground->plans[in].spots > 0);
}

bool bw_break_join(const bw_break *b, bw_state *s, bw_vec ball) {
    bool changed = false;
    for (int d = 0; d < b->defenders; d++) {
        if (s->counted[d]) continue;
        const bw_vec at = bw_man(s, BW_MAX_ATTACKERS + d), spot = b->late_spot[d];
        if (at.y > spot.y && bw_distance(at, spot) > NEAR_SPOT) continue;
        s->counted[d] = 1;
        s->in++;
        if (matches_up(b, s->in))
            match_up(b, s);
        else
            form_stage(b, s, ball, d);
        changed = true;
    }
    return changed;
}

static bw_status refuse(bw_text *why, const bw_break *b, bw_status status,
                        const bw_sentence *sentence) {
    if (why)
        bw_put_sentence(why, bw_voice_of(b->ground->scheme), sentence,
                        bw_as_word("set", b->def.set), bw_as_word("start", b->def.start));
    return status;
}

static bw_status place_attackers(bw_break *b, bw_text *why) {
    bw_state *s = &b->start;
    const bw_ground *g = b->ground;
    bw_vec at[BW_MAX_ATTACKERS];
    const bw_status found = bw_attack_set_place(g->scheme, b->def.set, b->attackers, at);
    if (found == BW_NOT_FOUND) return refuse(why, b, found, &bw_s_break_no_set);
    if (found != BW_OK) return refuse(why, b, BW_BAD_INPUT, &bw_s_break_small_set);
    b->start_landmark = bw_scheme_landmark(g->scheme, b->def.start);
    if (b->start_landmark < 0) return refuse(why, b, BW_NOT_FOUND, &bw_s_break_no_start);
    const bw_vec ball = g->scheme->landmarks[b->start_landmark].at;
    for (int a = 0; a < b->attackers; a++) {
        if (bw_length2(bw_sub(at[a], ball)) < bw_length2(bw_sub(at[s->holder], ball)))
            s->holder = (int8_t)a;
    }
    at[s->holder] = ball;
    for (int a = 0; a < b->attackers; a++) {
        s->x[a] = s->to_x[a] = at[a].x;
        s->y[a] = s->to_y[a] = at[a].y;
        s->place[a] = (int8_t)bw_ground_nearest(g, at[a]);
    }
    return BW_OK;
}

/// The spot a late man runs to: of those he may take in the stage he completes, the one nearest the
/// ball's far side stays for others; he takes the first that stage has, and at even numbers the hole.
static void place_late(bw_break *b, int d, double behind) {
    bw_state *s = &b->start;
    const bw_scheme *scheme = b->ground->scheme;
    const int index = d - b->def.defence, stage_at = bw_scheme_stage(scheme, d + 1);
    const int now = bw_scheme_stage(scheme, b->def.defence);
    const bw_vec hole = now >= 0 ? scheme->stages[now].rule.crease_at : bw_rule_default().crease_at;
    b->late_takes[d] = index < scheme->late_count ? index : -1;
    b->late_spot[d] = hole;
    if (stage_at >= 0 && b->late_takes[d] >= 0 && !matches_up(b, d + 1)) {
        const bw_stage *stage = &scheme->stages[stage_at];
        const bw_late *late = &scheme->late[index];
        for (int k = late->take_count - 1; k >= 0; k--) {
            const int spot = bw_stage_spot(stage, late->takes[k]);
            if (spot >= 0) b->late_spot[d] = stage->spots[spot].home;
        }
    }
    const int i = BW_MAX_ATTACKERS + d;
    s->x[i] = b->late_spot[d].x;
    s->y[i] = b->late_spot[d].y + behind; // beyond the midline when he comes from there
    s->v[i] = s->ey[d] = -LATE_PACE * b->paces.vmax[d];
}

static void place_defenders(bw_break *b) {
    bw_state *s = &b->start;
    const bw_vec ball = bw_man(s, s->holder);
    s->in = (int8_t)b->def.defence;
    for (int d = 0; d < b->def.defence; d++) {
        s->counted[d] = 1;
        s->job[d] = (int8_t)d;
    }
    for (int d = b->def.defence; d < b->defenders; d++)
        s->job[d] = -1;
    s->matched = matches_up(b, s->in);
    double tx[BW_MAX_SPOTS], ty[BW_MAX_SPOTS];
    bw_break_stations(b, s, ball, s->holder, tx, ty);
    for (int d = 0; d < b->def.defence; d++) {
        const int i = BW_MAX_ATTACKERS + d;
        const bw_plan *plan = &b->ground->plans[s->in];
        const bool at_home = !b->def.set_already && plan->spots > 0;
        s->x[i] = at_home ? plan->home[d].x : tx[d];
        s->y[i] = at_home ? plan->home[d].y : ty[d];
    }
    if (s->matched) match_up(b, s);
}

static void fill_paces(bw_break *b) {
    for (int d = 0; d < BW_MAX_SPOTS; d++) {
        bw_stride stride;
        bw_stride_build(b->def.legs[d].vmax > 0 ? b->def.legs[d] : b->ground->level->defender,
                        &stride);
        for (int t = 0; t < BW_STEP_TABLE; t++) {
            b->paces.fade[t][d] = stride.fade[t];
            b->paces.coast[t][d] = stride.coast[t];
            b->paces.drive[t][d] = stride.drive[t];
        }
        b->paces.ahead_coast[d] = stride.ahead_coast;
        b->paces.ahead_gain[d] = stride.ahead_gain;
        b->paces.vmax[d] = stride.vmax;
    }
}

bw_status bw_break_begin(const bw_ground *ground, const bw_break_def *def, bw_break *b,
                         bw_text *why) {
    *b = (bw_break){.ground = ground, .def = *def, .attackers = def->offence};
    if (def->offence < 3 || def->offence > BW_MAX_ATTACKERS || def->defence < 3 ||
        def->defence > def->offence)
        return refuse(why, b, BW_BAD_INPUT, &bw_s_break_numbers);
    if (def->late_from_scheme) {
        b->def.late_count = ground->scheme->late_count;
        for (int i = 0; i < b->def.late_count; i++)
            b->def.late[i] = ground->scheme->late[i].behind;
    }
    const int wanted = def->offence - def->defence;
    if (b->def.late_count > wanted) b->def.late_count = wanted;
    for (int i = 0; i < b->def.late_count; i++) {
        if (!(b->def.late[i] > 0 && b->def.late[i] <= 100))
            return refuse(why, b, BW_BAD_INPUT, &bw_s_break_late_far);
    }
    b->defenders = def->defence + b->def.late_count;
    for (int n = def->defence; n <= b->defenders; n++) {
        if (ground->plans[n].spots == 0 && !matches_up(b, n)) {
            if (why)
                bw_put_sentence(why, bw_voice_of(ground->scheme), &bw_s_break_no_stage,
                                bw_as_count("defenders", n));
            return BW_NOT_FOUND;
        }
        b->reaction[n] =
            (int)(bw_reaction(ground->level, (double)def->offence / n) / BW_TICK + 0.5);
    }
    fill_paces(b);
    const bw_status placed = place_attackers(b, why);
    if (placed != BW_OK) return placed;
    place_defenders(b);
    for (int d = def->defence; d < b->defenders; d++)
        place_late(b, d, b->def.late[d - def->defence]);
    return BW_OK;
}
