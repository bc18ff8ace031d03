/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What the files of the review's sheets share. Private to review_*.c.
#ifndef BW_REPORT_REVIEW_PART_H
#define BW_REPORT_REVIEW_PART_H

#include "report/review.h"

void bw_review_page_shots(const bw_review *r, bw_sheet *sheet);
void bw_review_page_games(const bw_review *r, bw_sheet *sheet);

/// A row of the dot plot.
typedef struct bw_plot_row {
    const char *label;
    bw_count seen;
    double expected;     ///< goals the model forecast in `forecast` of its cases
    int forecast;        ///< 0: none
    bw_interval leaning; ///< drawn as a thin second line when high > low
    double lean;         ///< its middle
} bw_plot_row;

/// Draws rows of rates on one scale from 0 to 100, from y down: label, count, the interval as a line with
/// a filled dot where ten cases allow it, the model's rate as a hollow dot. Returns where it ends. `what`
/// names the scale, e.g. "goals in 100 breaks".
double bw_put_rates(const bw_sheet *sheet, double y, const char *what, const bw_plot_row *rows,
                    int count);

/// Height of `count` rows with the scale.
double bw_rates_height(int count);

#endif
