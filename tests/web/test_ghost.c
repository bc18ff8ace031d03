/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Suggested homes: seen while homes are edited, taken as an edit by hand would be, forgotten with their
/// document and their stage.
#include "harness.h"
#include "scheme/fresh.h"
#include "web/board_ghost.h"
#include "web/board_soundings.h"

static bw_board board;

static void begin(bool mirrored) {
    bw_board_reset(&board);
    bw_scheme_fresh(0, 3, &board.scheme);
    board.open = true;
    board.mirrored = mirrored;
    board.ball = board.scheme.landmarks[0].at;
    bw_board_show(&board, 1);
    bw_board_set_mode(&board, BW_BOARD_HOMES);
}

static const bw_spot *spot(int index) {
    return &board.scheme.stages[board.stage].spots[index];
}

/// A spot that is one of a pair.
static int paired(void) {
    for (int s = 0; s < board.plan.spots; s++) {
        if (spot(s)->twin >= 0 && spot(s)->twin != s) return s;
    }
    return -1;
}

static bw_vec beside(int index, double by) {
    return bw_add(spot(index)->home, bw_v(0, by * BW_METRES_PER_YARD));
}

static int dashes(void) {
    int count = 0;
    bw_board_draw(&board, 500, 500);
    const bw_ink *ink = (const bw_ink *)board.page;
    for (const bw_ink_item *i = bw_ink_first(ink); i; i = bw_ink_next(ink, i))
        count += i->kind == BW_INK_STROKE && i->role == BW_ROLE_SOFT_LINE && i->dash[1] > 0;
    return count;
}

/// One ring for each suggestion that is not where he stands; none in another mode or stage.
static void rings_are_drawn_where_homes_are_edited(void) {
    begin(true);
    bw_board_say(&board);
    const int none = dashes();
    const int one = paired();
    bw_board_suggest(&board, one, beside(one, 1));
    bw_board_suggest(&board, spot(one)->twin, beside(spot(one)->twin, 1));
    for (int s = 0; s < board.plan.spots; s++) {
        if (s != one && s != spot(one)->twin) bw_board_suggest(&board, s, beside(s, 0));
    }
    bw_board_say(&board);
    CHECK_INT(board.view.ghosts, 2);
    CHECK_INT(dashes(), none + 2);
    bw_board_set_mode(&board, BW_BOARD_PLAY);
    bw_board_say(&board);
    CHECK_INT(dashes(), none);
    bw_board_set_mode(&board, BW_BOARD_HOMES);
    bw_board_show(&board, 0);
    bw_board_say(&board);
    CHECK_INT(board.view.ghosts, 0);
    CHECK(!bw_board_take_home(&board, 0));
    bw_board_show(&board, 1);
    bw_board_say(&board);
    CHECK_INT(board.view.ghosts, 2);
    bw_board_put_away(&board);
    bw_board_say(&board);
    CHECK_INT(board.view.ghosts, 0);
}

/// Taken, both of a pair stand as suggested and the ring is gone, whether edits are mirrored or not.
static void a_pair_is_taken_together(void) {
    for (int mirrored = 0; mirrored < 2; mirrored++) {
        begin(mirrored != 0);
        const int one = paired(), other = spot(one)->twin;
        const bw_vec new_one = beside(one, 1), new_other = beside(other, mirrored ? 1 : 2);
        bw_board_suggest(&board, one, new_one);
        bw_board_suggest(&board, other, new_other);
        CHECK(bw_board_take_home(&board, one));
        CHECK_NEAR(spot(one)->home.y, new_one.y, 1e-9);
        CHECK_NEAR(spot(other)->home.y, new_other.y, 1e-9);
        CHECK_NEAR(spot(other)->home.x, new_other.x, 1e-9);
        bw_vec home;
        CHECK(!bw_board_suggestion(&board, one, &home) &&
              !bw_board_suggestion(&board, other, &home));
    }
}

/// Edits are edits of homes: taking switches to them. What is no spot is let be.
static void what_is_not_there_is_let_be(void) {
    begin(true);
    const int one = paired();
    bw_board_suggest(&board, -1, bw_v(0, 0));
    bw_board_suggest(&board, BW_MAX_SPOTS, bw_v(0, 0));
    CHECK(!bw_board_take_home(&board, one) && !bw_board_take_home(&board, -1));
    bw_board_suggest(&board, one, beside(one, 1));
    bw_board_set_mode(&board, BW_BOARD_PLAY);
    CHECK(bw_board_take_home(&board, one));
    CHECK_INT(board.mode, BW_BOARD_HOMES);
    bw_board_reset(&board);
    CHECK_INT(board.ghost_stage, 0);
}

/// Every place that can be had has its figure, and the middle the man's own mark instead.
static void soundings_have_their_figures(void) {
    begin(true);
    bw_board_soundings(&board, 0, 300); // nothing begun: nothing drawn
    const bw_vec home = spot(0)->home;
    bw_board_sound_begin(&board, home, BW_METRES_PER_YARD, 0.01);
    for (int out = -1; out <= BW_SOUNDINGS_SIDE; out++) {
        for (int across = 1; across <= BW_SOUNDINGS_SIDE; across++)
            bw_board_sound(&board, out, across, 0.001 * out);
    }
    bw_board_soundings(&board, 0, 300);
    int figures = 0, codes = 0;
    const bw_ink *ink = (const bw_ink *)board.page;
    CHECK_NEAR(ink->width, 300, 1e-9);
    for (const bw_ink_item *i = bw_ink_first(ink); i; i = bw_ink_next(ink, i)) {
        figures += i->kind == BW_INK_TEXT && i->role == BW_ROLE_TEXT;
        codes += i->kind == BW_INK_TEXT && i->role == BW_ROLE_DEFENDER_TEXT;
    }
    CHECK_INT(figures, BW_SOUNDINGS_SIDE * (BW_SOUNDINGS_SIDE - 1) - 1);
    CHECK_INT(codes, 1);
}

int main(int argc, char **argv) {
    RUN(rings_are_drawn_where_homes_are_edited);
    RUN(a_pair_is_taken_together);
    RUN(what_is_not_there_is_let_be);
    RUN(soundings_have_their_figures);
    return test_report(argc, argv);
}
