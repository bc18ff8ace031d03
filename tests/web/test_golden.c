/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The golden scene against tests/web/golden.txt, which holds the parts of the model. The ink of the
/// book is no part of it: words may change. `test_golden --print` prints every part; tools/check.sh
/// compares that between builds, so there the ink must agree too.
#include "harness.h"
#include "web/golden.h"
#include <inttypes.h>
#include <stdlib.h>

static void print_all(void) {
    for (int i = 0; i < bw_golden_count(); i++)
        printf("%s %016" PRIx64 "\n", bw_golden_name(i), bw_golden_part(i));
    printf("all %016" PRIx64 "\n", bw_golden_hash());
}

static FILE *open_golden(void) {
    char path[4096];
    const char *root = getenv("BW_ROOT");
    snprintf(path, sizeof path, "%s/tests/web/golden.txt", root ? root : ".");
    return fopen(path, "r");
}

static int part_named(const char *name) {
    for (int i = 0; i < bw_golden_count(); i++) {
        if (strcmp(bw_golden_name(i), name) == 0) return i;
    }
    return -1;
}

static void agrees_with_the_file(void) {
    char name[32], hash[32], want[32];
    FILE *file = open_golden();
    CHECK(file != NULL);
    while (file && fscanf(file, "%31s %31s", name, want) == 2) {
        const int part = part_named(name);
        CHECK(part >= 0);
        snprintf(hash, sizeof hash, "%016" PRIx64, bw_golden_part(part));
        CHECK_TEXT(hash, want);
        if (strcmp(hash, want) != 0) fprintf(stderr, "the part that moved: %s\n", name);
    }
    if (file) fclose(file);
}

/// The scene keeps nothing from one run to the next.
static void comes_to_the_same_again(void) {
    for (int i = bw_golden_count() - 1; i >= 0; i--)
        CHECK(bw_golden_part(i) == bw_golden_part(i));
    CHECK(bw_golden_hash() == bw_golden_hash());
}

int main(int argc, char **argv) {
    if (argc > 1 && strcmp(argv[1], "--print") == 0) {
        print_all();
        return 0;
    }
    RUN(agrees_with_the_file);
    RUN(comes_to_the_same_again);
    return test_report(argc, argv);
}
