/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report/strip.h"

#include "draw/key.h"
#include "draw/sequence.h"
#include "report/pages_part.h"
#include "trial/sentences.h"
#include "trial/words.h"

enum { LINE = 640 };

static const double head_height = 90; // of every sheet, so that all have one scale
static const double gutter = 16, caption_leading = 12.5;
enum { CAPTION_LEAST = 3, CAPTION_MOST = 8 }; // lines below each picture

bw_status bw_strip_build(const bw_trial *trial, bw_strip *strip) {
    strip->trial = trial;
    strip->frame_count = strip->moment_count = 0;
    if (trial->curve.answer.count == 0) return BW_NOT_FOUND;
    const bw_status status = bw_replay(&trial->begun, &trial->curve.answer, strip->frames,
                                       BW_MAX_FRAMES, &strip->frame_count);
    if (status != BW_OK) return status;
    const bw_sequence sequence = {&trial->begun, &trial->curve.answer, strip->frames,
                                  strip->frame_count};
    strip->moment_count = bw_pick_moments(&sequence, strip->moments, BW_STRIP_MOMENTS);
    return BW_OK;
}

int bw_strip_pages(const bw_strip *strip) {
    return (strip->moment_count + BW_STRIP_CELLS - 1) / BW_STRIP_CELLS;
}

/// What happens in the moment: the step, how far it has come, and at its end who is late.
static void say_moment(const bw_strip *strip, int moment, bw_text *out) {
    const bw_trial *trial = strip->trial;
    const int at = strip->moments[moment];
    if (moment == 0) {
        bw_put(out, "The start. ");
        bw_say_late_men(trial->begun.ground, &trial->begun, out);
        return;
    }
    const bw_frame *frame = &strip->frames[at];
    const bool last = moment + 1 == strip->moment_count;
    const bool done = last || strip->frames[strip->moments[moment + 1]].ply > frame->ply ||
                      frame->at_s > trial->curve.answer.plies[frame->ply].end_s - 0.5 * BW_TICK;
    bw_say_step(trial, frame->ply, out);
    if (!done) {
        bw_put(out, frame->flying ? ": ball in the air." : ": under way.");
        return;
    }
    bw_put(out, ", ");
    bw_say_step_chance(trial, frame->ply, out);
    bw_put(out, ".");
    if (trial->straggler[frame->ply].man < 0) return;
    bw_put(out, " ");
    bw_say_straggler(trial, &trial->straggler[frame->ply], out);
}

static void put_moment(const bw_strip *strip, int moment, const bw_sheet *sheet,
                       const bw_view *view) {
    const bw_sequence sequence = {&strip->trial->begun, &strip->trial->curve.answer, strip->frames,
                                  strip->frame_count};
    const int to = strip->moments[moment];
    const int from = moment > 0 ? strip->moments[moment - 1] : to;
    char line[LINE];
    bw_text t = bw_text_in(line, sizeof line);
    bw_say_seconds(strip->frames[to].at_s, &t);
    if (moment > 0) {
        bw_put(&t, ", step ");
        bw_put_int(&t, strip->frames[to].ply + 1);
    }
    bw_ink_text(sheet->ink, BW_ROLE_TEXT, BW_BOLD, 11, BW_LEFT_ALIGN, view->box.x, view->box.y - 9,
                line);
    t = bw_text_in(line, sizeof line);
    say_moment(strip, moment, &t);
    bw_ink_begin(sheet->ink, BW_TAG_FIGURE, line);
    bw_draw_moment(sheet->ink, &sequence, from, to, view, bw_marks_small());
    bw_ink_end(sheet->ink);
    bw_paragraph_of(sheet->ink, BW_ROLE_TEXT, BW_REGULAR, BW_TYPE_SMALL, caption_leading,
                    view->box.x, view->box.y + view->box.height + 7, view->box.width, line,
                    CAPTION_MOST);
}

/// Width of the pictures: as large as leaves room below each for its words.
static double fit_width(const bw_strip *strip, bw_window window, double row, double most) {
    double width = most;
    for (int lines = CAPTION_LEAST; lines <= CAPTION_MOST; lines++) {
        const double room = lines * caption_leading;
        width = bw_min(most, bw_view_width(window, row - room - 42));
        double tallest = 0;
        for (int m = 0; m < strip->moment_count; m++) {
            char line[LINE];
            bw_text t = bw_text_in(line, sizeof line);
            say_moment(strip, m, &t);
            tallest = bw_max(tallest, bw_paragraph(NULL, BW_ROLE_TEXT, BW_REGULAR, BW_TYPE_SMALL,
                                                   caption_leading, 0, 0, width, line));
        }
        if (tallest <= room) break;
    }
    return width;
}

static void put_title(const bw_strip *strip, const bw_sheet *sheet, int page) {
    const bw_box *b = &sheet->block;
    const bw_trial *trial = strip->trial;
    char line[LINE];
    bw_text t = bw_text_in(line, sizeof line);
    bw_put(&t, "What beats it, moment by moment");
    if (page > 1) bw_put(&t, ", continued");
    bw_heading(sheet->ink, BW_TAG_H1, BW_ROLE_TEXT, BW_TYPE_HEAD, b->x, b->y + 16,
               b->width - BW_ESTIMATE_WIDTH, line);
    bw_put_estimate(sheet);
    t = bw_text_in(line, sizeof line);
    bw_say_break(trial->begun.ground, &trial->def, &t);
    bw_put(&t, " ");
    bw_say_answer(trial, &t);
    bw_put(&t, " A stress test: no team plays like this. Paths since the picture before.");
    bw_paragraph(sheet->ink, BW_ROLE_TEXT, BW_REGULAR, BW_TYPE_SMALL, BW_LEADING_SMALL, b->x,
                 b->y + 22, b->width, line);
}

bw_status bw_strip_page(const bw_strip *strip, int page, bw_paper paper, bw_ink *ink) {
    const int pages = bw_strip_pages(strip);
    if (page < 1 || page > pages) return BW_NOT_FOUND;
    const bw_ground *ground = strip->trial->begun.ground;
    char name[2 * BW_NAME_SIZE + 40];
    bw_text t = bw_text_in(name, sizeof name);
    bw_say_owner(ground->scheme, &t);
    const bw_foot foot = {.name = name, .charts = true, .page = page, .pages = pages};
    bw_sheet sheet = bw_sheet_begin(ink, paper, &foot);
    bw_put_keys(&sheet, bw_answer_keys(&strip->trial->curve.answer) | BW_KEY_BALL);
    put_title(strip, &sheet, page);
    const bw_box *b = &sheet.block;
    const double top = b->y + head_height;
    const double row = (b->y + b->height - top) / 2;
    const bw_sequence sequence = {&strip->trial->begun, &strip->trial->curve.answer, strip->frames,
                                  strip->frame_count};
    const bw_window window = bw_window_sequence(&sequence);
    const double width = fit_width(strip, window, row, (b->width - gutter) / 2 - 10);
    for (int i = 0; i < BW_STRIP_CELLS; i++) {
        const int moment = (page - 1) * BW_STRIP_CELLS + i;
        if (moment >= strip->moment_count) break;
        const bw_view view = bw_view_fit(window, b->x + 5 + (i % 2) * ((b->width + gutter) / 2),
                                         top + (i / 2) * row, width);
        put_moment(strip, moment, &sheet, &view);
        if (i == 0) bw_sheet_scale(&sheet, ground->scheme->units, view.scale);
    }
    return (bw_status)ink->status;
}
