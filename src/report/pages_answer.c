/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The second sheet: the answer on the chart with its steps beside it, then what the model leaves out.
#include "draw/sequence.h"
#include "report/pages_part.h"
#include "trial/limits.h"
#include "trial/sentences.h"
#include "trial/words.h"

enum { LINE = 1024 };

static const double gutter = 18;

static double put_steps(const bw_report *r, bw_ink *ink, double x, double y, double width) {
    const bw_trial *trial = r->headline;
    for (int i = 0; i < trial->curve.answer.count; i++) {
        const bw_answer_ply *step = &trial->curve.answer.plies[i];
        char line[LINE];
        bw_text t = bw_text_in(line, sizeof line);
        bw_say_seconds(step->at_s, &t);
        const bw_vec ring = bw_v(x + BW_ORDER_REACH, y + 7);
        bw_mark_order(ink, ring, ring, i + 1);
        bw_ink_text(ink, BW_ROLE_TEXT, BW_BOLD, 11, BW_LEFT_ALIGN, x + 18, y + 11, line);
        y += 15;
        t = bw_text_in(line, sizeof line);
        bw_say_step(trial, i, &t);
        bw_put(&t, ", ");
        bw_say_step_chance(trial, i, &t);
        bw_put(&t, ".");
        if (trial->straggler[i].man >= 0) bw_put(&t, " ");
        bw_say_straggler(trial, &trial->straggler[i], &t);
        y += bw_paragraph(ink, BW_ROLE_TEXT, BW_REGULAR, BW_TYPE_SMALL, 12.5, x, y, width, line);
        y += 5;
    }
    return y;
}

/// Two columns of what the model assumes and leaves out, from y down, in type of this size. Returns
/// the height; with ink NULL only measures.
static double put_columns(const bw_report *r, bw_ink *ink, const bw_box *b, double y, double type) {
    const double width = (b->width - gutter) / 2, leading = type * 1.3;
    double x = b->x, at = y, lowest = y;
    char line[LINE];
    for (int i = 0;; i++) {
        bw_text t = bw_text_in(line, sizeof line);
        if (!bw_say_limit(r->headline, i, &t)) return lowest - y;
        if (i == 3) {
            x += width + gutter;
            at = y;
        }
        at += 4 + bw_paragraph(ink, BW_ROLE_TEXT, BW_REGULAR, type, leading, x, at, width, line);
        lowest = bw_max(lowest, at);
    }
}

static const double limits_head = 22; // from the heading's baseline's place to the columns

/// In the usual small type, or a little smaller when a long answer has left less room.
static void put_limits(const bw_report *r, const bw_sheet *sheet, double y) {
    const bw_box *b = &sheet->block;
    const double room = b->y + b->height - y - limits_head;
    const bool fits = put_columns(r, NULL, b, 0, BW_TYPE_SMALL) <= room;
    bw_heading(sheet->ink, BW_TAG_H2, BW_ROLE_TEXT, BW_TYPE_SUBHEAD, b->x, y + 16, b->width,
               "How to read this, and what the model leaves out");
    put_columns(r, sheet->ink, b, y + limits_head, fits ? BW_TYPE_SMALL : BW_TYPE_LABEL);
}

/// The chart at the left, as large as leaves the steps a readable column and the limits their place.
/// Returns where it ends.
static double put_chart(const bw_report *r, const bw_sheet *sheet, double y, double width) {
    bw_frame frames[BW_MAX_FRAMES];
    bw_sequence sequence = {
        .b = &r->headline->begun, .answer = &r->headline->curve.answer, .frames = frames};
    bw_replay(sequence.b, sequence.answer, frames, BW_MAX_FRAMES, &sequence.count);
    if (sequence.answer->count == 0) return y;
    const bw_box *b = &sheet->block;
    const double limits = put_columns(r, NULL, b, 0, BW_TYPE_SMALL) + limits_head;
    const double high = b->y + b->height - limits - y - 30;
    const bw_window window = bw_window_sequence(&sequence);
    const bw_view view =
        bw_view_fit(window, b->x + 22, y + 6, bw_min(width - 28, bw_view_width(window, high)));
    bw_ink_begin(sheet->ink, BW_TAG_FIGURE, "The answer on the chart, to scale");
    bw_draw_sequence(sheet->ink, &sequence, &view, bw_marks_small(), true);
    bw_ink_end(sheet->ink);
    bw_sheet_scale(sheet, r->ground->scheme->units, view.scale);
    return y + 6 + view.box.height + 18;
}

void bw_page_answer(const bw_report *r, bw_sheet *sheet) {
    bw_put_keys(sheet, bw_answer_keys(&r->headline->curve.answer));
    const bw_box *b = &sheet->block;
    char line[LINE];
    bw_put_estimate_heading(sheet, "What beats it");
    bw_text t = bw_text_in(line, sizeof line);
    bw_say_answer(r->headline, &t);
    double y = b->y + 20;
    y += 4 + bw_paragraph(sheet->ink, BW_ROLE_TEXT, BW_REGULAR, BW_TYPE_TEXT, BW_LEADING, b->x, y,
                          b->width, line);
    const double chart = 340;
    const double below = put_chart(r, sheet, y, chart);
    const double steps = put_steps(r, sheet->ink, b->x + chart + 10, y, b->width - chart - 10);
    put_limits(r, sheet, bw_max(below, steps));
}
