/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Men moved by hand for now, and what can be made of it.
#include "harness.h"
#include "scheme/fresh.h"
#include "web/board_adopt.h"
#include "web/board_aside.h"

static bw_board board;

static void begin(int stage) {
    bw_board_reset(&board);
    bw_scheme_fresh(0, 3, &board.scheme);
    board.open = true;
    board.ball = board.scheme.landmarks[0].at;
    bw_board_show(&board, stage);
    bw_board_say(&board);
    bw_board_draw(&board, 500, 500);
}

static void move(int spot, bw_vec by) {
    bw_board_move(&board, BW_BOARD_MEN + spot, bw_add(board.station[spot].at, by));
}

/// He stands where he was put, everybody else where the scheme has him, and the scheme is as it was.
static void for_now_he_stands_there_alone(void) {
    begin(1);
    const bw_scheme was = board.scheme;
    bw_vec ruled[BW_MAX_SPOTS];
    for (int s = 0; s < board.plan.spots; s++)
        ruled[s] = board.station[s].at;
    move(2, bw_v(2, 1));
    const bw_vec at = board.station[2].at;
    CHECK(bw_distance(at, ruled[2]) > 2);
    for (int i = 0; i < 100; i++)
        bw_board_run(&board, 0.1);
    for (int s = 0; s < board.plan.spots; s++) {
        CHECK_SAME(board.shown[s].at.x, s == 2 ? at.x : ruled[s].x);
        CHECK_SAME(board.shown[s].at.y, s == 2 ? at.y : ruled[s].y);
    }
    bw_board_say(&board);
    CHECK_INT(board.view.moved, 1);
    CHECK_INT(board.view.token[BW_BOARD_MEN + 2].moved, 1);
    CHECK_TEXT(board.view.token[BW_BOARD_MEN + 2].duty, "moved");
    CHECK_SAME(board.scheme.stages[1].spots[2].home.x, was.stages[1].spots[2].home.x);
    CHECK_INT(board.scheme.stages[1].pinned[0][2], was.stages[1].pinned[0][2]);
}

/// The next ball, another stage, an edit or a call has him back at his place.
static void he_returns(void) {
    for (int how = 0; how < 4; how++) {
        begin(1);
        const bw_vec ruled = board.station[2].at;
        move(2, bw_v(2, 1));
        if (how == 0) bw_board_move(&board, 0, bw_add(board.ball, bw_v(1, 0)));
        if (how == 1) CHECK(!bw_board_call_back(&board, 1) && bw_board_call_back(&board, 2));
        if (how == 2) bw_board_set_mode(&board, BW_BOARD_HOMES);
        if (how == 3) bw_board_show(&board, 1);
        bw_board_say(&board);
        CHECK_INT(board.view.moved, 0);
        CHECK(!bw_board_call_back(&board, -1));
        if (how != 1) continue;
        CHECK_INT(board.view.running, 1); // on his own legs
        for (int i = 0; i < 100; i++)
            bw_board_run(&board, 0.1);
        CHECK_NEAR(bw_distance(board.shown[2].at, ruled), 0, 1e-9);
    }
}

/// Whoever stands where his home decides can have it moved so that he stands there for this ball; for
/// the others nothing is changed.
static void a_home_is_moved_so_that_he_stands_there(void) {
    int met = 0, refused = 0;
    for (int stage = 0; stage < 4; stage++) {
        begin(stage);
        for (int l = 0; l < board.scheme.landmark_count; l++) {
            for (int s = 0; s < board.plan.spots; s++) {
                begin(stage);
                bw_board_ball_to(&board, l);
                bw_board_settle(&board);
                move(s, bw_v(0.4, 0.5));
                const bw_vec at = board.station[s].at;
                const bool counts = bw_board_home_counts(&board, s);
                const bw_vec home = board.scheme.stages[stage].spots[s].home;
                if (bw_board_home_here(&board, s)) {
                    CHECK(counts);
                    CHECK(bw_distance(board.station[s].at, at) < 0.16);
                    CHECK_INT(board.aside[s], 0);
                    CHECK_INT(board.mode, BW_BOARD_PLAY);
                    met++;
                } else {
                    CHECK_SAME(board.scheme.stages[stage].spots[s].home.x, home.x);
                    CHECK_SAME(board.scheme.stages[stage].spots[s].home.y, home.y);
                    CHECK_SAME(board.station[s].at.x, at.x);
                    CHECK_INT(board.aside[s], 1);
                    refused += counts;
                }
            }
        }
    }
    CHECK(met > 20);
    CHECK(refused < met / 4);
}

static void a_pin_is_put_where_he_stands(void) {
    begin(1);
    bw_board_move(&board, 0, bw_add(board.scheme.landmarks[2].at, bw_v(0.7, 0.3)));
    bw_board_settle(&board);
    CHECK_INT(bw_board_landmark(&board), -1);
    CHECK_INT(bw_board_nearest(&board), 2);
    CHECK(!bw_board_pin_here(&board, 1, 2)); // he was not moved
    move(1, bw_v(1, -0.5));
    const bw_vec at = board.station[1].at;
    CHECK(!bw_board_pin_here(&board, 1, board.scheme.landmark_count));
    CHECK(bw_board_pin_here(&board, 1, 2));
    CHECK_INT(bw_board_landmark(&board), 2);
    CHECK(board.scheme.stages[1].pinned[2][1]);
    CHECK_NEAR(bw_distance(board.station[1].at, at), 0, 1e-9);
    CHECK_INT(board.mode, BW_BOARD_PLAY);
}

int main(int argc, char **argv) {
    RUN(for_now_he_stands_there_alone);
    RUN(he_returns);
    RUN(a_home_is_moved_so_that_he_stands_there);
    RUN(a_pin_is_put_where_he_stands);
    return test_report(argc, argv);
}
