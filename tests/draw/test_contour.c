/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Contours against surfaces whose level lines are known.
#include "draw/contour.h"
#include "harness.h"

enum { SIDE = 41 };

static double memory[1 << 15];
static double value[SIDE * SIDE];
static const bw_grid grid = {-10, -10, 0.5, SIDE, SIDE, value};
static const bw_view view = {.scale = 1, .origin = {0, 0}};

static void fill_grid(double (*f)(bw_vec p)) {
    for (int r = 0; r < SIDE; r++) {
        for (int c = 0; c < SIDE; c++) {
            value[r * SIDE + c] = f(bw_v(grid.left + c * grid.cell, grid.bottom + r * grid.cell));
        }
    }
}

static const bw_ink_item *trace(double level, bool area) {
    bw_ink *ink = bw_ink_in(memory, sizeof memory);
    bw_ink_page(ink, 10, 10);
    bw_ink_fill(ink, BW_ROLE_BAND_1);
    if (area)
        bw_contour_area(ink, &grid, level, &view);
    else
        bw_contour_line(ink, &grid, level, &view);
    CHECK_INT(ink->status, BW_OK);
    return bw_ink_first(ink);
}

/// Area enclosed by the loops by the shoelace formula, page y turned back; *loops counts them.
static double enclosed(const bw_ink_item *item, int *loops) {
    const double *n = bw_ink_numbers(item), *end = n + item->numbers;
    double twice = 0;
    bw_vec start = {0, 0}, at = {0, 0};
    *loops = 0;
    while (n < end) {
        const int verb = (int)*n++;
        const bw_vec to = verb == BW_SHUT ? start : bw_v(n[0], -n[1]);
        if (verb == BW_MOVE)
            start = to;
        else
            twice += bw_cross(at, to);
        *loops += verb == BW_SHUT;
        at = to;
        if (verb != BW_SHUT) n += 2;
    }
    return twice / 2;
}

static double cone(bw_vec p) {
    return 10 - bw_length(p);
}

static void a_cone_has_round_contours(void) {
    fill_grid(cone);
    for (double level = 1; level < 9; level += 0.37) {
        int loops;
        const double r = 10 - level;
        const double area = enclosed(trace(level, true), &loops);
        CHECK_INT(loops, 1);
        CHECK_NEAR(area, BW_PI * r * r, 0.25 * r + 0.1); // the chords of half-metre cells
        const bw_ink_item *line = trace(level, false);
        const double *n = bw_ink_numbers(line);
        for (int i = 0; i + 2 < line->numbers; i += 3) {
            CHECK_NEAR(bw_length(bw_v(n[i + 1], n[i + 2])), r, 0.04);
        }
    }
}

static double slope(bw_vec p) {
    return p.x + 0.25 * p.y;
}

/// A plane is met exactly; what touches the grid's edge closes along it, and the line leaves it out.
static void a_plane_is_cut_straight(void) {
    int loops;
    fill_grid(slope);
    CHECK_NEAR(enclosed(trace(0, true), &loops), 200, 1e-9);
    CHECK_INT(loops, 1);
    const bw_ink_item *line = trace(0, false);
    const double *n = bw_ink_numbers(line);
    for (int i = 0; i < line->numbers; i += 3) {
        CHECK_NEAR(slope(bw_v(n[i + 1], -n[i + 2])), 0, 1e-9);
        CHECK_INT(n[i] == BW_MOVE, i == 0);
    }
    CHECK_NEAR(enclosed(trace(-100, true), &loops), 400, 1e-9); // all of it
    CHECK_INT(trace(100, true)->numbers, 0);                    // none of it
    CHECK_INT(trace(-100, false)->numbers, 0);
}

static double two_hills(bw_vec p) {
    const double a = bw_length2(bw_sub(p, bw_v(-4, 0))), b = bw_length2(bw_sub(p, bw_v(4, 0)));
    return exp(-a / 8) + exp(-b / 8);
}

static void hills_part_and_join(void) {
    int loops;
    fill_grid(two_hills);
    enclosed(trace(0.6, true), &loops);
    CHECK_INT(loops, 2);
    enclosed(trace(0.2, true), &loops);
    CHECK_INT(loops, 1);
}

static double checkers(bw_vec p) {
    return ((int)floor(p.x * 2 + 0.5) + (int)floor(p.y * 2 + 0.5)) & 1 ? 1 : -0.25;
}

/// All saddles: enclosed areas stay within the square, every loop closes.
static void saddles_are_decided(void) {
    int loops;
    fill_grid(checkers);
    const double joined = enclosed(trace(0.1, true), &loops);
    CHECK(joined > 0 && joined < 400);
    const double apart = enclosed(trace(0.6, true), &loops);
    CHECK(loops > 700);
    CHECK(apart > 0 && apart < joined);
}

static double random_values(bw_vec p) {
    static unsigned long long seed = 3;
    (void)p;
    return test_uniform(&seed, 0, 1);
}

/// Against an independent count: a fine bilinear sampling of the area above the level.
static void noise_encloses_what_it_should(void) {
    int loops;
    fill_grid(random_values);
    const double area = enclosed(trace(0.5, true), &loops);
    int above = 0;
    for (int r = 0; r < 400; r++) {
        for (int c = 0; c < 400; c++) {
            above += bw_grid_value(&grid, bw_v(-9.975 + 0.05 * c, -9.975 + 0.05 * r)) >= 0.5;
        }
    }
    CHECK_NEAR(area, above * 0.0025, 4);
}

int main(int argc, char **argv) {
    RUN(a_cone_has_round_contours);
    RUN(a_plane_is_cut_straight);
    RUN(hills_part_and_join);
    RUN(saddles_are_decided);
    RUN(noise_encloses_what_it_should);
    return test_report(argc, argv);
}
