/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What the files of the tuning's sheets share. Private to tune_*.c.
#ifndef BW_REPORT_TUNE_PART_H
#define BW_REPORT_TUNE_PART_H

#include "report/tune_report.h"

void bw_tune_page_homes(const bw_tune_report *r, bw_sheet *sheet);
void bw_tune_page_rule(const bw_tune_report *r, bw_sheet *sheet);

#endif
