/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The cover, two sheets: the map of ball places and the table of calls; the shapes side by side with
/// each man's call and job. And the last one: the coach's notes.
#include "core/level.h"
#include "core/shape.h"
#include "core/text.h"
#include "draw/book_parts.h"
#include "draw/catalogue.h"
#include "draw/chart.h"
#include "draw/label.h"
#include "draw/metrics.h"
#include "draw/path.h"

enum { LINE_SIZE = 256 };

static const int cover_lines = 5; // of notes

/// A place whose name is wider than this, points, is shown by its identifier.
static const double longest_name = 140;

/// “call”, or a word that there is none.
static void put_call(bw_text *out, const char *call) {
    if (!call[0]) {
        bw_put(out, "no call");
        return;
    }
    bw_put(out, "\xE2\x80\x9C");
    bw_put(out, call);
    bw_put(out, "\xE2\x80\x9D");
}

/// The field with every named place of the ball, on the danger of a shot if that is known.
static void draw_map(bw_ink *ink, const bw_scheme *scheme, const bw_danger *danger,
                     const bw_view *view) {
    const bw_field *field = bw_field_at(scheme->field);
    const double crease = field->crease * view->scale;
    const bw_vec dot = bw_v(3, 3);
    bw_labels labels;
    bw_labels_begin(&labels, view->box, view->origin.x);
    bw_labels_avoid(&labels, view->origin, bw_v(crease, crease));
    for (int side = -1; side <= 1 && field->box_half > 0; side += 2) { // the goal area's sides
        bw_labels_avoid_line(&labels, bw_view_point(view, bw_v(side * field->box_half, -100)),
                             bw_view_point(view, bw_v(side * field->box_half, 100)));
    }
    for (int i = 0; i < scheme->landmark_count; i++) {
        const bw_vec at = bw_view_point(view, scheme->landmarks[i].at);
        bw_labels_avoid(&labels, at, dot);
        const bw_landmark *place = &scheme->landmarks[i];
        const bool fits = bw_width(place->name, BW_TYPE_SMALL) <= longest_name;
        bw_labels_add(&labels, fits ? place->name : place->id, BW_REGULAR, BW_TYPE_SMALL,
                      BW_ROLE_TEXT, at, dot);
    }
    bw_labels_place(&labels);
    bw_draw_paper(ink, view);
    if (danger) bw_draw_danger(ink, danger, &labels, scheme->units, view);
    bw_draw_field(ink, field, scheme->units, view);
    bw_labels_draw(ink, &labels);
    for (int i = 0; i < scheme->landmark_count; i++) {
        bw_ink_fill(ink, BW_ROLE_BALL);
        bw_path_circle(ink, bw_view_point(view, scheme->landmarks[i].at), 2.2);
    }
    bw_draw_border(ink, scheme->units, view, true);
}

/// The table of stages: what is called, and who completes it. Returns its height.
static double draw_calls(bw_ink *ink, const bw_scheme *scheme, const bw_box *block, double y) {
    static const double columns[] = {0, 30, 104, 222};
    static const char *const heads[] = {"in", "shape", "call", "who completes it"};
    const double leading = 19;
    char buffer[LINE_SIZE];
    for (int i = 0; i < BW_COUNT(heads); i++) {
        bw_ink_text(ink, BW_ROLE_SOFT_TEXT, BW_REGULAR, BW_TYPE_SMALL, BW_LEFT_ALIGN,
                    block->x + columns[i], y + BW_TYPE_SMALL, heads[i]);
    }
    for (int s = 0; s < scheme->stage_count; s++) {
        const bw_stage *stage = &scheme->stages[s];
        const double base = y + BW_TYPE_SMALL + (s + 1) * leading;
        bw_ink_stroke(ink, BW_ROLE_SOFT_LINE, 0.75);
        bw_path_segment(ink, bw_v(block->x, base - 14), bw_v(block->x + block->width, base - 14));
        bw_text t = bw_text_in(buffer, sizeof buffer);
        bw_put_int(&t, stage->defenders);
        bw_ink_text(ink, BW_ROLE_TEXT, BW_BOLD, BW_TYPE_TEXT, BW_LEFT_ALIGN, block->x, base,
                    buffer);
        bw_line_of(ink, BW_ROLE_TEXT, BW_BOLD, BW_TYPE_TEXT, block->x + columns[1], base,
                   columns[2] - columns[1] - 8, stage->shape);
        t = bw_text_in(buffer, sizeof buffer);
        put_call(&t, stage->call);
        bw_line_of(ink, BW_ROLE_TEXT, BW_REGULAR, BW_TYPE_TEXT, block->x + columns[2], base,
                   columns[3] - columns[2] - 8, buffer);
        t = bw_text_in(buffer, sizeof buffer);
        if (s == 0)
            bw_put(&t, "the break begins");
        else
            bw_say_completes(scheme, s, &t);
        bw_line_of(ink, BW_ROLE_TEXT, BW_REGULAR, BW_TYPE_SMALL, block->x + columns[3], base,
                   block->width - columns[3], buffer);
    }
    return BW_TYPE_SMALL + scheme->stage_count * leading + 5;
}

bool bw_notes_on_cover(const bw_scheme *scheme) {
    return bw_wrap(scheme->notes, BW_TYPE_TEXT, BW_BLOCK_WIDTH, NULL, 0) <= cover_lines;
}

void bw_book_cover(const bw_scheme *scheme, const bw_danger *danger, bw_sheet *sheet) {
    bw_ink *ink = sheet->ink;
    const bw_box *block = &sheet->block;
    const bw_field *field = bw_field_at(scheme->field);
    char buffer[LINE_SIZE];
    double y = block->y;
    if (scheme->team[0])
        bw_line_of(ink, BW_ROLE_SOFT_TEXT, BW_REGULAR, BW_TYPE_TEXT, block->x, y + BW_TYPE_TEXT,
                   block->width, scheme->team);
    y += 20;
    bw_heading(ink, BW_TAG_H1, BW_ROLE_TEXT, BW_TYPE_TITLE, block->x, y + BW_TYPE_TITLE,
               block->width, scheme->name);
    y += BW_TYPE_TITLE + 12;
    bw_text t = bw_text_in(buffer, sizeof buffer);
    bw_put_sentence(&t, bw_voice_of(scheme), &bw_s_book_about, bw_as_word("field", field->name),
                    bw_as_word("level", bw_level_at(scheme->level)->name));
    y += bw_paragraph(ink, BW_ROLE_SOFT_TEXT, BW_REGULAR, BW_TYPE_TEXT, BW_LEADING, block->x, y,
                      block->width, buffer);
    if (scheme->notes[0] && bw_notes_on_cover(scheme))
        y += 6 + bw_paragraph(ink, BW_ROLE_TEXT, BW_REGULAR, BW_TYPE_TEXT, BW_LEADING, block->x,
                              y + 6, block->width, scheme->notes);
    y += 16;

    const double table = 26 + BW_TYPE_SMALL + scheme->stage_count * 19;
    const double figures = 22; // left of and below the border
    const double legend = danger ? BW_LEADING_SMALL + 4 : 0;
    const bw_window window = bw_window_field(scheme);
    const double tall = block->y + block->height - table - legend - y - 2 * BW_BORDER - figures;
    const double wide = bw_min(block->width - 2 * BW_BORDER - figures, bw_view_width(window, tall));
    const double x = block->x + block->width - BW_BORDER - wide;
    const double spare = block->width - figures - 2 * BW_BORDER - wide;
    const bw_view view = bw_view_fit(window, x - spare / 2, y + BW_BORDER, wide);
    bw_ink_begin(ink, BW_TAG_FIGURE, "The field to scale, with the named places of the ball.");
    draw_map(ink, scheme, danger, &view);
    bw_ink_end(ink);
    if (danger)
        bw_paragraph(ink, BW_ROLE_SOFT_TEXT, BW_REGULAR, BW_TYPE_SMALL, BW_LEADING_SMALL,
                     view.box.x, view.box.y + view.box.height + BW_BORDER + figures - 6, wide,
                     "Figures on the chart: of a hundred free shots from there, how many score. "
                     "A model's estimate.");
    draw_calls(ink, scheme, block, block->y + block->height - table + 16);
    bw_sheet_scale(sheet, scheme->units, view.scale);
}

/// A man's job in a few words: the duties he has at one named place of the ball or another, but for
/// helping next to it or away from it, which everyone does.
static void say_job_in_short(const bw_scheme *scheme, const bw_plan *plan, int spot, bw_text *out) {
    bool has[BW_DUTY_COUNT] = {false};
    for (int l = 0; l < scheme->landmark_count; l++) {
        bw_station stations[BW_MAX_SPOTS];
        bw_where(plan, scheme->landmarks[l].at, NULL, 0, stations);
        has[stations[spot].duty] = true;
    }
    bool any = false;
    for (int d = 0; d < BW_DUTY_COUNT; d++) {
        if (!has[d] || d == BW_DUTY_ADJACENT || d == BW_DUTY_BACKSIDE) continue;
        if (any) bw_put(out, ", ");
        bw_put(out, bw_duty_name((bw_duty)d));
        any = true;
    }
    if (!any) bw_put(out, bw_duty_name(BW_DUTY_ADJACENT));
}

/// One shape: its chart with the spots' names, and what each man calls and does.
static double draw_shape(bw_ink *ink, const bw_scheme *scheme, int stage_index, double x, double y,
                         double tall) {
    const bw_stage *stage = &scheme->stages[stage_index];
    const double title = 19, leading = BW_LEADING_SMALL;
    const double call_room = 96; // from the code to the job
    const bw_window window = bw_window_unit(scheme);
    const double room = tall - title - 2 * BW_BORDER - 8 - BW_MAX_SPOTS * leading;
    const double wide = bw_min(BW_COLUMN - 2 * BW_BORDER, bw_view_width(window, room));
    char buffer[LINE_SIZE];
    bw_text t = bw_text_in(buffer, sizeof buffer);
    bw_say_stage(stage, &t);
    if (stage->call[0]) {
        bw_put(&t, ": ");
        put_call(&t, stage->call);
    }
    bw_heading(ink, BW_TAG_H2, BW_ROLE_TEXT, BW_TYPE_TEXT, x, y + BW_TYPE_TEXT, BW_COLUMN, buffer);

    bw_station homes[BW_MAX_SPOTS];
    const bw_scene scene = bw_scene_homes(scheme, stage_index, homes);
    const bw_view view = bw_view_fit(window, x + BW_BORDER, y + title + BW_BORDER, wide);
    bw_ink_begin(ink, BW_TAG_FIGURE, buffer);
    bw_draw_scene(ink, &scene, &view, bw_marks_small(), false);
    bw_ink_end(ink);

    bw_plan plan;
    bw_plan_build(scheme, stage_index, &plan);
    const double under = view.box.y + view.box.height + BW_BORDER + 7;
    for (int s = 0; s < stage->defenders; s++) {
        const double base = under + BW_TYPE_SMALL + s * leading;
        t = bw_text_in(buffer, sizeof buffer);
        put_call(&t, stage->spots[s].call);
        bw_ink_text(ink, BW_ROLE_TEXT, BW_BOLD, BW_TYPE_SMALL, BW_LEFT_ALIGN, x, base,
                    stage->spots[s].id);
        bw_line_of(ink, BW_ROLE_TEXT, BW_REGULAR, BW_TYPE_SMALL, x + 26, base, call_room - 8,
                   buffer);
        t = bw_text_in(buffer, sizeof buffer);
        say_job_in_short(scheme, &plan, s, &t);
        bw_line_of(ink, BW_ROLE_SOFT_TEXT, BW_REGULAR, BW_TYPE_SMALL, x + 26 + call_room, base,
                   BW_COLUMN - 26 - call_room, buffer);
    }
    return view.scale;
}

void bw_book_shapes(const bw_scheme *scheme, bw_sheet *sheet) {
    bw_ink *ink = sheet->ink;
    const bw_box *block = &sheet->block;
    const double head = 40, gap = 16;
    const double tall = (block->height - head - gap) / 2;
    double scale = 0;
    char title[2 * BW_NAME_SIZE];
    bw_text t = bw_text_in(title, sizeof title);
    bw_put_plain_sentence(&t, bw_voice_of(scheme), &bw_s_book_shapes);
    bw_heading(ink, BW_TAG_H1, BW_ROLE_TEXT, BW_TYPE_HEAD, block->x, block->y + BW_TYPE_HEAD,
               block->width, title);
    for (int s = 0; s < scheme->stage_count; s++) {
        scale = draw_shape(ink, scheme, s, block->x + (s % 2) * (BW_COLUMN + BW_GUTTER),
                           block->y + head + (s / 2) * (tall + gap), tall);
    }
    bw_sheet_scale(sheet, scheme->units, scale);
}

void bw_book_notes(const bw_scheme *scheme, bw_sheet *sheet) {
    const bw_box *block = &sheet->block;
    bw_heading(sheet->ink, BW_TAG_H1, BW_ROLE_TEXT, BW_TYPE_HEAD, block->x, block->y + BW_TYPE_HEAD,
               block->width, "Notes");
    bw_paragraph(sheet->ink, BW_ROLE_TEXT, BW_REGULAR, BW_TYPE_TEXT, BW_LEADING, block->x,
                 block->y + 36, block->width, scheme->notes);
}
