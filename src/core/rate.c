/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Wilson's and Newcombe's intervals, and shrinkage of small groups.
#include "core/rate.h"
#include "core/maths.h"

/// 97.5 % point of the normal distribution.
#define Z 1.959963984540054

enum { GROUPS_LEAST = 5 };

double bw_rate(bw_count count) {
    return count.cases > 0 ? (double)count.hits / count.cases : 0;
}

bw_interval bw_rate_interval(bw_count count) {
    BW_ASSERT(count.hits >= 0 && count.hits <= count.cases);
    if (count.cases == 0) return (bw_interval){0, 1};
    const double n = count.cases, p = bw_rate(count), zz = Z * Z;
    const double middle = p + zz / (2 * n);
    const double reach = Z * bw_sqrt(p * (1 - p) / n + zz / (4 * n * n));
    bw_interval interval = {(middle - reach) / (1 + zz / n), (middle + reach) / (1 + zz / n)};
    // Exactly 0 and 1 at the ends, where rounding would leave a hair.
    if (count.hits == 0) interval.low = 0;
    if (count.hits == count.cases) interval.high = 1;
    return interval;
}

bw_interval bw_rate_difference(bw_count now, bw_count before) {
    if (now.cases == 0 || before.cases == 0) return (bw_interval){-1, 1};
    const double p1 = bw_rate(now), p2 = bw_rate(before);
    const bw_interval i1 = bw_rate_interval(now), i2 = bw_rate_interval(before);
    const double d = p1 - p2;
    const double down = bw_sqrt((p1 - i1.low) * (p1 - i1.low) + (i2.high - p2) * (i2.high - p2));
    const double up = bw_sqrt((i1.high - p1) * (i1.high - p1) + (p2 - i2.low) * (p2 - i2.low));
    return (bw_interval){bw_max(d - down, -1), bw_min(d + up, 1)};
}

static bw_belief weak(double hits, double cases) {
    // Half a hit each way, so that nothing seen yet is never believed impossible.
    const double rate = (hits + 0.5) / (cases + 1);
    return (bw_belief){BW_WEAK_CASES * rate, BW_WEAK_CASES * (1 - rate)};
}

bw_belief bw_rate_spread(const bw_count *groups, int count) {
    double sum = 0, squares = 0, hits = 0, cases = 0, slack = 0;
    int used = 0;
    for (int i = 0; i < count; i++) {
        if (groups[i].cases == 0) continue;
        const double rate = bw_rate(groups[i]);
        sum += rate;
        squares += rate * rate;
        slack += 1.0 / groups[i].cases;
        hits += groups[i].hits;
        cases += groups[i].cases;
        used++;
    }
    if (used < GROUPS_LEAST) return weak(hits, cases);
    const double m = sum / used, v = (squares - used * m * m) / (used - 1);
    // Rates of equal groups spread by m (1 - m) / n alone: no more than that is no spread at all.
    if (v <= m * (1 - m) * slack / used) return weak(hits, cases);
    const double s = m * (1 - m) / v - 1;
    if (s <= 0) return weak(hits, cases);
    return (bw_belief){m * s, (1 - m) * s};
}

bw_belief bw_rate_learn(bw_belief belief, bw_count count) {
    return (bw_belief){belief.a + count.hits, belief.b + (count.cases - count.hits)};
}

double bw_belief_mean(bw_belief belief) {
    return belief.a / (belief.a + belief.b);
}

double bw_belief_deviation(bw_belief belief) {
    const double n = belief.a + belief.b;
    return bw_sqrt(belief.a * belief.b / (n * n * (n + 1)));
}
