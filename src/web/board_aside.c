/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "web/board_aside.h"

#include "web/board_run.h"

void bw_board_put_aside(bw_board *board, int spot, bw_vec at) {
    BW_ASSERT(spot >= 0 && spot < board->plan.spots);
    board->aside[spot] = true;
    board->aside_at[spot] = at;
    board->body[spot] = board->shown[spot] = (bw_body){at, bw_v(0, 0)};
    board->effort[spot] = bw_v(0, 0);
    bw_board_place_unit(board);
}

void bw_board_forget_aside(bw_board *board) {
    for (int s = 0; s < BW_MAX_SPOTS; s++)
        board->aside[s] = false;
}

bool bw_board_call_back(bw_board *board, int spot) {
    bool any = false;
    for (int s = 0; s < board->plan.spots; s++) {
        if (spot >= 0 && s != spot) continue;
        any |= board->aside[s];
        board->aside[s] = false;
    }
    if (!any) return false;
    board->view.running = 1;
    bw_board_place_unit(board);
    return true;
}
