/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "web/board_soundings.h"
#include "draw/chart.h"

static const double edge = 1.5; // points round the border

void bw_board_sound_begin(bw_board *board, bw_vec home, double step, double flat) {
    board->soundings = (bw_soundings){.home = home, .step = step, .flat = flat};
}

void bw_board_sound(bw_board *board, int out, int across, double cost) {
    if (out < 0 || out >= BW_SOUNDINGS_SIDE || across < 0 || across >= BW_SOUNDINGS_SIDE) return;
    board->soundings.cost[out][across] = cost;
    board->soundings.there[out][across] = true;
}

void bw_board_soundings(bw_board *board, int spot, double width) {
    const bw_stage *stage = &board->scheme.stages[board->stage];
    if (spot < 0 || spot >= stage->defenders || !(board->soundings.step > 0)) return;
    const double room = edge + BW_BORDER;
    const bw_view view =
        bw_view_fit(bw_soundings_window(&board->soundings), room, room, width - 2 * room);
    bw_ink *ink = bw_ink_in(board->page, sizeof board->page);
    bw_ink_page(ink, width, view.box.height + 2 * room);
    bw_draw_soundings(ink, &board->soundings, bw_field_at(board->scheme.field), board->scheme.units,
                      stage->spots[spot].id, &view);
}
