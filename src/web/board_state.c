/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "web/board_state.h"

double bw_board_unit(const bw_board *board) {
    return bw_unit_length(board->scheme.units);
}

int bw_board_landmark(const bw_board *board) {
    for (int l = 0; l < board->scheme.landmark_count; l++) {
        const bw_vec at = board->scheme.landmarks[l].at;
        if (at.x == board->ball.x && at.y == board->ball.y) return l;
    }
    return -1;
}

int bw_board_nearest(const bw_board *board) {
    int nearest = 0;
    for (int l = 1; l < board->scheme.landmark_count; l++) {
        if (bw_distance(board->scheme.landmarks[l].at, board->ball) <
            bw_distance(board->scheme.landmarks[nearest].at, board->ball))
            nearest = l;
    }
    return nearest;
}

void bw_board_put_away(bw_board *board) {
    board->ghost_stage = 0;
    for (int s = 0; s < BW_MAX_SPOTS; s++)
        board->ghosted[s] = false;
}
