/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The chart's frame and rulers: ladder border, scale bar, up-field arrow.
#include "core/text.h"
#include "draw/chart.h"
#include "draw/metrics.h"
#include "draw/path.h"

static const double band = 2.4;  // thickness of the ladder
static const double outer = 3.9; // where the outer line runs

/// The dark steps of one side: [from, to] metres along it, every second five-unit step filled.
/// `across`: the side runs along x (bottom and top), else along y.
static void ladder(bw_ink *ink, const bw_view *view, double step, double from, double to,
                   bool across, double edge) {
    for (int i = (int)bw_floor(from / step); i * step < to; i++) {
        if (i & 1) continue;
        const double a = bw_max(i * step, from), b = bw_min((i + 1) * step, to);
        if (a >= b) continue;
        const bw_vec p = bw_view_point(view, across ? bw_v(a, 0) : bw_v(0, b));
        const double length = (b - a) * view->scale;
        if (across)
            bw_path_rect(ink, p.x, edge, length, band);
        else
            bw_path_rect(ink, edge, p.y, band, length);
    }
}

static void put_figures(bw_ink *ink, double step, const bw_view *view) {
    const bw_window *w = &view->window;
    const bw_box *box = &view->box;
    char buffer[16];
    for (int i = (int)bw_floor(w->left / step); i * step <= w->right + 1e-9; i++) {
        if (i * step < w->left - 1e-9) continue;
        bw_text t = bw_text_in(buffer, sizeof buffer);
        bw_put_int(&t, 5 * (i < 0 ? -i : i));
        bw_ink_text(ink, BW_ROLE_SOFT_TEXT, BW_REGULAR, 9, BW_CENTRE_ALIGN,
                    bw_view_point(view, bw_v(i * step, 0)).x, box->y + box->height + outer + 10,
                    buffer);
    }
    for (int j = (int)bw_floor(w->bottom / step); j * step <= w->top + 1e-9; j++) {
        if (j * step < w->bottom - 1e-9) continue;
        bw_text t = bw_text_in(buffer, sizeof buffer);
        bw_put_int(&t, 5 * (j < 0 ? -j : j));
        bw_ink_text(ink, BW_ROLE_SOFT_TEXT, BW_REGULAR, 9, BW_RIGHT_ALIGN, box->x - outer - 2.5,
                    bw_view_point(view, bw_v(0, j * step)).y + 9 * BW_CAP_HEIGHT / 2, buffer);
    }
}

void bw_draw_border(bw_ink *ink, bw_units units, const bw_view *view, bool figures) {
    const bw_box *box = &view->box;
    const bw_window *w = &view->window;
    const double step = 5 * bw_unit_length(units);
    bw_ink_fill(ink, BW_ROLE_LINE);
    ladder(ink, view, step, w->left, w->right, true, box->y + box->height);
    ladder(ink, view, step, w->left, w->right, true, box->y - band);
    ladder(ink, view, step, w->bottom, w->top, false, box->x - band);
    ladder(ink, view, step, w->bottom, w->top, false, box->x + box->width);
    bw_ink_stroke(ink, BW_ROLE_LINE, 0.5);
    bw_path_rect(ink, box->x, box->y, box->width, box->height);
    bw_path_rect(ink, box->x - band, box->y - band, box->width + 2 * band, box->height + 2 * band);
    bw_ink_stroke(ink, BW_ROLE_LINE, 1);
    bw_path_rect(ink, box->x - outer, box->y - outer, box->width + 2 * outer,
                 box->height + 2 * outer);
    if (figures) put_figures(ink, step, view);
}

/// A slender arrow with its foot at (x, y), and the word beside it.
static void draw_upfield(bw_ink *ink, double x, double y) {
    const double half = 3, height = 13;
    bw_ink_stroke(ink, BW_ROLE_LINE, 0.75);
    bw_path_segment(ink, bw_v(x + half, y), bw_v(x + half, y - height));
    bw_ink_fill(ink, BW_ROLE_LINE);
    bw_path_head(ink, bw_v(x + half, y - height), bw_v(0, -1), height * 0.55, 2 * half);
    bw_ink_text(ink, BW_ROLE_TEXT, BW_REGULAR, 9, BW_LEFT_ALIGN, x + 2 * half + 4, y, "up-field");
}

void bw_draw_scale(bw_ink *ink, bw_units units, double scale, double right, double y) {
    static const int steps[] = {20, 10, 5, 2, 1};
    const double unit = bw_unit_length(units) * scale, height = 4, gap = 14;
    // Figures nearer than these run into one another.
    int choice = 10 * unit < 15 ? 0 : (5 * unit < 13 ? 1 : 2);
    while (choice > 1 && choice < BW_COUNT(steps) - 1 && 2 * steps[choice] * unit > 130) {
        choice++;
    }
    const double step = steps[choice] * unit;
    const double arrow = right - 10 - bw_width("up-field", 9);
    const double x = arrow - gap - bw_width(bw_unit_long(units), 9) - 8 - 2 * step;
    bw_ink_fill(ink, BW_ROLE_LINE);
    bw_path_rect(ink, x, y - height, step, height);
    bw_ink_stroke(ink, BW_ROLE_LINE, 0.75);
    bw_path_rect(ink, x, y - height, 2 * step, height);
    for (int i = 0; i <= 2; i++) {
        char figure[16];
        bw_text t = bw_text_in(figure, sizeof figure);
        bw_put_int(&t, i * steps[choice]);
        bw_ink_text(ink, BW_ROLE_TEXT, BW_REGULAR, 9, BW_CENTRE_ALIGN, x + i * step,
                    y - height - 3.5, figure);
    }
    bw_ink_text(ink, BW_ROLE_TEXT, BW_REGULAR, 9, BW_LEFT_ALIGN, x + 2 * step + 8, y,
                bw_unit_long(units));
    draw_upfield(ink, arrow, y);
}
