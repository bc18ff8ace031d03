/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Homes that the program suggests, beside today's: a dashed ring each and an arrow to it, drawn while
/// homes are edited; taken one by one, each as an edit by hand would be.
#ifndef BW_WEB_BOARD_GHOST_H
#define BW_WEB_BOARD_GHOST_H

#include "draw/label.h"
#include "draw/marks.h"
#include "web/board.h"

/// Suggests a home, metres, for a spot of the stage shown. A suggestion for another stage is forgotten.
void bw_board_suggest(bw_board *board, int spot, bw_vec home);

/// Moves a spot's home to its suggestion. His mirror image follows as edits do; with edits unlocked he
/// takes his own suggestion. Homes are edited then. False: none is suggested in the stage shown.
bool bw_board_take_home(bw_board *board, int spot);

/// Whether a suggestion for this spot of the stage shown lies elsewhere than his home, and where.
bool bw_board_suggestion(const bw_board *board, int spot, bw_vec *home);

/// Keeps words off the rings. Private to the board's own files, as is the next.
void bw_board_avoid_ghosts(const bw_board *board, bw_mark_size size, bw_labels *labels);

void bw_board_draw_ghosts(const bw_board *board, bw_mark_size size, bw_ink *ink);

#endif
