/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The test report as JSON: the same figures as its text, units in the key names.
#ifndef BW_REPORT_TEST_JSON_H
#define BW_REPORT_TEST_JSON_H

#include "report/test_text.h"
#include <stdio.h>

/// The headline first, then the standard set in its order, the headline's own place in it left out.
void bw_test_json(FILE *out, const bw_report *report);

#endif
