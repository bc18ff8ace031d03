/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Wall sheets: one poster for each stage, to be read from three metres.
#ifndef BW_REPORT_WALL_H
#define BW_REPORT_WALL_H

#include "report/teach.h"

/// Smallest type on it: read from 3 m it takes letters about 8 mm tall (assumed: a legible letter is
/// 1/400 of the distance), which this font has at 29 pt.
#define BW_WALL_TYPE 29.0

/// One a stage. Tabloid (11 x 17 in) where the paper is Letter, A3 where it is A4.
int bw_wall_pages(const bw_teach *teach);
bw_status bw_wall_page(const bw_teach *teach, int page, int pages, bw_ink *ink);

#endif
