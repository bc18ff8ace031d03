/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The paths of players and ball, told apart by their line.
#include "core/text.h"
#include "draw/marks.h"
#include "draw/metrics.h"
#include "draw/path.h"

static const double head_length = 6.5;
static const double head_width = 5;

static void shot(bw_ink *ink, bw_role role, bw_vec a, bw_vec b) {
    const bw_vec u = bw_unit(bw_sub(b, a)), side = bw_scale(bw_v(-u.y, u.x), 1.3);
    bw_ink_stroke(ink, role, 0.9);
    bw_path_segment(ink, bw_add(a, side), bw_add(b, side));
    bw_path_segment(ink, bw_sub(a, side), bw_sub(b, side));
}

void bw_mark_line(bw_ink *ink, bw_route_kind route, bw_role role, double width) {
    const bool run = route == BW_ROUTE_RUN;
    if (run == (ink->lines == BW_RUN_SOLID))
        bw_ink_stroke(ink, role, width);
    else
        bw_ink_dashed(ink, role, width, 5, 3.2);
}

void bw_mark_route(bw_ink *ink, bw_route_kind route, bw_vec a, bw_vec b, double gap_a, double gap_b,
                   bool soft) {
    const double distance = bw_distance(a, b);
    if (distance < gap_a + gap_b + head_length + 2) return;
    const bw_role role = soft                    ? BW_ROLE_SOFT_LINE
                         : route == BW_ROUTE_RUN ? BW_ROLE_DEFENDER
                                                 : BW_ROLE_BALL;
    const bw_vec u = bw_unit(bw_sub(b, a));
    const bw_vec from = bw_add(a, bw_scale(u, gap_a)), tip = bw_sub(b, bw_scale(u, gap_b));
    const bw_vec to = bw_sub(tip, bw_scale(u, head_length * 0.9));
    switch (route) {
    case BW_ROUTE_RUN:
    case BW_ROUTE_PASS:
        bw_mark_line(ink, route, role, soft ? 0.9 : 1.3);
        bw_path_segment(ink, from, to);
        break;
    case BW_ROUTE_CARRY:
        bw_ink_stroke(ink, role, 1.2);
        bw_path_wave(ink, from, to, 9, 2.2);
        break;
    case BW_ROUTE_SHOT: shot(ink, role, from, to); break;
    }
    bw_ink_fill(ink, role);
    const double grow = soft ? 0.85 : 1;
    bw_path_head(ink, tip, u, head_length * grow, head_width * grow);
}

void bw_mark_order(bw_ink *ink, bw_vec a, bw_vec b, int number) {
    const bw_vec at = bw_lerp(a, b, 0.5);
    char digits[16];
    bw_text t = bw_text_in(digits, sizeof digits);
    bw_put_int(&t, number);
    bw_ink_fill(ink, BW_ROLE_PAPER);
    bw_path_circle(ink, at, BW_ORDER_REACH);
    bw_ink_stroke(ink, BW_ROLE_BALL, 0.75);
    bw_path_circle(ink, at, 6);
    bw_ink_text(ink, BW_ROLE_BALL, BW_BOLD, 9, BW_CENTRE_ALIGN, at.x, at.y + 9 * BW_CAP_HEIGHT / 2,
                digits);
}
