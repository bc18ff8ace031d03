/* SPDX-License-Identifier: GPL-3.0-or-later */
/// breakwater-bench [FILE [NAME...]]: runs all benches, or those named, prints a table and writes FILE
/// (unless it is "") as a JSON array.
#include "bench/benches.h"
#include <string.h>

// The set comes first: the memory it needs is measured right after it.
static const bench benches[] = {
    {"standard_set_seconds", "the standard set for examples/terns.json", bench_standard_set},
    {"standard_set_processor_seconds", "processor time for it, all cores",
     bench_standard_set_processor},
    {"peak_memory", "most memory held, after the standard set", bench_peak_memory},
    {"plies_per_second", "plies the search plays, one core", bench_plies_per_second},
    {"plies_looked_at", "plies it plays or bounds away, one core", bench_plies_looked_at},
    {"same_answer_plies", "plies played for the best line of 6 against 4, 4 s, depth 5",
     bench_same_answer_plies},
    {"same_answer_time", "time for the best line of 6 against 4, 4 s, depth 5",
     bench_same_answer_time},
    {"tune_candidate", "one candidate of a tuning on 12 breaks, one core", bench_tune_candidate},
    {"tune_plain", "the same candidate", bench_tune_plain},
    {"where", "where everyone stands, by rule", bench_where},
    {"where_pinned", "where everyone stands, with pins", bench_where_pinned},
    {"book_ink", "the picture book as ink", bench_book_ink},
    {"book_pdf", "the picture book as PDF", bench_book_pdf},
};

static bool wanted(const char *name, int count, char *const *names) {
    for (int i = 0; i < count; i++) {
        if (strcmp(names[i], name) == 0) return true;
    }
    return count == 0;
}

int main(int argc, char **argv) {
    const char *path = argc > 1 && *argv[1] ? argv[1] : NULL;
    FILE *out = path ? fopen(path, "w") : NULL;
    if (path && !out) {
        fprintf(stderr, "%s cannot be written\n", path);
        return 3;
    }
    int failed = 0, written = 0;
    if (out) fprintf(out, "[\n");
    for (size_t i = 0; i < sizeof benches / sizeof *benches; i++) {
        const bench *bench = &benches[i];
        if (!wanted(bench->name, argc - 2, argv + 2)) continue;
        bench_result result = {0};
        if (!bench->run(&result)) {
            fprintf(stderr, "%s failed\n", bench->name);
            failed++;
            continue;
        }
        printf("%-30s %10.4g %-8s %s", bench->name, result.value, result.unit, bench->what);
        if (result.against)
            printf("; %.3g times better than %s", bench_ratio(&result), result.against);
        printf("\n");
        if (out) {
            if (written++ > 0) fprintf(out, ",\n");
            bench_write(out, bench, &result);
        }
    }
    if (out) {
        fprintf(out, "\n]\n");
        if (fclose(out) != 0) failed++;
    }
    return failed > 0;
}
