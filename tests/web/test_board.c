/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The board's state: men run as the motion model lets them.
#include "core/level.h"
#include "harness.h"
#include "scheme/fresh.h"
#include "web/board.h"

static bw_board board, other;

static void begin(bw_board *b, const bw_scheme *scheme, int stage) {
    bw_board_reset(b);
    b->scheme = *scheme;
    b->open = true;
    b->ball = scheme->landmarks[0].at;
    bw_board_show(b, stage);
}

static void begin_fresh(int stage) {
    static bw_scheme scheme;
    bw_scheme_fresh(0, 3, &scheme);
    begin(&board, &scheme, stage);
}

/// The level's own top speed, and its reaction before anybody moves (core/level.h).
static void runs_at_real_speed(void) {
    unsigned long long seed = 41;
    for (int stage = 0; stage < 4; stage++) {
        begin_fresh(stage);
        for (int n = 0; n < 400; n++) {
            if (n % 25 == 0)
                bw_board_move(&board, 0,
                              bw_v(test_uniform(&seed, -15, 15), test_uniform(&seed, -6, 18)));
            bw_vec was[BW_MAX_SPOTS];
            for (int s = 0; s < board.plan.spots; s++)
                was[s] = board.shown[s].at;
            const double dt = test_uniform(&seed, 0, 0.1);
            bw_board_run(&board, dt);
            for (int s = 0; s < board.plan.spots; s++) {
                const double snap = 0.051; // a man who is there is put on his place
                CHECK(bw_distance(was[s], board.shown[s].at) <= board.legs.vmax * dt + snap);
            }
        }
    }
}

static void sees_the_ball_late(void) {
    begin_fresh(1);
    const bw_vec was = board.shown[2].at;
    bw_board_move(&board, 0, bw_v(-12, -5));
    CHECK(board.delay >= 2);
    for (int i = 0; i < board.delay; i++) {
        bw_board_run(&board, BW_BOARD_STEP);
        CHECK_SAME(board.shown[2].at.x, was.x);
        CHECK_SAME(board.shown[2].at.y, was.y);
    }
    bw_board_say(&board);
    CHECK(board.view.running);
    CHECK(board.view.last[0] != '\0');
}

static void comes_to_rest_on_his_place(void) {
    begin_fresh(2);
    bw_board_move(&board, 0, bw_v(9, 3));
    for (int i = 0; i < 200 && board.view.running; i++)
        bw_board_run(&board, BW_BOARD_STEP);
    CHECK(!board.view.running);
    bw_board_say(&board);
    for (int s = 0; s < board.plan.spots; s++) {
        CHECK_SAME(board.shown[s].at.x, board.station[s].at.x);
        CHECK_SAME(board.shown[s].at.y, board.station[s].at.y);
        CHECK_SAME(board.view.token[BW_BOARD_MEN + s].late, 0);
    }
}

/// Twice as many frames show the same run: pictures may be taken at any rate.
static void does_not_mind_the_frame_rate(void) {
    begin_fresh(1);
    other = board;
    bw_board_move(&board, 0, bw_v(-11, 4));
    bw_board_move(&other, 0, bw_v(-11, 4));
    for (int i = 0; i < 60; i++) {
        bw_board_run(&board, BW_BOARD_STEP);
        bw_board_run(&other, BW_BOARD_STEP / 2);
        bw_board_run(&other, BW_BOARD_STEP / 2);
        for (int s = 0; s < board.plan.spots; s++) {
            CHECK_SAME(board.shown[s].at.x, other.shown[s].at.x);
            CHECK_SAME(board.shown[s].at.y, other.shown[s].at.y);
        }
    }
}

/// In the mouth, on the ball's side, in mirror images; his token is on his mark and never moved.
static void the_goalkeeper_goes_with_the_ball(void) {
    begin_fresh(1);
    const double post = bw_field_at(board.scheme.field)->goal / 2;
    unsigned long long seed = 3;
    for (int n = 0; n < 100; n++) {
        const double x = test_uniform(&seed, -15, 15);
        const bw_vec at = bw_v(x, test_uniform(&seed, -6, 18));
        bw_board_move(&board, 0, bw_mirror(at));
        const double other_side = bw_board_keeper(&board).x;
        bw_board_move(&board, 0, at);
        const bw_vec keeper = bw_board_keeper(&board);
        CHECK_SAME(keeper.x, -other_side);
        CHECK(bw_abs(keeper.x) < post && keeper.x * board.ball.x >= 0);
        bw_board_move(&board, BW_BOARD_KEEPER, at);
        bw_board_say(&board);
        bw_board_draw(&board, 500, 500);
        const bw_token *token = &board.view.token[BW_BOARD_KEEPER];
        CHECK_INT(token->kind, BW_TOKEN_KEEPER);
        CHECK_NEAR(token->px, bw_view_point(&board.chart, keeper).x, 1e-9);
        CHECK_SAME(bw_board_keeper(&board).x, keeper.x);
    }
}

static void runs_in_mirror_images(void) {
    static bw_scheme scheme, mirrored;
    unsigned long long seed = 5;
    bw_scheme_fresh(0, 4, &scheme);
    bw_scheme_mirror(&scheme, &mirrored);
    for (int stage = 0; stage < 4; stage++) {
        begin(&board, &scheme, stage);
        begin(&other, &mirrored, stage);
        for (int n = 0; n < 300; n++) {
            if (n % 20 == 0) {
                const double x = test_uniform(&seed, -15, 15);
                const bw_vec at = bw_v(x, test_uniform(&seed, -6, 18));
                bw_board_move(&board, 0, at);
                bw_board_move(&other, 0, bw_mirror(at));
            }
            bw_board_run(&board, 0.03);
            bw_board_run(&other, 0.03);
            for (int s = 0; s < board.plan.spots; s++) {
                CHECK_SAME(other.shown[s].at.x, -board.shown[s].at.x);
                CHECK_SAME(other.shown[s].at.y, board.shown[s].at.y);
            }
        }
    }
}

int main(int argc, char **argv) {
    RUN(runs_at_real_speed);
    RUN(sees_the_ball_late);
    RUN(comes_to_rest_on_his_place);
    RUN(does_not_mind_the_frame_rate);
    RUN(the_goalkeeper_goes_with_the_ball);
    RUN(runs_in_mirror_images);
    return test_report(argc, argv);
}
