/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The landmark graph: which ball locations are next to each other. Edges are those of the closed
/// Delaunay triangulation (both diagonals of a co-circular quadruple count), so the graph of a
/// mirrored scheme is the mirrored graph. Also gives one concrete triangulation for contour work.
#ifndef BW_CORE_GRAPH_H
#define BW_CORE_GRAPH_H

#include "core/base.h"
#include "core/vec.h"

enum { BW_MAX_TRIANGLES = 2 * BW_MAX_LANDMARKS };

typedef struct bw_graph {
    int count;                                          ///< landmarks
    uint8_t linked[BW_MAX_LANDMARKS][BW_MAX_LANDMARKS]; ///< symmetric, 0 or 1, zero diagonal
    int triangle_count;                     ///< 2n - 2 - h for n points with h on the hull
    uint8_t triangles[BW_MAX_TRIANGLES][3]; ///< counter-clockwise
} bw_graph;

/// Builds the graph of `count` different points, 1 <= count <= BW_MAX_LANDMARKS. An edge longer than
/// `longest` metres is left out of `linked` (pass a large number to keep all). O(n^4) worst case
/// with n <= 24: built once per scheme. All points collinear: neighbours along the line, no triangles.
void bw_graph_build(const bw_vec *points, int count, double longest, bw_graph *graph);

#endif
