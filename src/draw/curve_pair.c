/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "draw/curve_pair.h"

#include "core/text.h"
#include "draw/curve_chart.h"
#include "draw/curve_frame.h"
#include "draw/path.h"

enum { LINES = 4 };

static const double above = 16, below = 16;
static const double name_height = 12; // of one line's name at its end

/// One of the four lines.
typedef struct line {
    const char *name;
    const double *worth;
    const double *error; ///< NULL: none
    bw_role role;
    double width, on, off; ///< off 0: solid
} line;

static void draw_line(bw_ink *ink, const bw_curve_frame *f, const line *l) {
    if (l->off > 0)
        bw_ink_dashed(ink, l->role, l->width, l->on, l->off);
    else
        bw_ink_stroke(ink, l->role, l->width);
    bw_curve_trace(ink, f, l->worth);
    if (!l->error) return;
    bw_ink_stroke(ink, l->role, 0.9);
    bw_curve_errors(ink, f, l->worth, l->error);
}

/// Whole seconds: A a filled disc, B an open square.
static void draw_points(bw_ink *ink, const bw_curve_frame *f, const line *l, bool square) {
    const double half = 2.8;
    for (int t = 1; t <= BW_MAX_SECONDS; t++) {
        const bw_vec p = bw_curve_spot(f, t, l->worth[t]);
        bw_ink_fill(ink, square ? BW_ROLE_PAGE : l->role);
        if (!square) {
            bw_path_circle(ink, p, half);
            continue;
        }
        bw_path_rect(ink, p.x - half, p.y - half, 2 * half, 2 * half);
        bw_ink_stroke(ink, l->role, 1.3);
        bw_path_rect(ink, p.x - half, p.y - half, 2 * half, 2 * half);
    }
}

/// By falling worth at ten seconds; lines as high keep their order.
static void sort_lines(const line **list) {
    for (int i = 1; i < LINES; i++) {
        const line *l = list[i];
        int k = i;
        for (; k > 0 && list[k - 1]->worth[BW_MAX_SECONDS] < l->worth[BW_MAX_SECONDS]; k--)
            list[k] = list[k - 1];
        list[k] = l;
    }
}

/// Each line's name at its end, "A typical 31", none over another.
static void draw_names(bw_ink *ink, const bw_curve_frame *f, const line *lines) {
    const line *order[LINES];
    double y[LINES];
    for (int i = 0; i < LINES; i++)
        order[i] = &lines[i];
    sort_lines(order);
    double floor = bw_curve_bottom(f);
    for (int i = LINES - 1; i >= 0; i--) {
        const double end = bw_curve_spot(f, BW_MAX_SECONDS, order[i]->worth[BW_MAX_SECONDS]).y + 3;
        y[i] = bw_min(end, floor);
        floor = y[i] - name_height;
    }
    double ceiling = f->plot.y + 3;
    for (int i = 0; i < LINES; i++) {
        y[i] = bw_max(y[i], ceiling);
        ceiling = y[i] + name_height;
        char words[40];
        bw_text t = bw_text_in(words, sizeof words);
        bw_put(&t, order[i]->name);
        bw_put_fixed(&t, order[i]->worth[BW_MAX_SECONDS] * 100, 0);
        const double x = f->plot.x + f->plot.width + 9;
        bw_ink_text(ink, BW_ROLE_TEXT, order[i]->error ? BW_BOLD : BW_REGULAR, 10, BW_LEFT_ALIGN, x,
                    y[i], words);
    }
}

void bw_draw_curve_pair(bw_ink *ink, const bw_curve *a, const bw_curve *b, bw_box box) {
    const int top_a = bw_curve_top(a), top_b = bw_curve_top(b);
    const bw_curve_frame f = {.top = (top_a > top_b ? top_a : top_b) / 100.0,
                              .plot = {box.x + BW_CURVE_LEFT, box.y + above,
                                       box.width - BW_CURVE_LEFT - BW_CURVE_RIGHT,
                                       box.height - above - below}};
    const line lines[LINES] = {
        {"A best ", a->best, NULL, BW_ROLE_DEFENDER, 1.1, 0, 0},
        {"B best ", b->best, NULL, BW_ROLE_ATTACKER, 1.1, 6, 3.5},
        {"A typical ", a->typical, a->error, BW_ROLE_DEFENDER, 2.4, 0, 0},
        {"B typical ", b->typical, b->error, BW_ROLE_ATTACKER, 2.4, 6, 3.5},
    };
    bw_curve_scale(ink, &f);
    for (int i = 0; i < LINES; i++)
        draw_line(ink, &f, &lines[i]);
    draw_points(ink, &f, &lines[2], false);
    draw_points(ink, &f, &lines[3], true);
    bw_curve_axes(ink, &f);
    bw_curve_caption(ink, &f);
    draw_names(ink, &f, lines);
}
