/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Edits by hand. Private to the board's own files.
#ifndef BW_WEB_BOARD_EDIT_H
#define BW_WEB_BOARD_EDIT_H

#include "web/board.h"

/// Sets a spot's home, or pins him for the landmark the ball is at, by board->mode.
void bw_board_move_edit(bw_board *board, int spot, bw_vec at);

#endif
