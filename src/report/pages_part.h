/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What the files of the test report's sheets share. Private to pages*.c.
#ifndef BW_REPORT_PAGES_PART_H
#define BW_REPORT_PAGES_PART_H

#include "draw/sheet.h"
#include "report/test_text.h"

void bw_page_worth(const bw_report *report, bw_sheet *sheet);
void bw_page_answer(const bw_report *report, bw_sheet *sheet);
void bw_page_standard(const bw_report *report, bw_sheet *sheet);

/// "model estimate" at the top right, where headings leave it room.
void bw_put_estimate(const bw_sheet *sheet);
#define BW_ESTIMATE_WIDTH 90.0

/// The same after a sheet's heading.
void bw_put_estimate_heading(const bw_sheet *sheet, const char *heading);

/// Draws the key in a line of its own at the foot of the block, which shrinks by it.
void bw_put_keys(bw_sheet *sheet, uint32_t keys);

/// Key bits of the answer's sheet: only the marks that are on it.
uint32_t bw_answer_keys(const bw_answer *answer);

/// One line of a table's cell, 10 pt.
void bw_put_cell(bw_ink *ink, bw_weight weight, bw_align align, double x, double y,
                 const char *text);

/// A thin line across the sheet at y.
void bw_put_rule(bw_ink *ink, const bw_sheet *sheet, double y);

#endif
