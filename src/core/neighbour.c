/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Laplace weights without building the Voronoi cell. Seen from p, let d and e be two sites. The edge
/// of p's cell that faces d lies on the line d/2 + t n/2, n being d turned a quarter left; site e cuts
/// that line where t = e.(e - d) / (d x e), the cotangent of the angle at e in the triangle p, d, e.
/// So d's weight, edge length over distance, is the room its edge has to the left plus the room to
/// the right, each the smallest cut on its side; no square root and no corner is ever computed.
///
/// A smallest does not depend on the order of its terms, and the mirror image only swaps the two
/// rooms: that is why renumbering or mirroring the sites cannot change a bit. Sites that certainly
/// have no part in the cell are skipped for speed; "certainly" leaves room for rounding, so that
/// skipping cannot change a bit either.
#include "core/neighbour.h"

/// Sites nearer than this to a hull edge count as on it, and so does p: closer in, rounding decides on
/// which side of a row of sites p lies. Well above rounding on a field, far below anything visible.
static const double seam = 0x1p-36; // metres

/// An edge longer than this, in units of the distance to its site, means p may be at the hull.
static const double long_edge = 0x1p30;

/// Relative margin of "certainly": a million roundings wide.
static const double doubt = 0x1p-30;

enum { LEFT, RIGHT };

/// One edge of p's cell: the site it faces, as seen from p, and how far it runs to either side of
/// the point half-way to that site, in units of half the distance.
typedef struct edge {
    bw_vec at;
    double room[2];
    int site;
} edge;

/// The Voronoi cell of p among the sites met so far. Edges that rounding cannot tell from an edge of
/// no length are kept.
typedef struct cell {
    int count;
    edge edges[BW_MAX_SITES];
} cell;

/// The edge's weight before scaling. Negative when it has none, NaN when parallel to a nearer one.
static inline double span(const edge *e) {
    return e->room[LEFT] + e->room[RIGHT];
}

static inline bool certainly_none(const edge *e) {
    return !(span(e) >= -doubt * (bw_abs(e->room[LEFT]) + bw_abs(e->room[RIGHT])));
}

/// Lets two edges cut each other. Parallel ones make the scale infinite: minus infinity is then left
/// for the one behind the other, plus infinity for opposite ones.
static inline void cut(edge *a, edge *b) {
    const bw_vec apart = bw_sub(b->at, a->at);
    const double turn = bw_cross(a->at, b->at);
    const double scale = 1 / bw_abs(turn);
    const int side = turn < 0 ? RIGHT : LEFT;
    a->room[side] = bw_min(a->room[side], bw_dot(b->at, apart) * scale);
    b->room[1 - side] = bw_min(b->room[1 - side], -bw_dot(a->at, apart) * scale);
}

/// True when the site is certainly too far beyond the cell to have a part in any edge: no end of any
/// edge is nearer to it than to p.
static bool certainly_beyond(const cell *cell, bw_vec site) {
    const double enough = bw_length2(site) * (1 - doubt);
    for (int i = 0; i < cell->count; i++) {
        const edge *e = &cell->edges[i];
        const double turn = bw_cross(e->at, site);
        const double end = e->room[turn < 0 ? RIGHT : LEFT] * bw_abs(turn);
        if (!(bw_dot(e->at, site) + end < enough)) return false;
    }
    return cell->count > 0;
}

static void meet(cell *cell, int site, bw_vec at) {
    edge met = {at, {__builtin_inf(), __builtin_inf()}, site};
    int kept = 0;
    for (int i = 0; i < cell->count; i++) {
        edge *e = &cell->edges[i];
        cut(e, &met);
        if (!certainly_none(e)) cell->edges[kept++] = *e;
    }
    if (!certainly_none(&met)) cell->edges[kept++] = met;
    cell->count = kept;
}

/// True when p is certainly inside the hull and not at its outline.
static bool well_inside(const cell *cell) {
    for (int i = 0; i < cell->count; i++) {
        const edge *e = &cell->edges[i];
        if (span(e) > 0 && bw_max(e->room[LEFT], e->room[RIGHT]) > long_edge) return false;
    }
    return true;
}

static bool bounded(const cell *cell) {
    for (int i = 0; i < cell->count; i++) {
        if (span(&cell->edges[i]) == __builtin_inf()) return false;
    }
    return true;
}

/// Every edge's share of the sum. Added from small to large, an order that neither numbering nor
/// mirroring touches.
static void share_out(const cell *cell, double *weight) {
    double sorted[BW_MAX_SITES];
    int kept = 0;
    for (int i = 0; i < cell->count; i++) {
        const double w = span(&cell->edges[i]);
        if (!(w > 0)) continue;
        weight[cell->edges[i].site] = w;
        int k = kept++;
        for (; k > 0 && sorted[k - 1] > w; k--)
            sorted[k] = sorted[k - 1];
        sorted[k] = w;
    }
    double sum = 0;
    for (int k = 0; k < kept; k++)
        sum += sorted[k];
    for (int i = 0; i < cell->count; i++)
        weight[cell->edges[i].site] /= sum;
}

/// True when sites i and j follow each other along the hull: nobody on one side of their line and
/// nobody on it between them. Positions as seen from p.
static bool on_hull(const bw_vec *at, int count, int i, int j) {
    const double width = seam * bw_distance(at[i], at[j]);
    int side = 0;
    for (int k = 0; k < count; k++) {
        if (k == i || k == j) continue;
        const bw_vec a = bw_sub(at[i], at[k]), b = bw_sub(at[j], at[k]);
        const double turn = bw_cross(a, b);
        if (bw_abs(turn) <= width) {
            if (bw_dot(a, b) < 0) return false;
            continue;
        }
        const int here = turn > 0 ? 1 : -1;
        if (side == -here) return false;
        side = here;
    }
    return true;
}

/// Weights at the point of the hull's outline that is nearest to p, and the squared distance to it.
/// Two edges equally near share a corner, where they agree; their mean keeps the mirror image exact.
static double outline_weights(const bw_vec *at, int count, double *weight) {
    double nearest = __builtin_inf();
    int ties = 0;
    for (int i = 0; i < count; i++) {
        for (int j = i + 1; j < count; j++) {
            const bw_vec along = bw_sub(at[j], at[i]);
            const double to_i = bw_max(0, bw_dot(at[j], along));
            const double to_j = bw_max(0, -bw_dot(at[i], along));
            const double share_i = to_i / (to_i + to_j), share_j = to_j / (to_i + to_j);
            const double gap =
                bw_length2(bw_add(bw_scale(at[i], share_i), bw_scale(at[j], share_j)));
            if (gap > nearest || !on_hull(at, count, i, j)) continue;
            if (gap < nearest) {
                for (int k = 0; k < count; k++)
                    weight[k] = 0;
                ties = 0;
            }
            nearest = gap;
            ties++;
            weight[i] += share_i;
            weight[j] += share_j;
        }
    }
    for (int k = 0; k < count && ties > 1; k++)
        weight[k] /= ties;
    return nearest;
}

void bw_neighbour_weights(const bw_sites *sites, bw_vec p, double *weight) {
    const int count = sites->count;
    BW_ASSERT(count >= 1 && count <= BW_MAX_SITES);
    bw_vec at[BW_MAX_SITES];
    int here = count == 1 ? 0 : -1;
    for (int s = 0; s < count; s++) {
        at[s] = bw_sub(sites->at[s], p);
        weight[s] = 0;
        if (bw_length2(at[s]) == 0) here = s;
    }
    if (here >= 0) {
        weight[here] = 1;
        return;
    }

    cell cell;
    cell.count = 0;
    for (int s = 0; s < count; s++) {
        if (!certainly_beyond(&cell, at[s])) meet(&cell, s, at[s]);
    }
    if (!well_inside(&cell)) {
        const double gap = outline_weights(at, count, weight);
        if (gap <= seam * seam || !bounded(&cell)) return;
        for (int s = 0; s < count; s++)
            weight[s] = 0;
    }
    share_out(&cell, weight);
}
