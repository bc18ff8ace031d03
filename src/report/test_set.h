/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Which breaks a test runs, and how thoroughly: the same for the terminal and the board.
#ifndef BW_REPORT_TEST_SET_H
#define BW_REPORT_TEST_SET_H

#include "trial/standard.h"
#include "trial/trial.h"

/// At most so many trials in one test.
enum { BW_TEST_MAX = BW_STANDARD_MAX + 1 };

/// Fills in def and effort of trials[BW_TEST_MAX]: the headline first, then, unless it is `alone`, the
/// rest of the standard set with the same seed. `seconds` is the time the offence is given for its
/// answer, 1 to 10. Returns how many.
int bw_test_set(const bw_scheme *scheme, const bw_break_def *headline, int seconds, bool alone,
                bw_trial *trials);

#endif
