/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Where the marks of the board are drawn. On a small chart people who stand near each other would cover
/// one another; their marks give way, each as little as it must. The ball and the goalkeeper stay where they
/// are. Places in words and numbers are the true ones always.
#ifndef BW_WEB_BOARD_SPREAD_H
#define BW_WEB_BOARD_SPREAD_H

#include "draw/marks.h"
#include "web/board.h"

/// Radius of the ball's wider ring, which says that it can be taken hold of, points.
double bw_board_ball_ring(bw_mark_size size);

/// Half the mark's size with its pattern, points: what the ring of a picked token goes round.
double bw_board_reach(const bw_board *board, bw_mark_size size, int token);

/// The page point of each token's mark, on board->chart.
void bw_board_spread(const bw_board *board, bw_mark_size size, bw_vec at[BW_BOARD_TOKENS]);

#endif
