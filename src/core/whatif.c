/* SPDX-License-Identifier: GPL-3.0-or-later */
/// For each rotation the offence uses: the break is taken to a typical moment of it, the pass is
/// played, and what follows is forecast twice from the catch, with the men on their way and with the
/// same men already in place.
#include "core/whatif.h"
#include "core/choice.h"
#include "core/late.h"

/// Rotations looked into.
enum { LOOKED_INTO = 12 };

typedef struct whatif_work {
    const bw_break *b;
    const bw_forecast *forecast;
    bw_whatif *out;
    size_t room; ///< bytes from scratch on
    int next;    ///< index of the next use to look at
    bw_state state, caught;
    bw_forecast forecast_after;
    double scratch[1]; ///< the rest goes to the forecast
} whatif_work;

size_t bw_whatif_size(void) {
    return sizeof(whatif_work) + bw_typical_size();
}

/// The moment before a rotation: the ball has rested at `from` until the men are about where it has
/// them, at the usual time of that pass. The carrier is the attacker nearest to it.
static void moment(const bw_break *b, const bw_rotation *use, bw_state *s, int *receiver) {
    const bw_ground *g = b->ground;
    *s = b->start;
    int holder = 0;
    for (int a = 1; a < b->attackers; a++) {
        if (bw_length2(bw_sub(bw_man(s, a), g->places[use->from].at)) <
            bw_length2(bw_sub(bw_man(s, holder), g->places[use->from].at)))
            holder = a;
    }
    *receiver = -1;
    for (int a = 0; a < b->attackers; a++) {
        if (a == holder) continue;
        if (*receiver < 0 || bw_length2(bw_sub(bw_man(s, a), g->places[use->to].at)) <
                                 bw_length2(bw_sub(bw_man(s, *receiver), g->places[use->to].at)))
            *receiver = a;
    }
    s->holder = (int8_t)holder;
    const int pair[2] = {holder, *receiver}, place[2] = {use->from, use->to};
    for (int i = 0; i < 2; i++) {
        const bw_vec at = g->places[place[i]].at;
        s->x[pair[i]] = s->to_x[pair[i]] = at.x;
        s->y[pair[i]] = s->to_y[pair[i]] = at.y;
        s->place[pair[i]] = (int8_t)place[i];
    }
    const bw_stretch rest = {
        .ball = bw_man(s, holder), .man = holder, .ticks = BW_STEP_TICKS, .carrier = holder};
    const int until = (int)(use->thrown_s / BW_TICK + 0.5);
    // At least a second and a half, so that a rotation starts from a unit that has settled on `from`.
    const int least = BW_TICKS_PER_SECOND * 3 / 2;
    for (int left = until > least ? until : least; left > 0; left -= BW_STEP_TICKS)
        bw_run(b, s, &rest);
}

/// Puts every man in on his station for the ball's place, standing; and lists who had how far to go.
static void put_in_place(const bw_break *b, bw_state *s, bw_rotation *r) {
    const int h = s->holder;
    const bw_vec ball = s->moving[h] ? bw_v(s->to_x[h], s->to_y[h]) : bw_man(s, h);
    double tx[BW_MAX_SPOTS], ty[BW_MAX_SPOTS];
    bw_break_stations(b, s, ball, h, tx, ty);
    for (int d = 0; d < b->defenders; d++) {
        if (!s->counted[d]) continue;
        const int i = BW_MAX_ATTACKERS + d;
        const bw_vec to = bw_v(tx[d], ty[d]);
        const bw_behind late = {.spot = s->job[d],
                                .metres = bw_distance(bw_man(s, i), to),
                                .seconds = bw_seconds_to(b, s, d, to)};
        int k = r->behind_count++;
        for (; k > 0 && r->behind[k - 1].seconds < late.seconds; k--)
            r->behind[k] = r->behind[k - 1];
        r->behind[k] = late;
        s->x[i] = to.x;
        s->y[i] = to.y;
        s->u[i] = s->v[i] = s->ex[d] = s->ey[d] = 0;
    }
}

static void insert(bw_rotation *list, int *count, const bw_rotation *r, bool by_cost) {
    const double key = by_cost ? r->cost : -r->drop;
    int k = *count < BW_WEAK_MAX ? (*count)++ : BW_WEAK_MAX - 1;
    for (; k > 0; k--) {
        const double before = by_cost ? list[k - 1].cost : -list[k - 1].drop;
        if (before >= key) break;
        list[k] = list[k - 1];
    }
    list[k] = *r;
}

/// Uses that lead from one place to another, as many as are looked into.
static int count_steps(const bw_forecast *forecast) {
    int steps = 0;
    for (int i = 0; i < forecast->use_count && steps < LOOKED_INTO; i++)
        steps += forecast->use[i].from != forecast->use[i].to;
    return steps;
}

bw_status bw_whatif_begin(const bw_break *b, const bw_forecast *forecast, void *memory, size_t size,
                          bw_whatif *out, int *steps) {
    *out = (bw_whatif){0};
    *steps = 0;
    if (size < bw_whatif_size()) return BW_NO_ROOM;
    whatif_work *w = memory;
    w->b = b;
    w->forecast = forecast;
    w->out = out;
    w->room = size - offsetof(whatif_work, scratch);
    w->next = 0;
    *steps = count_steps(forecast);
    return BW_OK;
}

/// What follows within BW_WHATIF_SECONDS of the catch.
static bw_status look_ahead(whatif_work *w, double *worth, double *error) {
    bw_typical_def def = bw_typical_default();
    def.rollouts = BW_WHATIF_ROLLOUTS;
    def.seconds = BW_WHATIF_SECONDS;
    const bw_status status =
        bw_typical_from(w->b, &w->caught, &def, w->scratch, w->room, &w->forecast_after);
    *worth = w->forecast_after.worth[BW_WHATIF_SECONDS];
    *error = w->forecast_after.error[BW_WHATIF_SECONDS];
    return status;
}

bw_status bw_whatif_step(void *memory) {
    whatif_work *w = memory;
    const bw_break *b = w->b;
    while (w->forecast->use[w->next].from == w->forecast->use[w->next].to)
        w->next++;
    const bw_use *use = &w->forecast->use[w->next++];
    bw_rotation r = {.from = use->from, .to = use->to, .use = use->share, .thrown_s = use->first};
    moment(b, &r, &w->state, &r.receiver);
    r.thrower = w->state.holder;
    const bw_ply pass = {BW_PASS, (int8_t)r.receiver, BW_NOBODY, BW_NOBODY};
    r.chance = bw_play(b, &w->state, pass, &w->caught, NULL, NULL);
    double error, other;
    bw_status status = look_ahead(w, &r.moving, &error);
    if (status != BW_OK) return status;
    r.stage = w->caught.in;
    r.matched = w->caught.matched;
    put_in_place(b, &w->caught, &r);
    status = look_ahead(w, &r.set, &other);
    if (status != BW_OK) return status;
    r.error = bw_sqrt(error * error + other * other);
    r.drop = r.moving - r.set;
    r.cost = r.use * r.chance * r.drop;
    if (r.drop > 0)
        insert(w->out->weak, &w->out->count, &r, true);
    else if (-r.drop > 2 * r.error)
        insert(w->out->fault, &w->out->fault_count, &r, false);
    return BW_OK;
}

bw_status bw_whatif_run(const bw_break *b, const bw_forecast *forecast, void *memory, size_t size,
                        bw_whatif *out) {
    int steps;
    bw_status status = bw_whatif_begin(b, forecast, memory, size, out, &steps);
    for (int i = 0; i < steps && status == BW_OK; i++)
        status = bw_whatif_step(memory);
    return status;
}

void bw_rotation_moment(const bw_break *b, const bw_rotation *rotation, bw_state *s) {
    int receiver;
    moment(b, rotation, s, &receiver);
}
