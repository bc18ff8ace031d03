/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The landmark graph against another definition in exact integers: lift every point onto the
/// paraboloid z = x^2 + y^2; two points are linked when a face of the lower hull has both. And what
/// the rest of the program leans on: mirror images, numbering, a triangulation that tiles the hull.
#include "core/graph.h"
#include "harness.h"
#include <stdlib.h>

static unsigned long long seed = 11;

static const double any_length = 1e9;

typedef struct spot {
    long long x, y;
} spot;

typedef struct cloud {
    int count;
    spot at[BW_MAX_LANDMARKS];
} cloud;

static long long whole(int size) {
    return (long long)(test_random(&seed) % (unsigned)(2 * size + 1)) - size;
}

/// Different whole points, |x| and |y| up to `size`: a small size makes nearly everything co-circular
/// or collinear.
static cloud random_cloud(int count, int size) {
    cloud c = {0};
    while (c.count < count) {
        const long long x = whole(size), y = whole(size);
        const spot p = {x, y};
        bool taken = false;
        for (int i = 0; i < c.count; i++)
            taken |= c.at[i].x == p.x && c.at[i].y == p.y;
        if (!taken) c.at[c.count++] = p;
    }
    return c;
}

static void build(const cloud *c, double longest, bw_graph *graph) {
    bw_vec points[BW_MAX_LANDMARKS];
    for (int i = 0; i < c->count; i++)
        points[i] = bw_v((double)c->at[i].x, (double)c->at[i].y);
    bw_graph_build(points, c->count, longest, graph);
}

static long long turn(spot a, spot b, spot c) {
    return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

static long long height(spot a) {
    return a.x * a.x + a.y * a.y;
}

/// How far d's lifted point lies above the plane of the lifted a, b, c, times their turn.
static long long above(spot a, spot b, spot c, spot d) {
    const long long zb = height(b) - height(a), zc = height(c) - height(a);
    const long long zd = height(d) - height(a);
    return zd * turn(a, b, c) - zb * turn(a, d, c) - zc * turn(a, b, d);
}

static void link_faces(const cloud *c, uint8_t linked[BW_MAX_LANDMARKS][BW_MAX_LANDMARKS]) {
    for (int i = 0; i < c->count; i++) {
        for (int j = 0; j < c->count; j++) {
            for (int k = 0; k < c->count; k++) {
                if (turn(c->at[i], c->at[j], c->at[k]) <= 0) continue;
                bool lower = true;
                for (int l = 0; l < c->count; l++)
                    lower &= above(c->at[i], c->at[j], c->at[k], c->at[l]) >= 0;
                if (lower) linked[i][j] = linked[j][i] = 1;
            }
        }
    }
}

/// Points on the outline of the hull, corners or not: some line through it has nobody on one side.
static int outline_count(const cloud *c) {
    int count = 0;
    for (int i = 0; i < c->count; i++) {
        bool on = false;
        for (int j = 0; j < c->count; j++) {
            bool all_left = j != i;
            for (int k = 0; k < c->count; k++)
                all_left &= turn(c->at[i], c->at[j], c->at[k]) >= 0;
            on |= all_left;
        }
        count += on;
    }
    return count;
}

static bool all_collinear(const cloud *c) {
    for (int k = 2; k < c->count; k++) {
        if (turn(c->at[0], c->at[1], c->at[k]) != 0) return false;
    }
    return true;
}

static cloud round_cloud(int round) {
    static const int sizes[] = {2, 3, 5, 40, 10000};
    const int size = sizes[round % 5];
    return random_cloud(3 + round / 5 % 22, size);
}

static void agrees_with_the_lifted_hull(void) {
    for (int round = 0; round < 1500; round++) {
        const cloud c = round_cloud(round);
        if (all_collinear(&c)) continue;
        uint8_t want[BW_MAX_LANDMARKS][BW_MAX_LANDMARKS] = {0};
        bw_graph graph;
        build(&c, any_length, &graph);
        link_faces(&c, want);
        CHECK_INT(memcmp(graph.linked, want, sizeof want), 0);
    }
}

/// Twice the area of the hull: the outline's turns, each edge once.
static long long hull_area(const cloud *c) {
    long long area = 0;
    for (int i = 0; i < c->count; i++) {
        for (int j = 0; j < c->count; j++) {
            bool edge = j != i;
            for (int k = 0; k < c->count; k++) {
                const spot a = c->at[i], b = c->at[j], p = c->at[k];
                const long long side = turn(a, b, p);
                const long long along = (p.x - a.x) * (p.x - b.x) + (p.y - a.y) * (p.y - b.y);
                edge &= side > 0 || (side == 0 && along >= 0);
            }
            if (edge) area += c->at[i].x * c->at[j].y - c->at[i].y * c->at[j].x;
        }
    }
    return area;
}

static void check_tiling(const cloud *c, const bw_graph *graph) {
    long long area = 0;
    for (int t = 0; t < graph->triangle_count; t++) {
        const uint8_t *corner = graph->triangles[t];
        const spot p = c->at[corner[0]], q = c->at[corner[1]], r = c->at[corner[2]];
        CHECK(turn(p, q, r) > 0);
        area += turn(p, q, r);
        CHECK(graph->linked[corner[0]][corner[1]]);
        CHECK(graph->linked[corner[1]][corner[2]]);
        CHECK(graph->linked[corner[2]][corner[0]]);
        for (int k = 0; k < c->count; k++)
            CHECK(above(p, q, r, c->at[k]) >= 0);
        // An inner edge is shared by two triangles that run along it in opposite senses, so no
        // directed edge comes twice: with the area, that leaves neither gap nor overlap.
        for (int u = 0; u < t; u++) {
            for (int e = 0; e < 9; e++) {
                const int i = e / 3, j = e % 3;
                CHECK(corner[i] != graph->triangles[u][j] ||
                      corner[(i + 1) % 3] != graph->triangles[u][(j + 1) % 3]);
            }
        }
    }
    CHECK_INT(area, hull_area(c));
}

static void triangles_tile_the_hull(void) {
    for (int round = 0; round < 1500; round++) {
        const cloud c = round_cloud(round);
        bw_graph graph;
        build(&c, any_length, &graph);
        if (all_collinear(&c)) {
            CHECK_INT(graph.triangle_count, 0);
            continue;
        }
        CHECK_INT(graph.triangle_count, 2 * c.count - 2 - outline_count(&c));
        check_tiling(&c, &graph);
    }
}

static void mirrors_exactly(void) {
    for (int round = 0; round < 500; round++) {
        const cloud c = round_cloud(round);
        bw_vec points[BW_MAX_LANDMARKS], images[BW_MAX_LANDMARKS];
        for (int i = 0; i < c.count; i++) {
            points[i] = bw_scale(bw_v((double)c.at[i].x, (double)c.at[i].y), BW_METRES_PER_YARD);
            images[i] = bw_mirror(points[i]);
        }
        bw_graph graph, image;
        bw_graph_build(points, c.count, 15, &graph);
        bw_graph_build(images, c.count, 15, &image);
        CHECK_INT(memcmp(graph.linked, image.linked, sizeof graph.linked), 0);
        CHECK_INT(graph.triangle_count, image.triangle_count);
    }
}

static void numbering_does_not_matter(void) {
    for (int round = 0; round < 500; round++) {
        const cloud c = round_cloud(round);
        cloud turned = c;
        const int by = 1 + round % (c.count - 1);
        for (int i = 0; i < c.count; i++)
            turned.at[i] = c.at[(i + by) % c.count];
        bw_graph graph, again;
        build(&c, any_length, &graph);
        build(&turned, any_length, &again);
        for (int i = 0; i < c.count; i++) {
            for (int j = 0; j < c.count; j++)
                CHECK_INT(again.linked[i][j], graph.linked[(i + by) % c.count][(j + by) % c.count]);
        }
        CHECK_INT(again.triangle_count, graph.triangle_count);
    }
}

/// The whole four by six grid: every square has both diagonals, no link jumps a neighbour.
static void a_grid_has_both_diagonals(void) {
    cloud c = {0};
    for (int y = 0; y < 4; y++) {
        for (int x = 0; x < 6; x++)
            c.at[c.count++] = (spot){x, y};
    }
    bw_graph graph;
    build(&c, any_length, &graph);
    for (int i = 0; i < c.count; i++) {
        for (int j = 0; j < c.count; j++) {
            const long long dx = llabs(c.at[i].x - c.at[j].x), dy = llabs(c.at[i].y - c.at[j].y);
            CHECK_INT(graph.linked[i][j], i != j && dx <= 1 && dy <= 1);
        }
    }
    CHECK_INT(graph.triangle_count, 2 * 3 * 5);
    build(&c, 1.2, &graph);
    CHECK_INT(graph.linked[0][1], 1);
    CHECK_INT(graph.linked[0][7], 0);
    CHECK_INT(graph.triangle_count, 2 * 3 * 5);
}

static void collinear_points_form_a_chain(void) {
    for (int vertical = 0; vertical < 2; vertical++) {
        static const int along[] = {4, 0, 1, 9, 6};
        cloud c = {0};
        for (int i = 0; i < BW_COUNT(along); i++)
            c.at[c.count++] = vertical ? (spot){3, along[i]} : (spot){along[i], 2 * along[i]};
        bw_graph graph;
        build(&c, any_length, &graph);
        static const int next[][2] = {{1, 2}, {2, 0}, {0, 4}, {4, 3}};
        int links = 0;
        for (int i = 0; i < c.count; i++) {
            for (int j = 0; j < c.count; j++)
                links += graph.linked[i][j];
        }
        CHECK_INT(links, 8);
        for (int k = 0; k < BW_COUNT(next); k++)
            CHECK(graph.linked[next[k][0]][next[k][1]] && graph.linked[next[k][1]][next[k][0]]);
        CHECK_INT(graph.triangle_count, 0);
    }
}

static void one_and_two_points(void) {
    const cloud c = {2, {{0, 0}, {3, 4}}};
    bw_graph graph;
    build(&c, 5, &graph);
    CHECK_INT(graph.linked[0][1], 1);
    CHECK_INT(graph.linked[0][0], 0);
    build(&c, 4.99, &graph);
    CHECK_INT(graph.linked[0][1], 0);
    const cloud one = {1, {{7, 7}}};
    build(&one, any_length, &graph);
    CHECK_INT(graph.count, 1);
    CHECK_INT(graph.linked[0][0], 0);
    CHECK_INT(graph.triangle_count, 0);
}

int main(int argc, char **argv) {
    RUN(agrees_with_the_lifted_hull);
    RUN(triangles_tile_the_hull);
    RUN(mirrors_exactly);
    RUN(numbering_does_not_matter);
    RUN(a_grid_has_both_diagonals);
    RUN(collinear_points_form_a_chain);
    RUN(one_and_two_points);
    return test_report(argc, argv);
}
