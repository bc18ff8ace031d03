/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What the page calls to turn the rule, to set up attackers of its own, to make what a man was moved to
/// for now the scheme's, and to see a part of the field larger.
#include "core/field.h"
#include "core/text.h"
#include "web/board_adopt.h"
#include "web/board_aside.h"
#include "web/board_ghost.h"
#include "web/board_soundings.h"
#include "web/export.h"
#include "web/page.h"

static bw_board_knob knob;

static bw_board *open_board(void) {
    bw_board *board = bw_page_board();
    return board->open ? board : NULL;
}

BW_EXPORT(bw_page_knob)
const bw_board_knob *bw_page_knob(int index) {
    const bw_board *board = open_board();
    return board && bw_board_knob_at(board, index, &knob) ? &knob : NULL;
}

BW_EXPORT(bw_page_turn)
void bw_page_turn(int index, double value) {
    bw_board *board = open_board();
    if (board && bw_page_number(value)) bw_board_turn(board, index, value);
}

BW_EXPORT(bw_page_hold)
void bw_page_hold(int hold) {
    bw_board *board = open_board();
    if (board) bw_board_hold(board, hold != 0);
}

BW_EXPORT(bw_page_crease)
void bw_page_crease(int crease) {
    bw_board *board = open_board();
    if (board) bw_board_crease(board, crease);
}

static const bw_rule *rule_of(const bw_board *board) {
    return &board->scheme.stages[board->stage].rule;
}

BW_EXPORT(bw_page_hold_now)
int bw_page_hold_now(void) {
    const bw_board *board = open_board();
    return board && rule_of(board)->hold_behind;
}

BW_EXPORT(bw_page_crease_now)
int bw_page_crease_now(void) {
    const bw_board *board = open_board();
    return board ? rule_of(board)->crease : BW_CREASE_NONE;
}

BW_EXPORT(bw_page_add_man)
void bw_page_add_man(void) {
    bw_board *board = open_board();
    if (board) bw_board_add_man(board);
}

BW_EXPORT(bw_page_remove_man)
void bw_page_remove_man(int attacker) {
    bw_board *board = open_board();
    if (board) bw_board_remove_man(board, attacker);
}

BW_EXPORT(bw_page_keep_set)
int bw_page_keep_set(int length) {
    bw_board *board = open_board();
    char name[BW_NAME_SIZE];
    if (!board || length < 0 || length >= (int)sizeof name) return 0;
    for (int i = 0; i < length; i++)
        name[i] = board->input[i];
    name[length] = '\0';
    return bw_board_keep_set(board, name);
}

BW_EXPORT(bw_page_drop_set)
int bw_page_drop_set(void) {
    bw_board *board = open_board();
    return board && bw_board_drop_set(board);
}

BW_EXPORT(bw_page_call_back)
int bw_page_call_back(int spot) {
    bw_board *board = open_board();
    return board && bw_board_call_back(board, spot);
}

BW_EXPORT(bw_page_home_counts)
int bw_page_home_counts(int spot) {
    const bw_board *board = open_board();
    return board && bw_board_home_counts(board, spot);
}

BW_EXPORT(bw_page_home_here)
int bw_page_home_here(int spot) {
    bw_board *board = open_board();
    return board && bw_board_home_here(board, spot);
}

BW_EXPORT(bw_page_pin_here)
int bw_page_pin_here(int spot, int landmark) {
    bw_board *board = open_board();
    return board && bw_board_pin_here(board, spot, landmark);
}

BW_EXPORT(bw_page_nearest)
int bw_page_nearest(void) {
    const bw_board *board = open_board();
    return board ? bw_board_nearest(board) : -1;
}

BW_EXPORT(bw_page_suggest)
void bw_page_suggest(int spot, double x, double y) {
    bw_board *board = open_board();
    if (!board || !bw_page_number(x) || !bw_page_number(y)) return;
    const bw_vec home = bw_scale(bw_v(x, y), bw_board_unit(board));
    bw_board_suggest(board, spot, bw_field_clamp(bw_field_at(board->scheme.field), home));
}

BW_EXPORT(bw_page_put_away)
void bw_page_put_away(void) {
    bw_board_put_away(bw_page_board());
}

BW_EXPORT(bw_page_ghost)
int bw_page_ghost(int spot) {
    const bw_board *board = open_board();
    bw_vec home;
    return board && bw_board_suggestion(board, spot, &home);
}

BW_EXPORT(bw_page_take_home)
int bw_page_take_home(int spot) {
    bw_board *board = open_board();
    return board && bw_board_take_home(board, spot);
}

BW_EXPORT(bw_page_sound_begin)
void bw_page_sound_begin(double x, double y, double step, double flat) {
    bw_board *board = open_board();
    if (!board || !bw_page_number(x) || !bw_page_number(y) || !bw_page_number(step) ||
        !bw_page_number(flat))
        return;
    const double unit = bw_board_unit(board);
    bw_board_sound_begin(board, bw_v(x * unit, y * unit), step * unit, flat);
}

BW_EXPORT(bw_page_sound)
void bw_page_sound(int out, int across, double cost) {
    bw_board *board = open_board();
    if (board && bw_page_number(cost)) bw_board_sound(board, out, across, cost);
}

BW_EXPORT(bw_page_soundings)
void bw_page_soundings(int spot, double width) {
    bw_board *board = open_board();
    if (board && width >= 100 && width <= 2000) bw_board_soundings(board, spot, width);
}

BW_EXPORT(bw_page_zoom)
void bw_page_zoom(double times, double px, double py) {
    bw_board *board = open_board();
    if (board && bw_page_number(times) && bw_page_number(px) && bw_page_number(py) && times >= 0)
        bw_board_zoom(board, times, bw_v(px, py));
}

BW_EXPORT(bw_page_pan)
void bw_page_pan(double dx, double dy) {
    bw_board *board = open_board();
    if (board && bw_page_number(dx) && bw_page_number(dy)) bw_board_pan(board, bw_v(dx, dy));
}

BW_EXPORT(bw_page_reveal)
void bw_page_reveal(int token) {
    bw_board *board = open_board();
    if (board && token >= 0 && token < board->view.token_count) bw_board_reveal(board, token);
}
