/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli/draw_chart.h"
#include "core/level.h"
#include "core/shot.h"
#include "draw/chart.h"
#include "draw/key.h"
#include "draw/scene.h"
#include "scheme/caption.h"

static const double title_room = 42; // title and the line below it
static const double figures_room = 24;
static const double words_room = 6 * BW_LEADING;
static const double ghost_room = 0.6; // m: nearer than this a man is at home

/// The danger surface of a view, and the levels its contours are drawn at: chances of a goal from a
/// free shot.
typedef struct danger {
    double value[BW_GRID_SIDE * BW_GRID_SIDE];
    bw_grid grid;
} danger;

static const double levels[] = {0.1, 0.2, 0.3, 0.4, 0.5};

static void sample_danger(const bw_scheme *scheme, bw_window window, danger *d) {
    static bw_shot_table table;
    bw_shot_build(bw_level_at(scheme->level), bw_field_at(scheme->field), &table);
    double wide = window.right - window.left, tall = window.top - window.bottom;
    double cell = bw_max(wide, tall) / (BW_GRID_SIDE - 1);
    d->grid = (bw_grid){window.left, window.bottom, cell, 0, 0, d->value};
    d->grid.columns = (int)(wide / cell + 0.5) + 1;
    d->grid.rows = (int)(tall / cell + 0.5) + 1;
    if (d->grid.columns > BW_GRID_SIDE) d->grid.columns = BW_GRID_SIDE;
    if (d->grid.rows > BW_GRID_SIDE) d->grid.rows = BW_GRID_SIDE;
    for (int r = 0; r < d->grid.rows; r++) {
        for (int c = 0; c < d->grid.columns; c++) {
            bw_vec p = bw_v(window.left + c * cell, window.bottom + r * cell);
            d->value[r * d->grid.columns + c] = bw_shot_worth(&table, p);
        }
    }
}

static uint32_t keys_of(const bw_chart_request *request, const bw_station *stations) {
    const bw_stage *stage = &request->scheme->stages[request->stage];
    uint32_t keys = BW_KEY_KEEPER | BW_KEY_BALL;
    for (int s = 0; s < stage->defenders; s++) {
        keys |= (uint32_t)BW_KEY_DUTY_BALL << stations[s].duty;
        if (bw_distance(stations[s].at, stage->spots[s].home) > ghost_room)
            keys |= BW_KEY_FROM_HOME;
    }
    if (request->attacker_count > 0) keys |= BW_KEY_ATTACKER;
    return keys;
}

static void put_words(const bw_chart_request *request, const bw_station *stations, bw_text *out) {
    bw_say_unit(request->scheme, request->stage, stations, request->ball, out);
    if (request->danger)
        bw_put(out, " Lines and tints: chances in a hundred that a free shot scores, by the model; "
                    "to compare places, not to forecast.");
}

/// The grid is too large for a stack frame that others lean on.
static danger surface;

void bw_chart_sheet(const bw_chart_request *request, bw_ink *ink) {
    const bw_scheme *scheme = request->scheme;
    const bw_stage *stage = &scheme->stages[request->stage];
    bw_plan plan;
    bw_station stations[BW_MAX_SPOTS];
    bw_vec homes[BW_MAX_SPOTS];
    bw_plan_build(scheme, request->stage, &plan);
    bw_where(&plan, request->ball, request->attackers, request->attacker_count, stations);
    for (int s = 0; s < stage->defenders; s++)
        homes[s] = stage->spots[s].home;

    const bw_foot foot = {scheme->name, keys_of(request, stations), true, 1, 1};
    bw_sheet sheet = bw_sheet_begin(ink, request->paper, &foot);
    const bw_box *block = &sheet.block;

    char title[160], words[800];
    bw_text t = bw_text_in(title, sizeof title);
    bw_put(&t, stage->shape);
    bw_put(&t, ", ball ");
    bw_say_at(scheme, request->ball, &t);
    bw_heading(ink, BW_TAG_H1, BW_ROLE_TEXT, BW_TYPE_HEAD, block->x, block->y + BW_TYPE_HEAD,
               block->width, title);
    t = bw_text_in(words, sizeof words);
    put_words(request, stations, &t);

    const bw_window window = bw_window_unit(scheme);
    double tall = block->height - title_room - words_room - figures_room - 2 * BW_BORDER;
    double wide = bw_min(block->width - figures_room - 2 * BW_BORDER, bw_view_width(window, tall));
    const bw_view view = bw_view_fit(window, block->x + figures_room + BW_BORDER,
                                     block->y + title_room + BW_BORDER, wide);
    bw_scene scene = {.scheme = scheme,
                      .stage = request->stage,
                      .stations = stations,
                      .duties = true,
                      .beside = BW_BESIDE_DUTY,
                      .from = homes,
                      .from_soft = true,
                      .ball = &request->ball,
                      .attackers = request->attackers,
                      .attacker_count = request->attacker_count};
    if (request->danger) {
        sample_danger(scheme, window, &surface);
        scene.danger = &surface.grid;
        scene.levels = levels;
        scene.level_count = BW_COUNT(levels);
    }
    bw_ink_begin(ink, BW_TAG_FIGURE, words);
    bw_draw_scene(ink, &scene, &view, bw_marks_large(), true);
    bw_ink_end(ink);
    bw_paragraph(ink, BW_ROLE_TEXT, BW_REGULAR, BW_TYPE_TEXT, BW_LEADING, block->x,
                 view.box.y + view.box.height + BW_BORDER + figures_room, block->width, words);
    bw_sheet_scale(&sheet, scheme->units, view.scale);
}
