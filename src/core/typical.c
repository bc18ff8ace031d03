/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Roll-outs of typical play. A roll-out carries the chance that the ball is still alive: shots and
/// lost balls are taken off it as expectations, only the next ply is drawn.
#include "core/typical.h"
#include "core/choice.h"
#include "core/random.h"
#include "core/table.h"

/// A roll-out this unlikely to be still alive is over.
#define FADED 1e-3

enum { KEPT_CHOICES = 64 };

typedef struct tally {
    double share, kept, time;
} tally;

typedef struct typical {
    bw_choice_work work;
    bw_choice choice;
    bw_state state, next;
    /// Choices already weighed up, by state: every roll-out passes through the first ones.
    uint64_t known_key[KEPT_CHOICES];
    bw_choice known[KEPT_CHOICES];
    tally use[BW_MAX_PLACES][BW_MAX_PLACES];
    double sum[BW_MAX_SECONDS + 1], square[BW_MAX_SECONDS + 1];
    double goals[BW_MAX_SECONDS + 1]; ///< of this roll-out, by the second in which they fall
} typical;

bw_typical_def bw_typical_default(void) {
    return (bw_typical_def){.rollouts = 48, .seconds = BW_MAX_SECONDS};
}

size_t bw_typical_size(void) {
    return sizeof(typical);
}

static const bw_choice *weigh_up(const bw_break *b, typical *t, const bw_state *s) {
    const uint64_t key = bw_table_key(s);
    const int slot = (int)(key >> 58);
    if (t->known_key[slot] == key) return &t->known[slot];
    // First come stays: the early choices are the ones that come by again.
    bw_choice *c = t->known_key[slot] == 0 ? &t->known[slot] : &t->choice;
    if (c != &t->choice) t->known_key[slot] = key;
    bw_choose(b, s, b->ground->level->look_ahead, &t->work, c);
    return c;
}

static void count_passes(const bw_state *s, const bw_choice *c, double alive, int since,
                         typical *t) {
    for (int i = 0; i < c->count; i++) {
        if (c->plies[i].kind != BW_PASS) continue;
        tally *u = &t->use[(int)s->place[(int)s->holder]][(int)s->place[(int)c->plies[i].to]];
        const double thrown = alive * c->share[i];
        u->share += thrown;
        u->kept += thrown * c->chance[i];
        u->time += thrown * (s->tick - since) * BW_TICK;
    }
}

/// The ply drawn, among those that are not a shot.
static int draw(const bw_choice *c, double unit) {
    double at = unit * (1 - c->shoot);
    int last = -1;
    for (int i = 0; i < c->count; i++) {
        if (c->plies[i].kind == BW_SHOOT) continue;
        last = i;
        at -= c->share[i];
        if (at < 0) break;
    }
    return last;
}

static void roll_out(const bw_break *b, const bw_state *from, int end, double first, bw_random *r,
                     typical *t, bw_forecast *out) {
    const int shoot = b->ground->shoot;
    double alive = 1;
    bool opening = true;
    t->state = *from;
    while (alive > FADED && t->state.tick + shoot <= end) {
        const bw_choice *c = weigh_up(b, t, &t->state);
        const int second =
            (t->state.tick + shoot - from->tick + BW_TICKS_PER_SECOND - 1) / BW_TICKS_PER_SECOND;
        if (second <= BW_MAX_SECONDS) t->goals[second] += alive * c->shoot * c->scores;
        out->shots += alive * c->shoot;
        count_passes(&t->state, c, alive, from->tick, t);
        // The first draws are spread evenly over all roll-outs; later ones are free.
        const int i = draw(c, opening ? first : bw_random_unit(r));
        opening = false;
        if (i < 0) return;
        alive *= 1 - c->shoot;
        out->lost += alive * (1 - c->chance[i]);
        alive *= c->chance[i];
        t->work.played++;
        bw_play(b, &t->state, c->plies[i], &t->next, NULL, NULL);
        t->state = t->next;
    }
}

/// The most used passes, by falling share; ties by places.
static void rank_use(typical *t, int rollouts, int places, bw_forecast *out) {
    for (int from = 0; from < places; from++) {
        for (int to = 0; to < places; to++) {
            const tally *u = &t->use[from][to];
            const double share = u->share / rollouts;
            if (share <= 0) continue;
            const bool full = out->use_count == BW_MAX_ROTATIONS;
            int k = full ? BW_MAX_ROTATIONS - 1 : out->use_count;
            if (full && out->use[k].share >= share) continue;
            if (!full) out->use_count++;
            for (; k > 0 && out->use[k - 1].share < share; k--)
                out->use[k] = out->use[k - 1];
            out->use[k] = (bw_use){from, to, share, u->kept / u->share, u->time / u->share};
        }
    }
}

bw_status bw_typical_from(const bw_break *b, const bw_state *from, const bw_typical_def *def,
                          void *memory, size_t size, bw_forecast *out) {
    *out = (bw_forecast){0};
    if (size < sizeof(typical)) return BW_NO_ROOM;
    BW_ASSERT(def->rollouts >= 1);
    typical *t = memory;
    *t = (typical){0};
    bw_random random = {def->seed ? def->seed : b->def.seed};
    const double seconds = bw_clamp(def->seconds, 0, BW_MAX_SECONDS);
    const int end = from->tick + (int)(seconds / BW_TICK + 0.5);
    const double shift = bw_random_unit(&random);
    for (int n = 0; n < def->rollouts; n++) {
        for (int i = 0; i <= BW_MAX_SECONDS; i++)
            t->goals[i] = 0;
        roll_out(b, from, end, (n + shift) / def->rollouts, &random, t, out);
        double by = 0;
        for (int i = 1; i <= BW_MAX_SECONDS; i++) {
            by += t->goals[i];
            t->sum[i] += by;
            t->square[i] += by * by;
        }
    }
    const double n = def->rollouts;
    for (int i = 1; i <= BW_MAX_SECONDS; i++) {
        const double mean = t->sum[i] / n;
        out->worth[i] = mean;
        if (n > 1) out->error[i] = bw_sqrt(bw_max(t->square[i] / n - mean * mean, 0) / (n - 1));
    }
    out->lost /= n;
    out->shots /= n;
    out->rollouts = def->rollouts;
    out->played = t->work.played;
    rank_use(t, def->rollouts, b->ground->place_count, out);
    return BW_OK;
}

bw_status bw_typical(const bw_break *b, const bw_typical_def *def, void *memory, size_t size,
                     bw_forecast *out) {
    return bw_typical_from(b, &b->start, def, memory, size, out);
}
