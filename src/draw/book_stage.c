/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A stage's first sheet: the shape to scale, the rule in words, and the job of each spot.
#include "core/text.h"
#include "draw/book_parts.h"
#include "draw/catalogue.h"
#include "draw/chart.h"
#include "draw/metrics.h"
#include "draw/path.h"

enum { RULE_SIZE = 1024, JOB_SIZE = 1024, JOB_LINES = 3 };

static const double job_head = 19;  // a spot's line of names
static const double job_tail = 7;   // below its last line
static const double job_least = 40; // the disc needs this much
static const double job_indent = 44;
static const double jobs_head = 24; // the table's heading
static const double figures = 20;   // left of the border

static void say_job(const bw_scheme *scheme, const bw_plan *plan, int s, bw_text *out) {
    bw_put_duty_places(out, scheme, plan, s, BW_DUTY_BALL, "Has the ball at: ");
    bw_put_duty_places(out, scheme, plan, s, BW_DUTY_CREASE, "Has the crease when it is at: ");
    bw_put_duty_places(out, scheme, plan, s, BW_DUTY_HOLD, "Holds when it is at: ");
    if (out->used == 0) bw_put(out, "Plays off the ball everywhere.");
}

/// Height of a spot's row in a table `width` wide.
static double job_height(const char *job, double width) {
    const double words =
        bw_paragraph_of(NULL, BW_ROLE_TEXT, BW_REGULAR, BW_TYPE_SMALL, BW_LEADING_SMALL, 0, 0,
                        width - job_indent, job, JOB_LINES);
    return bw_max(job_least, job_head + words + job_tail);
}

static void draw_job(bw_ink *ink, const bw_spot *spot, const char *job, double x, double y,
                     double width) {
    const double text_x = x + job_indent;
    char call[BW_NAME_SIZE + 16];
    bw_ink_stroke(ink, BW_ROLE_SOFT_LINE, 0.75);
    bw_path_segment(ink, bw_v(x, y), bw_v(x + width, y));
    bw_mark_defender(ink, bw_marks_large(), bw_v(x + 16, y + 18), spot->id, BW_NO_DUTY);
    bw_line_of(ink, BW_ROLE_TEXT, BW_BOLD, BW_TYPE_TEXT, text_x, y + 16, width / 2, spot->name);
    if (spot->call[0]) {
        const double name = bw_min(bw_width(spot->name, BW_TYPE_TEXT), width / 2);
        const double at = text_x + name + 14;
        bw_text t = bw_text_in(call, sizeof call);
        bw_put(&t, "calls \xE2\x80\x9C");
        bw_put(&t, spot->call);
        bw_put(&t, "\xE2\x80\x9D");
        bw_line_of(ink, BW_ROLE_TEXT, BW_REGULAR, BW_TYPE_TEXT, at, y + 16, x + width - at, call);
    }
    bw_paragraph_of(ink, BW_ROLE_TEXT, BW_REGULAR, BW_TYPE_SMALL, BW_LEADING_SMALL, text_x,
                    y + job_head, x + width - text_x, job, JOB_LINES);
}

/// The rule as paragraphs in a column; returns where they end.
static double draw_rule(bw_ink *ink, const bw_scheme *scheme, int stage, double x, double y,
                        double width) {
    char words[RULE_SIZE];
    bw_text t = bw_text_in(words, sizeof words);
    bw_heading(ink, BW_TAG_H2, BW_ROLE_TEXT, BW_TYPE_SUBHEAD, x, y + BW_TYPE_SUBHEAD, width,
               "The rule");
    bw_say_rule(scheme, stage, &t);
    y += 20;
    for (size_t start = 0; start < t.used;) {
        size_t end = start;
        while (words[end] && words[end] != '\n') {
            end++;
        }
        words[end] = '\0';
        y += 5 + bw_paragraph(ink, BW_ROLE_TEXT, BW_REGULAR, BW_TYPE_TEXT, BW_LEADING, x, y, width,
                              words + start);
        start = end + 1;
    }
    return y;
}

/// Title and who completes the stage; returns where they end.
static double draw_head(bw_ink *ink, const bw_scheme *scheme, int stage_index,
                        const bw_box *block) {
    const bw_stage *stage = &scheme->stages[stage_index];
    char words[RULE_SIZE];
    double y = block->y;
    bw_text t = bw_text_in(words, sizeof words);
    bw_say_stage(stage, &t);
    if (stage->call[0]) {
        bw_put(&t, ": \xE2\x80\x9C");
        bw_put(&t, stage->call);
        bw_put(&t, "\xE2\x80\x9D");
    }
    bw_heading(ink, BW_TAG_H1, BW_ROLE_TEXT, BW_TYPE_HEAD, block->x, y + BW_TYPE_HEAD, block->width,
               words);
    y += BW_TYPE_HEAD + 8;
    char who[RULE_SIZE];
    t = bw_text_in(who, sizeof who);
    bw_say_completes(scheme, stage_index, &t);
    if (t.used == 0) return y + 12;
    t = bw_text_in(words, sizeof words);
    bw_put_sentence(&t, bw_voice_of(scheme), &bw_s_book_late, bw_as_word("who", who));
    return y + 12 +
           bw_paragraph_of(ink, BW_ROLE_SOFT_TEXT, BW_REGULAR, BW_TYPE_TEXT, BW_LEADING, block->x,
                           y, block->width, words, 2);
}

void bw_book_stage(const bw_scheme *scheme, int stage_index, bw_sheet *sheet) {
    const bw_stage *stage = &scheme->stages[stage_index];
    bw_ink *ink = sheet->ink;
    const bw_box *block = &sheet->block;
    const double bottom = block->y + block->height;
    const double y = draw_head(ink, scheme, stage_index, block);

    char jobs[BW_MAX_SPOTS][JOB_SIZE];
    double jobs_height = jobs_head;
    bw_plan plan;
    bw_plan_build(scheme, stage_index, &plan);
    for (int s = 0; s < stage->defenders; s++) {
        bw_text t = bw_text_in(jobs[s], sizeof jobs[s]);
        say_job(scheme, &plan, s, &t);
        jobs_height += job_height(jobs[s], block->width);
    }

    const double figures_below = 12 + 2 * BW_BORDER;
    const bw_window window = bw_window_unit(scheme);
    const double tall = bw_min(bottom - jobs_height - figures_below - 16 - y, 270);
    const double wide = bw_min(bw_view_width(window, tall), 300);
    const bw_view view = bw_view_fit(window, block->x + figures + BW_BORDER, y + BW_BORDER, wide);
    bw_station homes[BW_MAX_SPOTS];
    const bw_scene scene = bw_scene_homes(scheme, stage_index, homes);
    char figure[2 * BW_NAME_SIZE];
    bw_text alt = bw_text_in(figure, sizeof figure);
    bw_put_plain_sentence(&alt, bw_voice_of(scheme), &bw_s_book_homes);
    bw_ink_begin(ink, BW_TAG_FIGURE, figure);
    bw_draw_scene(ink, &scene, &view, bw_marks_large(), true);
    bw_ink_end(ink);

    const double right = view.box.x + view.box.width + BW_BORDER + 20;
    const double rule_end =
        draw_rule(ink, scheme, stage_index, right, y, block->x + block->width - right);

    double at = bw_min(bottom - jobs_height,
                       bw_max(view.box.y + view.box.height + figures_below + 16, rule_end + 8));
    bw_heading(ink, BW_TAG_H2, BW_ROLE_TEXT, BW_TYPE_SUBHEAD, block->x, at + BW_TYPE_SUBHEAD,
               block->width, "Who does what");
    at += jobs_head;
    for (int s = 0; s < stage->defenders; s++) {
        draw_job(ink, &stage->spots[s], jobs[s], block->x, at, block->width);
        at += job_height(jobs[s], block->width);
    }
    bw_sheet_scale(sheet, scheme->units, view.scale);
}
