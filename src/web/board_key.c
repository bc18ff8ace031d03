/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The key below the chart: the marks this picture has, in as many rows as the width asks for.
#include "draw/key.h"

#include "web/board.h"

static const double row = 20;   // height of one
static const double indent = 2; // left of the first entry
static const double entry_gap = 14;

static uint32_t keys_of(const bw_board *board) {
    uint32_t keys = BW_KEY_KEEPER;
    if (board->attacker_count > 0) keys |= BW_KEY_ATTACKER;
    if (board->mode == BW_BOARD_HOMES) return keys | BW_KEY_DEFENDER;
    keys |= BW_KEY_BALL;
    for (int s = 0; s < board->plan.spots; s++)
        keys |= (uint32_t)BW_KEY_DUTY_BALL << board->station[s].duty;
    return keys;
}

void bw_board_key(bw_board *board, double width) {
    if (!board->open) return;
    const uint32_t keys = keys_of(board);
    bw_ink *ink = bw_ink_in(board->page, sizeof board->page);
    bw_ink_page(ink, width, row);
    double x = indent, y = row / 2;
    for (int entry = 0; entry < BW_KEY_COUNT; entry++) {
        const uint32_t one = keys & 1u << entry;
        if (!one) continue;
        const double wide = bw_draw_key(NULL, one, 0, 0);
        if (x > indent && x + wide > width) {
            x = indent;
            y += row;
        }
        bw_draw_key(ink, one, x, y);
        x += wide + entry_gap;
    }
    ink->height = y + row / 2;
}
