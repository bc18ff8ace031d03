/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "team/legs.h"
#include <string.h>

static bw_clock clock_of(const char *word) {
    for (int c = 0; c < BW_CLOCK_COUNT; c++) {
        if (bw_same(word, bw_clock_id((bw_clock)c))) return (bw_clock)c;
    }
    return BW_CLOCK_SIGNAL;
}

static void insert(bw_split *run, int count, bw_split s) {
    int k = count;
    for (; k > 0 && run[k - 1].distance > s.distance; k--)
        run[k] = run[k - 1];
    run[k] = s;
}

/// The player's splits of one day and one way of starting, by distance.
static int gather(const bw_timed_split *splits, int count, int jersey, const char *date,
                  const char *clock, bw_split *run) {
    int used = 0;
    for (int i = 0; i < count; i++) {
        const bw_timed_split *s = &splits[i];
        if (s->jersey != jersey || strcmp(s->date, date) != 0 || strcmp(s->clock, clock) != 0)
            continue;
        if (used == BW_MAX_SPLITS) break;
        insert(run, used++, (bw_split){s->distance, s->seconds});
    }
    return used;
}

static bw_player_legs fit_day(const bw_timed_split *splits, int count, const bw_timed_split *of,
                              double reaction) {
    bw_split run[BW_MAX_SPLITS];
    const int used = gather(splits, count, of->jersey, of->date, of->clock, run);
    bw_player_legs legs = {.jersey = of->jersey, .clock = clock_of(of->clock)};
    bw_copy(legs.date, sizeof legs.date, of->date);
    legs.fit = bw_sprint_fit(run, used, legs.clock, reaction);
    return legs;
}

bw_player_legs bw_legs_of(const bw_timed_split *splits, int count, int jersey, double reaction) {
    bw_player_legs best = {.jersey = jersey, .fit = {.verdict = BW_SPRINT_FEW}};
    for (int i = 0; i < count; i++) {
        if (splits[i].jersey != jersey) continue;
        const bw_player_legs legs = fit_day(splits, count, &splits[i], reaction);
        const bool fitted = legs.fit.verdict == BW_SPRINT_FITTED;
        const bool had = best.fit.verdict == BW_SPRINT_FITTED;
        const bool newer = strcmp(legs.date, best.date) > 0;
        if (fitted == had ? newer : fitted) best = legs;
    }
    return best;
}

/// Distance whose time is told, yards: what youth and college test most (docs/model.md).
static const double told_yd = 20;

/// Two standard errors, to `decimals`.
static void put_give(bw_text *out, double error, int decimals) {
    const double least = decimals == 1 ? 0.1 : 0.01;
    if (!(error > 0)) return;
    bw_put(out, " (give or take ");
    if (2 * error < least) bw_put(out, "less than ");
    bw_put_fixed(out, 2 * error < least ? least : 2 * error, decimals);
    bw_put_char(out, ')');
}

void bw_say_legs(const bw_player_legs *legs, bw_units units, bw_text *out) {
    const bw_sprint *f = &legs->fit;
    const double per = bw_unit_length(units);
    if (f->verdict != BW_SPRINT_FITTED) {
        bw_put(out, legs->date[0] ? bw_sprint_why(f->verdict) : "no sprints in the file");
        return;
    }
    bw_put(out, "top speed ");
    bw_say_speed(units, f->legs.vmax, out);
    put_give(out, f->vmax_error / per, 1);
    bw_put(out, ", start ");
    bw_put_fixed(out, f->legs.tau, 2);
    bw_put(out, " s");
    put_give(out, f->tau_error, 2);
    bw_put(out, ", ");
    bw_put_int(out, (long long)told_yd);
    bw_put(out, " yd in ");
    bw_put_fixed(out, bw_sprint_time(f->legs, told_yd * BW_METRES_PER_YARD), 2);
    bw_put(out, " s from the first step; ");
    bw_put_int(out, f->splits);
    bw_put(out, " splits, ");
    bw_put(out, legs->date);
    if (!f->start_estimated && legs->clock != BW_CLOCK_MOVE)
        bw_put(out, ", the clock's start taken as usual");
    if (!(f->vmax_error > 0)) bw_put(out, ", too few for an error");
}
