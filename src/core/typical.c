/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Roll-outs of typical play, in bundles. A bundle starts together and parts at each decision in the
/// proportions of the choice (systematic sampling), so that few roll-outs cover the likely ways evenly
/// and a state is weighed up once for all that pass through it. A roll-out carries the chance that the
/// ball is still alive: shots and lost balls are taken off it as expectations, never drawn.
#include "core/typical.h"
#include "core/choice.h"
#include "core/random.h"
#include "core/table.h"

/// A roll-out this unlikely to be still alive is over.
#define FADED 1e-3

/// Bundles are independent of each other: their spread is the error. No more decisions than these
/// fit into ten seconds of the shortest plies.
enum { KEPT_CHOICES = 64, MOST_DECISIONS = 10 * 3 };

typedef struct tally {
    double share, kept, time;
} tally;

typedef struct decision {
    bw_state state;
    bw_choice choice;
} decision;

typedef struct typical {
    const bw_break *b;
    bw_forecast *out;
    bw_random random;
    int begin, end;   ///< ticks
    int each, bundle; ///< roll-outs in a bundle; bundles played
    bw_state from;
    bw_choice_work work;
    decision decisions[MOST_DECISIONS + 1];
    /// Choices already weighed up, by state: every bundle passes through the first ones.
    uint64_t known_key[KEPT_CHOICES];
    bw_choice known[KEPT_CHOICES];
    tally use[BW_MAX_PLACES][BW_MAX_PLACES];
    double sum[BW_MAX_SECONDS + 1], square[BW_MAX_SECONDS + 1];
    double goals[BW_MAX_SECONDS + 1]; ///< of this bundle, by the second in which they fall
} typical;

bw_typical_def bw_typical_default(void) {
    return (bw_typical_def){.rollouts = 48, .seconds = BW_MAX_SECONDS};
}

size_t bw_typical_size(void) {
    return sizeof(typical);
}

static const bw_choice *weigh_up(typical *t, decision *here) {
    const uint64_t key = bw_table_key(&here->state);
    const int slot = (int)(key >> 58);
    if (t->known_key[slot] == key) return &t->known[slot];
    // First come stays: the early choices are the ones that come by again.
    bw_choice *c = t->known_key[slot] == 0 ? &t->known[slot] : &here->choice;
    if (c != &here->choice) t->known_key[slot] = key;
    bw_choose(t->b, &here->state, t->b->ground->level->look_ahead, &t->work, c);
    return c;
}

static void count_passes(typical *t, const bw_state *s, const bw_choice *c, double mass) {
    for (int i = 0; i < c->count; i++) {
        if (c->plies[i].kind != BW_PASS) continue;
        tally *u = &t->use[(int)s->place[(int)s->holder]][(int)s->place[(int)c->plies[i].to]];
        const double thrown = mass * c->share[i];
        u->share += thrown;
        u->kept += thrown * c->chance[i];
        u->time += thrown * (s->tick - t->begin) * BW_TICK;
    }
}

/// `n` roll-outs, each alive with chance `alive`, at decision number `depth`.
static void part(typical *t, int depth, int n, double alive) {
    decision *here = &t->decisions[depth];
    const int shoot = t->b->ground->shoot;
    if (depth == MOST_DECISIONS || alive < FADED || here->state.tick + shoot > t->end) return;
    const bw_choice *c = weigh_up(t, here);
    const int shot_at = here->state.tick + shoot - t->begin;
    const int second = (shot_at + BW_TICKS_PER_SECOND - 1) / BW_TICKS_PER_SECOND;
    t->goals[second] += n * alive * c->shoot * c->scores;
    t->out->shots += n * alive * c->shoot;
    count_passes(t, &here->state, c, n * alive);
    alive *= 1 - c->shoot;
    if (alive < FADED) return;

    // Marks evenly apart, thrown down together at random: a ply gets its share of the n roll-outs,
    // rounded up or down.
    double mark = bw_random_unit(&t->random), reached = 0;
    for (int i = 0, left = n; i < c->count && left > 0; i++) {
        if (c->plies[i].kind == BW_SHOOT) continue;
        reached += n * c->share[i] / (1 - c->shoot);
        int take = 0;
        for (; take < left && mark < reached; mark += 1)
            take++;
        left -= take;
        if (take == 0) continue;
        bw_play(t->b, &here->state, c->plies[i], &t->decisions[depth + 1].state, NULL, NULL);
        t->work.played++;
        t->out->lost += take * alive * (1 - c->chance[i]);
        part(t, depth + 1, take, alive * c->chance[i]);
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

/// Field by field: a whole typical is too large for a small stack to hold another.
static void begin(typical *t, const bw_break *b, bw_forecast *out, uint64_t seed) {
    t->b = b;
    t->out = out;
    t->random.state = seed;
    t->work.played = 0;
    for (int i = 0; i < KEPT_CHOICES; i++)
        t->known_key[i] = 0;
    for (int i = 0; i < BW_MAX_PLACES; i++) {
        for (int k = 0; k < BW_MAX_PLACES; k++)
            t->use[i][k] = (tally){0, 0, 0};
    }
    for (int i = 0; i <= BW_MAX_SECONDS; i++)
        t->sum[i] = t->square[i] = 0;
}

bw_status bw_typical_begin(const bw_break *b, const bw_state *from, const bw_typical_def *def,
                           void *memory, size_t size, bw_forecast *out) {
    *out = (bw_forecast){0};
    if (size < sizeof(typical)) return BW_NO_ROOM;
    BW_ASSERT(def->rollouts >= 1);
    typical *t = memory;
    begin(t, b, out, def->seed ? def->seed : b->def.seed);
    const double seconds = bw_clamp(def->seconds, 0, BW_MAX_SECONDS);
    t->begin = from->tick;
    t->end = from->tick + (int)(seconds / BW_TICK + 0.5);
    t->each = (def->rollouts + BW_BUNDLES - 1) / BW_BUNDLES;
    t->bundle = 0;
    t->from = *from;
    return BW_OK;
}

/// From the bundles' sums to the forecast.
static void finish(typical *t) {
    bw_forecast *out = t->out;
    for (int i = 1; i <= BW_MAX_SECONDS; i++) {
        const double mean = t->sum[i] / BW_BUNDLES;
        const double spread = bw_max(t->square[i] / BW_BUNDLES - mean * mean, 0);
        out->worth[i] = mean;
        out->error[i] = bw_sqrt(spread / (BW_BUNDLES - 1));
    }
    out->rollouts = t->each * BW_BUNDLES;
    out->lost /= out->rollouts;
    out->shots /= out->rollouts;
    out->played = t->work.played;
    rank_use(t, out->rollouts, t->b->ground->place_count, out);
}

bool bw_typical_step(void *memory) {
    typical *t = memory;
    BW_ASSERT(t->bundle < BW_BUNDLES);
    for (int i = 0; i <= BW_MAX_SECONDS; i++)
        t->goals[i] = 0;
    t->decisions[0].state = t->from;
    part(t, 0, t->each, 1);
    double by = 0;
    for (int i = 1; i <= BW_MAX_SECONDS; i++) {
        by += t->goals[i] / t->each;
        t->sum[i] += by;
        t->square[i] += by * by;
    }
    if (++t->bundle < BW_BUNDLES) return true;
    finish(t);
    return false;
}

bw_status bw_typical_from(const bw_break *b, const bw_state *from, const bw_typical_def *def,
                          void *memory, size_t size, bw_forecast *out) {
    const bw_status status = bw_typical_begin(b, from, def, memory, size, out);
    if (status != BW_OK) return status;
    while (bw_typical_step(memory))
        continue;
    return BW_OK;
}

bw_status bw_typical(const bw_break *b, const bw_typical_def *def, void *memory, size_t size,
                     bw_forecast *out) {
    return bw_typical_from(b, &b->start, def, memory, size, out);
}
