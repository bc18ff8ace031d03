/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Test mode's pictures.
#include "draw/chart.h"
#include "draw/curve_chart.h"
#include "draw/curve_pair.h"
#include "draw/key.h"
#include "trial/words.h"
#include "web/tester.h"

static const double small_chart = 330; // points: a narrower chart has small marks and no figures
static const double figures_room = 15; // left and below
static const double edge = 1.5;        // right and above
static const double least_wide = 320, least_high = 170; // of the curves

void bw_tester_draw_curve(const bw_tester *t, double width, double height, void *memory,
                          size_t size) {
    const bw_tester_side *a = &t->side[0], *b = &t->side[1];
    bw_ink *ink = bw_ink_in(memory, size);
    const bw_box box = {edge, edge, bw_max(width, least_wide) - 2 * edge,
                        bw_max(height, least_high) - 2 * edge};
    bw_ink_page(ink, box.width + 2 * edge, box.height + 2 * edge);
    if (!a->tested) return;
    if (b->tested) {
        bw_draw_curve_pair(ink, &a->trial.curve, &b->trial.curve, box);
        return;
    }
    char room[BW_MAX_LATE][BW_NAME_SIZE + 16];
    const char *late[BW_MAX_LATE];
    for (int i = 0; i < BW_MAX_LATE; i++) {
        bw_text out = bw_text_in(room[i], sizeof room[i]);
        bw_say_late_man(&a->scheme, i, &out);
        late[i] = room[i];
    }
    bw_draw_curve(ink, &a->trial.curve, late, box);
}

void bw_tester_draw_film(const bw_tester *t, double at_s, double width, double height, void *memory,
                         size_t size) {
    bw_ink *ink = bw_ink_in(memory, size);
    ink->lines = t->lines;
    bw_ink_page(ink, 1, 1);
    const bw_sequence sequence = bw_tester_sequence(t);
    if (sequence.count == 0) return;
    const bool large = width >= small_chart;
    const double room = large ? figures_room : edge, aside = room + edge + 2 * BW_BORDER;
    const bw_window window = bw_window_sequence(&sequence);
    const double inner = bw_min(width - aside, bw_view_width(window, height - aside));
    const bw_view view = bw_view_fit(window, room + BW_BORDER, edge + BW_BORDER, bw_max(inner, 60));
    bw_ink_page(ink, view.box.width + aside, view.box.height + aside);
    const bw_mark_size marks = large ? bw_marks_large() : bw_marks_small();
    if (at_s < 0)
        bw_draw_sequence(ink, &sequence, &view, marks, large);
    else
        bw_draw_playback(ink, &sequence, at_s, &view, marks, large);
}

void bw_tester_draw_key(const bw_tester *t, double width, void *memory, size_t size) {
    static const uint32_t routes[] = {BW_KEY_SHOT, BW_KEY_PASS, BW_KEY_CARRY, 0};
    uint32_t keys = BW_KEY_DEFENDER | BW_KEY_KEEPER | BW_KEY_ATTACKER | BW_KEY_BALL | BW_KEY_RUN;
    for (int i = 0; i < t->film.count && t->film_side >= 0; i++)
        keys |= routes[t->film.plies[i].ply.kind];
    bw_ink *ink = bw_ink_in(memory, size);
    ink->lines = t->lines;
    bw_ink_page(ink, width, 1);
    ink->height = bw_draw_key_rows(ink, keys, 0, 0, width);
}
