/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "bench/bench.h"
#include <time.h>

enum { ROUNDS = 15 };
static const double round_lasts = 0.02; // seconds

static double now(void) {
    struct timespec t;
    clock_gettime(CLOCK_MONOTONIC, &t);
    return (double)t.tv_sec + (double)t.tv_nsec * 1e-9;
}

static double time_calls(void (*body)(void *), void *context, long calls) {
    const double start = now();
    for (long i = 0; i < calls; i++)
        body(context);
    return now() - start;
}

double bench_seconds(void (*body)(void *), void *context) {
    long calls = 1;
    double least = time_calls(body, context, calls);
    while (least < round_lasts && calls < (1L << 30)) {
        calls *= 2;
        least = time_calls(body, context, calls);
    }
    for (int i = 1; i < ROUNDS; i++) {
        const double took = time_calls(body, context, calls);
        if (took < least) least = took;
    }
    return least / (double)calls;
}

double bench_ratio(const bench_result *result) {
    if (result->baseline <= 0 || result->value <= 0) return 0;
    return result->more_is_better ? result->value / result->baseline
                                  : result->baseline / result->value;
}

void bench_write(FILE *out, const bench *bench, const bench_result *result) {
    fprintf(out, "  {\"name\": \"%s\", \"value\": %.6g, \"unit\": \"%s\", ", bench->name,
            result->value, result->unit);
    if (result->baseline > 0)
        fprintf(out, "\"baseline\": %.6g, \"ratio\": %.4g}", result->baseline, bench_ratio(result));
    else
        fprintf(out, "\"baseline\": null, \"ratio\": null}");
}
