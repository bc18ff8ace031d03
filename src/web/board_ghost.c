/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "web/board_ghost.h"

/// Shown units: nearer than this a man stands where he is suggested to.
static const double same = 0.05;

/// The ring is a little smaller than the disc that would stand there; a ghost is .6 of its size.
static const double ring = 0.85 / 0.6;

static bool there(const bw_board *board, int spot) {
    const bw_stage *stage = &board->scheme.stages[board->stage];
    return spot >= 0 && spot < stage->defenders && board->ghost_stage == stage->defenders &&
           board->ghosted[spot];
}

void bw_board_suggest(bw_board *board, int spot, bw_vec home) {
    const int defenders = board->scheme.stages[board->stage].defenders;
    if (spot < 0 || spot >= defenders) return;
    if (board->ghost_stage != defenders) bw_board_put_away(board);
    board->ghost_stage = defenders;
    board->ghosted[spot] = true;
    board->ghost[spot] = home;
}

bool bw_board_take_home(bw_board *board, int spot) {
    if (!there(board, spot)) return false;
    if (board->mode != BW_BOARD_HOMES) bw_board_set_mode(board, BW_BOARD_HOMES);
    const int twin = board->scheme.stages[board->stage].spots[spot].twin;
    bw_board_move(board, BW_BOARD_MEN + spot, board->ghost[spot]);
    if (!board->mirrored && twin >= 0 && twin != spot && there(board, twin))
        bw_board_move(board, BW_BOARD_MEN + twin, board->ghost[twin]);
    return true;
}

bool bw_board_suggestion(const bw_board *board, int spot, bw_vec *home) {
    if (!there(board, spot)) return false;
    *home = board->ghost[spot];
    const bw_vec now = board->scheme.stages[board->stage].spots[spot].home;
    return bw_distance(now, *home) > same * bw_board_unit(board);
}

void bw_board_avoid_ghosts(const bw_board *board, bw_mark_size size, bw_labels *labels) {
    bw_vec home;
    for (int s = 0; s < BW_MAX_SPOTS; s++) {
        if (!bw_board_suggestion(board, s, &home)) continue;
        const bw_vec at = bw_view_point(&board->chart, home);
        bw_labels_avoid(labels, at, bw_v(size.radius, size.radius));
        bw_labels_avoid_line(labels, bw_view_point(&board->chart, board->shown[s].at), at);
    }
}

void bw_board_draw_ghosts(const bw_board *board, bw_mark_size size, bw_ink *ink) {
    const bw_mark_size ghost = {
        .radius = ring * size.radius, .type = size.type, .label = size.label};
    bw_vec home;
    for (int s = 0; s < BW_MAX_SPOTS; s++) {
        if (!bw_board_suggestion(board, s, &home)) continue;
        const bw_vec at = bw_view_point(&board->chart, home);
        bw_mark_ghost(ink, ghost, at);
        bw_mark_route(ink, BW_ROUTE_RUN, bw_view_point(&board->chart, board->shown[s].at), at,
                      size.radius + 1, 0, false);
    }
}
