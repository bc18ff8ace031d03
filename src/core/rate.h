/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Honest rates from few cases: a count of so many, and how far the true rate may be from it. Every
/// interval is 95 %. The Wald interval is not offered: at ten cases it covers 84 % and less.
#ifndef BW_CORE_RATE_H
#define BW_CORE_RATE_H

#include "core/base.h"

/// Under BW_RATE_COUNTS cases only counts are shown; under BW_RATE_PLAIN the rate is a rough one.
enum { BW_RATE_COUNTS = 10, BW_RATE_PLAIN = 30 };

/// `hits` of `cases`, 0 <= hits <= cases.
typedef struct bw_count {
    int hits, cases;
} bw_count;

typedef struct bw_interval {
    double low, high;
} bw_interval;

/// hits / cases; 0 when there are no cases.
double bw_rate(bw_count count);

/// Wilson's score interval for the rate, within [0, 1]; (0, 1) when there are no cases.
/// Source: E. B. Wilson, JASA 22, 1927; advised for few cases by L. D. Brown, T. T. Cai, A. DasGupta,
/// Statist. Sci. 16, 2001.
bw_interval bw_rate_interval(bw_count count);

/// Interval of the difference rate(now) - rate(before), by the two score intervals, within [-1, 1];
/// (-1, 1) when either has no cases. Source: R. G. Newcombe, Stat. Med. 17, 1998, 873-890, method 10.
bw_interval bw_rate_difference(bw_count now, bw_count before);

/// A Beta(a, b) belief in a rate: as if `a` hits of `a + b` cases had been seen.
typedef struct bw_belief {
    double a, b;
} bw_belief;

/// What groups (games, opponents) say of how rates spread, by moments: mean m and variance v of the
/// rates of the groups that have cases, a + b = m (1 - m) / v - 1. With fewer than five such groups, or
/// when they spread less than chance would, the fixed weak belief: BW_WEAK_CASES cases at the rate of
/// all of them together. Source: A. Gelman et al., Bayesian Data Analysis, 3rd ed., section 5.1.
bw_belief bw_rate_spread(const bw_count *groups, int count);
#define BW_WEAK_CASES 10.0

/// The belief after `count` was seen: (a + hits, b + misses).
bw_belief bw_rate_learn(bw_belief belief, bw_count count);

/// Mean of a belief, a / (a + b).
double bw_belief_mean(bw_belief belief);

/// Standard deviation of a belief.
double bw_belief_deviation(bw_belief belief);

#endif
