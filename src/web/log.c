/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "web/log.h"

#include "core/maths.h"
#include "draw/chart.h"
#include "draw/path.h"

static const double edge = 1.5;          // points round the chart's border
static const double cross = 7, ring = 9; // points: the mark of the shot

void bw_log_clear(bw_logging *log) {
    log->entry = bw_entry_default();
    log->shot_half[0] = log->shot_half[1] = false;
}

static void set_shot(bw_logging *log, int axis, double value) {
    const bool known = value - value == 0;
    log->shot_half[axis] = known;
    *(axis == 0 ? &log->entry.shot.x : &log->entry.shot.y) = known ? value : 0;
    log->entry.shot_known = log->shot_half[0] && log->shot_half[1];
}

/// A whole number, or `none` for what is none or far out of range, for bw_entry_check() to refuse.
static int whole(double value, int none) {
    return value > -1000 && value < 1000 ? (int)value : none;
}

void bw_log_set(bw_logging *log, bw_log_field field, double value) {
    bw_entry *e = &log->entry;
    switch (field) {
    case BW_LOG_OFFENCE: e->offence = whole(value, 0); break;
    case BW_LOG_DEFENCE: e->defence = whole(value, 0); break;
    case BW_LOG_OUTCOME: e->outcome = (bw_outcome)whole(value, BW_OUTCOME_COUNT); break;
    case BW_LOG_SECONDS: e->seconds = value - value == 0 ? value : -1; break;
    case BW_LOG_PASSES: e->passes = whole(value, -1); break;
    case BW_LOG_SHOT_X: set_shot(log, 0, value); break;
    case BW_LOG_SHOT_Y: set_shot(log, 1, value); break;
    }
}

double bw_log_figure(const bw_logging *log, bw_log_field field) {
    const bw_entry *e = &log->entry;
    const double unknown = __builtin_nan("");
    switch (field) {
    case BW_LOG_OFFENCE: return e->offence;
    case BW_LOG_DEFENCE: return e->defence;
    case BW_LOG_OUTCOME: return e->outcome;
    case BW_LOG_SECONDS: return e->seconds < 0 ? unknown : e->seconds;
    case BW_LOG_PASSES: return e->passes < 0 ? unknown : e->passes;
    case BW_LOG_SHOT_X: return log->shot_half[0] ? e->shot.x : unknown;
    case BW_LOG_SHOT_Y: return log->shot_half[1] ? e->shot.y : unknown;
    }
    return unknown;
}

bool bw_log_out(bw_logging *log, const char *who) {
    bw_entry *e = &log->entry;
    if (e->out_count == BW_MAX_OUT || !bw_entry_who(who)) return false;
    return bw_copy(e->out[e->out_count++], BW_ID_SIZE, who);
}

static void put_mark(bw_ink *ink, bw_vec p) {
    bw_ink_stroke(ink, BW_ROLE_LINE, 2.5);
    bw_path_segment(ink, bw_v(p.x - cross, p.y - cross), bw_v(p.x + cross, p.y + cross));
    bw_path_segment(ink, bw_v(p.x - cross, p.y + cross), bw_v(p.x + cross, p.y - cross));
    bw_ink_stroke(ink, BW_ROLE_LINE, 1.5);
    bw_path_circle(ink, p, ring);
}

void bw_log_draw(bw_logging *log, const bw_scheme *scheme, double width, double height,
                 void *memory, size_t size) {
    const double aside = 2 * (edge + BW_BORDER), yd = BW_METRES_PER_YARD;
    const bw_window window = {-20 * yd, 20 * yd, -10 * yd, 22 * yd};
    const double inner = bw_min(width - aside, bw_view_width(window, height - aside));
    bw_ink *ink = bw_ink_in(memory, size);
    log->chart = bw_view_fit(window, edge + BW_BORDER, edge + BW_BORDER, bw_max(inner, 60));
    bw_ink_page(ink, log->chart.box.width + aside, log->chart.box.height + aside);
    bw_draw_paper(ink, &log->chart);
    bw_draw_field(ink, bw_field_at(scheme->field), scheme->units, &log->chart);
    bw_draw_border(ink, scheme->units, &log->chart, false);
    const bw_vec shot = log->entry.shot;
    const bool seen = shot.x >= window.left && shot.x <= window.right && shot.y >= window.bottom &&
                      shot.y <= window.top;
    if (log->entry.shot_known && seen) put_mark(ink, bw_view_point(&log->chart, shot));
}

void bw_log_shot(bw_logging *log, bw_vec point) {
    const bw_window *w = &log->chart.window;
    const bw_vec at = bw_view_place(&log->chart, point);
    // To a tenth of a metre: a finger is not that exact.
    set_shot(log, 0, bw_round_to(bw_max(w->left, bw_min(w->right, at.x)), 10));
    set_shot(log, 1, bw_round_to(bw_max(w->bottom, bw_min(w->top, at.y)), 10));
}
