/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The quiz on paper: empty charts to mark, questions about duties and calls, and the key on pages of
/// its own.
#ifndef BW_REPORT_QUIZ_SHEET_H
#define BW_REPORT_QUIZ_SHEET_H

#include "report/teach.h"

int bw_quiz_pages(const bw_teach *teach);

/// Draws page 1 to `pages`, which is bw_quiz_pages(). BW_NOT_FOUND: no such page; BW_NO_ROOM as
/// everywhere.
bw_status bw_quiz_page(const bw_teach *teach, int page, int pages, bw_ink *ink);

#endif
