/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The board in words: title, caption, and one line a token, which is the token's button and its row
/// in the table of where everyone stands.
#include "web/board_ghost.h"

#include "core/attack_set.h"
#include "scheme/caption.h"

/// Seconds before a man can be on his place: what is left of his reaction, then the run.
static double lateness(const bw_board *board, int spot) {
    if (board->mode != BW_BOARD_PLAY) return 0;
    return bw_follow_needs(board->legs, board->shown[spot], board->station[spot].at,
                           board->unseen * BW_BOARD_STEP);
}

static void put_place(bw_board *board, bw_token *token, bw_vec at) {
    const double unit = bw_board_unit(board);
    bw_text place = bw_text_in(token->place, sizeof token->place);
    token->x = bw_round_to(at.x / unit, 10);
    token->y = bw_round_to(at.y / unit, 10);
    bw_say_place(board->scheme.units, at, &place);
}

static void say_ball(bw_board *board, bw_token *token) {
    *token = (bw_token){.kind = BW_TOKEN_BALL, .twin = -1};
    put_place(board, token, board->ball);
    bw_copy(token->name, sizeof token->name, "ball");
    bw_text label = bw_text_in(token->label, sizeof token->label);
    bw_put(&label, "Ball ");
    bw_say_at(&board->scheme, board->ball, &label);
    bw_put(&label, ", ");
    bw_put(&label, token->place);
    bw_put_char(&label, '.');
}

static void say_keeper(bw_board *board, bw_token *token) {
    *token = (bw_token){.kind = BW_TOKEN_KEEPER};
    put_place(board, token, bw_board_keeper(board));
    bw_copy(token->code, sizeof token->code, "G");
    bw_copy(token->name, sizeof token->name, "goalkeeper");
    bw_copy(token->duty, sizeof token->duty, "goal");
    bw_text label = bw_text_in(token->label, sizeof token->label);
    bw_put(&label, "Goalkeeper, ");
    bw_put(&label, token->place);
    bw_put(&label, ". Goes with the ball.");
}

static void say_defender(bw_board *board, int s, bw_token *token) {
    const bw_stage *stage = &board->scheme.stages[board->stage];
    const bw_spot *spot = &stage->spots[s];
    const int landmark = bw_board_landmark(board);
    const bool home = board->mode == BW_BOARD_HOMES;
    *token = (bw_token){.kind = BW_TOKEN_DEFENDER, .index = s, .twin = spot->twin};
    token->pinned = landmark >= 0 && !home && stage->pinned[landmark][s];
    token->moved = board->aside[s];
    token->late = lateness(board, s);
    put_place(board, token, home ? spot->home : board->station[s].at);
    bw_copy(token->code, sizeof token->code, spot->id);
    bw_copy(token->name, sizeof token->name, spot->name);
    bw_copy(token->call, sizeof token->call, spot->call);
    bw_copy(token->duty, sizeof token->duty,
            home           ? "home"
            : token->moved ? "moved"
                           : bw_duty_name(board->station[s].duty));
    bw_text label = bw_text_in(token->label, sizeof token->label);
    if (home) {
        bw_say_first(spot->name, &label);
        bw_put(&label, "'s home, ");
        bw_put(&label, token->place);
        bw_put_char(&label, '.');
    } else if (token->moved) {
        bw_say_first(spot->name, &label);
        bw_put(&label, ", moved for now to ");
        bw_put(&label, token->place);
        bw_put_char(&label, '.');
    } else {
        bw_say_job(&board->scheme, board->stage, s, &board->station[s], &label);
        if (token->pinned) bw_put(&label, " Pinned here by hand.");
    }
}

static void say_attacker(bw_board *board, int a, bw_token *token) {
    *token = (bw_token){.kind = BW_TOKEN_ATTACKER, .index = a, .twin = -1};
    put_place(board, token, board->attackers[a]);
    bw_text name = bw_text_in(token->name, sizeof token->name);
    bw_put(&name, "attacker ");
    bw_put_int(&name, a + 1);
    bw_text code = bw_text_in(token->code, sizeof token->code);
    bw_put_int(&code, a + 1);
    bw_text label = bw_text_in(token->label, sizeof token->label);
    bw_say_first(token->name, &label);
    bw_put(&label, ", ");
    bw_put(&label, token->place);
    bw_put_char(&label, '.');
}

/// Who has longest to go, with his time.
static void say_last(bw_board *board) {
    bw_board_view *view = &board->view;
    int last = -1;
    for (int i = BW_BOARD_MEN; i < BW_BOARD_MEN + board->plan.spots; i++) {
        if (view->token[i].late > 0 && (last < 0 || view->token[i].late > view->token[last].late))
            last = i;
    }
    bw_text text = bw_text_in(view->last, sizeof view->last);
    if (last < 0) return;
    bw_say_first(view->token[last].name, &text);
    bw_put(&text, " is the last to be there, in ");
    bw_put_fixed(&text, view->token[last].late, 1);
    bw_put(&text, " s.");
}

static void say_title(bw_board *board) {
    const bw_stage *stage = &board->scheme.stages[board->stage];
    bw_text title = bw_text_in(board->view.title, sizeof board->view.title);
    bw_put(&title, stage->shape);
    if (*stage->call) {
        bw_put(&title, " \"");
        bw_put(&title, stage->call);
        bw_put_char(&title, '"');
    }
    if (board->mode == BW_BOARD_HOMES) {
        bw_put(&title, ", homes");
        return;
    }
    bw_put(&title, ", ball ");
    bw_say_at(&board->scheme, board->ball, &title);
}

void bw_board_say(bw_board *board) {
    bw_board_view *view = &board->view;
    if (!board->open) return;
    view->stage = board->stage;
    view->landmark = bw_board_landmark(board);
    view->mirrored = board->mirrored;
    view->mode = (int32_t)board->mode;
    view->danger = board->danger;
    view->attackers = board->attacker_count;
    view->set = board->set;
    view->own_set = board->set >= bw_attack_set_count();
    view->lines = board->lines;
    view->can_add = board->attacker_count < BW_MAX_ATTACKERS;
    view->can_keep = bw_board_can_keep(board);
    view->ghosts = 0;
    bw_vec home;
    for (int s = 0; s < board->plan.spots; s++)
        view->ghosts += bw_board_suggestion(board, s, &home);
    view->moved = 0;
    for (int s = 0; s < board->plan.spots; s++)
        view->moved += board->aside[s];
    view->zoom = board->zoom;
    view->metres = board->scheme.units == BW_METRES;
    view->token_count = BW_BOARD_MEN + board->plan.spots + board->attacker_count;
    say_ball(board, &view->token[0]);
    say_keeper(board, &view->token[BW_BOARD_KEEPER]);
    for (int s = 0; s < board->plan.spots; s++)
        say_defender(board, s, &view->token[BW_BOARD_MEN + s]);
    for (int a = 0; a < board->attacker_count; a++)
        say_attacker(board, a, &view->token[BW_BOARD_MEN + board->plan.spots + a]);
    say_title(board);
    say_last(board);
    bw_text caption = bw_text_in(view->caption, sizeof view->caption);
    if (board->mode == BW_BOARD_HOMES)
        bw_put(&caption,
               view->ghosts > 0
                   ? "Where everyone stands before the ball pulls anyone anywhere, and an "
                     "arrow to the dashed ring where the suggestion would be."
                   : "Where everyone stands before the ball pulls anyone anywhere.");
    else
        bw_say_unit(&board->scheme, board->stage, board->station, board->ball, &caption);
}
