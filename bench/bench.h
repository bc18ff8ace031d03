/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Measuring, and nothing else. A bench measures two things that do the same work, the program's own
/// way and a plain one, so that the ratio means something on any machine. To add one: write a function
/// that fills a bench_result, in a file of its own, and put it in the table in main.c.
#ifndef BW_BENCH_BENCH_H
#define BW_BENCH_BENCH_H

#include <stdbool.h>
#include <stdio.h>

typedef struct bench_result {
    double value;        ///< what was measured
    double baseline;     ///< the plain way, in the same unit; 0: there is none
    const char *unit;    ///< "ns", "pages/s", ...
    const char *against; ///< what the baseline is, in a few words; NULL: none
    bool more_is_better; ///< a rate rather than a time
} bench_result;

/// Fills *result; false when the two ways disagree or the work cannot be done, said on stderr.
typedef bool bench_run(bench_result *result);

typedef struct bench {
    const char *name; ///< lower case; outside scripts know benches by it
    const char *what; ///< one line for people
    bench_run *run;
} bench;

/// Seconds one call of `body` takes: the least of several rounds, each of enough calls to last about
/// a fiftieth of a second. The least is what the work costs; the rest is the machine's other business.
double bench_seconds(void (*body)(void *), void *context);

/// How many times better than the baseline, above 1 when better; 0 without a baseline.
double bench_ratio(const bench_result *result);

/// One element of the JSON array: name, value, unit, baseline, ratio (null where there is none).
void bench_write(FILE *out, const bench *bench, const bench_result *result);

#endif
