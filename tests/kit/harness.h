/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The whole test harness. A test program lists its tests in main and ends with test_report():
///
///     static void adds_up(void) { CHECK_INT(1 + 1, 2); }
///     int main(int argc, char **argv) { RUN(adds_up); return test_report(argc, argv); }
///
/// A failed check prints both values and goes on; the program exits 1 if any check failed. CTest runs
/// the whole program. By hand:
///
///     test_maths                 runs all its tests
///     test_maths root angle      runs those with "root" or "angle" in their names
///     test_maths --list          names them, runs none
///     test_maths --times [WORD]  says how long each took, in milliseconds
#ifndef BW_TESTS_HARNESS_H
#define BW_TESTS_HARNESS_H

#include <math.h>
#include <stdbool.h>
#include <stdio.h>
#include <string.h>
#include <time.h>

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

static int test_ran;

static inline bool test_option(int argc, char **argv, const char *option) {
    for (int i = 1; i < argc; i++) {
        if (strcmp(argv[i], option) == 0) return true;
    }
    return false;
}

/// Whether a word was given that is in the name, or none at all.
static inline bool test_wanted(int argc, char **argv, const char *name) {
    bool words = false, found = false;
    for (int i = 1; i < argc; i++) {
        if (argv[i][0] == '-') continue;
        words = true;
        found |= strstr(name, argv[i]) != NULL;
    }
    return found || !words;
}

/// Whether all tests run: the time for checks of what they did together.
static inline bool test_all(int argc, char **argv) {
    return test_wanted(argc, argv, "") && !test_option(argc, argv, "--list");
}

static inline double test_clock_ms(void) {
    struct timespec now;
    clock_gettime(CLOCK_MONOTONIC, &now);
    return (double)now.tv_sec * 1e3 + (double)now.tv_nsec * 1e-6;
}

static double test_began;

/// Whether the test of this name is to run now.
static inline bool test_begin(int argc, char **argv, const char *name) {
    if (!test_wanted(argc, argv, name)) return false;
    test_ran++;
    if (test_option(argc, argv, "--list")) {
        puts(name);
        return false;
    }
    test_name = name;
    test_began = test_clock_ms();
    return true;
}

static inline void test_end(int argc, char **argv) {
    if (test_option(argc, argv, "--times"))
        printf("%9.1f ms  %s\n", test_clock_ms() - test_began, test_name);
}

/// Runs a test, or `call` as the test of that name. They stand in main, whose argc and argv say which
/// are wanted.
#define RUN(test) RUN_AS(#test, test())
#define RUN_AS(name, call)                                                                         \
    do {                                                                                           \
        if (test_begin(argc, argv, name)) {                                                        \
            call;                                                                                  \
            test_end(argc, argv);                                                                  \
        }                                                                                          \
    } while (0)

static inline int test_report(int argc, char **argv) {
    const char *program = argc > 0 ? argv[0] : "test";
    const char *slash = strrchr(program, '/');
    if (test_option(argc, argv, "--list")) return test_ran > 0 ? 0 : 1;
    if (test_ran == 0) fprintf(stderr, "No test has such a name; --list tells them all.\n");
    if (test_checks == 0 || test_ran == 0) test_failures++;
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
