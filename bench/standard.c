/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The standard set of breaks for one scheme on all cores, as the verb `test` runs it; and how much
/// memory this program has needed so far.
#include "trial/standard.h"
#include "bench/benches.h"
#include "file/document.h"
#include "report/battery.h"
#include <stdlib.h>
#include <sys/resource.h>
#include <time.h>

/// A coach waits five seconds, and a tablet has this many MB to spare.
static const double patience = 5, room = 64;

typedef struct set {
    bw_scheme scheme;
    bw_ground ground;
    bw_trial trials[BW_STANDARD_MAX + 1];
} set;

static double read_clock(clockid_t clock) {
    struct timespec t;
    clock_gettime(clock, &t);
    return (double)t.tv_sec + (double)t.tv_nsec * 1e-9;
}

/// What the set took by the clock on the wall, and of processor time on all cores together. On a
/// machine that has other things to do only the second means much.
typedef struct taken {
    bool run, ok;
    double wall, processor; ///< seconds
} taken;

static bool same_break(const bw_break_def *a, const bw_break_def *b) {
    return a->offence == b->offence && a->defence == b->defence && bw_same(a->set, b->set) &&
           bw_same(a->start, b->start);
}

static bool run_set(set *s, taken *t) {
    bw_error error;
    bw_source source;
    if (bw_document_load("examples/terns.json", &s->scheme, &source, &error) != BW_OK) {
        fprintf(stderr, "examples/terns.json cannot be read from here\n");
        return false;
    }
    bw_source_drop(&source);
    const double wall = read_clock(CLOCK_MONOTONIC);
    const double processor = read_clock(CLOCK_PROCESS_CPUTIME_ID);
    if (bw_ground_build(&s->scheme, NULL, &s->ground, NULL) != BW_OK) return false;
    bw_battery battery = {.ground = &s->ground, .trials = s->trials};
    bw_break_def defs[BW_STANDARD_MAX];
    const int count = bw_standard_set(&s->scheme, defs);
    s->trials[0].def = bw_standard_break(&s->scheme);
    s->trials[0].effort = bw_effort_default();
    battery.count = 1;
    for (int i = 0; i < count; i++) {
        if (same_break(&defs[i], &s->trials[0].def)) continue;
        bw_trial *trial = &s->trials[battery.count++];
        trial->def = defs[i];
        trial->effort = bw_effort_standard();
    }
    const bw_status status = bw_battery_run(&battery);
    t->wall = read_clock(CLOCK_MONOTONIC) - wall;
    t->processor = read_clock(CLOCK_PROCESS_CPUTIME_ID) - processor;
    return status == BW_OK;
}

/// Run once for both benches.
static const taken *took(void) {
    static taken t;
    if (t.run) return &t;
    t.run = true;
    set *s = calloc(1, sizeof *s);
    t.ok = s && run_set(s, &t);
    free(s);
    return &t;
}

bool bench_standard_set(bench_result *result) {
    *result = (bench_result){.value = took()->wall,
                             .baseline = patience,
                             .unit = "s",
                             .against = "the aim, five seconds on two cores"};
    return took()->ok;
}

bool bench_standard_set_processor(bench_result *result) {
    *result = (bench_result){.value = took()->processor,
                             .baseline = 2 * patience,
                             .unit = "s",
                             .against = "the aim, two cores for five seconds"};
    return took()->ok;
}

bool bench_peak_memory(bench_result *result) {
    struct rusage usage;
    if (getrusage(RUSAGE_SELF, &usage) != 0) return false;
    *result = (bench_result){.value = (double)usage.ru_maxrss / 1024, // kilobytes on Linux
                             .baseline = room,
                             .unit = "MB",
                             .against = "the aim, 64 MB"};
    return true;
}
