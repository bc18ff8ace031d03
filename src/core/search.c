/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Best: depth-first branch and bound. A line's worth is a product, so a node needs only the worth of
/// what follows; `floor` is what that must reach to matter above. Pruning is strict: a line exactly as
/// good as the best is still played, and among equals the one with the lowest ranks wins, so pruning
/// and order change neither the worth nor the answer.
#include "core/search.h"
#include "core/bound.h"
#include "core/play.h"
#include "core/play_part.h"
#include "core/table.h"

/// A floor handed down is loosened by this, so that rounding never cuts off an equal.
#define SLACK (1 - 1e-12)

typedef struct line {
    double worth; ///< of what follows; below 0 = nothing found at or above the floor
    int count;
    bw_ply plies[BW_DEEPEST + 1];
} line;

typedef struct option {
    bw_ply ply;
    double hope;  ///< no more than this can come of it
    double after; ///< no more than this can follow when the ball is kept
    double key;   ///< promise, for the order
} option;

/// One depth's scratch.
typedef struct level {
    bw_state child;
    bw_state released[BW_MAX_CUTS + 1]; ///< after the wind-up, by cut
    bw_ply released_as[BW_MAX_CUTS + 1];
    int released_count;
    bw_ply plies[BW_MAX_PLIES];
    option options[BW_MAX_PLIES];
    line best;
} level;

typedef struct search {
    const bw_break *b;
    const bw_search_def *def;
    int end; ///< tick at which time is up
    uint64_t played, seen;
    bool spent;
    bw_table table;
    level levels[BW_DEEPEST + 2];
} search;

bw_search_def bw_search_default(void) {
    return (bw_search_def){
        .seconds = 4, .depth = 4, .budget = 4000000, .prune = true, .order = true};
}

size_t bw_search_size(void) {
    return sizeof(search);
}

static bool same_cut(bw_ply a, bw_ply b) {
    return a.cutter == b.cutter && a.cut_place == b.cut_place;
}

/// Step 1. Play the ply; passes that begin the same cut share one wind-up. A pass whose chance, known
/// once it leaves the stick, is too low for `need` is not played on: -1.
static double play(search *s, const bw_state *from, level *here, const option *o, double need) {
    const bw_ply ply = o->ply;
    s->played++;
    if (ply.kind != BW_PASS) return bw_play(s->b, from, ply, &here->child, NULL, NULL);
    int i = 0;
    while (i < here->released_count && !same_cut(here->released_as[i], ply))
        i++;
    if (i == here->released_count) {
        bw_play_windup(s->b, from, ply, &here->released[i], NULL);
        here->released_as[i] = ply;
        here->released_count++;
    }
    bw_flight flight;
    bw_play_release(s->b, &here->released[i], ply.to, &flight);
    if (s->def->prune && flight.chance * o->after < need) return -1;
    return bw_play_flight(s->b, &here->released[i], ply.to, &flight, &here->child, NULL);
}

/// Less than 0 when a comes before b among equals.
static int compare_lines(const line *a, bw_ply first, const line *b) {
    uint32_t ra = bw_ply_rank(first), rb = bw_ply_rank(b->plies[0]);
    for (int i = 0;; i++) {
        if (ra != rb) return ra < rb ? -1 : 1;
        if (i >= a->count || i + 1 >= b->count) return 0;
        ra = bw_ply_rank(a->plies[i]);
        rb = bw_ply_rank(b->plies[i + 1]);
    }
}

/// Keeps `first` and what follows it when that is better, or as good and earlier in rank.
static void keep(line *best, double worth, bw_ply first, const line *rest) {
    if (worth < best->worth) return;
    if (worth == best->worth && best->count > 0 && compare_lines(rest, first, best) >= 0) return;
    best->worth = worth;
    best->plies[0] = first;
    for (int i = 0; i < rest->count; i++)
        best->plies[i + 1] = rest->plies[i];
    best->count = rest->count + 1;
}

/// Insertion by falling promise, lowest rank first among equals.
static void sort_options(option *list, int count) {
    for (int i = 1; i < count; i++) {
        const option o = list[i];
        int k = i;
        for (; k > 0 &&
               (list[k - 1].key < o.key ||
                (list[k - 1].key == o.key && bw_ply_rank(list[k - 1].ply) > bw_ply_rank(o.ply)));
             k--)
            list[k] = list[k - 1];
        list[k] = o;
    }
}

/// A shot is begun only from a place that is worth one, as bw_plies has it.
static void shoot_now(search *s, const bw_state *from, line *best) {
    static const line nothing = {0};
    if (!(bw_shot_worth(&s->b->ground->shot, bw_man(from, from->holder)) > 0)) return;
    const bw_ply shot = {BW_SHOOT, BW_NOBODY, BW_NOBODY, BW_NOBODY};
    const bw_shot_terms t = bw_play_shot(s->b, from, NULL, NULL, NULL);
    s->played++;
    if (t.place > 0) keep(best, t.place * t.left, shot, &nothing);
}

/// Best line from a state with `depth` plies left before the shot. In here->best: exact when it
/// reaches `floor`; when nothing does, worth -1 or a line below the floor, of no use above.
static void visit(search *s, const bw_state *from, int depth, int ply_number, double floor) {
    level *here = &s->levels[ply_number];
    line *best = &here->best;
    best->worth = -1;
    best->count = 0;
    const int left = s->end - from->tick;
    if (left < s->b->ground->shoot) return;

    // Step 2. Shoot: cheap, always there, and the first floor for everything else.
    const bool prune = s->def->prune;
    bw_bound bound;
    bw_bound_begin(s->b, from, depth, left, &bound);
    if (prune && bw_bound_all(&bound) < floor) return;
    s->seen++;
    if (!prune || bound.shot_now >= floor) shoot_now(s, from, best);
    if (depth == 0) return;
    if (prune) bound.need = bw_max(floor, best->worth);

    // Step 3. List the plies, each with the most that can come of it.
    const int count = bw_plies(s->b, from, here->plies);
    const bool order = s->def->order;
    const uint64_t key = order ? bw_table_key(from) : 0;
    const bw_ply hint = bw_table_find(&s->table, key);
    int options = 0;
    bw_hope hope = {0, 0};
    for (int i = 0; i < count; i++) {
        const bw_ply p = here->plies[i];
        if (p.kind == BW_SHOOT) continue;
        s->seen++;
        // Plies that differ in a decoy's cut only lie side by side and have the same hope.
        const bool receiver_cuts = p.kind == BW_PASS && p.cutter == p.to;
        const bw_hope own = receiver_cuts || p.cutter == BW_NOBODY ? bw_bound_ply(&bound, p) : hope;
        if (p.cutter == BW_NOBODY) hope = own;
        const option o = {.ply = p,
                          .hope = own.chance * own.after,
                          .after = own.after,
                          .key = bw_ply_rank(p) == bw_ply_rank(hint) ? 2 : own.chance * own.after};
        // Step 4. Skip what cannot reach the floor before it is played at all.
        if (prune && (o.hope < floor || o.hope < best->worth)) continue;
        if (o.hope > 0) here->options[options++] = o;
    }
    // Step 5. Best hope first, after the ply that was best when the search was shallower.
    if (order) sort_options(here->options, options);

    here->released_count = 0;
    for (int i = 0; i < options; i++) {
        const option o = here->options[i];
        if (prune && (o.hope < floor || o.hope < best->worth)) continue;
        if (s->played >= s->def->budget) {
            s->spent = true;
            return;
        }
        const double need = bw_max(floor, best->worth);
        const double chance = play(s, from, here, &o, need);
        if (chance <= 0) continue;
        // Step 6. What must follow for this ply to matter. The child looks at its own bound first.
        const double below = need > 0 ? need / chance * SLACK : -1;
        const line *rest = &s->levels[ply_number + 1].best;
        visit(s, &here->child, depth - 1, ply_number + 1, prune ? below : -1);
        if (s->spent) return;
        if (rest->count > 0) keep(best, chance * rest->worth, o.ply, rest);
    }
    if (order && best->count > 0 && best->plies[0].kind != BW_SHOOT)
        bw_table_store(&s->table, key, best->plies[0]);
}

/// Plays the line again and writes down what happened when.
static void tell(const bw_break *b, const line *l, bw_answer *out) {
    bw_state s = b->start, next;
    out->kept = 1;
    for (int i = 0; i < l->count; i++) {
        bw_answer_ply *a = &out->plies[i];
        *a = (bw_answer_ply){.ply = l->plies[i],
                             .who = s.holder,
                             .at_s = s.tick * BW_TICK,
                             .from = bw_man(&s, s.holder)};
        if (l->plies[i].kind == BW_SHOOT) {
            out->shot = bw_play_shot(b, &s, &next, NULL, NULL);
            a->chance = out->shot.place * out->shot.left;
            a->end_s = next.tick * BW_TICK;
        } else {
            a->chance = bw_play(b, &s, l->plies[i], &next, NULL, NULL);
            out->kept *= a->chance;
            a->end_s = next.tick * BW_TICK;
            a->to = bw_man(&next, next.holder);
        }
        s = next;
    }
    out->worth = l->count > 0 ? l->worth : 0;
    out->count = l->count;
}

bw_status bw_best(const bw_break *b, const bw_search_def *def, void *memory, size_t size,
                  bw_answer *out) {
    *out = (bw_answer){0};
    if (size < sizeof(search)) return BW_NO_ROOM;
    BW_ASSERT(def->depth >= 0 && def->depth <= BW_DEEPEST);
    search *s = memory;
    s->b = b;
    s->def = def;
    s->end = (int)(bw_clamp(def->seconds, 0, BW_MAX_SECONDS) / BW_TICK + 0.5);
    s->played = s->seen = 0;
    s->spent = false;
    bw_table_clear(&s->table);
    // Step 7. Deepen one ply at a time. The last round's worth is the floor of the next: its line is
    // still there. Without pruning one round does.
    line best = {.worth = -1};
    for (int depth = def->prune ? 0 : def->depth; depth <= def->depth && !s->spent; depth++) {
        visit(s, &b->start, depth, 0, def->prune ? best.worth : -1);
        if (s->spent) break;
        best = s->levels[0].best;
        out->depth = depth;
    }
    out->cut_short = s->spent;
    tell(b, &best, out);
    out->played = s->played;
    out->seen = s->seen;
    return s->spent ? BW_LIMIT : BW_OK;
}
