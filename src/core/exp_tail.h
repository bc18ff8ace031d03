/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The part of e^r that the exponential and the laws of motion share: what is left after 1 + r.
/// Motion needs e^r - 1 - r for small r without the cancellation, and needs it fast, so it is inline.
#ifndef BW_CORE_EXP_TAIL_H
#define BW_CORE_EXP_TAIL_H

/// Half of ln 2: the series below is meant for |r| up to here.
#define BW_EXP_TAIL_RANGE 0.34657359027997264

/// (e^r - 1 - r) / r^2 for |r| <= BW_EXP_TAIL_RANGE: the Taylor series to r^11, whose remainder there
/// is below 1e-17. Summed in pairs (Estrin), which is faster than one after another.
static inline double bw_exp_tail(double r) {
    const double r2 = r * r;
    const double r4 = r2 * r2;
    const double low = (1.0 / 2 + r * (1.0 / 6)) + r2 * (1.0 / 24 + r * (1.0 / 120));
    const double middle = (1.0 / 720 + r * (1.0 / 5040)) + r2 * (1.0 / 40320 + r * (1.0 / 362880));
    const double high =
        (1.0 / 3628800 + r * (1.0 / 39916800)) + r2 * (1.0 / 479001600 + r * (1.0 / 6227020800));
    return low + r4 * (middle + r4 * high);
}

#endif
