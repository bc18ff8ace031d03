/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What one candidate of a tuning costs: the four-man stage of the demo scheme on its training breaks, judged
/// quickly on one core; against the full forecasts, and with the plain search in place of the pruned one.
#include "bench/benches.h"
#include "bench/plain_search.h"
#include "core/typical.h"
#include "file/document.h"
#include "tune/judge.h"
#include <stdlib.h>
#include <time.h>

enum { BREAKS = 12 };

typedef struct judged {
    bool run, ok;
    double quick, full; ///< seconds of processor time for all the breaks
    double best,
        plain; ///< of that, for best play two plies deep, by the search and by the plain one
} judged;

static double now(void) {
    struct timespec t;
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &t);
    return (double)t.tv_sec + (double)t.tv_nsec * 1e-9;
}

static bool time_judging(bw_judge *judge, const bw_scheme *scheme, const bw_break_def *drills,
                         int count, bw_judging how, double *seconds) {
    bw_judgement verdict;
    const double start = now();
    const bool ok = bw_judge_scheme(judge, scheme, drills, count, how, &verdict) == BW_OK;
    *seconds = now() - start;
    return ok;
}

static bool time_searches(const bw_scheme *scheme, const bw_break_def *drills, int count,
                          judged *j) {
    static bw_ground ground;
    static bw_break b;
    const bw_judging quick = bw_judging_quick();
    void *memory = malloc(bw_search_size());
    bool ok = memory && bw_ground_build(scheme, NULL, &ground, NULL) == BW_OK;
    for (int i = 0; i < count && ok; i++) {
        bw_search_def def = bw_search_default();
        def.depth = quick.depth;
        def.seconds = quick.seconds;
        bw_answer answer;
        plain_line plain;
        ok = bw_break_begin(&ground, &drills[i], &b, NULL) == BW_OK;
        double start = now();
        ok = ok && bw_best(&b, &def, memory, bw_search_size(), &answer) == BW_OK;
        j->best += now() - start;
        start = now();
        plain_search(&b, quick.depth, quick.seconds, &plain);
        j->plain += now() - start;
        ok = ok && plain_agrees(&plain, &answer);
    }
    free(memory);
    return ok;
}

static bool judge_all(judged *j) {
    static bw_scheme scheme;
    bw_error error;
    bw_source source;
    if (bw_document_load("examples/terns.json", &scheme, &source, &error) != BW_OK) return false;
    bw_source_drop(&source);
    bw_break_def drills[BW_MAX_DRILLS];
    const int stage = bw_scheme_stage(&scheme, 4);
    const int count = bw_drills(&scheme, stage, BW_DRILL_TRAINING, BREAKS, 1, drills);
    bw_judge *judge = bw_judge_open(&scheme, NULL, 1, NULL);
    const bool ok = judge &&
                    time_judging(judge, &scheme, drills, count, bw_judging_quick(), &j->quick) &&
                    time_judging(judge, &scheme, drills, count, bw_judging_full(), &j->full) &&
                    time_searches(&scheme, drills, count, j);
    bw_judge_close(judge);
    return ok;
}

/// Run once for both benches.
static const judged *measured(void) {
    static judged j;
    if (!j.run) {
        j.run = true;
        j.ok = judge_all(&j);
        if (!j.ok) fprintf(stderr, "the candidate could not be judged, or the searches differ\n");
    }
    return j.ok ? &j : NULL;
}

bool bench_tune_candidate(bench_result *result) {
    const judged *j = measured();
    if (!j) return false;
    *result = (bench_result){.value = 1e3 * j->quick,
                             .baseline = 1e3 * j->full,
                             .unit = "ms",
                             .against = "full forecasts on the same 12 breaks"};
    return true;
}

bool bench_tune_plain(bench_result *result) {
    const judged *j = measured();
    if (!j) return false;
    *result = (bench_result){.value = 1e3 * j->quick,
                             .baseline = 1e3 * (j->quick - j->best + j->plain),
                             .unit = "ms",
                             .against = "the same with the plain search for best play"};
    return true;
}
