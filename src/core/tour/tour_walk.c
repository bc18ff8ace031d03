/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Pieces of a set of moves, and the walk through a balanced one: C. Hierholzer's circuit, closed
/// loops spliced into one another.
#include "core/tour/tour_part.h"

int bw_tour_pieces(const bw_tour_def *def, const bw_counts *counts,
                   bw_place_set pieces[BW_TOUR_PLACES]) {
    const int n = def->count;
    bw_place_set near[BW_TOUR_PLACES] = {0}, left = 0;
    for (int a = 0; a < n; a++) {
        for (int b = 0; b < n; b++) {
            if (counts->n[a][b] == 0) continue;
            near[a] |= (bw_place_set)1 << b;
            near[b] |= (bw_place_set)1 << a;
            left |= (bw_place_set)1 << a | (bw_place_set)1 << b;
        }
    }
    int count = 0;
    for (int v = 0; v < n; v++) {
        if (!(left >> v & 1)) continue;
        bw_place_set piece = (bw_place_set)1 << v, seen = 0;
        while (piece != seen) {
            seen = piece;
            for (int u = 0; u < n; u++) {
                if (seen >> u & 1) piece |= near[u];
            }
        }
        left &= ~piece;
        pieces[count++] = piece;
    }
    return count;
}

typedef struct walk {
    const bw_tour_def *def;
    bw_counts left;           ///< moves not yet made
    int seen[BW_TOUR_PLACES]; ///< how often the ball has come to a place
    uint8_t stack[BW_TOUR_MOVES + 1];
    int depth;
} walk;

/// Where the ball goes next from v, or -1 when every move from there is made.
static int next_from(const walk *w, int v) {
    const int came = w->depth > 1 ? w->stack[w->depth - 2] : -1;
    int best = -1;
    for (int u = 0; u < w->def->count; u++) {
        if (w->left.n[v][u] == 0) continue;
        if (best < 0) {
            best = u;
            continue;
        }
        const bool back = u == came, best_back = best == came;
        if (back != best_back ? best_back : w->seen[u] < w->seen[best]) best = u;
    }
    return best;
}

static int start_of(const bw_tour_def *def, const bw_counts *counts) {
    int lowest = -1;
    for (int v = def->count - 1; v >= 0; v--) {
        for (int u = 0; u < def->count; u++) {
            if (counts->n[v][u] == 0) continue;
            if (v == def->start) return v;
            lowest = v;
        }
    }
    return lowest;
}

void bw_tour_walk(const bw_tour_def *def, const bw_counts *counts, bw_tour *tour) {
    walk w = {.def = def, .left = *counts};
    tour->count = 0;
    const int start = start_of(def, counts);
    if (start < 0) return;
    w.stack[w.depth++] = (uint8_t)start;
    int written = 0;
    // Written back to front: a place is done when nothing more leaves it.
    while (w.depth > 0) {
        const int v = w.stack[w.depth - 1], u = next_from(&w, v);
        if (u < 0) {
            tour->at[written++] = (uint8_t)v;
            w.depth--;
            continue;
        }
        w.left.n[v][u]--;
        w.seen[u]++;
        w.stack[w.depth++] = (uint8_t)u;
    }
    for (int i = 0, k = written - 1; i < k; i++, k--) {
        const uint8_t swap = tour->at[i];
        tour->at[i] = tour->at[k];
        tour->at[k] = swap;
    }
    tour->count = written - 1;
}
