/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report/beta.h"
#include <gsl/gsl_cdf.h>

bw_interval bw_belief_interval(bw_belief belief) {
    return (bw_interval){gsl_cdf_beta_Pinv(0.025, belief.a, belief.b),
                         gsl_cdf_beta_Pinv(0.975, belief.a, belief.b)};
}
