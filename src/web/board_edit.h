/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Edits by hand.
#ifndef BW_WEB_BOARD_EDIT_H
#define BW_WEB_BOARD_EDIT_H

#include "web/board_state.h"

/// Takes away the pin of a spot at the landmark the ball is at, and its mirror image.
void bw_board_unpin(bw_board *board, int spot);

/// Sets a spot's home, or pins him for the landmark the ball is at, by board->mode.
void bw_board_move_edit(bw_board *board, int spot, bw_vec at);

#endif
