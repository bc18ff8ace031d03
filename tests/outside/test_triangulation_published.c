/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Interpolation and triangulation against textbook values. The Laplace values were worked out for
/// this project by clipping polygons, a method that shares nothing with the one in the core.
#include "core/graph.h"
#include "core/neighbour.h"
#include "core/predicates.h"
#include "harness.h"

static void check_weights(const bw_sites *sites, bw_vec p, const double *want, double tolerance) {
    double weight[BW_MAX_SITES];
    bw_neighbour_weights(sites, p, weight);
    for (int s = 0; s < sites->count; s++)
        CHECK_NEAR(weight[s], want[s], tolerance);
}

/// Inside one triangle natural neighbours are barycentric coordinates (A. F. Moebius 1827): the part
/// of the area across from each corner.
static void barycentric_in_a_triangle(void) {
    const bw_sites small = {3, {{0, 0}, {5, 0}, {1, 4}}};
    check_weights(&small, bw_v(2, 1), (const double[]){0.40, 0.35, 0.25}, 1e-15);
    const bw_sites large = {3, {{0, 0}, {10, 0}, {2, 8}}};
    check_weights(&large, bw_v(4, 3), (const double[]){0.300, 0.325, 0.375}, 1e-15);
    const bw_sites third = {3, {{0, 0}, {4, 0}, {1, 3}}};
    check_weights(&third, bw_v(2, 1), (const double[]){0.25, 5.0 / 12, 1.0 / 3}, 1e-15);
}

/// Spots (0,5), (4,6), (-2,9) at the large triangle's corners: the ball at (4,3) wants (0.55, 6.825).
static void a_landmark_table_in_a_triangle(void) {
    const bw_sites sites = {3, {{0, 0}, {10, 0}, {2, 8}}};
    const bw_vec spots[] = {{0, 5}, {4, 6}, {-2, 9}};
    double weight[BW_MAX_SITES];
    bw_neighbour_weights(&sites, bw_v(4, 3), weight);
    bw_vec at = {0, 0};
    for (int s = 0; s < 3; s++)
        at = bw_add(at, bw_scale(spots[s], weight[s]));
    CHECK_NEAR(at.x, 0.55, 1e-14);
    CHECK_NEAR(at.y, 6.825, 1e-14);
}

/// For f = x^2 + y^2 linear interpolation is wrong by exactly R^2 at the circumcentre (an equality
/// case of the error bound M R^2 / 2); here R^2 = 5.
static void the_error_at_a_circumcentre(void) {
    const bw_sites sites = {3, {{0, 0}, {4, 0}, {1, 3}}};
    double weight[BW_MAX_SITES], value = 0;
    bw_neighbour_weights(&sites, bw_v(2, 1), weight);
    for (int s = 0; s < 3; s++)
        value += weight[s] * bw_length2(sites.at[s]);
    CHECK_NEAR(value - 5, 5, 1e-13);
}

/// Outside a triangle: never extrapolated, but held to the nearest edge. At (-1, 1) plain
/// barycentric coordinates are 1.00, -0.25, 0.25; the nearest edge runs from (0,0) to (1,4), and the
/// foot lies 3/17 of the way along it.
static void held_to_the_edge_outside(void) {
    const bw_sites sites = {3, {{0, 0}, {5, 0}, {1, 4}}};
    check_weights(&sites, bw_v(-1, 1), (const double[]){14.0 / 17, 0, 3.0 / 17}, 1e-15);
}

/// On a square Laplace weights are bilinear.
static void laplace_on_the_unit_square(void) {
    const bw_sites square = {4, {{0, 0}, {1, 0}, {1, 1}, {0, 1}}};
    check_weights(&square, bw_v(0.3, 0.2), (const double[]){0.56, 0.24, 0.06, 0.14}, 1e-15);
    check_weights(&square, bw_v(0.5, 0.5), (const double[]){0.25, 0.25, 0.25, 0.25}, 0);
    for (int i = 0; i <= 16; i++) {
        for (int j = 0; j <= 16; j++) {
            const double u = i / 16.0, v = j / 16.0;
            const double want[] = {(1 - u) * (1 - v), u * (1 - v), u * v, (1 - u) * v};
            check_weights(&square, bw_v(u, v), want, 1e-15);
        }
    }
}

static void laplace_on_five_sites(void) {
    const bw_sites sites = {5, {{0, 0}, {4, 0}, {5, 3}, {2, 5}, {-1, 3}}};
    const double want[] = {0.23684211, 0.23684211, 0.15789474, 0.21052632, 0.15789474};
    check_weights(&sites, bw_v(2, 2), want, 5e-9);
    // The same as fractions: 9, 9, 6, 8, 6 in 38.
    const double exact[] = {9.0 / 38, 9.0 / 38, 6.0 / 38, 8.0 / 38, 6.0 / 38};
    check_weights(&sites, bw_v(2, 2), exact, 1e-15);
}

/// In-circle determinants of the unit square are 0, +0.5 and -4.
static void in_circle_of_the_unit_square(void) {
    const bw_vec a = {0, 0}, b = {1, 0}, c = {1, 1};
    CHECK_INT(bw_in_circle(a, b, c, bw_v(0, 1)), 0);
    CHECK_INT(bw_in_circle(a, b, c, bw_v(0.5, 0.5)), 1);
    CHECK_INT(bw_in_circle(a, b, c, bw_v(2, 2)), -1);
}

/// Euler's formula: any triangulation of n points with h on the hull has 2n - 2 - h triangles.
static void euler_counts_the_triangles(void) {
    unsigned long long seed = 3;
    for (int n = 3; n <= BW_MAX_LANDMARKS; n++) {
        bw_vec points[BW_MAX_LANDMARKS] = {{-9, -9}, {9, -9}, {0, 12}};
        for (int i = 3; i < n; i++)
            points[i] = bw_v(test_uniform(&seed, -2, 2), test_uniform(&seed, -2, 2));
        bw_graph graph;
        bw_graph_build(points, n, 100, &graph);
        CHECK_INT(graph.triangle_count, 2 * n - 2 - 3);
    }
}

int main(int argc, char **argv) {
    RUN(barycentric_in_a_triangle);
    RUN(a_landmark_table_in_a_triangle);
    RUN(the_error_at_a_circumcentre);
    RUN(held_to_the_edge_outside);
    RUN(laplace_on_the_unit_square);
    RUN(laplace_on_five_sites);
    RUN(in_circle_of_the_unit_square);
    RUN(euler_counts_the_triangles);
    return test_report(argc, argv);
}
