/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The whole test harness. A test program lists its tests in main and ends with test_report():
///
///     static void adds_up(void) { CHECK_INT(1 + 1, 2); }
///     int main(int argc, char **argv) { RUN(adds_up); return test_report(argc, argv); }
///
/// A failed check prints both values and goes on; the program exits 1 if any check failed.
#ifndef BW_TESTS_HARNESS_H
#define BW_TESTS_HARNESS_H

#include <math.h>
#include <stdio.h>
#include <string.h>

static int test_checks;
static int test_failures;
static const char *test_name = "";

/// Stop printing after this many, so that one broken loop does not flood the log.
enum { TEST_LOUD = 40 };

static inline int test_fail(const char *file, int line) {
    test_failures++;
    if (test_failures > TEST_LOUD) return 0;
    fprintf(stderr, "%s:%d: in %s: ", file, line, test_name);
    return 1;
}

#define CHECK(condition)                                                                           \
    do {                                                                                           \
        test_checks++;                                                                             \
        if (!(condition) && test_fail(__FILE__, __LINE__))                                         \
            fprintf(stderr, "not true: %s\n", #condition);                                         \
    } while (0)

#define CHECK_INT(got, want)                                                                       \
    do {                                                                                           \
        long long g_ = (long long)(got), w_ = (long long)(want);                                   \
        test_checks++;                                                                             \
        if (g_ != w_ && test_fail(__FILE__, __LINE__))                                             \
            fprintf(stderr, "%s is %lld, not %lld\n", #got, g_, w_);                               \
    } while (0)

/// Passes when |got - want| <= tolerance; a NaN never passes.
#define CHECK_NEAR(got, want, tolerance)                                                           \
    do {                                                                                           \
        double g_ = (got), w_ = (want), t_ = (tolerance);                                          \
        test_checks++;                                                                             \
        if (!(fabs(g_ - w_) <= t_) && test_fail(__FILE__, __LINE__))                               \
            fprintf(stderr, "%s is %.17g, not %.17g within %g\n", #got, g_, w_, t_);               \
    } while (0)

/// The very same double: the check for mirror symmetry and "same bits".
#define CHECK_SAME(got, want)                                                                      \
    do {                                                                                           \
        double g_ = (got), w_ = (want);                                                            \
        test_checks++;                                                                             \
        if (!(g_ == w_) && test_fail(__FILE__, __LINE__))                                          \
            fprintf(stderr, "%s is %.17g, not exactly %.17g\n", #got, g_, w_);                     \
    } while (0)

#define CHECK_TEXT(got, want)                                                                      \
    do {                                                                                           \
        const char *g_ = (got), *w_ = (want);                                                      \
        test_checks++;                                                                             \
        if (strcmp(g_, w_) != 0 && test_fail(__FILE__, __LINE__))                                  \
            fprintf(stderr, "%s is \"%s\", not \"%s\"\n", #got, g_, w_);                           \
    } while (0)

#define RUN(test)                                                                                  \
    do {                                                                                           \
        test_name = #test;                                                                         \
        test();                                                                                    \
    } while (0)

static inline int test_report(int argc, char **argv) {
    const char *program = argc > 0 ? argv[0] : "test";
    const char *slash = strrchr(program, '/');
    if (test_checks == 0) test_failures++;
    printf("%s: %d checks, %d failed\n", slash ? slash + 1 : program, test_checks, test_failures);
    return test_failures ? 1 : 0;
}

/// A small seeded generator for random cases (SplitMix64: S. Vigna, public domain reference).
static inline unsigned long long test_random(unsigned long long *state) {
    unsigned long long z = (*state += 0x9e3779b97f4a7c15ull);
    z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9ull;
    z = (z ^ (z >> 27)) * 0x94d049bb133111ebull;
    return z ^ (z >> 31);
}

/// Uniform in [low, high).
static inline double test_uniform(unsigned long long *state, double low, double high) {
    return low + (high - low) * ((double)(test_random(state) >> 11) * 0x1p-53);
}

#endif
