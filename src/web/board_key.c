/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The key below the chart: the marks this picture has, in as many rows as the width asks for.
#include "draw/danger.h"
#include "draw/key.h"

#include "web/board.h"

static uint32_t keys_of(const bw_board *board) {
    uint32_t keys = BW_KEY_KEEPER;
    if (board->attacker_count > 0) keys |= BW_KEY_ATTACKER;
    if (board->mode == BW_BOARD_HOMES)
        return keys | BW_KEY_DEFENDER | (board->view.ghosts > 0 ? BW_KEY_SUGGESTED : 0u);
    keys |= BW_KEY_BALL | BW_KEY_PLACE;
    keys |= board->mode == BW_BOARD_PINS ? BW_KEY_PIN : BW_KEY_TETHER;
    // Every duty there may be, whoever has it now: a key that changed under a drag could not be read.
    keys |= BW_KEY_DUTIES & ~(uint32_t)BW_KEY_DUTY_MAN;
    for (int s = 0; s < board->plan.spots; s++)
        keys |= (uint32_t)BW_KEY_DUTY_BALL << board->station[s].duty;
    return keys;
}

double bw_board_put_key(const bw_board *board, bw_ink *ink, double x, double y, double width) {
    const double tall = bw_draw_key_rows(ink, keys_of(board), x, y, width);
    if (!board->danger) return tall;
    return tall + bw_draw_danger_key_rows(ink, x + BW_KEY_INDENT, y + tall, width - BW_KEY_INDENT);
}

void bw_board_key(bw_board *board, double width) {
    if (!board->open) return;
    bw_ink *ink = bw_ink_in(board->page, sizeof board->page);
    ink->lines = board->lines;
    bw_ink_page(ink, width, 1);
    ink->height = bw_board_put_key(board, ink, 0, 0, width);
}
