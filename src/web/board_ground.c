/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The ground changes far more rarely than the marks on it, so it can be painted once and kept.
#include "web/board_ground.h"

#include "core/hash.h"
#include "core/level.h"
#include "draw/chart.h"
#include "draw/danger.h"

static bw_danger sample_danger(bw_board *board, bw_window window) {
    const bw_scheme *scheme = &board->scheme;
    if (board->shots_level != scheme->level || board->shots_field != scheme->field) {
        bw_shot_build(bw_level_at(scheme->level), bw_field_at(scheme->field), &board->shots);
        board->shots_level = scheme->level;
        board->shots_field = scheme->field;
    }
    const double wide = window.right - window.left, tall = window.top - window.bottom;
    const double cell = bw_max(wide, tall) / (BW_GRID_SIDE - 1);
    bw_grid grid = {window.left, window.bottom, cell, 0, 0, board->chance};
    grid.columns = (int)bw_min(bw_floor(wide / cell + 0.5) + 1, BW_GRID_SIDE);
    grid.rows = (int)bw_min(bw_floor(tall / cell + 0.5) + 1, BW_GRID_SIDE);
    for (int r = 0; r < grid.rows; r++) {
        for (int c = 0; c < grid.columns; c++)
            board->chance[r * grid.columns + c] = bw_shot_worth(
                &board->shots, bw_v(window.left + c * cell, window.bottom + r * cell));
    }
    return bw_danger_of(grid);
}

static uint64_t fingerprint(const bw_board *board, bool figures) {
    const bw_window *w = &board->chart.window;
    const bw_box *box = &board->chart.box;
    const double places[] = {w->left, w->right, w->bottom, w->top, box->x, box->y, box->width};
    uint64_t hash = BW_HASH_START;
    for (int i = 0; i < BW_COUNT(places); i++)
        hash = bw_hash_double(hash, places[i]);
    hash = bw_hash_u64(hash, (uint64_t)board->scheme.field << 8 | (uint64_t)board->scheme.units);
    hash = bw_hash_u64(hash, board->danger ? (uint64_t)board->scheme.level + 1 : 0);
    return bw_hash_u64(hash, figures);
}

void bw_board_survey(bw_board *board, bool figures) {
    const uint64_t now = fingerprint(board, figures);
    if (now == board->surveyed) return;
    board->surveyed = now;
    board->view.ground++;
    if (board->danger) board->depths = sample_danger(board, board->chart.window);
}

void bw_board_draw_ground(const bw_board *board, bw_ink *ink, bool figures) {
    const bw_units units = board->scheme.units;
    bw_draw_paper(ink, &board->chart);
    if (board->danger) bw_draw_depths(ink, &board->depths, &board->chart);
    bw_draw_field(ink, bw_field_at(board->scheme.field), units, &board->chart);
    bw_draw_border(ink, units, &board->chart, figures);
}
