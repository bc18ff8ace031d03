/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/calibration.h"
#include "core/maths.h"

static void parts(bw_calibration *c) {
    const double mean = (double)c->happened / c->cases;
    c->uncertainty = mean * (1 - mean);
    for (int k = 0; k < BW_CALIBRATION_BINS; k++) {
        bw_calibration_bin *bin = &c->bin[k];
        if (bin->count.cases == 0) continue;
        bin->chance /= bin->count.cases;
        const double seen = bw_rate(bin->count), off = bin->chance - seen, apart = seen - mean;
        c->reliability += bin->count.cases * off * off / c->cases;
        c->resolution += bin->count.cases * apart * apart / c->cases;
    }
}

bw_calibration bw_calibrate(const bw_forecast *forecasts, int count) {
    bw_calibration c = {.cases = count};
    double over = 0, under = 0, variance = 0;
    for (int i = 0; i < count; i++) {
        const double p = forecasts[i].chance, o = forecasts[i].happened;
        BW_ASSERT(p >= 0 && p <= 1);
        c.expected += p;
        c.happened += forecasts[i].happened;
        c.brier += (p - o) * (p - o) / count;
        variance += p * (1 - p);
        over += (o - p) * (1 - 2 * p);
        under += (1 - 2 * p) * (1 - 2 * p) * p * (1 - p);
        // A chance of .6 is a hair below 3 / 5; the tiny lift keeps it in its own bin.
        int k = (int)(p * BW_CALIBRATION_BINS + 1e-9);
        if (k == BW_CALIBRATION_BINS) k--;
        c.bin[k].count.cases++;
        c.bin[k].count.hits += forecasts[i].happened;
        c.bin[k].chance += p;
    }
    c.deviation = bw_sqrt(variance);
    if (under > 0) c.z = over / bw_sqrt(under);
    if (count > 0) parts(&c);
    return c;
}
