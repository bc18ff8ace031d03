/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The test report on paper: a sheet of what the break is worth and what to rehearse, a sheet of the
/// answer on the chart, and one of the standard set when it was run.
#ifndef BW_REPORT_PAGES_H
#define BW_REPORT_PAGES_H

#include "draw/sheet.h"
#include "report/test_text.h"

/// 2, or 3 with the standard set.
int bw_report_pages(const bw_report *report);

/// Draws page 1 to bw_report_pages() into `ink`. BW_NOT_FOUND: no such page; BW_NO_ROOM: ink->need
/// tells how many bytes it takes. Uses about 60 kB of stack.
bw_status bw_report_page(const bw_report *report, int page, bw_paper paper, bw_ink *ink);

#endif
