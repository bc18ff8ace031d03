/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The picture of where a yard matters round one suggested home, filled by the page place by place.
#ifndef BW_WEB_BOARD_SOUNDINGS_H
#define BW_WEB_BOARD_SOUNDINGS_H

#include "web/board.h"

/// Begins a picture without a figure yet, round a home, metres, its places `step` metres apart; costs up
/// to `flat` goals a break are chance.
void bw_board_sound_begin(bw_board *board, bw_vec home, double step, double flat);

/// What a place costs, goals a break. A place that is none is let be.
void bw_board_sound(bw_board *board, int out, int across, double cost);

/// Draws it, `width` points wide, with a spot's mark in the middle, into board->page.
void bw_board_soundings(bw_board *board, int spot, double width);

#endif
