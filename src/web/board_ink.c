/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The board's chart. Like draw/scene.c it draws far to near, but what lies between the men and their
/// places is a tether (draw/marks.h), with his seconds beside him.
#include "web/board_ghost.h"
#include "web/board_ground.h"
#include "web/board_spread.h"

#include "draw/chart.h"
#include "draw/danger.h"
#include "draw/path.h"
#include "draw/people.h"
#include "scheme/caption.h"

static const double small_chart = 330; // points: a narrower chart has small marks and no figures
static const double figures_room = 15; // left and below
static const double edge = 1.5;        // right and above
static const double late_shown = 0.15; // s: less is on time
static const double ghost_share = 0.6; // of a disc: what a ghost's ring is

/// Everything one picture needs.
typedef struct sketch {
    bw_board *board;
    bw_ink *ink;
    const bw_view *view;
    bw_mark_size size;
    const bw_stage *stage;
    char words[BW_MAX_SPOTS][40]; ///< beside each man
    bw_vec at[BW_BOARD_TOKENS];   ///< the marks
} sketch;

static bool homes(const sketch *k) {
    return k->board->mode == BW_BOARD_HOMES;
}

static bw_vec man_at(const sketch *k, int spot) {
    return k->at[BW_BOARD_MEN + spot];
}

static bw_vec attacker_at(const sketch *k, int attacker) {
    return k->at[BW_BOARD_MEN + k->stage->defenders + attacker];
}

static int duty_of(const sketch *k, int spot) {
    return homes(k) ? BW_NO_DUTY : (int)k->board->station[spot].duty;
}

/// A man's duty, or, while he is late, how many seconds he is from his place.
static void put_words(sketch *k, int spot) {
    const bw_token *token = &k->board->view.token[BW_BOARD_MEN + spot];
    bw_text t = bw_text_in(k->words[spot], sizeof k->words[spot]);
    if (token->late >= late_shown) {
        bw_put_fixed(&t, token->late, 1);
        bw_put(&t, " s");
    } else {
        bw_put(&t, homes(k) ? token->name : token->duty);
    }
}

static void collect(sketch *k, bw_labels *labels) {
    const bw_board *board = k->board;
    const bw_field *field = bw_field_at(board->scheme.field);
    bw_labels_begin_chart(labels, k->view);
    if (homes(k)) bw_board_avoid_ghosts(board, k->size, labels);
    bw_labels_avoid(labels, k->at[BW_BOARD_KEEPER], bw_keeper_reach(k->size));
    bw_labels_avoid_goal(labels, field, k->view);
    const double ring = bw_board_reach(board, k->size, 0);
    if (!homes(k)) bw_labels_avoid(labels, k->at[0], bw_v(ring, ring));
    for (int a = 0; a < board->attacker_count; a++) {
        bw_labels_avoid(labels, attacker_at(k, a), bw_v(k->size.radius, k->size.radius));
        bw_labels_rival(labels, attacker_at(k, a), bw_v(k->size.radius, k->size.radius));
    }
    for (int s = 0; s < k->stage->defenders; s++) {
        const bool late = board->view.token[BW_BOARD_MEN + s].late >= late_shown;
        const bw_vec at = man_at(k, s);
        const bw_vec reach = bw_mark_reach(k->size, k->stage->spots[s].id, duty_of(k, s));
        if (bw_board_away(board, at)) continue;
        put_words(k, s);
        bw_labels_avoid(labels, at, reach);
        if (late) bw_labels_avoid_line(labels, at, bw_view_point(k->view, board->station[s].at));
        if (board->aside[s])
            bw_labels_avoid_line(labels, at, bw_view_point(k->view, board->ruled[s]));
        bw_labels_add(labels, k->words[s], late ? BW_BOLD : BW_REGULAR, k->size.label,
                      late ? BW_ROLE_ACCENT : BW_ROLE_TEXT, at, reach);
    }
}

/// Named places of the ball: a small dot each.
static void draw_landmarks(const sketch *k) {
    bw_ink_fill(k->ink, BW_ROLE_BALL);
    for (int l = 0; l < k->board->scheme.landmark_count; l++)
        bw_path_circle(k->ink, bw_view_point(k->view, k->board->scheme.landmarks[l].at), 1.7);
}

static void draw_tethers(const sketch *k) {
    for (int s = 0; s < k->stage->defenders; s++) {
        const double late = k->board->view.token[BW_BOARD_MEN + s].late;
        if (late < late_shown) continue;
        bw_mark_tether(k->ink, k->size, man_at(k, s),
                       bw_view_point(k->view, k->board->station[s].at), late);
    }
}

/// Where the scheme has those who are moved by hand, and that they are away from there.
static void draw_aside(const sketch *k) {
    const bw_mark_size ghost = {.radius = k->size.radius / ghost_share};
    for (int s = 0; s < k->stage->defenders; s++) {
        if (!k->board->aside[s]) continue;
        const bw_vec from = bw_view_point(k->view, k->board->ruled[s]);
        bw_mark_ghost(k->ink, ghost, from);
        bw_mark_route(k->ink, BW_ROUTE_RUN, from, man_at(k, s), k->size.radius, k->size.radius + 2,
                      true);
    }
}

static void draw_people(const sketch *k) {
    const bw_board *board = k->board;
    bw_chart_people people = {.size = k->size,
                              .keeper = k->at[BW_BOARD_KEEPER],
                              .ring = bw_board_ball_ring(k->size), // it can be taken hold of
                              .ring_width = 1.1};
    for (int a = 0; a < board->attacker_count; a++)
        bw_people_attacker(&people, attacker_at(k, a));
    for (int s = 0; s < k->stage->defenders; s++)
        bw_people_defender(&people,
                           (bw_chart_man){.at = man_at(k, s),
                                          .code = k->stage->spots[s].id,
                                          .duty = duty_of(k, s),
                                          .pinned = board->view.token[BW_BOARD_MEN + s].pinned});
    if (!homes(k)) bw_people_ball(&people, k->at[0]);
    bw_draw_people(k->ink, &people);
}

/// Page point of its place.
static bw_vec true_at(const sketch *k, const bw_token *token) {
    switch ((bw_token_kind)token->kind) {
    case BW_TOKEN_KEEPER: return k->at[BW_BOARD_KEEPER];
    case BW_TOKEN_DEFENDER: return bw_view_point(k->view, k->board->shown[token->index].at);
    case BW_TOKEN_ATTACKER: return bw_view_point(k->view, k->board->attackers[token->index]);
    case BW_TOKEN_BALL: break;
    }
    return k->at[0];
}

static void place_tokens(const sketch *k) {
    bw_board_view *view = &k->board->view;
    for (int i = 0; i < view->token_count; i++) {
        bw_token *token = &view->token[i];
        const bw_vec p = k->at[i], place = true_at(k, token);
        token->px = p.x;
        token->py = p.y;
        token->at_x = place.x;
        token->at_y = place.y;
        token->reach = bw_board_reach(k->board, k->size, i);
        token->away = bw_board_away(k->board, place);
    }
}

/// The chart no larger than asked for, with room for its border and its figures.
static void fit(bw_board *board, double x, double y, double width, double height, bool figures) {
    const bw_window window = bw_board_window(board);
    const double room = figures ? figures_room : edge;
    const double aside = room + edge + 2 * BW_BORDER;
    const double inner = bw_min(width - aside, bw_view_width(window, height - aside));
    board->chart =
        bw_view_fit(window, x + room + BW_BORDER, y + edge + BW_BORDER, bw_max(inner, 60));
    board->view.width = board->chart.box.width + aside;
    board->view.height = board->chart.box.height + aside;
}

static void draw_marks(sketch *k) {
    bw_board *board = k->board;
    bw_labels labels;
    bw_board_spread(board, k->size, k->at);
    collect(k, &labels);
    bw_labels_place(&labels);
    bw_labels_leave_out(&labels);
    if (board->danger)
        bw_draw_figures(k->ink, &board->depths, &labels, board->scheme.units, k->view);
    const bw_box *box = &k->view->box;
    bw_ink_clip(k->ink, box->x, box->y, box->width, box->height);
    if (!homes(k)) draw_landmarks(k);
    draw_tethers(k);
    draw_aside(k);
    if (homes(k)) bw_board_draw_ghosts(board, k->size, k->ink);
    bw_labels_draw(k->ink, &labels);
    draw_people(k);
    bw_ink_unclip(k->ink);
    place_tokens(k);
}

void bw_board_draw_at(bw_board *board, bw_ink *ink, double x, double y, double width, double height,
                      int parts) {
    const bool large = width >= small_chart;
    fit(board, x, y, width, height, large);
    bw_board_survey(board, large);
    if (parts & BW_PART_GROUND) bw_board_draw_ground(board, ink, large);
    sketch k = {.board = board,
                .ink = ink,
                .view = &board->chart,
                .size = large ? bw_marks_large() : bw_marks_small(),
                .stage = &board->scheme.stages[board->stage]};
    if (parts & BW_PART_MARKS) draw_marks(&k);
}

void bw_board_draw_part(bw_board *board, double width, double height, int parts) {
    if (!board->open) return;
    bw_ink *ink = bw_ink_in(board->page, sizeof board->page);
    ink->lines = board->lines;
    bw_ink_page(ink, 1, 1);
    bw_board_draw_at(board, ink, 0, 0, width, height, parts);
    ink->width = board->view.width;
    ink->height = board->view.height;
}

void bw_board_draw(bw_board *board, double width, double height) {
    bw_board_draw_part(board, width, height, BW_PART_GROUND | BW_PART_MARKS);
}
