/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report/sample_danger.h"
#include "core/field.h"
#include "core/level.h"
#include "core/shot.h"

/// One surface at a time in each thread: what draws a scheme draws it to its end.
static _Thread_local double chance[BW_GRID_SIDE * BW_GRID_SIDE];
static _Thread_local bw_shot_table table;

bw_danger bw_sample_danger(const bw_scheme *scheme, bw_window window) {
    bw_shot_build(bw_level_at(scheme->level), bw_field_at(scheme->field), &table);
    double wide = window.right - window.left, tall = window.top - window.bottom;
    double cell = bw_max(wide, tall) / (BW_GRID_SIDE - 1);
    bw_grid grid = {window.left, window.bottom, cell, 0, 0, chance};
    grid.columns = (int)bw_min(bw_floor(wide / cell + 0.5) + 1, BW_GRID_SIDE);
    grid.rows = (int)bw_min(bw_floor(tall / cell + 0.5) + 1, BW_GRID_SIDE);
    for (int r = 0; r < grid.rows; r++) {
        for (int c = 0; c < grid.columns; c++) {
            bw_vec p = bw_v(window.left + c * cell, window.bottom + r * cell);
            chance[r * grid.columns + c] = bw_shot_worth(&table, p);
        }
    }
    return bw_danger_of(grid);
}
