/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Where a believed rate lies, 95 %: quantiles of its beta distribution, by the GNU Scientific Library.
#ifndef BW_REPORT_BETA_H
#define BW_REPORT_BETA_H

#include "core/rate.h"

/// Equal-tailed interval of a belief.
bw_interval bw_belief_interval(bw_belief belief);

/// The Jeffreys interval of a count, (0, 1) at the ends where nothing or everything was hit.
/// Source: L. D. Brown, T. T. Cai, A. DasGupta, Statist. Sci. 16, 2001.
bw_interval bw_jeffreys_interval(bw_count count);

#endif
