/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The search over ways to join the pieces. The cheapest balanced counts need not hang together; then
/// some move must leave the first piece, or the ball would never come out of it. One branch for each
/// such move: that one is made, those before it are not, so that no tour is looked at twice.
#include "core/tour/tour.h"
#include "core/tour/tour_part.h"

#define NONE INT64_MAX

/// Every move that is made on purpose joins two pieces or takes in one more place.
enum { DEEPEST = BW_TOUR_PLACES };

typedef struct exit_move {
    int32_t cost;
    uint8_t from, to;
} exit_move;

typedef struct level {
    bw_tour_bounds bounds;
    bw_counts counts;
    exit_move exits[BW_TOUR_PLACES * BW_TOUR_PLACES / 4];
    int exit_count;
} level;

typedef struct search {
    const bw_tour_def *def;
    bw_tour *tour;
    bw_counts best;
    int64_t best_length; ///< NONE until a tour is found
    int64_t open;        ///< least bound of what the budget left unlooked at
    level levels[DEEPEST + 1];
} search;

size_t bw_tour_size(void) {
    return sizeof(search);
}

static void add_exit(level *at, exit_move e) {
    int k = at->exit_count++;
    for (; k > 0 && at->exits[k - 1].cost > e.cost; k--)
        at->exits[k] = at->exits[k - 1];
    at->exits[k] = e;
}

/// The moves that leave the piece with the fewest of them, cheapest first.
static void find_exits(const bw_tour_def *def, level *at, const bw_place_set *pieces, int count) {
    int fewest = 0;
    bw_place_set chosen = pieces[0];
    for (int p = 0; p < count; p++) {
        int exits = 0;
        for (int a = 0; a < def->count; a++) {
            for (int b = 0; b < def->count && (pieces[p] >> a & 1); b++) {
                if (!(pieces[p] >> b & 1) && def->cost[a][b] > 0 &&
                    !(at->bounds.barred[a] >> b & 1))
                    exits++;
            }
        }
        if (p > 0 && exits >= fewest) continue;
        fewest = exits;
        chosen = pieces[p];
    }
    at->exit_count = 0;
    for (int a = 0; a < def->count; a++) {
        for (int b = 0; b < def->count && (chosen >> a & 1); b++) {
            if (chosen >> b & 1 || def->cost[a][b] == 0 || at->bounds.barred[a] >> b & 1) continue;
            add_exit(at, (exit_move){def->cost[a][b], (uint8_t)a, (uint8_t)b});
        }
    }
}

/// Solves the level's relaxation; true when the tours under it are worth looking at one by one.
static bool relax(search *s, int depth) {
    level *at = &s->levels[depth];
    int64_t length;
    int from, to;
    s->tour->flows++;
    if (bw_tour_balance(s->def, &at->bounds, &at->counts, &length, &from, &to) != BW_OK)
        return false;
    if (length >= s->best_length) return false;
    bw_place_set pieces[BW_TOUR_PLACES];
    const int count = bw_tour_pieces(s->def, &at->counts, pieces);
    if (count <= 1) {
        s->best = at->counts;
        s->best_length = length;
        return false;
    }
    if (depth == DEEPEST || s->tour->flows >= s->def->budget) {
        if (length < s->open) s->open = length;
        return false;
    }
    find_exits(s->def, at, pieces, count);
    return true;
}

/// Depth first, without recursion: levels[d].exits are taken one by one from the front.
static void branch(search *s) {
    int taken[DEEPEST + 1] = {0}, depth = 0;
    if (!relax(s, 0)) return;
    while (depth >= 0) {
        level *at = &s->levels[depth];
        if (taken[depth] == at->exit_count) {
            depth--;
            continue;
        }
        const exit_move e = at->exits[taken[depth]++];
        level *next = &s->levels[depth + 1];
        next->bounds = at->bounds;
        next->bounds.least.n[e.from][e.to]++;
        // From here on the siblings do without it.
        at->bounds.barred[e.from] |= (bw_place_set)1 << e.to;
        if (!relax(s, depth + 1)) continue;
        depth++;
        taken[depth] = 0;
    }
}

static bw_status finish(search *s, bw_status status) {
    bw_tour *tour = s->tour;
    if (s->best_length == NONE) return status;
    int moves = 0;
    for (int a = 0; a < s->def->count; a++) {
        for (int b = 0; b < s->def->count; b++)
            moves += s->best.n[a][b];
    }
    if (moves > BW_TOUR_MOVES) return BW_LIMIT;
    tour->length = s->best_length;
    tour->bound = s->open < s->best_length ? s->open : s->best_length;
    bw_tour_walk(s->def, &s->best, tour);
    return BW_OK;
}

/// Whether some required move cannot be reached from the first, or not be come back from.
static bool stranded(const bw_tour_def *def, bw_tour *tour) {
    bool way[BW_TOUR_PLACES][BW_TOUR_PLACES];
    for (int a = 0; a < def->count; a++) {
        for (int b = 0; b < def->count; b++)
            way[a][b] = a == b || def->cost[a][b] > 0;
    }
    for (int v = 0; v < def->count; v++) {
        for (int a = 0; a < def->count; a++) {
            for (int b = 0; b < def->count; b++)
                way[a][b] = way[a][b] || (way[a][v] && way[v][b]);
        }
    }
    int first = -1;
    for (int a = 0; a < def->count; a++) {
        for (int b = 0; b < def->count; b++) {
            if (def->times[a][b] == 0) continue;
            if (first < 0) first = a;
            tour->from = way[first][a] ? b : first;
            tour->to = way[first][a] ? first : a;
            if (!way[tour->from][tour->to]) return true;
        }
    }
    return false;
}

bw_status bw_tour_find(const bw_tour_def *def, void *memory, size_t size, bw_tour *tour) {
    BW_ASSERT(def->count >= 0 && def->count <= BW_TOUR_PLACES);
    tour->count = tour->pieces = tour->flows = tour->from = tour->to = 0;
    tour->length = tour->required = tour->bound = 0;
    if (size < sizeof(search)) return BW_NO_ROOM;
    search *s = memory;
    s->def = def;
    s->tour = tour;
    s->best_length = s->open = NONE;
    bw_tour_bounds *root = &s->levels[0].bounds;
    *root = (bw_tour_bounds){0};
    for (int a = 0; a < def->count; a++) {
        for (int b = 0; b < def->count; b++) {
            BW_ASSERT(def->cost[a][b] >= 0 && (def->times[a][b] == 0 || def->cost[a][b] > 0));
            root->least.n[a][b] = def->times[a][b];
            tour->required += (int64_t)def->times[a][b] * def->cost[a][b];
        }
    }
    bw_place_set pieces[BW_TOUR_PLACES];
    tour->pieces = bw_tour_pieces(def, &root->least, pieces);
    if (tour->pieces == 0) return BW_OK;
    if (stranded(def, tour)) return BW_UNREACHABLE;
    branch(s);
    return finish(s, BW_LIMIT);
}
