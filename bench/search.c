/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The search against the plain one: plies a second, plies to the same answer, time to it. The two
/// must find the same worth and the same line to the last bit, or there is nothing to compare.
#include "bench/benches.h"
#include "bench/plain_search.h"
#include "core/attack_set.h"
#include "core/curve.h"
#include "core/text.h"
#include "scheme/fresh.h"
#include <stdlib.h>
#include <time.h>

/// Small enough for the plain way to end within the minute.
enum { DEPTH = 5 };
#define SECONDS 3.4

typedef struct duel {
    bw_scheme scheme;
    bw_ground ground;
    bw_break begun;
    bw_answer answer;
    plain_line plain;
    double fast_s, plain_s;
    bool ready, agree;
} duel;

static double seconds_now(void) {
    struct timespec t;
    clock_gettime(CLOCK_MONOTONIC, &t);
    return (double)t.tv_sec + 1e-9 * (double)t.tv_nsec;
}

/// Fought once; the benches below each report one side of it.
static const duel *fought(void) {
    static duel d;
    if (d.ready) return &d;
    d.ready = true;
    bw_scheme_fresh(0, 3, &d.scheme);
    bw_ground_build(&d.scheme, NULL, &d.ground, NULL);
    bw_break_def def = bw_break_default();
    def.offence = 4;
    def.defence = 3;
    def.late_from_scheme = false;
    if (bw_break_begin(&d.ground, &def, &d.begun, NULL) != BW_OK) return &d;
    void *memory = malloc(bw_search_size());
    if (!memory) return &d;
    bw_search_def search = bw_search_default();
    search.depth = DEPTH;
    search.seconds = SECONDS;
    search.budget = UINT64_MAX;
    d.fast_s = 1e9;
    for (int i = 0; i < 3; i++) {
        const double begin = seconds_now();
        bw_best(&d.begun, &search, memory, bw_search_size(), &d.answer);
        const double took = seconds_now() - begin;
        if (took < d.fast_s) d.fast_s = took;
    }
    free(memory);
    const double begin = seconds_now();
    plain_search(&d.begun, DEPTH, SECONDS, &d.plain);
    d.plain_s = seconds_now() - begin;
    d.agree = plain_agrees(&d.plain, &d.answer);
    if (!d.agree) fprintf(stderr, "the search and the plain search find different answers\n");
    return &d;
}

bool bench_plies_per_second(bench_result *result) {
    const duel *d = fought();
    *result = (bench_result){.value = (double)d->answer.played / d->fast_s,
                             .baseline = (double)d->plain.played / d->plain_s,
                             .unit = "plies/s",
                             .against = "the plain search",
                             .more_is_better = true};
    return d->agree;
}

bool bench_plies_looked_at(bench_result *result) {
    const duel *d = fought();
    *result = (bench_result){.value = (double)d->answer.seen / d->fast_s,
                             .baseline = (double)d->plain.played / d->plain_s,
                             .unit = "plies/s",
                             .against = "the plain search; counts plies bounded away unplayed",
                             .more_is_better = true};
    return d->agree;
}

bool bench_same_answer_plies(bench_result *result) {
    const duel *d = fought();
    *result = (bench_result){.value = (double)d->answer.played,
                             .baseline = (double)d->plain.played,
                             .unit = "plies",
                             .against = "the plain search, depth 5"};
    return d->agree;
}

bool bench_same_answer_time(bench_result *result) {
    const duel *d = fought();
    *result = (bench_result){.value = 1e3 * d->fast_s,
                             .baseline = 1e3 * d->plain_s,
                             .unit = "ms",
                             .against = "the plain search, depth 5"};
    return d->agree;
}

/// The standard set, one thread: each number of defenders the scheme has, each set, each landmark on
/// the right or the middle; best of four seconds, three plies deep, and the forecast.
bool bench_standard_set(bench_result *result) {
    static bw_scheme scheme;
    static bw_ground ground;
    static bw_break b;
    void *memory = malloc(bw_curve_size());
    if (!memory) return false;
    bool fine = true;
    const double begin = seconds_now();
    bw_scheme_fresh(0, 3, &scheme);
    bw_ground_build(&scheme, NULL, &ground, NULL);
    int breaks = 0;
    for (int defence = 3; defence <= 6; defence++) {
        for (int set = 0; set < bw_attack_set_count(); set++) {
            for (int l = 0; l < scheme.landmark_count; l++) {
                if (scheme.landmarks[l].at.x < 0) continue;
                bw_break_def def = bw_break_default();
                def.offence = defence == 3 ? 4 : 6;
                def.defence = defence;
                bw_copy(def.set, sizeof def.set, bw_attack_set_at(set)->id);
                bw_copy(def.start, sizeof def.start, scheme.landmarks[l].id);
                fine = fine && bw_break_begin(&ground, &def, &b, NULL) == BW_OK;
                bw_search_def search = bw_search_default();
                search.depth = 3;
                bw_answer answer;
                fine = fine && bw_best(&b, &search, memory, bw_curve_size(), &answer) == BW_OK;
                bw_typical_def typical = bw_typical_default();
                typical.rollouts = 12;
                bw_forecast forecast;
                fine =
                    fine && bw_typical(&b, &typical, memory, bw_curve_size(), &forecast) == BW_OK;
                breaks++;
            }
        }
    }
    *result = (bench_result){.value = seconds_now() - begin, .unit = "s"};
    free(memory);
    return fine && breaks > 100;
}
