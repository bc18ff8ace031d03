/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Where a believed rate lies, 95 %: quantiles of its beta distribution, by the GNU Scientific Library.
#ifndef BW_REPORT_BETA_H
#define BW_REPORT_BETA_H

#include "core/rate.h"

/// Equal-tailed interval of a belief.
bw_interval bw_belief_interval(bw_belief belief);

#endif
