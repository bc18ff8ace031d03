/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "web/board_adopt.h"

#include "web/board_aside.h"

static const double met =
    0.15;                   ///< shown units: a home is rounded, and the places of others with it
static const int tries = 8; ///< a home and its place move alike, as long as the duties stay

static bool aside(const bw_board *board, int spot) {
    return spot >= 0 && spot < board->plan.spots && board->aside[spot];
}

bool bw_board_home_counts(const bw_board *board, int spot) {
    if (!aside(board, spot)) return false;
    const int landmark = bw_board_landmark(board);
    if (landmark >= 0 && board->scheme.stages[board->stage].pinned[landmark][spot]) return false;
    const bw_duty duty = board->station[spot].duty;
    return duty == BW_DUTY_ADJACENT || duty == BW_DUTY_BACKSIDE || duty == BW_DUTY_MAN;
}

bool bw_board_home_here(bw_board *board, int spot) {
    if (!bw_board_home_counts(board, spot)) return false;
    const bw_vec at = board->aside_at[spot];
    const double near = met * bw_board_unit(board);
    const bw_board_mode mode = board->mode;
    board->reading = board->scheme;
    bw_board_forget_aside(board);
    bw_board_place_unit(board);
    bw_vec off = bw_sub(at, board->station[spot].at);
    board->mode = BW_BOARD_HOMES; // the same edit as there
    for (int i = 0; i < tries && bw_length(off) > near; i++) {
        const bw_vec home = board->scheme.stages[board->stage].spots[spot].home;
        bw_board_move(board, BW_BOARD_MEN + spot, bw_add(home, off));
        off = bw_sub(at, board->station[spot].at);
    }
    board->mode = mode;
    const bool done = bw_length(off) <= near;
    if (!done) {
        board->scheme = board->reading;
        bw_board_prepare(board);
    }
    bw_board_settle(board);
    if (!done) bw_board_put_aside(board, spot, at);
    return done;
}

bool bw_board_pin_here(bw_board *board, int spot, int landmark) {
    if (!aside(board, spot) || landmark < 0 || landmark >= board->scheme.landmark_count)
        return false;
    const bw_vec at = board->aside_at[spot];
    const bw_board_mode mode = board->mode;
    bw_board_forget_aside(board);
    bw_board_ball_to(board, landmark);
    board->mode = BW_BOARD_PINS; // the same edit as there
    bw_board_move(board, BW_BOARD_MEN + spot, at);
    board->mode = mode;
    return true;
}
