/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Shapes as moves, lines and cubic curves.
#include "draw/path.h"

/// Control distance of a quarter circle of radius 1: 4/3 (sqrt 2 - 1).
#define QUARTER 0.55228474983079339840

void bw_path_segment(bw_ink *ink, bw_vec a, bw_vec b) {
    bw_ink_move(ink, a.x, a.y);
    bw_ink_line(ink, b.x, b.y);
}

void bw_path_rect(bw_ink *ink, double x, double y, double width, double height) {
    bw_ink_move(ink, x, y);
    bw_ink_line(ink, x + width, y);
    bw_ink_line(ink, x + width, y + height);
    bw_ink_line(ink, x, y + height);
    bw_ink_shut(ink);
}

void bw_path_circle(bw_ink *ink, bw_vec centre, double radius) {
    bw_path_capsule(ink, centre, 0, radius);
}

void bw_path_capsule(bw_ink *ink, bw_vec c, double half, double r) {
    const double k = QUARTER * r, right = c.x + half, left = c.x - half;
    bw_ink_move(ink, right, c.y - r);
    bw_ink_curve(ink, right + k, c.y - r, right + r, c.y - k, right + r, c.y);
    bw_ink_curve(ink, right + r, c.y + k, right + k, c.y + r, right, c.y + r);
    if (half > 0) bw_ink_line(ink, left, c.y + r);
    bw_ink_curve(ink, left - k, c.y + r, left - r, c.y + k, left - r, c.y);
    bw_ink_curve(ink, left - r, c.y - k, left - k, c.y - r, left, c.y - r);
    bw_ink_shut(ink);
}

void bw_path_arc(bw_ink *ink, bw_vec centre, double radius, double from, double to) {
    const int pieces = 1 + (int)(bw_abs(to - from) / (BW_PI / 2 + 1e-9));
    const double step = (to - from) / pieces;
    const double quarter = step / 4;
    const double k = 4.0 / 3.0 * bw_sin(quarter) / bw_cos(quarter) * radius;
    bw_ink_move(ink, centre.x + radius * bw_cos(from), centre.y - radius * bw_sin(from));
    for (int i = 0; i < pieces; i++) {
        const double a = from + step * i, b = from + step * (i + 1);
        const double ca = bw_cos(a), sa = bw_sin(a), cb = bw_cos(b), sb = bw_sin(b);
        bw_ink_curve(ink, centre.x + radius * ca - k * sa, centre.y - radius * sa - k * ca,
                     centre.x + radius * cb + k * sb, centre.y - radius * sb + k * cb,
                     centre.x + radius * cb, centre.y - radius * sb);
    }
}

void bw_path_head(bw_ink *ink, bw_vec tip, bw_vec along, double length, double width) {
    const bw_vec u = bw_unit(along), side = bw_v(-u.y, u.x);
    const bw_vec base = bw_sub(tip, bw_scale(u, length));
    const bw_vec a = bw_add(base, bw_scale(side, width / 2));
    const bw_vec b = bw_sub(base, bw_scale(side, width / 2));
    bw_ink_move(ink, tip.x, tip.y);
    bw_ink_line(ink, a.x, a.y);
    bw_ink_line(ink, b.x, b.y);
    bw_ink_shut(ink);
}

void bw_path_wave(bw_ink *ink, bw_vec a, bw_vec b, double length, double height) {
    const double distance = bw_distance(a, b);
    bw_ink_move(ink, a.x, a.y);
    if (distance < length) {
        bw_ink_line(ink, b.x, b.y);
        return;
    }
    const int halves = 2 * (int)(distance / length + 0.5);
    const bw_vec step = bw_scale(bw_sub(b, a), 1.0 / halves);
    const bw_vec u = bw_unit(step), side = bw_scale(bw_v(-u.y, u.x), height * 4.0 / 3.0);
    for (int i = 0; i < halves; i++) {
        const bw_vec from = bw_add(a, bw_scale(step, i)), to = bw_add(from, step);
        const bw_vec out = i % 2 ? bw_scale(side, -1) : side;
        const bw_vec c1 = bw_add(bw_add(from, bw_scale(step, 0.35)), out);
        const bw_vec c2 = bw_add(bw_sub(to, bw_scale(step, 0.35)), out);
        bw_ink_curve(ink, c1.x, c1.y, c2.x, c2.y, to.x, to.y);
    }
}
