/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A smooth step from 0 to 1: what the chances of contact and interception are made of. Whole and
/// none are reached, not only approached, so men far away cost nothing to look at.
#ifndef BW_CORE_RAMP_H
#define BW_CORE_RAMP_H

/// 0 for x <= -1, 1 for x >= 1, cubic between, 0.5 at 0.
static inline double bw_ramp(double x) {
    const double t = 0.5 * (x + 1);
    if (t <= 0) return 0;
    if (t >= 1) return 1;
    return t * t * (3 - 2 * t);
}

#endif
