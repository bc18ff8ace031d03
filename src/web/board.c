/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Opening, saving, choosing what is shown, and putting ball and attackers somewhere.
#include "web/board.h"

#include "core/level.h"
#include "draw/keeper.h"
#include "scheme/read.h"
#include "scheme/tree_build.h"
#include "scheme/write.h"
#include "web/board_aside.h"

void bw_board_reset(bw_board *board) {
    board->open = false;
    board->mirrored = true;
    board->danger = false;
    board->mode = BW_BOARD_PLAY;
    board->attacker_count = 0;
    board->set = BW_SET_NONE;
    board->zoom = 1;
    board->lines = BW_RUN_SOLID;
    board->shots_level = board->shots_field = -1;
    board->surveyed = 0;
    board->view = (bw_board_view){.stage = -1, .landmark = -1, .mirrored = 1};
    bw_board_put_away(board);
    bw_board_forget_aside(board);
    bw_tree_begin(&board->tree);
}

/// A place on the field a person can name: tenths of the shown unit. Odd in x.
static bw_vec tidy(const bw_board *board, bw_vec at) {
    const double unit = bw_board_unit(board);
    const bw_field *field = bw_field_at(board->scheme.field);
    const bw_vec held = bw_field_clamp(field, at);
    // What a file with these tenths would be read as, to the last bit.
    const bw_vec round =
        bw_v(bw_round_to(held.x / unit, 10) * unit, bw_round_to(held.y / unit, 10) * unit);
    return bw_field_clamp(field, round);
}

static int start_landmark(const bw_scheme *scheme) {
    int highest = 0;
    for (int l = 1; l < scheme->landmark_count; l++) {
        const bw_vec a = scheme->landmarks[l].at, b = scheme->landmarks[highest].at;
        if (a.y > b.y || (a.y == b.y && bw_abs(a.x) < bw_abs(b.x))) highest = l;
    }
    return highest;
}

bw_status bw_board_take(bw_board *board, bool keep) {
    if (!bw_tree_finish(&board->tree)) {
        board->error = board->tree.error;
        return board->error.status;
    }
    const bw_status status = bw_scheme_read(&board->tree, &board->reading, &board->error);
    if (status != BW_OK) return status;
    const int defenders =
        keep && board->open ? board->scheme.stages[board->stage].defenders : BW_MAX_SPOTS - 2;
    board->scheme = board->reading;
    int stage = bw_scheme_stage(&board->scheme, defenders);
    if (stage < 0) stage = 0;
    if (!keep || !board->open) {
        board->attacker_count = 0;
        board->set = BW_SET_NONE;
        board->zoom = 1;
        bw_board_put_away(board);
        board->ball = board->scheme.landmarks[start_landmark(&board->scheme)].at;
    }
    board->open = true;
    board->ball = bw_field_clamp(bw_field_at(board->scheme.field), board->ball);
    bw_board_show(board, stage);
    const int found = bw_scheme_lint(&board->scheme, board->findings, BW_MAX_FINDINGS);
    board->view.finding_count = found < BW_MAX_FINDINGS ? found : BW_MAX_FINDINGS;
    return BW_OK;
}

int bw_board_save(bw_board *board) {
    bw_text out = bw_text_in(board->output, sizeof board->output);
    bw_scheme_write(&board->scheme, &out);
    BW_ASSERT(!out.full); // a scheme that could be read is smaller than a file may be
    return (int)out.used;
}

void bw_board_show(bw_board *board, int stage) {
    BW_ASSERT(stage >= 0 && stage < board->scheme.stage_count);
    board->stage = stage;
    bw_board_forget_aside(board);
    bw_board_prepare(board);
    bw_board_settle(board);
}

void bw_board_set_mode(bw_board *board, bw_board_mode mode) {
    board->mode = mode;
    bw_board_forget_aside(board);
    if (mode == BW_BOARD_PINS) // a pin belongs to a landmark
        bw_board_ball_to(board, bw_board_nearest(board));
    bw_board_settle(board);
}

static void throw_ball(bw_board *board, bw_vec at) {
    bw_board_call_back(board, -1);
    if (at.x == board->ball.x && at.y == board->ball.y) return;
    board->ball = at;
    board->unseen = board->delay + 1;
    board->view.running = board->mode == BW_BOARD_PLAY;
    bw_board_place_unit(board);
}

void bw_board_ball_to(bw_board *board, int landmark) {
    BW_ASSERT(landmark >= 0 && landmark < board->scheme.landmark_count);
    throw_ball(board, board->scheme.landmarks[landmark].at);
}

void bw_board_move(bw_board *board, int token, bw_vec at) {
    const int spots = board->scheme.stages[board->stage].defenders;
    BW_ASSERT(token >= 0 && token < BW_BOARD_MEN + spots + board->attacker_count);
    at = tidy(board, at);
    if (token == 0) {
        throw_ball(board, at);
        if (board->mode == BW_BOARD_PINS) bw_board_set_mode(board, BW_BOARD_PINS);
    } else if (token == BW_BOARD_KEEPER) {
        return;
    } else if (token >= BW_BOARD_MEN + spots) {
        board->attackers[token - BW_BOARD_MEN - spots] = at;
        board->set = BW_SET_OWN;
        board->view.running = board->mode == BW_BOARD_PLAY;
        bw_board_place_unit(board);
    } else if (board->mode == BW_BOARD_PLAY) {
        bw_board_put_aside(board, token - BW_BOARD_MEN, at);
    } else {
        bw_board_move_edit(board, token - BW_BOARD_MEN, at);
    }
}

bw_vec bw_board_keeper(const bw_board *board) {
    const bool homes = board->mode == BW_BOARD_HOMES; // the ball is not shown
    return bw_v(bw_keeper_side(bw_field_at(board->scheme.field), homes ? 0 : board->ball.x), 0);
}

/// Where a token is moved from.
static bw_vec place_of(const bw_board *board, int token) {
    const bw_stage *stage = &board->scheme.stages[board->stage];
    if (token == 0) return board->ball;
    if (token == BW_BOARD_KEEPER) return bw_board_keeper(board);
    const int man = token - BW_BOARD_MEN;
    if (man >= stage->defenders) return board->attackers[man - stage->defenders];
    return board->mode == BW_BOARD_HOMES ? stage->spots[man].home : board->station[man].at;
}

void bw_board_drag(bw_board *board, int token, bw_vec point) {
    bw_board_move(board, token, bw_view_place(&board->chart, bw_board_inside(board, point)));
}

/// The landmark next to the ball in a direction: near, and straight that way rather than aside. Of two
/// alike the one on the right. -1: none lies that way.
static int next_landmark(const bw_board *board, bw_vec by) {
    int best = -1;
    double least = 0;
    for (int l = 0; l < board->scheme.landmark_count; l++) {
        const bw_vec at = board->scheme.landmarks[l].at, to = bw_sub(at, board->ball);
        const double ahead = (to.x * by.x + to.y * by.y) / bw_length(by);
        if (ahead <= 0.01) continue;
        const double cost = (to.x * to.x + to.y * to.y) / ahead; // its distance over the cosine
        const bool better = best < 0 || cost < least - 1e-9 ||
                            (cost < least + 1e-9 && at.x > board->scheme.landmarks[best].at.x);
        if (!better) continue;
        least = cost;
        best = l;
    }
    return best;
}

void bw_board_nudge(bw_board *board, int token, bw_vec by) {
    if (token == 0 && board->mode == BW_BOARD_PINS) {
        const int landmark = next_landmark(board, by);
        if (landmark >= 0) bw_board_ball_to(board, landmark);
        bw_board_settle(board);
    } else {
        bw_board_move(board, token, bw_add(place_of(board, token), by));
    }
}

/// The number after `word` in a JSON Pointer, -1 when it is not there.
static int number_after(const char *pointer, const char *word) {
    while (*word && *pointer == *word) {
        pointer++;
        word++;
    }
    if (*word || *pointer < '0' || *pointer > '9') return -1;
    int n = 0;
    for (; *pointer >= '0' && *pointer <= '9' && n < 1000; pointer++)
        n = 10 * n + (*pointer - '0');
    return n;
}

static int pinned_landmark(const bw_scheme *scheme, const char *pointer) {
    for (const char *p = pointer; *p; p++) {
        int i = 0;
        while (p[i] && "/pins/"[i] == p[i] && i < 6)
            i++;
        if (i < 6) continue;
        char id[BW_ID_SIZE];
        bw_text text = bw_text_in(id, sizeof id);
        for (p += 6; *p && *p != '/'; p++)
            bw_put_char(&text, *p);
        return bw_scheme_landmark(scheme, id);
    }
    return -1;
}

void bw_board_visit(bw_board *board, int finding) {
    BW_ASSERT(finding >= 0 && finding < board->view.finding_count);
    const char *pointer = board->findings[finding].pointer;
    const int stage = number_after(pointer, "/stages/");
    int landmark = number_after(pointer, "/landmarks/");
    if (landmark < 0) landmark = pinned_landmark(&board->scheme, pointer);
    if (landmark >= 0 && landmark < board->scheme.landmark_count) bw_board_ball_to(board, landmark);
    if (stage >= 0 && stage < board->scheme.stage_count)
        bw_board_show(board, stage);
    else
        bw_board_settle(board);
}
