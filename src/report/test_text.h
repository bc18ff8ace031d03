/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The test report as plain text for a terminal of 80 columns.
#ifndef BW_REPORT_TEST_TEXT_H
#define BW_REPORT_TEST_TEXT_H

#include "trial/trial.h"

/// What a report is about.
typedef struct bw_report {
    const bw_ground *ground;
    const bw_trial *headline;
    const bw_trial *standard; ///< the standard set, any order; may be NULL
    int standard_count;
} bw_report;

/// Room that is enough for any report's text, bytes.
enum { BW_REPORT_BYTES = 64 * 1024 };

void bw_report_text(const bw_report *report, bw_text *out);

#endif
