/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The rule of the stage shown, as knobs that a person turns: limits, steps, unit and meaning come
/// with each, in the people's unit.
#ifndef BW_WEB_BOARD_RULE_H
#define BW_WEB_BOARD_RULE_H

#include "web/board.h"

typedef struct bw_board_knob {
    double low, high, step; ///< of a slider; the value of a file may lie between two steps
    double value;           ///< shown units, two decimals
    char key
        [BW_ID_SIZE]; ///< of the document's member it is in; "hold_at" and "crease_at" twice over
    char name[BW_NAME_SIZE];
    char unit[BW_ID_SIZE]; ///< "yd", "m", or "" for a share
    char meaning[120];
} bw_board_knob;

/// Knob number `index` of the stage shown; false past the last one.
bool bw_board_knob_at(const bw_board *board, int index, bw_board_knob *knob);

/// Turns it, held within what a file may say; the unit stands at once where the rule now puts it.
void bw_board_turn(bw_board *board, int index, double value);

/// The low pair hold while the ball is behind the goal, or not.
void bw_board_hold(bw_board *board, bool hold);

/// Who has the crease: BW_CREASE_FARTHEST, BW_CREASE_NONE or a spot.
void bw_board_crease(bw_board *board, int crease);

#endif
