/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Men moved by hand while nobody edits: a "what if" on the screen alone. Everybody else follows the
/// rule; one who was moved goes back when the ball is moved, when anything is edited, or when called. board_adopt.h makes his new
/// place the scheme's.
#ifndef BW_WEB_BOARD_ASIDE_H
#define BW_WEB_BOARD_ASIDE_H

#include "web/board_state.h"

/// The man of a spot stands at this place on the field for now.
void bw_board_put_aside(bw_board *board, int spot, bw_vec at);

/// The man of a spot, or with -1 everybody, runs back to where the scheme has him. True when somebody
/// had been moved.
bool bw_board_call_back(bw_board *board, int spot);

/// Nobody is moved any more; where they stand is the caller's.
void bw_board_forget_aside(bw_board *board);

#endif
