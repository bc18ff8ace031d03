/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report/own_cell.h"

#include "core/text.h"
#include "draw/chart.h"
#include "draw/own.h"
#include "draw/sheet.h"
#include "report/teach.h"
#include "scheme/caption.h"

/// The charts: small enough for a dozen to a page, large enough that a yard shows.
static const double chart_wide = 108;
static const double chart_tall = 91.5; // at most: six rows to a page
static const double chart_gap = 9;     // to the words beside it

/// Width of the chart's box, its border left out.
static double box_wide(bw_window window) {
    return bw_min(chart_wide - 2 * BW_BORDER, bw_view_width(window, chart_tall - 2 * BW_BORDER));
}

void bw_own_cell_fill(const bw_scheme *scheme, const bw_plan *plan, int stage, int spot,
                      int landmark, bw_own_cell *cell) {
    cell->scheme = scheme;
    cell->stage = stage;
    cell->spot = spot;
    cell->ball = scheme->landmarks[landmark].at;
    bw_where(plan, cell->ball, NULL, 0, cell->stations);
    bw_text t = bw_text_in(cell->title, sizeof cell->title);
    bw_put(&t, "Ball ");
    bw_say_at(scheme, cell->ball, &t);
    bw_put(&t, ":");
    t = bw_text_in(cell->job, sizeof cell->job);
    bw_say_your_job(scheme, stage, spot, &cell->stations[spot], cell->ball, &t);
    bw_put(&t, ".");
    t = bw_text_in(cell->place, sizeof cell->place);
    bw_teach_place(scheme, cell->stations[spot].at, &t);
}

static double column(bw_ink *ink, bw_role role, bw_weight weight, double x, double y, double width,
                     const char *text) {
    return bw_paragraph(ink, role, weight, BW_TYPE_TEXT, BW_LEADING, x, y, width, text);
}

double bw_own_cell_scale(const bw_scheme *scheme) {
    const bw_window window = bw_window_unit(scheme);
    return box_wide(window) / (window.right - window.left);
}

double bw_own_cell_put(bw_ink *ink, const bw_own_cell *cell, double x, double y, double width) {
    const bw_window window = bw_window_unit(cell->scheme);
    const bw_view view = bw_view_fit(window, x + BW_BORDER, y + BW_BORDER, box_wide(window));
    const double words = x + chart_wide + chart_gap, room = width - chart_wide - chart_gap;
    if (ink) {
        const bw_own own = {.scheme = cell->scheme,
                            .stage = cell->stage,
                            .spot = cell->spot,
                            .stations = cell->stations,
                            .ball = cell->ball,
                            .from = &cell->scheme->stages[cell->stage].spots[cell->spot].home};
        bw_ink_begin(ink, BW_TAG_FIGURE, cell->title);
        bw_draw_own(ink, &own, &view);
        bw_ink_end(ink);
    }
    double at = y - 3;
    at += column(ink, BW_ROLE_TEXT, BW_BOLD, words, at, room, cell->title);
    at += column(ink, BW_ROLE_TEXT, BW_REGULAR, words, at, room, cell->job) + 1;
    at += column(ink, BW_ROLE_SOFT_TEXT, BW_REGULAR, words, at, room, cell->place);
    return bw_max(at - y, view.box.height + 2 * BW_BORDER);
}
