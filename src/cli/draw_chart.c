/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli/draw_chart.h"
#include "core/level.h"
#include "draw/chart.h"
#include "draw/key.h"
#include "draw/scene.h"
#include "report/sample_danger.h"
#include "scheme/caption.h"

static const double title_room = 42; // title and the line below it
static const double code_room = 40;  // a spot's code, left of its job
static const double figures_room = 24;
static const double jobs_gap = 8;     // between the caption and the jobs
static const double ghost_room = 0.6; // m: nearer than this a man is at home

/// Chances of a goal from a free shot at the points of a view's grid. Too large for a stack frame that
/// others lean on, as the table they come from is.
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

/// Below the caption: what each man does and where, one a line.
static void draw_jobs(const bw_chart_request *request, const bw_station *stations, bw_ink *ink,
                      const bw_box *block, double y) {
    const bw_stage *stage = &request->scheme->stages[request->stage];
    for (int s = 0; s < stage->defenders; s++) {
        char room[200];
        bw_text t = bw_text_in(room, sizeof room);
        bw_say_job(request->scheme, request->stage, s, &stations[s], &t);
        y += BW_LEADING;
        bw_line_of(ink, BW_ROLE_TEXT, BW_BOLD, BW_TYPE_TEXT, block->x, y, code_room,
                   stage->spots[s].id);
        bw_line_of(ink, BW_ROLE_TEXT, BW_REGULAR, BW_TYPE_TEXT, block->x + code_room, y,
                   block->width - code_room, room);
    }
}

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

    const bw_foot foot = {.name = scheme->name,
                          .keys = keys_of(request, stations),
                          .charts = true,
                          .page = 1,
                          .pages = 1};
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
    double words_room = bw_paragraph(NULL, BW_ROLE_TEXT, BW_REGULAR, BW_TYPE_TEXT, BW_LEADING, 0, 0,
                                     block->width, words);
    double jobs_room = jobs_gap + stage->defenders * BW_LEADING;
    double tall =
        block->height - title_room - words_room - jobs_room - figures_room - 2 * BW_BORDER;
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
    bw_danger danger;
    if (request->danger) {
        danger = bw_sample_danger(scheme, window);
        scene.danger = &danger;
    }
    bw_ink_begin(ink, BW_TAG_FIGURE, words);
    bw_draw_scene(ink, &scene, &view, bw_marks_large(), true);
    bw_ink_end(ink);
    double y = view.box.y + view.box.height + BW_BORDER + figures_room;
    bw_paragraph(ink, BW_ROLE_TEXT, BW_REGULAR, BW_TYPE_TEXT, BW_LEADING, block->x, y, block->width,
                 words);
    draw_jobs(request, stations, ink, block, y + words_room + jobs_gap);
    bw_sheet_scale(&sheet, scheme->units, view.scale);
}
