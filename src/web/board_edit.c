/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Moving homes and pins by hand. The other side follows unless edits are unlocked, and what is left
/// in the scheme is what a file of it says when it is read again: a side the reader would mirror is
/// marked so, a side that must differ is written out.
#include "web/board_edit.h"

#include "scheme/twin.h"
#include "web/board_run.h"

static bw_stage *stage_of(bw_board *board) {
    return &board->scheme.stages[board->stage];
}

/// Pins that followed from their twins become given ones.
static void own_pins(const bw_scheme *scheme, bw_stage *stage) {
    for (int l = 0; l < scheme->landmark_count; l++) {
        for (int s = 0; s < stage->defenders; s++) {
            if (stage->pinned[l][s] == 2) stage->pinned[l][s] = 1;
        }
    }
}

/// Pins that follow from their twins, anew, as a reader finds them.
static void follow_twins(bw_board *board) {
    bw_stage *stage = stage_of(board);
    bw_find_twins(&board->scheme);
    for (int l = 0; l < board->scheme.landmark_count; l++) {
        for (int s = 0; s < stage->defenders; s++) {
            if (stage->pinned[l][s] == 2) stage->pinned[l][s] = 0;
        }
    }
    bw_mirror_pins(&board->scheme, stage);
}

static void move_home(bw_board *board, int spot, bw_vec at) {
    bw_stage *stage = stage_of(board);
    bw_spot *one = &stage->spots[spot];
    const int twin = one->twin;
    if (board->mirrored && twin >= 0) {
        if (twin == spot) at.x = 0;
        one->home = at;
        if (twin != spot) stage->spots[twin].home = bw_mirror(at);
        return;
    }
    own_pins(&board->scheme, stage);
    one->derived = 0;
    if (twin >= 0) stage->spots[twin].derived = 0;
    one->home = at;
}

/// With edits unlocked the twin must not follow: he is pinned where he stands now, for a file mirrors
/// every pin whose twin has none.
static void hold_twin(bw_board *board, int landmark, int spot) {
    bw_stage *stage = stage_of(board);
    if (!stage->pinned[landmark][spot]) {
        bw_station now[BW_MAX_SPOTS];
        bw_where(&board->plan, board->scheme.landmarks[landmark].at, NULL, 0, now);
        stage->pins[landmark][spot] = now[spot].at;
    }
    stage->pinned[landmark][spot] = 1;
}

static void pin(bw_board *board, int landmark, int spot, bw_vec at) {
    bw_stage *stage = stage_of(board);
    const int other = board->scheme.landmarks[landmark].twin, twin = stage->spots[spot].twin;
    const bool paired = other >= 0 && twin >= 0 && (other != landmark || twin != spot);
    if (paired && !board->mirrored && other != landmark) hold_twin(board, other, twin);
    stage->pinned[landmark][spot] = 1;
    stage->pins[landmark][spot] = at;
    // Away from the centre line the twin's own pin gives way; on it each man may have his own.
    if (paired && board->mirrored && other != landmark) stage->pinned[other][twin] = 0;
}

void bw_board_unpin(bw_board *board, int spot) {
    bw_stage *stage = stage_of(board);
    const int landmark = bw_board_landmark(board);
    if (landmark < 0 || spot < 0 || spot >= stage->defenders) return;
    const int other = board->scheme.landmarks[landmark].twin, twin = stage->spots[spot].twin;
    stage->pinned[landmark][spot] = 0;
    follow_twins(board);
    if (stage->pinned[landmark][spot]) { // his twin's pin would bring it back
        stage->pinned[other][twin] = stage->pinned[landmark][spot] = 0;
    }
    bw_board_prepare(board);
    bw_board_settle(board);
}

void bw_board_move_edit(bw_board *board, int spot, bw_vec at) {
    const int landmark = bw_board_landmark(board);
    if (board->mode == BW_BOARD_HOMES)
        move_home(board, spot, at);
    else if (landmark >= 0)
        pin(board, landmark, spot, at);
    follow_twins(board);
    bw_board_prepare(board);
    bw_board_settle(board);
}
