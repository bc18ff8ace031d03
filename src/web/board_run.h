/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The unit running after the ball, and standing where it belongs.
#ifndef BW_WEB_BOARD_RUN_H
#define BW_WEB_BOARD_RUN_H

#include "web/board_state.h"

/// Lets `seconds` go by, at most a quarter of one at a time.
void bw_board_run(bw_board *board, double seconds);

/// Puts everyone where he belongs at once.
void bw_board_settle(bw_board *board);

/// Steps of reaction and everything else that follows from scheme, stage and attackers. Private to
/// the board's own files.
void bw_board_prepare(bw_board *board);

/// Where everyone belongs, for the ball and the attackers as they are, and who is moved where he was
/// put. Private likewise.
void bw_board_place_unit(bw_board *board);

#endif
