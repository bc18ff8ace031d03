/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Shapes: the curves lie where the shapes say.
#include "draw/path.h"
#include "harness.h"

static double memory[1024];

static bw_ink *fresh(void) {
    bw_ink *ink = bw_ink_in(memory, sizeof memory);
    bw_ink_page(ink, 100, 100);
    bw_ink_stroke(ink, BW_ROLE_LINE, 1);
    return ink;
}

/// Calls `see` for points along the path, 33 to each curve.
static void sample(const bw_ink *ink, void (*see)(bw_vec p)) {
    const bw_ink_item *item = bw_ink_first(ink);
    const double *n = bw_ink_numbers(item), *end = n + item->numbers;
    bw_vec at = {0, 0};
    while (n < end) {
        const int verb = (int)*n++;
        if (verb == BW_CURVE) {
            for (int i = 0; i <= 32; i++) {
                const double t = i / 32.0, u = 1 - t;
                const double w[] = {u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t};
                see(bw_v(w[0] * at.x + w[1] * n[0] + w[2] * n[2] + w[3] * n[4],
                         w[0] * at.y + w[1] * n[1] + w[2] * n[3] + w[3] * n[5]));
            }
            at = bw_v(n[4], n[5]);
            n += 6;
        } else if (verb != BW_SHUT) {
            at = bw_v(n[0], n[1]);
            see(at);
            n += 2;
        }
    }
}

static bw_vec centre;
static double radius, least_angle, most_angle;

static void on_circle(bw_vec p) {
    CHECK_NEAR(bw_distance(p, centre), radius, 0.0003 * radius);
    const double angle = atan2(centre.y - p.y, p.x - centre.x);
    least_angle = fmin(least_angle, angle);
    most_angle = fmax(most_angle, angle);
}

static void circles_are_round(void) {
    centre = bw_v(30, 40);
    radius = 25;
    bw_ink *ink = fresh();
    bw_path_circle(ink, centre, radius);
    sample(ink, on_circle);
}

static void arcs_go_from_angle_to_angle(void) {
    static const double ends[][2] = {{0, 3.1}, {-1.2, 0.4}, {-3, 3}, {0.5, 0.6}};
    centre = bw_v(10, 20);
    radius = 7;
    for (int i = 0; i < 4; i++) {
        bw_ink *ink = fresh();
        least_angle = 9;
        most_angle = -9;
        bw_path_arc(ink, centre, radius, ends[i][0], ends[i][1]);
        sample(ink, on_circle);
        CHECK_NEAR(least_angle, ends[i][0], 1e-9);
        CHECK_NEAR(most_angle, ends[i][1], 1e-9);
    }
}

static void in_capsule(bw_vec p) {
    const double inside = bw_clamp(p.x, centre.x - 6, centre.x + 6);
    CHECK_NEAR(bw_distance(p, bw_v(inside, centre.y)), radius, 0.0003 * radius);
}

static void capsules_are_two_half_circles(void) {
    centre = bw_v(30, 40);
    radius = 9;
    bw_ink *ink = fresh();
    bw_path_capsule(ink, centre, 6, radius);
    sample(ink, in_capsule);
}

static void waves_stay_near_their_line(void) {
    bw_ink *ink = fresh();
    bw_path_wave(ink, bw_v(10, 50), bw_v(90, 50), 9, 2.2);
    const bw_ink_item *item = bw_ink_first(ink);
    const double *n = bw_ink_numbers(item);
    CHECK_SAME(n[1], 10);
    CHECK_NEAR(n[item->numbers - 2], 90, 1e-9);
    CHECK_NEAR(n[item->numbers - 1], 50, 1e-9);
    for (int i = 3; i + 6 < item->numbers + 1; i += 7) {
        CHECK(fabs(n[i + 2] - 50) <= 2.2 * 4 / 3 + 1e-9);
    }
}

static void heads_point_at_their_tip(void) {
    bw_ink *ink = fresh();
    bw_path_head(ink, bw_v(10, 10), bw_v(3, 4), 5, 2);
    const double *n = bw_ink_numbers(bw_ink_first(ink));
    CHECK_NEAR(bw_distance(bw_v(n[4], n[5]), bw_v(n[7], n[8])), 2, 1e-12);
    CHECK_NEAR((n[4] + n[7]) / 2, 10 - 3, 1e-12);
    CHECK_NEAR((n[5] + n[8]) / 2, 10 - 4, 1e-12);
}

int main(int argc, char **argv) {
    RUN(circles_are_round);
    RUN(arcs_go_from_angle_to_angle);
    RUN(capsules_are_two_half_circles);
    RUN(waves_stay_near_their_line);
    RUN(heads_point_at_their_tip);
    return test_report(argc, argv);
}
