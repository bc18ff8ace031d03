/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "team/legs.h"
#include "core/text.h"
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
