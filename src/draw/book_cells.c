/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What the charts of the grid sheets show: the unit at each landmark, and along a lesson.
#include "core/text.h"
#include "draw/book_parts.h"
#include "draw/landmark_order.h"
#include "draw/metrics.h"
#include "scheme/caption.h"

/// The unit's words begin "Ball at left wing." or "Ball behind the goal.": that sentence is the
/// chart's title, the rest its caption, unless the coach wrote his own.
static void put_words(const bw_scheme *scheme, int stage, const char *own, bw_cell *cell) {
    char words[BW_CELL_TEXT];
    bw_text all = bw_text_in(words, sizeof words);
    bw_text title = bw_text_in(cell->title, sizeof cell->title);
    bw_text caption = bw_text_in(cell->caption, sizeof cell->caption);
    bw_say_unit(scheme, stage, cell->stations, cell->ball, &all);
    size_t end = 0; // the first full stop that ends a sentence
    while (end + 1 < all.used && !(words[end] == '.' && words[end + 1] == ' ')) {
        end++;
    }
    if (cell->order > 0) {
        bw_put_int(&title, cell->order);
        bw_put(&title, ". ");
    }
    bw_put_n(&title, words, end);
    if (own[0])
        bw_put(&caption, own);
    else if (end + 2 < all.used)
        bw_put(&caption, words + end + 2);
}

static void begin(const bw_scheme *scheme, int stage, bool lesson, bw_grid_sheet *grid,
                  bw_plan *plan) {
    bw_plan_build(scheme, stage, plan);
    grid->scheme = scheme;
    grid->stage = stage;
    grid->lesson = lesson;
    grid->count = 0;
}

void bw_landmark_cells(const bw_scheme *scheme, int stage_index, int index, bw_grid_sheet *grid) {
    const bw_stage *stage = &scheme->stages[stage_index];
    int order[2 * BW_MAX_LANDMARKS];
    const int count = bw_landmark_order(scheme, order);
    bw_plan plan;
    begin(scheme, stage_index, false, grid, &plan);
    for (int i = index * BW_CELLS; i < count && grid->count < BW_CELLS; i++) {
        bw_cell *cell = &grid->cells[grid->count++];
        *cell = (bw_cell){.ball = scheme->landmarks[order[i]].at};
        bw_where(&plan, cell->ball, NULL, 0, cell->stations);
        for (int s = 0; s < stage->defenders; s++) {
            cell->from[s] = stage->spots[s].home;
        }
        put_words(scheme, stage_index, "", cell);
    }
}

void bw_lesson_cells(const bw_scheme *scheme, int lesson_index, int index, bw_grid_sheet *grid) {
    const bw_lesson *lesson = &scheme->lessons[lesson_index];
    const int stage = bw_scheme_stage(scheme, lesson->defenders);
    BW_ASSERT(stage >= 0);
    bw_station before[BW_MAX_SPOTS];
    bw_plan plan;
    begin(scheme, stage, true, grid, &plan);
    for (int i = index * BW_CELLS; i < lesson->stop_count && grid->count < BW_CELLS; i++) {
        const bw_stop *stop = &lesson->stops[i];
        bw_cell *cell = &grid->cells[grid->count++];
        *cell = (bw_cell){.ball = bw_stop_ball(scheme, stop), .passed = i > 0, .order = i + 1};
        if (i > 0) cell->ball_from = bw_stop_ball(scheme, stop - 1);
        bw_where(&plan, cell->ball, NULL, 0, cell->stations);
        bw_where(&plan, i > 0 ? cell->ball_from : cell->ball, NULL, 0, before);
        for (int s = 0; s < lesson->defenders; s++) {
            cell->from[s] = before[s].at;
        }
        put_words(scheme, stage, stop->caption, cell);
    }
}

static int most_lines(const bw_grid_sheet *grid, int most) {
    for (int i = 0; i < grid->count; i++) {
        const int lines = bw_wrap(grid->cells[i].caption, BW_TYPE_TEXT, BW_COLUMN, NULL, 0);
        if (lines > most) most = lines;
    }
    return most;
}

int bw_caption_lines(const bw_scheme *scheme) {
    bw_grid_sheet grid;
    int most = 1;
    for (int s = 0; s < scheme->stage_count; s++) {
        for (int i = 0; i < bw_sheets_of(scheme->landmark_count); i++) {
            bw_landmark_cells(scheme, s, i, &grid);
            most = most_lines(&grid, most);
        }
    }
    for (int l = 0; l < scheme->lesson_count; l++) {
        for (int i = 0; i < bw_sheets_of(scheme->lessons[l].stop_count); i++) {
            bw_lesson_cells(scheme, l, i, &grid);
            most = most_lines(&grid, most);
        }
    }
    return most;
}
