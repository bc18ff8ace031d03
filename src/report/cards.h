/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Pocket cards: one for each spot of each stage, several to a sheet with cut marks round them. The front
/// has the ball places by number, and for each what he does and where; the back, for turning the sheet
/// over its long edge, the same as small pictures.
#ifndef BW_REPORT_CARDS_H
#define BW_REPORT_CARDS_H

#include "report/teach.h"

/// ID-1, the size of a bank card (ISO/IEC 7810), points.
#define BW_CARD_WIDTH (85.6 * 72 / 25.4)
#define BW_CARD_HEIGHT (54 * 72 / 25.4)

/// Cards to a sheet; 0 when not one fits, or one is too small for its words.
int bw_cards_on_sheet(const bw_teach *teach);

/// Sheets, fronts and backs in turn: an even number.
int bw_cards_pages(const bw_teach *teach);

/// Draws page 1 to `pages`. BW_NOT_FOUND: no such page, or no card fits; BW_NO_ROOM as everywhere.
bw_status bw_cards_page(const bw_teach *teach, int page, int pages, bw_ink *ink);

#endif
