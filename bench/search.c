/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The search against the plain one, on the break everybody asks about first: six against four, 2-2-2,
/// ball up top, four seconds, up to five plies before the shot. Both must find the same worth, to the
/// last bit, and the same plies.
#include "bench/benches.h"
#include "bench/plain_search.h"
#include "scheme/fresh.h"
#include <stdlib.h>
#include <time.h>

enum { DEPTH = 5, TIMES = 3 };
static const double given = 4; // seconds

typedef struct race {
    bool run, agree;
    bw_answer answer;
    plain_line plain;
    double seconds, plain_seconds; ///< of processor time, one core
} race;

static double now(void) {
    struct timespec t;
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &t);
    return (double)t.tv_sec + (double)t.tv_nsec * 1e-9;
}

static bool begin(bw_break *b) {
    static bw_scheme scheme;
    static bw_ground ground;
    bw_scheme_fresh(0, 3, &scheme);
    if (bw_ground_build(&scheme, bw_level_find("high-school"), &ground, NULL) != BW_OK)
        return false;
    bw_break_def def = bw_break_default();
    def.late_from_scheme = false;
    return bw_break_begin(&ground, &def, b, NULL) == BW_OK;
}

/// The search the least of a few times, the plain one once: it takes long enough.
static bool compete(race *r) {
    static bw_break b;
    bw_search_def def = bw_search_default();
    def.depth = DEPTH;
    def.seconds = given;
    def.budget = UINT64_MAX;
    void *memory = malloc(bw_search_size());
    if (!memory || !begin(&b)) {
        free(memory);
        return false;
    }
    bool ok = true;
    for (int i = 0; i < TIMES && ok; i++) {
        const double start = now();
        ok = bw_best(&b, &def, memory, bw_search_size(), &r->answer) == BW_OK;
        const double took = now() - start;
        if (i == 0 || took < r->seconds) r->seconds = took;
    }
    free(memory);
    const double start = now();
    plain_search(&b, DEPTH, given, &r->plain);
    r->plain_seconds = now() - start;
    return ok;
}

/// Run once for all three benches.
static const race *raced(void) {
    static race r;
    if (!r.run) {
        r.run = true;
        r.agree = compete(&r) && plain_agrees(&r.plain, &r.answer);
        if (!r.agree) fprintf(stderr, "the search and the plain one differ\n");
    }
    return r.agree ? &r : NULL;
}

bool bench_plies_per_second(bench_result *result) {
    const race *r = raced();
    if (!r) return false;
    *result = (bench_result){.value = (double)r->answer.played / r->seconds,
                             .baseline = (double)r->plain.played / r->plain_seconds,
                             .unit = "plies/s",
                             .against = "the plain search, whose plies are mostly last shots",
                             .more_is_better = true};
    return true;
}

bool bench_plies_looked_at(bench_result *result) {
    const race *r = raced();
    if (!r) return false;
    *result = (bench_result){.value = (double)r->answer.seen / r->seconds,
                             .baseline = (double)r->plain.played / r->plain_seconds,
                             .unit = "plies/s",
                             .against = "the plain search, which plays every ply it sees",
                             .more_is_better = true};
    return true;
}

bool bench_same_answer_time(bench_result *result) {
    const race *r = raced();
    if (!r) return false;
    *result = (bench_result){.value = r->seconds,
                             .baseline = r->plain_seconds,
                             .unit = "s",
                             .against = "the plain search"};
    return true;
}

bool bench_same_answer_plies(bench_result *result) {
    const race *r = raced();
    if (!r) return false;
    *result = (bench_result){.value = (double)r->answer.played,
                             .baseline = (double)r->plain.played,
                             .unit = "plies",
                             .against = "the plain search"};
    return true;
}
