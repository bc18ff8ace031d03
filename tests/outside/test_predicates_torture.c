/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The classroom example of robustness: 256 x 256 points next to the line through (12, 12) and
/// (24, 24), a grid of neighbouring doubles. Source: L. Kettner, K. Mehlhorn, S. Pion, S. Schirra,
/// C. Yap, "Classroom examples of robustness problems in geometric computations", Comput. Geom. 40,
/// 2008, 61-78. The number of wrong signs was counted for this project with exact rationals.
#include "core/predicates.h"
#include "harness.h"

__extension__ typedef __int128 wide;

static const bw_vec q = {12, 12}, r = {24, 24};

static bw_vec grid_point(int i, int j) {
    return bw_v(0.5 + i * 0x1p-53, 0.5 + j * 0x1p-53);
}

static int sign_of(wide v) {
    return (v > 0) - (v < 0);
}

/// In units of 2^-53 every coordinate is a whole number.
static int exact_sign(int i, int j) {
    const wide unit = (wide)1 << 53;
    const wide px = unit / 2 + i, py = unit / 2 + j, c = 24 * unit;
    return sign_of((px - c) * (12 * unit - c) - (py - c) * (12 * unit - c));
}

/// The textbook formula in doubles, in the same order of points.
static int plain_sign(bw_vec a, bw_vec b, bw_vec c) {
    const double left = (a.x - c.x) * (b.y - c.y), right = (a.y - c.y) * (b.x - c.x);
    return (left > right) - (left < right);
}

static void every_sign_of_the_grid_is_right(void) {
    int ours = 0, plain = 0, too_left = 0, in_line = 0;
    for (int i = 0; i < 256; i++) {
        for (int j = 0; j < 256; j++) {
            const bw_vec p = grid_point(i, j);
            const int want = exact_sign(i, j), naive = plain_sign(p, q, r);
            in_line += want == 0;
            plain += naive != want;
            too_left += naive == 0 && want > 0;
            ours += bw_orient(p, q, r) != want;
            ours += bw_orient(q, r, p) != want;
            ours += bw_orient(r, p, q) != want;
            ours += bw_orient(q, p, r) != -want;
        }
    }
    CHECK_INT(in_line, 256);
    CHECK_INT(plain, 11492);
    CHECK_INT(too_left, 5746);
    CHECK_INT(ours, 0);
}

/// Exact value for (1, 0): -1.33e-15; the plain formula says zero.
static void the_named_point_turns_right(void) {
    CHECK_INT(plain_sign(grid_point(1, 0), q, r), 0);
    CHECK_INT(bw_orient(grid_point(1, 0), q, r), -1);
    CHECK_INT(bw_orient(grid_point(0, 1), q, r), 1);
}

int main(int argc, char **argv) {
    RUN(every_sign_of_the_grid_is_right);
    RUN(the_named_point_turns_right);
    return test_report(argc, argv);
}
