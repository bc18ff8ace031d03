/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Straight from the definitions, with exact predicates: at most 24 landmarks, built once a scheme,
/// so plain beats fast. Two points are linked when some circle through both has no point inside it;
/// three make a triangle when their circle has none. (B. Delaunay 1934, from memory.)
#include "core/graph.h"
#include "core/predicates.h"

typedef struct cloud {
    const bw_vec *at;
    int count;
} cloud;

/// For c on the line through a and b: true when strictly between them. Coordinates are compared, not
/// computed with, so the answer is exact.
static bool between(bw_vec a, bw_vec b, bw_vec c) {
    if (a.x != b.x) return (a.x < c.x) == (c.x < b.x) && c.x != a.x && c.x != b.x;
    return (a.y < c.y) == (c.y < b.y) && c.y != a.y && c.y != b.y;
}

/// The circles through points i and j form a family that slides from one side of their line to the
/// other; a point on the left bounds it on one side, a point on the right on the other. Some circle
/// is empty unless a left and a right bound cross.
static bool has_empty_circle(const cloud *cloud, int i, int j) {
    const bw_vec a = cloud->at[i], b = cloud->at[j];
    int left[BW_MAX_LANDMARKS], right[BW_MAX_LANDMARKS];
    int lefts = 0, rights = 0;
    for (int k = 0; k < cloud->count; k++) {
        if (k == i || k == j) continue;
        const int side = bw_orient(a, b, cloud->at[k]);
        if (side > 0) left[lefts++] = k;
        if (side < 0) right[rights++] = k;
        if (side == 0 && between(a, b, cloud->at[k])) return false;
    }
    for (int l = 0; l < lefts; l++) {
        for (int r = 0; r < rights; r++) {
            if (bw_in_circle(a, b, cloud->at[left[l]], cloud->at[right[r]]) > 0) return false;
        }
    }
    return true;
}

/// True when the counter-clockwise triangle i, j, k belongs to the concrete triangulation: its circle
/// is empty, and where more than three points share that circle, the triangle is a blade of the fan
/// that opens from the one with the lowest index, i.
static bool is_triangle(const cloud *cloud, int i, int j, int k) {
    const bw_vec a = cloud->at[i], b = cloud->at[j], c = cloud->at[k];
    for (int l = 0; l < cloud->count; l++) {
        if (l == i || l == j || l == k) continue;
        const int inside = bw_in_circle(a, b, c, cloud->at[l]);
        if (inside > 0) return false;
        if (inside < 0) continue;
        if (l < i || bw_orient(b, c, cloud->at[l]) < 0) return false;
    }
    return true;
}

static void add_triangles(const cloud *cloud, bw_graph *graph) {
    for (int i = 0; i < cloud->count; i++) {
        for (int j = i + 1; j < cloud->count; j++) {
            for (int k = j + 1; k < cloud->count; k++) {
                const int turn = bw_orient(cloud->at[i], cloud->at[j], cloud->at[k]);
                if (turn == 0) continue;
                const int second = turn > 0 ? j : k, third = turn > 0 ? k : j;
                if (!is_triangle(cloud, i, second, third)) continue;
                BW_ASSERT(graph->triangle_count < BW_MAX_TRIANGLES);
                uint8_t *corner = graph->triangles[graph->triangle_count++];
                corner[0] = (uint8_t)i;
                corner[1] = (uint8_t)second;
                corner[2] = (uint8_t)third;
            }
        }
    }
}

void bw_graph_build(const bw_vec *points, int count, double longest, bw_graph *graph) {
    BW_ASSERT(count >= 1 && count <= BW_MAX_LANDMARKS);
    const cloud cloud = {points, count};
    *graph = (bw_graph){.count = count};
    for (int i = 0; i < count; i++) {
        for (int j = i + 1; j < count; j++) {
            if (bw_distance(points[i], points[j]) > longest) continue;
            const bool linked = has_empty_circle(&cloud, i, j);
            graph->linked[i][j] = graph->linked[j][i] = linked;
        }
    }
    add_triangles(&cloud, graph);
}
