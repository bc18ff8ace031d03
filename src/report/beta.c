/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report/beta.h"
#include <gsl/gsl_cdf.h>

bw_interval bw_belief_interval(bw_belief belief) {
    return (bw_interval){gsl_cdf_beta_Pinv(0.025, belief.a, belief.b),
                         gsl_cdf_beta_Pinv(0.975, belief.a, belief.b)};
}

bw_interval bw_jeffreys_interval(bw_count count) {
    if (count.cases == 0) return (bw_interval){0, 1};
    bw_interval i = bw_belief_interval(bw_rate_learn((bw_belief){0.5, 0.5}, count));
    if (count.hits == 0) i.low = 0;
    if (count.hits == count.cases) i.high = 1;
    return i;
}
