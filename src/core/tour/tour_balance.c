/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Min-cost flow by successive shortest paths: moves are added from places the ball comes to too often
/// to places it leaves too often, always along the cheapest way left, undoing earlier additions where
/// that pays. Source: R. Ahuja, T. Magnanti, J. Orlin, "Network Flows", 1993, ch. 9.
#include "core/tour/tour_part.h"

#define FAR (INT64_C(1) << 60)

typedef struct flow {
    const bw_tour_def *def;
    const bw_tour_bounds *bounds;
    bw_counts *counts;
    int surplus[BW_TOUR_PLACES];
    int64_t dist[BW_TOUR_PLACES];
    int8_t before[BW_TOUR_PLACES]; ///< place the cheapest way comes from; -1 at its beginning
} flow;

/// Cost of one more unit from a to b: of making the move once more, or of undoing an added one from b
/// to a; FAR when neither can be.
static int64_t step_cost(const flow *f, int a, int b, bool *undo) {
    *undo = f->counts->n[b][a] > f->bounds->least.n[b][a];
    if (*undo) return -(int64_t)f->def->cost[b][a];
    if (f->def->cost[a][b] == 0 || f->bounds->barred[a] >> b & 1) return FAR;
    return f->def->cost[a][b];
}

/// Bellman-Ford from all places with too much.
static void find_ways(flow *f) {
    const int n = f->def->count;
    for (int v = 0; v < n; v++) {
        f->dist[v] = f->surplus[v] > 0 ? 0 : FAR;
        f->before[v] = -1;
    }
    for (bool changed = true; changed;) {
        changed = false;
        for (int a = 0; a < n; a++) {
            if (f->dist[a] >= FAR) continue;
            for (int b = 0; b < n; b++) {
                bool undo;
                const int64_t cost = a == b ? FAR : step_cost(f, a, b, &undo);
                if (cost >= FAR || f->dist[a] + cost >= f->dist[b]) continue;
                f->dist[b] = f->dist[a] + cost;
                f->before[b] = (int8_t)a;
                changed = true;
            }
        }
    }
}

/// Sends one unit along the cheapest way to `to`.
static void send(flow *f, int to) {
    int v = to;
    while (f->before[v] >= 0) {
        const int u = f->before[v];
        bool undo;
        step_cost(f, u, v, &undo);
        if (undo)
            f->counts->n[v][u]--;
        else
            f->counts->n[u][v]++;
        v = u;
    }
    f->surplus[v]--;
    f->surplus[to]++;
}

static int64_t length_of(const bw_tour_def *def, const bw_counts *counts) {
    int64_t sum = 0;
    for (int a = 0; a < def->count; a++) {
        for (int b = 0; b < def->count; b++)
            sum += (int64_t)counts->n[a][b] * def->cost[a][b];
    }
    return sum;
}

bw_status bw_tour_balance(const bw_tour_def *def, const bw_tour_bounds *bounds, bw_counts *counts,
                          int64_t *length, int *from, int *to) {
    flow f = {.def = def, .bounds = bounds, .counts = counts};
    *counts = bounds->least;
    for (int a = 0; a < def->count; a++) {
        for (int b = 0; b < def->count; b++) {
            f.surplus[b] += counts->n[a][b];
            f.surplus[a] -= counts->n[a][b];
        }
    }
    for (;;) {
        int first = -1, nearest = -1, lacking = -1;
        find_ways(&f);
        for (int v = 0; v < def->count; v++) {
            if (f.surplus[v] > 0 && first < 0) first = v;
            if (f.surplus[v] >= 0) continue;
            lacking = v;
            if (f.dist[v] < FAR && (nearest < 0 || f.dist[v] < f.dist[nearest])) nearest = v;
        }
        if (lacking < 0) break;
        if (nearest < 0) {
            *from = first;
            *to = lacking;
            return BW_UNREACHABLE;
        }
        send(&f, nearest);
    }
    *length = length_of(def, counts);
    return BW_OK;
}
