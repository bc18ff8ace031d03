/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What lies under the marks. Private to the board's own files.
#ifndef BW_WEB_BOARD_GROUND_H
#define BW_WEB_BOARD_GROUND_H

#include "web/board.h"

/// Notices whether the ground of the chart as it is fitted now is another than before; then
/// view.ground counts on, and the danger of a shot, when it is shown, is sampled anew.
void bw_board_survey(bw_board *board, bool figures);

/// Paper, depths, field lines and border.
void bw_board_draw_ground(const bw_board *board, bw_ink *ink, bool figures);

#endif
