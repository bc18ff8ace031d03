/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Discs, rings and their edge patterns.
#include "draw/marks.h"

#include "core/text.h"
#include "draw/metrics.h"
#include "draw/path.h"

static const double ring_gap = 1.8;  // from the disc to its first ring's middle line
static const double ring_step = 2.8; // from the first ring to the second
static const double ring_line = 1.1;

bw_mark_size bw_marks_small(void) {
    return (bw_mark_size){.radius = 7.4, .type = 9.5, .label = 9};
}

bw_mark_size bw_marks_large(void) {
    return (bw_mark_size){.radius = 10, .type = 12, .label = 10};
}

/// How far a code pulls its disc apart: nothing while its corners stay inside the circle.
static double capsule_half(bw_mark_size size, const char *code) {
    const double wide = bw_width(code, size.type) / 2, high = size.type * BW_CAP_HEIGHT / 2;
    const double inside = bw_sqrt(size.radius * size.radius - high * high);
    return bw_max(0, wide - inside);
}

static void halo(bw_ink *ink, bw_vec at, double half, double radius) {
    bw_ink_fill(ink, BW_ROLE_PAPER);
    bw_path_capsule(ink, at, half, radius);
}

/// A ring broken into dashes (or dots) of about these lengths, a whole number of them.
static void broken_ring(bw_ink *ink, bw_vec at, double half, double radius, double on, double off,
                        double width) {
    const double round = 2 * BW_PI * radius + 4 * half;
    const double count = bw_floor(round / (on + off) + 0.5);
    const double fit = round / count / (on + off);
    bw_ink_dashed(ink, BW_ROLE_DEFENDER, width, on * fit, off * fit);
    bw_path_capsule(ink, at, half, radius);
}

/// Two brackets, left and right: he has a man.
static void brackets(bw_ink *ink, bw_vec at, double half, double radius) {
    const double open = 0.9;
    const bw_vec right = bw_v(at.x + half, at.y), left = bw_v(at.x - half, at.y);
    bw_ink_stroke(ink, BW_ROLE_DEFENDER, ring_line * 1.4);
    bw_path_arc(ink, right, radius, -open, open);
    bw_path_arc(ink, left, radius, BW_PI - open, BW_PI + open);
}

void bw_mark_duty(bw_ink *ink, bw_vec at, double half, double radius, bw_duty duty) {
    const double r = radius + ring_gap;
    switch (duty) {
    case BW_DUTY_BALL:
        bw_ink_stroke(ink, BW_ROLE_DEFENDER, ring_line);
        bw_path_capsule(ink, at, half, r);
        bw_path_capsule(ink, at, half, r + ring_step);
        break;
    case BW_DUTY_ADJACENT:
        bw_ink_stroke(ink, BW_ROLE_DEFENDER, ring_line);
        bw_path_capsule(ink, at, half, r);
        break;
    case BW_DUTY_CREASE: broken_ring(ink, at, half, r + 0.4, 0, 3.6, 2); break;
    case BW_DUTY_BACKSIDE: broken_ring(ink, at, half, r, 4.6, 3, ring_line * 1.2); break;
    case BW_DUTY_HOLD:
        bw_ink_stroke(ink, BW_ROLE_DEFENDER, ring_line);
        bw_path_rect(ink, at.x - half - r, at.y - r, 2 * (half + r), 2 * r);
        break;
    case BW_DUTY_MAN: brackets(ink, at, half, r); break;
    case BW_DUTY_COUNT: break;
    }
}

static double duty_reach(int duty) {
    if (duty == BW_NO_DUTY) return 0;
    return duty == BW_DUTY_BALL ? ring_gap + ring_step + ring_line / 2 : ring_gap + 1.2;
}

bw_vec bw_mark_reach(bw_mark_size size, const char *code, int duty) {
    const double r = size.radius + duty_reach(duty);
    return bw_v(capsule_half(size, code) + r, r);
}

void bw_mark_defender(bw_ink *ink, bw_mark_size size, bw_vec at, const char *code, int duty) {
    const double half = capsule_half(size, code);
    const double reach = size.radius + duty_reach(duty) + 0.8;
    if (duty == BW_DUTY_HOLD) {
        bw_ink_fill(ink, BW_ROLE_PAPER);
        bw_path_rect(ink, at.x - half - reach, at.y - reach, 2 * (half + reach), 2 * reach);
    } else {
        halo(ink, at, half, reach);
    }
    if (duty != BW_NO_DUTY) bw_mark_duty(ink, at, half, size.radius, (bw_duty)duty);
    bw_ink_fill(ink, BW_ROLE_DEFENDER);
    bw_path_capsule(ink, at, half, size.radius);
    bw_ink_text(ink, BW_ROLE_DEFENDER_TEXT, BW_BOLD, size.type, BW_CENTRE_ALIGN, at.x,
                at.y + size.type * BW_CAP_HEIGHT / 2, code);
}

void bw_mark_ghost(bw_ink *ink, bw_mark_size size, bw_vec at) {
    const double r = size.radius * 0.6;
    const double dash = 2 * BW_PI * r / 16;
    bw_ink_dashed(ink, BW_ROLE_SOFT_LINE, 0.8, dash, dash);
    bw_path_circle(ink, at, r);
}

void bw_mark_flag(bw_ink *ink, bw_vec at, double height) {
    const bw_vec top = bw_v(at.x, at.y - height);
    bw_ink_stroke(ink, BW_ROLE_ACCENT, 1.5);
    bw_path_segment(ink, at, top);
    bw_ink_fill(ink, BW_ROLE_ACCENT);
    bw_path_head(ink, bw_v(top.x + height * 0.73, top.y + height * 0.27), bw_v(1, 0), height * 0.73,
                 height * 0.6);
}

void bw_mark_mate(bw_ink *ink, bw_vec at) {
    bw_ink_fill(ink, BW_ROLE_PAPER);
    bw_path_circle(ink, at, 4);
    bw_ink_stroke(ink, BW_ROLE_DEFENDER, 1.1);
    bw_path_circle(ink, at, 3);
}

void bw_mark_attacker(bw_ink *ink, bw_mark_size size, bw_vec at, int number) {
    char digits[16];
    bw_text t = bw_text_in(digits, sizeof digits);
    bw_put_int(&t, number);
    bw_ink_fill(ink, BW_ROLE_PAPER);
    bw_path_circle(ink, at, size.radius);
    bw_ink_stroke(ink, BW_ROLE_ATTACKER, 1.5);
    bw_path_circle(ink, at, size.radius - 0.75);
    bw_ink_text(ink, BW_ROLE_ATTACKER, BW_BOLD, size.type, BW_CENTRE_ALIGN, at.x,
                at.y + size.type * BW_CAP_HEIGHT / 2, digits);
}

double bw_keeper_half(bw_mark_size size) {
    return size.radius * 0.76;
}

void bw_mark_keeper(bw_ink *ink, bw_mark_size size, bw_vec at) {
    const double half = bw_keeper_half(size);
    bw_ink_fill(ink, BW_ROLE_PAPER);
    bw_path_rect(ink, at.x - half, at.y - half, 2 * half, 2 * half);
    bw_ink_stroke(ink, BW_ROLE_DEFENDER, 1.1);
    bw_path_rect(ink, at.x - half, at.y - half, 2 * half, 2 * half);
    bw_ink_text(ink, BW_ROLE_DEFENDER, BW_BOLD, 9, BW_CENTRE_ALIGN, at.x,
                at.y + 9 * BW_CAP_HEIGHT / 2, "G");
}

void bw_mark_ball(bw_ink *ink, bw_vec at) {
    bw_ink_fill(ink, BW_ROLE_PAPER);
    bw_path_circle(ink, at, BW_BALL_REACH);
    bw_ink_fill(ink, BW_ROLE_BALL);
    bw_path_circle(ink, at, 2.4);
    bw_ink_stroke(ink, BW_ROLE_BALL, 0.9);
    bw_path_circle(ink, at, 3.9);
}

void bw_mark_tether(bw_ink *ink, bw_mark_size size, bw_vec from, bw_vec to, double late) {
    bw_ink_stroke(ink, BW_ROLE_ACCENT, bw_clamp(5.5 - 2 * late, 1.5, 5.5));
    bw_path_segment(ink, from, to);
    bw_ink_fill(ink, BW_ROLE_PAPER);
    bw_path_circle(ink, to, size.radius * 0.7);
    bw_ink_stroke(ink, BW_ROLE_ACCENT, 1.5);
    bw_path_circle(ink, to, size.radius * 0.7);
}
