/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Making the place of a man who is moved for now (board_aside.h) the scheme's: by his home, or by a pin.
#ifndef BW_WEB_BOARD_ADOPT_H
#define BW_WEB_BOARD_ADOPT_H

#include "web/board.h"

/// Moves the home of a man who is moved for now so that the scheme has him there with the ball where it
/// is, by the rounding of a home at most. False, and nothing is changed, when no home does that: he has
/// a duty whose place the rule's numbers decide, or a pin.
bool bw_board_home_here(bw_board *board, int spot);

/// Whether his duty now is one whose place his home decides.
bool bw_board_home_counts(const bw_board *board, int spot);

/// Pins a man who is moved for now where he is for the ball at a landmark; the ball goes there.
bool bw_board_pin_here(bw_board *board, int spot, int landmark);

#endif
