/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Sheets of four charts: where they stand. What they show is made in book_cells.c.
#include "draw/book_parts.h"
#include "draw/chart.h"
#include "draw/key.h"
#include "draw/metrics.h"

static const double head_room = 30;  // running head
static const double title_room = 19; // a chart's title, down to its border
static const double words_gap = 7;   // from the border to the caption
static const double row_gap = 12;

uint32_t bw_duty_keys(const bw_stage *stage) {
    uint32_t keys = BW_KEY_KEEPER | BW_KEY_BALL | BW_KEY_DUTY_BALL;
    if (stage->rule.crease != BW_CREASE_NONE) keys |= BW_KEY_DUTY_CREASE;
    if (stage->rule.hold_behind) keys |= BW_KEY_DUTY_HOLD;
    keys |= stage->match_up ? BW_KEY_DUTY_MAN : BW_KEY_DUTY_ADJACENT | BW_KEY_DUTY_BACKSIDE;
    return keys;
}

/// The scene's pointers lead into the cell.
static bw_scene scene_of(const bw_grid_sheet *grid, const bw_cell *cell) {
    return (bw_scene){.scheme = grid->scheme,
                      .stage = grid->stage,
                      .stations = cell->stations,
                      .duties = true,
                      .beside = BW_BESIDE_DUTY,
                      .from = cell->from,
                      .from_soft = !grid->lesson,
                      .ball = &cell->ball,
                      .ball_from = cell->passed ? &cell->ball_from : NULL,
                      .order = cell->order};
}

void bw_draw_grid_sheet(const bw_grid_sheet *grid, bw_sheet *sheet) {
    bw_ink *ink = sheet->ink;
    const bw_box *block = &sheet->block;
    const double column = BW_COLUMN;
    const double row = (block->height - head_room - row_gap) / 2;
    const double words = words_gap + grid->lines * BW_LEADING;
    const bw_window window = bw_window_unit(grid->scheme);
    const double tall = row - title_room - words - 2 * BW_BORDER;
    const double wide = bw_min(column - 2 * BW_BORDER, bw_view_width(window, tall));

    const double head_width = bw_width(grid->head, BW_TYPE_SUBHEAD);
    bw_line_of(ink, BW_ROLE_TEXT, BW_BOLD, BW_TYPE_SUBHEAD, block->x, block->y + BW_TYPE_SUBHEAD,
               block->width, grid->head);
    if (head_width + 20 < block->width)
        bw_line_of(ink, BW_ROLE_SOFT_TEXT, BW_REGULAR, BW_TYPE_SMALL, block->x + head_width + 12,
                   block->y + BW_TYPE_SUBHEAD, block->width - head_width - 12, grid->note);

    for (int i = 0; i < grid->count; i++) {
        const bw_cell *cell = &grid->cells[i];
        const double x = block->x + (i % 2) * (column + BW_GUTTER);
        const double y = block->y + head_room + (i / 2) * (row + row_gap);
        const bw_view view = bw_view_fit(window, x + BW_BORDER, y + title_room + BW_BORDER, wide);
        const bw_scene scene = scene_of(grid, cell);
        bw_heading(ink, BW_TAG_H2, BW_ROLE_TEXT, BW_TYPE_TEXT, x, y + BW_TYPE_TEXT, column,
                   cell->title);
        bw_ink_begin(ink, BW_TAG_FIGURE, cell->caption);
        bw_draw_scene(ink, &scene, &view, bw_marks_small(), false);
        bw_ink_end(ink);
        bw_paragraph(ink, BW_ROLE_TEXT, BW_REGULAR, BW_TYPE_TEXT, BW_LEADING, x,
                     view.box.y + view.box.height + BW_BORDER + words_gap - 2, column,
                     cell->caption);
    }
    bw_sheet_scale(sheet, grid->scheme->units, wide / (window.right - window.left));
}
