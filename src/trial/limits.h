/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What the model assumes and leaves out, in words that stand at the end of every report.
#ifndef BW_TRIAL_LIMITS_H
#define BW_TRIAL_LIMITS_H

#include "trial/trial.h"

/// Paragraph number `index` into `out`; false past the last.
bool bw_say_limit(const bw_trial *trial, int index, bw_text *out);

#endif
