/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Natural-neighbour weights against an independent method (the Voronoi cell clipped corner by corner
/// in long double), and the properties the shape leans on: exact mirror images, no dependence on
/// numbering, linear precision, continuity everywhere, the hull's seam included.
#include "core/neighbour.h"
#include "harness.h"

static unsigned long long seed = 20;

/// A field as a coach would lay it out, in yards: landmarks full of co-circular quadruples, and a
/// ring of anchors whose sides hold collinear sites.
static bw_sites field_sites(void) {
    static const double yards[][2] = {
        {0, 15},  {-11, 13},  {11, 13}, {-14, 5},  {14, 5},   {-9, -4}, {9, -4},  {0, -7},
        {0, 8},   {-6, 10},   {6, 10},  {0, 60},   {31, 60},  {31, 30}, {31, 0},  {31, -16},
        {0, -16}, {-31, -16}, {-31, 0}, {-31, 30}, {-31, 60}, {31, 15}, {-31, 15}};
    bw_sites sites = {0};
    for (int i = 0; i < BW_COUNT(yards); i++)
        sites.at[sites.count++] = bw_scale(bw_v(yards[i][0], yards[i][1]), BW_METRES_PER_YARD);
    return sites;
}

static bool taken(const bw_sites *sites, bw_vec p) {
    for (int i = 0; i < sites->count; i++) {
        if (bw_length2(bw_sub(sites->at[i], p)) == 0) return true;
    }
    return false;
}

/// One number after the other: arguments may be worked out in either order.
static bw_vec random_point(double reach) {
    const double x = test_uniform(&seed, -reach, reach);
    return bw_v(x, test_uniform(&seed, -reach, reach));
}

/// Random sites; `grid` > 0 puts them on multiples of it, where ties are everywhere.
static bw_sites random_sites(int count, double grid) {
    bw_sites sites = {0};
    while (sites.count < count) {
        bw_vec p = random_point(20);
        if (grid > 0) p = bw_v(grid * bw_floor(p.x / grid), grid * bw_floor(p.y / grid));
        if (!taken(&sites, p)) sites.at[sites.count++] = p;
    }
    return sites;
}

/// A point that is often in trouble: on the centre line, on a grid line, half-way between two sites
/// (a hull edge among them), or anywhere.
static bw_vec awkward_point(const bw_sites *sites, double grid) {
    bw_vec p = random_point(24);
    int i = (int)(test_random(&seed) % (unsigned)sites->count);
    int j = (int)(test_random(&seed) % (unsigned)sites->count);
    switch (test_random(&seed) % 5) {
    case 0: return bw_v(0, p.y);
    case 1: return grid > 0 ? bw_v(grid * bw_floor(p.x / grid), p.y) : p;
    case 2: return bw_lerp(sites->at[i], sites->at[j], 0.5);
    case 3: return bw_lerp(sites->at[i], sites->at[j], 1e-11);
    default: return p;
    }
}

enum { MAX_CORNERS = 2 * BW_MAX_SITES };

typedef struct corner {
    long double x, y;
    int face; ///< site whose bisector carries the side from this corner to the next, or -1
} corner;

/// Cuts a convex polygon with the half-plane nearer to the origin than to (x, y).
static int clip(corner *polygon, int n, long double x, long double y, int face) {
    corner out[MAX_CORNERS];
    int m = 0;
    for (int i = 0; i < n; i++) {
        corner a = polygon[i], b = polygon[(i + 1) % n];
        long double half = (x * x + y * y) / 2;
        long double da = a.x * x + a.y * y - half, db = b.x * x + b.y * y - half;
        if (da <= 0) out[m++] = a;
        if ((da < 0 && db > 0) || (da > 0 && db < 0)) {
            long double t = da / (da - db);
            int side = da < 0 ? face : a.face;
            out[m++] = (corner){a.x + (b.x - a.x) * t, a.y + (b.y - a.y) * t, side};
        } else if (da == 0 && db > 0) {
            out[m - 1].face = face;
        }
    }
    memcpy(polygon, out, sizeof *out * (size_t)m);
    return m;
}

/// Laplace weights from their definition: side length over distance. False when the cell leaves the
/// ten-kilometre frame it is cut from.
static bool slow_weights(const bw_sites *sites, bw_vec p, double *weight) {
    const long double far = 1e4L;
    corner cell[MAX_CORNERS] = {{-far, -far, -1}, {far, -far, -1}, {far, far, -1}, {-far, far, -1}};
    int n = 4;
    for (int s = 0; s < sites->count; s++)
        n = clip(cell, n, (long double)sites->at[s].x - p.x, (long double)sites->at[s].y - p.y, s);
    long double w[BW_MAX_SITES] = {0}, sum = 0;
    for (int i = 0; i < n; i++) {
        corner a = cell[i], b = cell[(i + 1) % n];
        if (a.face < 0) return false;
        long double x = (long double)sites->at[a.face].x - p.x;
        long double y = (long double)sites->at[a.face].y - p.y;
        w[a.face] += hypotl(b.x - a.x, b.y - a.y) / hypotl(x, y);
    }
    for (int s = 0; s < sites->count; s++)
        sum += w[s];
    for (int s = 0; s < sites->count; s++)
        weight[s] = (double)(w[s] / sum);
    return true;
}

static double worst_difference(const double *a, const double *b, int count) {
    double worst = 0;
    for (int i = 0; i < count; i++)
        worst = fmax(worst, fabs(a[i] - b[i]));
    return worst;
}

/// Sum of weight times site.
static bw_vec blend(const bw_sites *sites, const double *weight) {
    bw_vec sum = {0, 0};
    for (int s = 0; s < sites->count; s++)
        sum = bw_add(sum, bw_scale(sites->at[s], weight[s]));
    return sum;
}

static void check_weights_sound(const bw_sites *sites, const double *weight) {
    double sum = 0, least = 0;
    for (int s = 0; s < sites->count; s++) {
        sum += weight[s];
        if (!(weight[s] >= least)) least = weight[s];
    }
    CHECK_NEAR(sum, 1, 1e-15);
    CHECK(least == 0);
}

/// A point inside the hull, well away from its edge: a blend of all sites.
static bw_vec inner_point(const bw_sites *sites) {
    double share[BW_MAX_SITES], sum = 0;
    for (int s = 0; s < sites->count; s++) {
        share[s] = pow(test_uniform(&seed, 0.01, 1), 6);
        sum += share[s];
    }
    for (int s = 0; s < sites->count; s++)
        share[s] /= sum;
    return blend(sites, share);
}

static void agrees_with_the_clipped_cell(void) {
    double got[BW_MAX_SITES], want[BW_MAX_SITES], worst = 0;
    int compared = 0;
    for (int round = 0; round < 3000; round++) {
        const double grid = (double)(round % 3);
        const bw_sites sites = random_sites(4 + round % (BW_MAX_SITES - 3), grid);
        const bw_vec p = inner_point(&sites);
        if (taken(&sites, p) || !slow_weights(&sites, p, want)) continue;
        compared++;
        bw_neighbour_weights(&sites, p, got);
        worst = fmax(worst, worst_difference(got, want, sites.count));
    }
    CHECK_NEAR(worst, 0, 1e-12);
    CHECK(compared > 2500);
}

static void reproduces_linear_functions(void) {
    double weight[BW_MAX_SITES], worst = 0;
    for (int round = 0; round < 5000; round++) {
        const bw_sites sites = round % 2 ? field_sites() : random_sites(3 + round % 38, round % 3);
        const bw_vec p = inner_point(&sites);
        bw_neighbour_weights(&sites, p, weight);
        check_weights_sound(&sites, weight);
        worst = fmax(worst, bw_distance(blend(&sites, weight), p));
    }
    CHECK_NEAR(worst, 0, 1e-12);
}

static void counts_one_at_a_site(void) {
    const bw_sites sites = field_sites();
    double weight[BW_MAX_SITES];
    for (int i = 0; i < sites.count; i++) {
        bw_neighbour_weights(&sites, sites.at[i], weight);
        for (int s = 0; s < sites.count; s++)
            CHECK_SAME(weight[s], s == i);
    }
}

static void mirrors_exactly(void) {
    double weight[BW_MAX_SITES], image[BW_MAX_SITES];
    for (int round = 0; round < 20000; round++) {
        const double grid = (double)(round % 4) / 2;
        const bw_sites sites = round % 5 ? random_sites(1 + round % 40, grid) : field_sites();
        const bw_vec p = awkward_point(&sites, grid);
        bw_sites mirrored = sites;
        for (int s = 0; s < sites.count; s++)
            mirrored.at[s] = bw_mirror(sites.at[s]);
        bw_neighbour_weights(&sites, p, weight);
        bw_neighbour_weights(&mirrored, bw_mirror(p), image);
        check_weights_sound(&sites, weight);
        for (int s = 0; s < sites.count; s++)
            CHECK_SAME(image[s], weight[s]);
    }
}

/// On the centre line of a symmetric field a landmark and its mirror image weigh the same.
static void twins_weigh_the_same_in_the_middle(void) {
    const bw_sites sites = field_sites();
    double weight[BW_MAX_SITES];
    for (int k = -160; k <= 620; k++) {
        bw_neighbour_weights(&sites, bw_v(0, 0.1 * k), weight);
        for (int s = 0; s < sites.count; s++) {
            for (int t = 0; t < sites.count; t++) {
                if (bw_length2(bw_sub(sites.at[s], bw_mirror(sites.at[t]))) == 0)
                    CHECK_SAME(weight[s], weight[t]);
            }
        }
    }
}

static void numbering_does_not_matter(void) {
    double weight[BW_MAX_SITES], again[BW_MAX_SITES];
    for (int round = 0; round < 20000; round++) {
        const double grid = (double)(round % 4) / 2;
        const bw_sites sites = round % 5 ? random_sites(2 + round % 39, grid) : field_sites();
        const bw_vec p = awkward_point(&sites, grid);
        int from[BW_MAX_SITES];
        bw_sites shuffled = sites;
        for (int s = 0; s < sites.count; s++) {
            int k = (int)(test_random(&seed) % (unsigned)(s + 1));
            from[s] = from[k];
            from[k] = s;
        }
        for (int s = 0; s < sites.count; s++)
            shuffled.at[s] = sites.at[from[s]];
        bw_neighbour_weights(&sites, p, weight);
        bw_neighbour_weights(&shuffled, p, again);
        for (int s = 0; s < sites.count; s++)
            CHECK_SAME(again[s], weight[from[s]]);
    }
}

/// Straight walks across the whole plane, hull and beyond: no step of a tenth of a micrometre moves a
/// weight by more than its length times a bound on the slope.
static void is_continuous(void) {
    const double step = 1e-7;
    double here[BW_MAX_SITES], next[BW_MAX_SITES], worst = 0;
    for (int round = 0; round < 20000; round++) {
        const bw_sites sites = round % 2 ? field_sites() : random_sites(3 + round % 30, 1);
        const bw_vec p = awkward_point(&sites, 1);
        const double angle = test_uniform(&seed, 0, 2 * BW_PI);
        bw_neighbour_weights(&sites, p, here);
        bw_neighbour_weights(&sites, bw_add(p, bw_v(step * cos(angle), step * sin(angle))), next);
        worst = fmax(worst, worst_difference(here, next, sites.count));
    }
    CHECK_NEAR(worst, 0, 40 * step);
}

/// Every way through the outline, from a metre inside to a metre outside, the weights stay as near to
/// those on the outline as the distance allows.
static void the_seam_at_the_hull_is_closed(void) {
    const bw_sites sites = field_sites();
    const double half_width = sites.at[12].x;
    double on[BW_MAX_SITES], off[BW_MAX_SITES];
    for (int k = 0; k < 400; k++) {
        const double y = test_uniform(&seed, sites.at[15].y, sites.at[12].y);
        bw_neighbour_weights(&sites, bw_v(half_width, y), on);
        CHECK_NEAR(blend(&sites, on).x, half_width, 1e-13);
        CHECK_NEAR(blend(&sites, on).y, y, 1e-13);
        for (double depth = 1; depth > 1e-17; depth /= 3) {
            bw_neighbour_weights(&sites, bw_v(half_width - depth, y), off);
            CHECK_NEAR(worst_difference(on, off, sites.count), 0, 2 * depth + 1e-12);
            bw_neighbour_weights(&sites, bw_v(half_width + depth, y), off);
            CHECK_NEAR(worst_difference(on, off, sites.count), 0, 1e-15);
        }
    }
}

/// Outside, the weights are those of the nearest point of the outline.
static void clamps_outside_the_hull(void) {
    double out[BW_MAX_SITES], on[BW_MAX_SITES];
    for (int round = 0; round < 2000; round++) {
        const bw_sites sites = random_sites(3 + round % 20, (double)(round % 2));
        const double angle = test_uniform(&seed, 0, 2 * BW_PI);
        const bw_vec p = bw_v(40 * cos(angle), 40 * sin(angle));
        bw_neighbour_weights(&sites, p, out);
        const bw_vec foot = blend(&sites, out);
        bw_neighbour_weights(&sites, foot, on);
        CHECK_NEAR(worst_difference(out, on, sites.count), 0, 1e-12);
        for (int s = 0; s < sites.count; s++) {
            const bw_vec beyond = bw_sub(sites.at[s], foot);
            CHECK(bw_dot(beyond, bw_sub(p, foot)) < 1e-10);
        }
    }
}

/// Rounding may leave a row of anchors crooked by the last bit; it still is one edge of the outline.
static void a_crooked_row_is_straight(void) {
    double weight[BW_MAX_SITES];
    for (int crook = -3; crook <= 3; crook++) {
        bw_sites sites = {5, {{0.1, 0}, {7.3, 0.1}, {0.1, 10.7}, {0.1, 3.9}, {0.1, 7.1}}};
        sites.at[3].x += crook * 0x1p-55;
        for (int k = -4; k <= 4; k++) {
            const bw_vec p = bw_v(0.1 + k * 0x1p-55, 5);
            bw_neighbour_weights(&sites, p, weight);
            CHECK_NEAR(weight[3], 2.1 / 3.2, 1e-12);
            CHECK_NEAR(weight[4], 1.1 / 3.2, 1e-12);
        }
    }
}

/// Just inside a corner of the hull, two edges are equally near; neither may win.
static void a_corner_favours_no_side(void) {
    const bw_sites sites = {3, {{0, 10}, {-6, 1}, {6, 1}}};
    double weight[BW_MAX_SITES];
    for (double gap = 0x1p-30; gap > 0x1p-50; gap /= 2) {
        bw_neighbour_weights(&sites, bw_v(0, 10 - gap), weight);
        check_weights_sound(&sites, weight);
        CHECK_SAME(weight[1], weight[2]);
        CHECK_NEAR(weight[0], 1, gap);
    }
}

static void few_or_collinear_sites(void) {
    double weight[BW_MAX_SITES];
    const bw_sites one = {1, {{2, 3}}};
    bw_neighbour_weights(&one, bw_v(9, -4), weight);
    CHECK_SAME(weight[0], 1);

    const bw_sites row = {4, {{0, 0}, {9, 3}, {3, 1}, {6, 2}}};
    bw_neighbour_weights(&row, bw_v(4.5, 1.5), weight);
    CHECK_SAME(weight[0], 0);
    CHECK_SAME(weight[1], 0);
    CHECK_NEAR(weight[2], 0.5, 1e-15);
    CHECK_NEAR(weight[3], 0.5, 1e-15);
    bw_neighbour_weights(&row, bw_v(4, 3), weight); // foot (4.5, 1.5)
    CHECK_NEAR(weight[2], 0.5, 1e-15);
    bw_neighbour_weights(&row, bw_v(-5, -1), weight);
    CHECK_SAME(weight[0], 1);
}

/// Nearer to a site than any coach can click, down to the smallest numbers there are.
static void closes_in_on_a_site(void) {
    const bw_sites sites = field_sites();
    double weight[BW_MAX_SITES];
    for (double gap = 1e-3; gap > 0; gap /= 16) {
        for (int i = 0; i < sites.count; i++) {
            bw_neighbour_weights(&sites, bw_add(sites.at[i], bw_v(gap, -gap / 3)), weight);
            check_weights_sound(&sites, weight);
            CHECK_NEAR(weight[i], 1, 2 * gap + 1e-11);
        }
    }
    const bw_sites origin = {5, {{0, 0}, {5, 5}, {-5, 5}, {-5, -5}, {5, -5}}};
    for (double gap = 1e-3; gap > 0; gap /= 16) {
        bw_neighbour_weights(&origin, bw_v(gap, -gap / 3), weight);
        check_weights_sound(&origin, weight);
        CHECK_NEAR(weight[0], 1, gap);
    }
}

int main(int argc, char **argv) {
    RUN(agrees_with_the_clipped_cell);
    RUN(reproduces_linear_functions);
    RUN(counts_one_at_a_site);
    RUN(mirrors_exactly);
    RUN(twins_weigh_the_same_in_the_middle);
    RUN(numbering_does_not_matter);
    RUN(is_continuous);
    RUN(the_seam_at_the_hull_is_closed);
    RUN(clamps_outside_the_hull);
    RUN(a_crooked_row_is_straight);
    RUN(a_corner_favours_no_side);
    RUN(few_or_collinear_sites);
    RUN(closes_in_on_a_site);
    return test_report(argc, argv);
}
