/* SPDX-License-Identifier: GPL-3.0-or-later */
/// All marks are pushed at once, a few rounds, so that no order of theirs decides and mirrored charts come
/// out mirrored.
#include "web/board_spread.h"

#include "draw/keeper.h"
#include "draw/metrics.h"

enum { ROUNDS = 40 };

static const double halo = 0.8;      // round a man's pattern (draw/marks.c)
static const double line = 1;        // half the ball's ring where lines are thick
static const double picked_ring = 2; // beyond a mark, as the page draws it
static const double relaxed = 0.6;   // share of a push done in a round
static const double sideways = 0.15; // of a push's length

typedef struct mark {
    bw_vec true_at, at, letters; ///< letters: half their width and height
    double body, reach;          ///< radii: of the disc, and of all that is drawn round it
    bool there, fixed;
} mark;

double bw_board_ball_ring(bw_mark_size size) {
    return size.radius * 0.85;
}

static const bw_stage *stage_of(const bw_board *board) {
    return &board->scheme.stages[board->stage];
}

static bw_token_kind kind_of(const bw_board *board, int token) {
    if (token == 0) return BW_TOKEN_BALL;
    if (token == BW_BOARD_KEEPER) return BW_TOKEN_KEEPER;
    return token < BW_BOARD_MEN + stage_of(board)->defenders ? BW_TOKEN_DEFENDER
                                                             : BW_TOKEN_ATTACKER;
}

static const char *code_of(const bw_board *board, int token) {
    if (kind_of(board, token) == BW_TOKEN_DEFENDER)
        return stage_of(board)->spots[token - BW_BOARD_MEN].id;
    return "0"; // of an attacker: figures are all as wide
}

static bw_vec true_place(const bw_board *board, bw_mark_size size, int token) {
    const bool homes = board->mode == BW_BOARD_HOMES;
    const bw_view *view = &board->chart;
    const int man = token - BW_BOARD_MEN;
    switch (kind_of(board, token)) {
    case BW_TOKEN_KEEPER:
        return bw_keeper_point(view, bw_field_at(board->scheme.field), size,
                               homes ? 0 : board->ball.x);
    case BW_TOKEN_DEFENDER: return bw_view_point(view, board->shown[man].at);
    case BW_TOKEN_ATTACKER:
        return bw_view_point(view, board->attackers[man - stage_of(board)->defenders]);
    case BW_TOKEN_BALL: break;
    }
    return bw_view_point(view, board->ball);
}

double bw_board_reach(const bw_board *board, bw_mark_size size, int token) {
    const bool homes = board->mode == BW_BOARD_HOMES;
    switch (kind_of(board, token)) {
    case BW_TOKEN_BALL: return bw_board_ball_ring(size) + line;
    case BW_TOKEN_KEEPER: return bw_keeper_reach(size).x;
    case BW_TOKEN_ATTACKER: break;
    case BW_TOKEN_DEFENDER:
        return bw_mark_reach(size, code_of(board, token),
                             homes ? BW_NO_DUTY : (int)board->station[token - BW_BOARD_MEN].duty)
            .x;
    }
    return size.radius;
}

static mark mark_of(const bw_board *board, bw_mark_size size, int token) {
    const bw_token_kind kind = kind_of(board, token);
    mark m = {.true_at = true_place(board, size, token), .body = size.radius};
    m.at = m.true_at;
    m.reach = bw_board_reach(board, size, token);
    m.fixed = kind == BW_TOKEN_BALL || kind == BW_TOKEN_KEEPER;
    m.there =
        !bw_board_away(board, m.at) && !(kind == BW_TOKEN_BALL && board->mode == BW_BOARD_HOMES);
    m.letters = bw_v(bw_width(code_of(board, token), size.type) / 2, size.type * BW_CAP_HEIGHT / 2);
    if (kind == BW_TOKEN_KEEPER) m.body = m.reach;
    if (kind == BW_TOKEN_DEFENDER) {
        m.body = bw_mark_reach(size, code_of(board, token), BW_NO_DUTY).x;
        m.reach += halo;
    }
    return m;
}

/// Points that `a` and `b` are too near each other; at most 0 when they are not.
static double too_near(const mark *a, const mark *b) {
    return bw_max(a->reach + b->body, a->body + b->reach) - bw_distance(a->at, b->at);
}

/// Points from the ball's ring, and the ring of a picked ball, to a man's letters.
static double too_near_ball(const mark *ball, const mark *man) {
    const double x = bw_max(0, bw_abs(ball->at.x - man->at.x) - man->letters.x);
    const double y = bw_max(0, bw_abs(ball->at.y - man->at.y) - man->letters.y);
    return ball->reach + picked_ring - bw_length(bw_v(x, y));
}

/// -1 or 1: away from the centre line, to the right on it.
static double outward(const bw_board *board, const mark *m) {
    return m->at.x < board->chart.origin.x ? -1 : 1;
}

/// The way from `a` to `b`, a little more across the field than it is, so that a file of men gives way
/// sideways, where there is room. Of two in one place a defender goes toward the goal, an attacker to the
/// middle; of two alike the later goes outward.
static bw_vec way(const bw_board *board, const mark *marks, int a, int b) {
    const bw_vec by = bw_sub(marks[b].at, marks[a].at);
    const double length = bw_length(by);
    if (length > 1e-6) {
        const double upper = by.y < 0 ? outward(board, &marks[b]) : -outward(board, &marks[a]);
        const double side = bw_abs(by.x) > 1e-6 ? (by.x < 0 ? -1 : 1) : upper;
        const bw_vec bent = bw_v(by.x + sideways * side * length, by.y);
        return bw_scale(bent, 1 / bw_length(bent));
    }
    const bw_token_kind ours = kind_of(board, a), theirs = kind_of(board, b);
    if (ours == theirs) return bw_v((b > a ? 1 : -1) * outward(board, &marks[b]), 0);
    if (theirs == BW_TOKEN_DEFENDER) return bw_v(0, 1);
    return ours == BW_TOKEN_DEFENDER ? bw_v(0, -1) : bw_v(-outward(board, &marks[b]), 0);
}

static bw_vec push_on(const bw_board *board, const mark *marks, int count, int i) {
    bw_vec sum = {0, 0};
    for (int j = 0; j < count; j++) {
        if (j == i || !marks[j].there) continue;
        const double deficit =
            j == 0 ? too_near_ball(&marks[0], &marks[i]) : too_near(&marks[i], &marks[j]);
        if (deficit <= 0) continue;
        const double share = marks[j].fixed ? 1 : 0.5;
        sum = bw_add(sum, bw_scale(way(board, marks, j, i), share * deficit));
    }
    return sum;
}

/// Inside the picture as far as its true place is.
static double held(double at, double true_at, double low, double high) {
    return bw_clamp(at, bw_min(low, true_at), bw_max(high, true_at));
}

void bw_board_spread(const bw_board *board, bw_mark_size size, bw_vec at[BW_BOARD_TOKENS]) {
    mark marks[BW_BOARD_TOKENS];
    bw_vec push[BW_BOARD_TOKENS];
    const int count = BW_BOARD_MEN + stage_of(board)->defenders + board->attacker_count;
    const bw_box *box = &board->chart.box;
    for (int i = 0; i < count; i++)
        marks[i] = mark_of(board, size, i);
    for (int round = 0; round < ROUNDS; round++) {
        for (int i = BW_BOARD_MEN; i < count; i++)
            push[i] = marks[i].there ? push_on(board, marks, count, i) : bw_v(0, 0);
        for (int i = BW_BOARD_MEN; i < count; i++) {
            mark *m = &marks[i];
            const bw_vec to = bw_add(m->at, bw_scale(push[i], relaxed));
            m->at.x = held(to.x, m->true_at.x, box->x + m->reach, box->x + box->width - m->reach);
            m->at.y = held(to.y, m->true_at.y, box->y + m->reach, box->y + box->height - m->reach);
        }
    }
    for (int i = 0; i < count; i++)
        at[i] = marks[i].at;
}
