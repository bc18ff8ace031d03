/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A stage's first sheet: the shape to scale, the rule in words, and the job of each spot.
#include "core/text.h"
#include "draw/book_parts.h"
#include "draw/chart.h"
#include "draw/metrics.h"
#include "draw/path.h"

enum { RULE_SIZE = 1024, JOB_SIZE = 1024 };

static const double job_row = 45;   // a spot: a line of names, two lines of places
static const double jobs_head = 24; // the table's heading
static const double figures = 20;   // left of the border

/// Appends the landmarks at which spot `s` has `duty`, after `lead`; nothing when there are none.
static void put_places(bw_text *out, const bw_scheme *scheme, const bw_plan *plan, int s,
                       bw_duty duty, const char *lead) {
    bw_station stations[BW_MAX_SPOTS];
    int found = 0;
    for (int l = 0; l < scheme->landmark_count; l++) {
        bw_where(plan, scheme->landmarks[l].at, NULL, 0, stations);
        if (stations[s].duty != duty) continue;
        bw_put(out, found++ ? ", " : lead);
        bw_put(out, scheme->landmarks[l].name);
    }
    if (found) bw_put(out, ". ");
}

static void draw_job(bw_ink *ink, const bw_scheme *scheme, const bw_stage *stage,
                     const bw_plan *plan, int s, double x, double y, double width) {
    const bw_spot *spot = &stage->spots[s];
    const bw_mark_size size = bw_marks_large();
    const double text_x = x + 44;
    char buffer[JOB_SIZE];
    bw_ink_stroke(ink, BW_ROLE_SOFT_LINE, 0.75);
    bw_path_segment(ink, bw_v(x, y), bw_v(x + width, y));
    bw_mark_defender(ink, size, bw_v(x + 16, y + 17), spot->id, BW_NO_DUTY);

    bw_text t = bw_text_in(buffer, sizeof buffer);
    bw_put(&t, spot->name);
    const double name = bw_width(buffer, BW_TYPE_TEXT);
    bw_line_of(ink, BW_ROLE_TEXT, BW_BOLD, BW_TYPE_TEXT, text_x, y + 16, width / 2, buffer);
    if (spot->call[0]) {
        t = bw_text_in(buffer, sizeof buffer);
        bw_put(&t, "calls \xE2\x80\x9C");
        bw_put(&t, spot->call);
        bw_put(&t, "\xE2\x80\x9D");
        const double at = text_x + bw_min(name, width / 2) + 14;
        bw_line_of(ink, BW_ROLE_TEXT, BW_REGULAR, BW_TYPE_TEXT, at, y + 16, x + width - at, buffer);
    }
    t = bw_text_in(buffer, sizeof buffer);
    put_places(&t, scheme, plan, s, BW_DUTY_BALL, "Has the ball at: ");
    put_places(&t, scheme, plan, s, BW_DUTY_CREASE, "Has the crease when it is at: ");
    put_places(&t, scheme, plan, s, BW_DUTY_HOLD, "Holds when it is at: ");
    if (t.used == 0) bw_put(&t, "Plays off the ball everywhere.");
    bw_paragraph(ink, BW_ROLE_TEXT, BW_REGULAR, BW_TYPE_SMALL, BW_LEADING_SMALL, text_x, y + 19,
                 x + width - text_x, buffer);
}

void bw_book_stage(const bw_scheme *scheme, int stage_index, bw_sheet *sheet) {
    const bw_stage *stage = &scheme->stages[stage_index];
    bw_ink *ink = sheet->ink;
    const bw_box *block = &sheet->block;
    char buffer[RULE_SIZE];
    double y = block->y;
    bw_text t = bw_text_in(buffer, sizeof buffer);
    bw_say_stage(stage, &t);
    if (stage->call[0]) {
        bw_put(&t, ": \xE2\x80\x9C");
        bw_put(&t, stage->call);
        bw_put(&t, "\xE2\x80\x9D");
    }
    bw_heading(ink, BW_TAG_H1, BW_ROLE_TEXT, BW_TYPE_HEAD, block->x, y + BW_TYPE_HEAD, block->width,
               buffer);
    y += BW_TYPE_HEAD + 8;
    t = bw_text_in(buffer, sizeof buffer);
    bw_put(&t, "Completed by the late men: ");
    const size_t lead = t.used;
    bw_say_completes(scheme, stage_index, &t);
    bw_put(&t, ".");
    if (t.used > lead + 1)
        y += bw_paragraph(ink, BW_ROLE_SOFT_TEXT, BW_REGULAR, BW_TYPE_TEXT, BW_LEADING, block->x, y,
                          block->width, buffer);
    y += 12;

    const double jobs = jobs_head + stage->defenders * job_row;
    const bw_window window = bw_window_unit(scheme);
    const double tall = bw_min(block->y + block->height - jobs - y - 40, 270);
    const double wide = bw_min(bw_view_width(window, tall), 300);
    const bw_view view = bw_view_fit(window, block->x + figures + BW_BORDER, y + BW_BORDER, wide);
    bw_station homes[BW_MAX_SPOTS];
    for (int s = 0; s < stage->defenders; s++) {
        homes[s] = (bw_station){stage->spots[s].home, BW_DUTY_HOLD, -1};
    }
    const bw_scene scene = {
        .scheme = scheme, .stage = stage_index, .stations = homes, .beside = BW_BESIDE_NAME};
    bw_ink_begin(ink, BW_TAG_FIGURE, "Where each man stands before the ball moves, to scale.");
    bw_draw_scene(ink, &scene, &view, bw_marks_large(), true);
    bw_ink_end(ink);

    const double right = view.box.x + view.box.width + BW_BORDER + 20;
    const double column = block->x + block->width - right;
    bw_heading(ink, BW_TAG_H2, BW_ROLE_TEXT, BW_TYPE_SUBHEAD, right, y + BW_TYPE_SUBHEAD, column,
               "The rule");
    t = bw_text_in(buffer, sizeof buffer);
    bw_say_rule(scheme, stage_index, &t);
    double rule_y = y + 20;
    for (size_t start = 0; start < t.used;) {
        size_t end = start;
        while (buffer[end] != '\n') {
            end++;
        }
        buffer[end] = '\0';
        rule_y += bw_paragraph(ink, BW_ROLE_TEXT, BW_REGULAR, BW_TYPE_TEXT, BW_LEADING, right,
                               rule_y, column, buffer + start) +
                  5;
        start = end + 1;
    }

    const double table = bw_max(view.box.y + view.box.height + 34, rule_y + 8);
    bw_heading(ink, BW_TAG_H2, BW_ROLE_TEXT, BW_TYPE_SUBHEAD, block->x, table + BW_TYPE_SUBHEAD,
               block->width, "Who does what");
    bw_plan plan;
    bw_plan_build(scheme, stage_index, &plan);
    for (int s = 0; s < stage->defenders; s++) {
        draw_job(ink, scheme, stage, &plan, s, block->x, table + jobs_head + s * job_row,
                 block->width);
    }
    bw_sheet_scale(sheet, scheme->units, view.scale);
}
