/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The review for the board's page: its words, finished, and its plots as pictures. The page computes
/// nothing.
#ifndef BW_REPORT_REVIEW_BOARD_H
#define BW_REPORT_REVIEW_BOARD_H

#include "report/review.h"

/// Widths the pictures can be made for, points.
enum { BW_REVIEW_NARROW = 300, BW_REVIEW_WIDE = 640 };

/// {"title", "about", "parts": [{"title", "rows": [{"label", "words"}], "notes": [...], "alt",
/// "pictures": [one SVG for each theme, in the order of bw_theme_id]}]}. What a part lacks is empty.
/// False when there is no memory for the pictures.
bool bw_review_board(FILE *stream, const bw_review *r, int width);

#endif
