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

bw_calibrating bw_calibrate_begin(void) {
    return (bw_calibrating){.squares = 0};
}

void bw_calibrate_add(bw_calibrating *run, double p, bool happened) {
    BW_ASSERT(p >= 0 && p <= 1);
    bw_calibration *c = &run->so_far;
    const double o = happened;
    c->cases++;
    c->expected += p;
    c->happened += happened;
    run->squares += (p - o) * (p - o);
    run->variance += p * (1 - p);
    run->over += (o - p) * (1 - 2 * p);
    run->under += (1 - 2 * p) * (1 - 2 * p) * p * (1 - p);
    // A chance of .6 is a hair below 3 / 5; the tiny lift keeps it in its own bin.
    int k = (int)(p * BW_CALIBRATION_BINS + 1e-9);
    if (k == BW_CALIBRATION_BINS) k--;
    c->bin[k].count.cases++;
    c->bin[k].count.hits += happened;
    c->bin[k].chance += p;
}

bw_calibration bw_calibrate_end(const bw_calibrating *run) {
    bw_calibration c = run->so_far;
    c.deviation = bw_sqrt(run->variance);
    if (run->under > 0) c.z = run->over / bw_sqrt(run->under);
    if (c.cases == 0) return c;
    c.brier = run->squares / c.cases;
    parts(&c);
    return c;
}

bw_calibration bw_calibrate(const bw_prediction *forecasts, int count) {
    bw_calibrating run = bw_calibrate_begin();
    for (int i = 0; i < count; i++)
        bw_calibrate_add(&run, forecasts[i].chance, forecasts[i].happened);
    return bw_calibrate_end(&run);
}
