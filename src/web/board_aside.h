/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Men moved by hand while nobody edits: a "what if" on the screen alone. Everybody else follows the
/// rule; one who was moved goes back when the ball is moved, when anything is edited, or when called.
/// From there his new place can be made the scheme's: by his home, or by a pin.
#ifndef BW_WEB_BOARD_ASIDE_H
#define BW_WEB_BOARD_ASIDE_H

#include "web/board.h"

/// The man of a spot stands at this place on the field for now.
void bw_board_put_aside(bw_board *board, int spot, bw_vec at);

/// The man of a spot, or with -1 everybody, runs back to where the scheme has him. True when somebody
/// had been moved.
bool bw_board_call_back(bw_board *board, int spot);

/// Nobody is moved any more; where they stand is the caller's.
void bw_board_forget_aside(bw_board *board);

/// Moves the home of a man who is moved for now so that the scheme has him there with the ball where it
/// is, by the rounding of a home at most. False, and nothing is changed, when no home does that: he has
/// a duty whose place the rule's numbers decide, or a pin.
bool bw_board_home_here(bw_board *board, int spot);

/// Whether his duty now is one whose place his home decides.
bool bw_board_home_counts(const bw_board *board, int spot);

/// Pins a man who is moved for now where he is for the ball at a landmark; the ball goes there.
bool bw_board_pin_here(bw_board *board, int spot, int landmark);

/// The landmark nearest to the ball.
int bw_board_nearest(const bw_board *board);

#endif
