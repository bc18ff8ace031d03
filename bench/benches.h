/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The benches themselves; main.c lists them.
#ifndef BW_BENCH_BENCHES_H
#define BW_BENCH_BENCHES_H

#include "bench/bench.h"

bench_run bench_where;        ///< where.c
bench_run bench_where_pinned; ///< where.c
bench_run bench_book_ink;     ///< book.c
bench_run bench_book_pdf;     ///< book.c

bench_run bench_plies_per_second;       ///< search.c
bench_run bench_plies_looked_at;        ///< search.c
bench_run bench_same_answer_time;       ///< search.c
bench_run bench_same_answer_plies;      ///< search.c
bench_run bench_standard_set;           ///< standard.c
bench_run bench_standard_set_processor; ///< standard.c
bench_run bench_peak_memory;            ///< standard.c
bench_run bench_tune_candidate;         ///< tune.c
bench_run bench_tune_plain;             ///< tune.c

#endif
