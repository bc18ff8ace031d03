/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Signs of orientation and in-circle against exact integers, on points chosen to lie on or next to
/// a line or a circle, and at field scale in yards turned into metres.
#include "core/base.h"
#include "core/predicates.h"
#include "harness.h"

__extension__ typedef __int128 wide;

static unsigned long long seed = 7;

typedef struct spot {
    long long x, y;
} spot;

static int sign_of(wide v) {
    return (v > 0) - (v < 0);
}

static int integer_orient(spot a, spot b, spot c) {
    return sign_of((wide)(a.x - c.x) * (b.y - c.y) - (wide)(a.y - c.y) * (b.x - c.x));
}

static wide lifted(spot a, spot b, spot c) {
    return ((wide)a.x * a.x + (wide)a.y * a.y) * ((wide)b.x * c.y - (wide)b.y * c.x);
}

/// Exact for coordinates below 2^29.
static int integer_in_circle(spot a, spot b, spot c, spot d) {
    a = (spot){a.x - d.x, a.y - d.y};
    b = (spot){b.x - d.x, b.y - d.y};
    c = (spot){c.x - d.x, c.y - d.y};
    return sign_of(lifted(a, b, c) + lifted(b, c, a) + lifted(c, a, b));
}

static long long whole(long long low, long long high) {
    return low + (long long)(test_random(&seed) % (unsigned long long)(high - low + 1));
}

/// One number after the other: initialisers may be worked out in either order.
static spot whole_spot(long long reach) {
    const long long x = whole(-reach, reach), y = whole(-reach, reach);
    return (spot){x, y};
}

/// Integers as doubles, times a power of two, which rounds nothing.
static bw_vec placed(spot s, double unit) {
    return bw_v((double)s.x * unit, (double)s.y * unit);
}

/// c is within a unit or so of the line through a and b, coordinates of up to 52 bits.
static void orient_agrees_with_integers(void) {
    int ties = 0;
    for (int round = 0; round < 300000; round++) {
        const long long step = 1ll << whole(2, 46);
        const spot d = whole_spot(step);
        const spot a = whole_spot(1ll << 46);
        const long long m = whole(-30, 30), n = whole(-30, 30);
        const spot b = {a.x + m * d.x, a.y + m * d.y};
        const spot off = whole_spot(1);
        const spot c = {a.x + n * d.x + off.x, a.y + n * d.y + off.y};
        const double unit = ldexp(1, (int)whole(-60, 10));
        const int want = integer_orient(a, b, c);
        ties += want == 0;
        CHECK_INT(bw_orient(placed(a, unit), placed(b, unit), placed(c, unit)), want);
        CHECK_INT(bw_orient(placed(b, unit), placed(a, unit), placed(c, unit)), -want);
    }
    CHECK(ties > 10000);
}

/// A whole point of x^2 + y^2 = 1105^2.
static spot ring_point(void) {
    static const int ring[][2] = {{1105, 0},  {1073, 264}, {1071, 272}, {1020, 425}, {975, 520},
                                  {943, 576}, {884, 663},  {855, 700},  {817, 744},  {700, 855},
                                  {576, 943}, {272, 1071}, {47, 1104},  {0, 1105},   {169, 1092}};
    const int *r = ring[whole(0, BW_COUNT(ring) - 1)];
    const long long x = whole(0, 1) ? r[0] : -r[0], y = whole(0, 1) ? r[1] : -r[1];
    return (spot){x, y};
}

/// Four points of one circle, or a unit off it.
static void in_circle_agrees_with_integers(void) {
    int ties = 0;
    for (int round = 0; round < 300000; round++) {
        const long long scale = whole(1, 200000);
        const spot centre = whole_spot(1000000);
        const int jitter = round % 2;
        spot p[4];
        for (int i = 0; i < 4; i++) {
            const spot r = ring_point();
            p[i] = (spot){centre.x + scale * r.x, centre.y + scale * r.y};
            p[i].x += jitter * whole(-1, 1);
        }
        const double unit = ldexp(1, (int)whole(-40, 10));
        const int want = integer_in_circle(p[0], p[1], p[2], p[3]);
        ties += want == 0;
        const bw_vec a = placed(p[0], unit), b = placed(p[1], unit), c = placed(p[2], unit);
        const bw_vec d = placed(p[3], unit);
        CHECK_INT(bw_in_circle(a, b, c, d), want);
        CHECK_INT(bw_in_circle(b, a, c, d), -want);
        CHECK_INT(bw_in_circle(b, c, d, a), -want);
    }
    CHECK(ties > 100000);
}

/// A vector far below the last bit of any coordinate, never zero.
static bw_vec nudge(spot *whole_nudge) {
    do
        *whole_nudge = whole_spot(9);
    while (whole_nudge->x == 0 && whole_nudge->y == 0);
    return placed(*whole_nudge, 0x1p-100);
}

/// a and b in line with the origin, c next to it: a - c does not fit one double, and the answer hangs
/// on the part that does not.
static void orient_needs_the_tails(void) {
    for (int round = 0; round < 100000; round++) {
        const spot v = whole_spot(500);
        const long long m = whole(-90, 90), n = whole(-90, 90);
        const spot a = {m * v.x, m * v.y}, b = {n * v.x, n * v.y};
        spot c;
        const bw_vec near_origin = nudge(&c);
        const int want = sign_of((wide)(b.x - a.x) * c.y - (wide)(b.y - a.y) * c.x);
        CHECK_INT(bw_orient(placed(a, 1), placed(b, 1), near_origin), want);
        CHECK_INT(bw_orient(near_origin, placed(a, 1), placed(b, 1)), want);
    }
}

/// The same for a circle through the origin: its neighbour is inside when it lies toward the centre.
static void in_circle_needs_the_tails(void) {
    for (int round = 0; round < 100000; round++) {
        spot p[4];
        for (int i = 0; i < 4; i++)
            p[i] = ring_point();
        spot d;
        const bw_vec near_origin = nudge(&d);
        bw_vec at[3];
        for (int i = 0; i < 3; i++)
            at[i] = bw_v((double)(p[i].x - p[3].x), (double)(p[i].y - p[3].y));
        const int turn = integer_orient(p[0], p[1], p[2]);
        const long long outward = p[3].x * d.x + p[3].y * d.y;
        CHECK_INT(bw_in_circle(at[0], at[1], at[2], near_origin), outward < 0 ? turn : -turn);
    }
}

/// Landmarks typed in whole and half yards: metres round them off the line and the circle, and the
/// exact sign then is that of the rounded points, the same whichever corner is named first.
static void turning_the_corners_changes_nothing(void) {
    for (int round = 0; round < 100000; round++) {
        bw_vec p[4];
        for (int i = 0; i < 4; i++)
            p[i] = placed(whole_spot(8), 0.5 * BW_METRES_PER_YARD);
        const int turn = bw_orient(p[0], p[1], p[2]), in = bw_in_circle(p[0], p[1], p[2], p[3]);
        CHECK_INT(bw_orient(p[1], p[2], p[0]), turn);
        CHECK_INT(bw_orient(p[1], p[0], p[2]), -turn);
        CHECK_INT(bw_orient(bw_mirror(p[0]), bw_mirror(p[1]), bw_mirror(p[2])), -turn);
        CHECK_INT(bw_in_circle(p[1], p[2], p[0], p[3]), in);
        CHECK_INT(bw_in_circle(p[2], p[1], p[0], p[3]), -in);
        CHECK_INT(bw_in_circle(p[1], p[2], p[3], p[0]), -in);
        CHECK_INT(bw_in_circle(bw_mirror(p[0]), bw_mirror(p[1]), bw_mirror(p[2]), bw_mirror(p[3])),
                  -in);
    }
}

static void equal_points_are_in_line(void) {
    const bw_vec a = {0.1, 0.7}, b = {-3.3, 2.2}, c = {1e6, -1e-6};
    CHECK_INT(bw_orient(a, a, b), 0);
    CHECK_INT(bw_orient(a, b, a), 0);
    CHECK_INT(bw_orient(a, a, a), 0);
    CHECK_INT(bw_in_circle(a, b, c, a), 0);
    CHECK_INT(bw_in_circle(a, b, c, c), 0);
    CHECK_INT(bw_in_circle(a, a, a, a), 0);
}

int main(int argc, char **argv) {
    RUN(orient_agrees_with_integers);
    RUN(in_circle_agrees_with_integers);
    RUN(orient_needs_the_tails);
    RUN(in_circle_needs_the_tails);
    RUN(turning_the_corners_changes_nothing);
    RUN(equal_points_are_in_line);
    return test_report(argc, argv);
}
