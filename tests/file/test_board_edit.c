/* SPDX-License-Identifier: GPL-3.0-or-later */
/// An edit by hand on the board leaves in memory what a file of it says when it is read again.
#include "file/document.h"
#include "harness.h"
#include "scheme/fresh.h"
#include "web/board.h"

static bw_board board;

static void begin_fresh(int stage) {
    bw_board_reset(&board);
    bw_scheme_fresh(0, 3, &board.scheme);
    board.open = true;
    board.ball = board.scheme.landmarks[0].at;
    bw_board_show(&board, stage);
}

/// Places in a file have four decimals of a yard.
static void check_place(bw_vec got, bw_vec want) {
    CHECK_NEAR(got.x, want.x, 1e-4);
    CHECK_NEAR(got.y, want.y, 1e-4);
}

static void check_stage(const bw_scheme *file, const bw_scheme *memory, int g) {
    const bw_stage *a = &file->stages[g], *b = &memory->stages[g];
    for (int s = 0; s < a->defenders; s++) {
        check_place(a->spots[s].home, b->spots[s].home);
        for (int l = 0; l < file->landmark_count; l++) {
            CHECK_INT(a->pinned[l][s] != 0, b->pinned[l][s] != 0);
            if (a->pinned[l][s] && b->pinned[l][s]) check_place(a->pins[l][s], b->pins[l][s]);
        }
    }
}

/// One random edit; false when the reader refuses what came of it (two homes in one place).
static bool edit(unsigned long long *seed) {
    static bw_scheme read;
    bw_error error;
    const double x = test_uniform(seed, -9, 9);
    const bw_vec at = bw_v(x, test_uniform(seed, -4, 14));
    board.mirrored = test_random(seed) % 3 > 0;
    bw_board_set_mode(&board, test_random(seed) % 3 ? BW_BOARD_PINS : BW_BOARD_HOMES);
    bw_board_ball_to(&board, (int)(test_random(seed) % (unsigned)board.scheme.landmark_count));
    const int spot = (int)(test_random(seed) % (unsigned)board.plan.spots);
    if (board.mode == BW_BOARD_PINS && test_random(seed) % 5 == 0)
        bw_board_unpin(&board, spot);
    else
        bw_board_move(&board, BW_BOARD_MEN + spot, at);
    if (board.mode == BW_BOARD_HOMES && board.scheme.stages[board.stage].spots[spot].twin != spot)
        CHECK(bw_distance(board.scheme.stages[board.stage].spots[spot].home, at) < 0.1);
    const int length = bw_board_save(&board);
    if (bw_document_parse(board.output, (size_t)length, &read, &error) != BW_OK) return false;
    for (int g = 0; g < read.stage_count; g++)
        check_stage(&read, &board.scheme, g);
    board.scheme = read; // as the page does
    bw_board_show(&board, board.stage);
    return true;
}

static void edits_are_what_a_file_says(void) {
    unsigned long long seed = 12;
    int taken = 0;
    for (int i = 0; i < 600; i++) {
        if (i % 12 == 0) begin_fresh(i / 12 % 4);
        if (edit(&seed)) {
            taken++;
        } else {
            begin_fresh(i / 12 % 4);
        }
    }
    CHECK(taken > 500);
}

int main(int argc, char **argv) {
    RUN(edits_are_what_a_file_says);
    return test_report(argc, argv);
}
