/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What the files of the book share. Private to book*.c.
#ifndef BW_DRAW_BOOK_PARTS_H
#define BW_DRAW_BOOK_PARTS_H

#include "core/shape.h"
#include "draw/book_words.h"
#include "draw/scene.h"
#include "draw/sheet.h"

enum { BW_CELLS = 4, BW_CELL_TEXT = 640 };

/// One chart of a grid sheet: ball, unit, title and words.
typedef struct bw_cell {
    char title[BW_NAME_SIZE + 48];
    char caption[BW_CELL_TEXT];
    bw_vec ball, ball_from;
    bool passed; ///< the ball came from ball_from
    int order;
    bw_station stations[BW_MAX_SPOTS];
    bw_vec from[BW_MAX_SPOTS];
} bw_cell;

/// Up to four cells to a sheet, two by two, under a running head.
typedef struct bw_grid_sheet {
    const bw_scheme *scheme;
    int stage;
    bool lesson;      ///< runs are ordered runs from the stop before, not faint runs from home
    const char *head; ///< running head, bold
    const char *note; ///< beside it, soft
    int lines;        ///< of caption kept free under every chart
    int count;
    bw_cell cells[BW_CELLS];
} bw_grid_sheet;

/// Type of the captions and the columns they stand in, points.
#define BW_GUTTER 20.0
#define BW_COLUMN ((BW_BLOCK_WIDTH - BW_GUTTER) / 2)

void bw_book_cover(const bw_scheme *scheme, const bw_danger *danger, bw_sheet *sheet);
void bw_book_shapes(const bw_scheme *scheme, bw_sheet *sheet);
void bw_book_stage(const bw_scheme *scheme, int stage, bw_sheet *sheet);
/// True when the coach's notes are short enough for the cover; else they have a sheet of their own.
bool bw_notes_on_cover(const bw_scheme *scheme);
void bw_book_notes(const bw_scheme *scheme, bw_sheet *sheet);

/// The most lines any caption of the book takes in a column: charts are as tall as that leaves room
/// for, so that all of them have one scale.
int bw_caption_lines(const bw_scheme *scheme);

void bw_draw_grid_sheet(const bw_grid_sheet *grid, bw_sheet *sheet);

/// Fills the cells of a stage's sheet number `index` (from 0); the order puts a left place and its
/// right twin side by side. bw_sheets_of tells how many sheets so many charts take.
void bw_landmark_cells(const bw_scheme *scheme, int stage, int index, bw_grid_sheet *grid);

/// The same for a lesson's stops, in their order.
void bw_lesson_cells(const bw_scheme *scheme, int lesson, int index, bw_grid_sheet *grid);

static inline int bw_sheets_of(int charts) {
    return (charts + BW_CELLS - 1) / BW_CELLS;
}

/// Keys of the sheets with duties, for a stage.
uint32_t bw_duty_keys(const bw_stage *stage);

#endif
