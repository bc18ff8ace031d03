/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The unit running after the ball. As in a break (core/run.c): the men see the ball late by the
/// level's reaction, their last effort going on meanwhile, and then run to their places (core/follow.h).
#include "web/board_run.h"

#include "core/level.h"

static const double longest = 0.25; // s: a page that was not shown does not catch up

/// Those who are moved by hand stay there.
static void hold_aside(const bw_board *board, bw_station *stations) {
    for (int s = 0; s < board->plan.spots; s++) {
        if (board->aside[s]) stations[s].at = board->aside_at[s];
    }
}

void bw_board_place_unit(bw_board *board) {
    bw_where(&board->plan, board->ball, board->attackers, board->attacker_count, board->station);
    for (int s = 0; s < board->plan.spots; s++)
        board->ruled[s] = board->station[s].at;
    hold_aside(board, board->station);
}

void bw_board_prepare(bw_board *board) {
    const bw_level *level = bw_level_at(board->scheme.level);
    bw_plan_build(&board->scheme, board->stage, &board->plan);
    board->legs = level->defender;
    const int delay = bw_follow_delay(level, board->attacker_count, board->plan.spots);
    board->delay = delay < BW_BOARD_PAST - 1 ? delay : BW_BOARD_PAST - 1;
    bw_board_place_unit(board);
}

void bw_board_settle(bw_board *board) {
    bw_board_place_unit(board);
    const bw_stage *stage = &board->scheme.stages[board->stage];
    for (int s = 0; s < board->plan.spots; s++) {
        const bw_vec at =
            board->mode == BW_BOARD_HOMES ? stage->spots[s].home : board->station[s].at;
        board->body[s] = board->shown[s] = (bw_body){at, bw_v(0, 0)};
        board->effort[s] = bw_v(0, 0);
    }
    for (int i = 0; i < BW_BOARD_PAST; i++)
        board->past[i] = board->ball;
    board->newest = 0;
    board->unseen = 0;
    board->spare = 0;
    board->view.running = 0;
}

static void step(bw_board *board) {
    board->newest = (board->newest + 1) % BW_BOARD_PAST;
    board->past[board->newest] = board->ball;
    if (board->unseen > 0) board->unseen--;
    bw_station seen[BW_MAX_SPOTS];
    const int then = (board->newest + BW_BOARD_PAST - board->delay) % BW_BOARD_PAST;
    bw_where(&board->plan, board->past[then], board->attackers, board->attacker_count, seen);
    hold_aside(board, seen);
    bool running = board->unseen > 0;
    for (int s = 0; s < board->plan.spots; s++)
        running |= bw_follow(board->legs, &board->body[s], &board->effort[s], seen[s].at);
    board->view.running = running;
}

void bw_board_run(bw_board *board, double seconds) {
    if (board->mode != BW_BOARD_PLAY) {
        bw_board_settle(board);
        return;
    }
    board->spare += bw_clamp(seconds, 0, longest);
    while (board->spare >= BW_BOARD_STEP) {
        step(board);
        board->spare -= BW_BOARD_STEP;
    }
    for (int s = 0; s < board->plan.spots; s++)
        board->shown[s] = bw_advance(board->legs, board->body[s], board->effort[s], board->spare);
}
