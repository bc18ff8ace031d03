/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Matching up against published assignment problems and against brute force.
#include "core/match.h"
#include "harness.h"

typedef double matrix[BW_MATCH_MAX][BW_MATCH_MAX];

/// H. W. Kuhn, "The Hungarian method for the assignment problem", Naval Res. Logist. Q. 2, 1955: a
/// ratings matrix to be made most, 27 (matrix from memory; the optimum is unique).
static void kuhn(void) {
    const double rating[4][4] = {{8, 7, 9, 9}, {5, 2, 7, 8}, {6, 1, 4, 9}, {2, 3, 2, 6}};
    matrix cost = {{0}};
    for (int r = 0; r < 4; r++) {
        for (int c = 0; c < 4; c++)
            cost[r][c] = 9 - rating[r][c];
    }
    const bw_matching m = bw_match_sum(cost, 4, 4);
    CHECK_SAME(4 * 9 - m.sum, 27);
    const int want[] = {0, 2, 3, 1};
    for (int r = 0; r < 4; r++)
        CHECK_INT(m.taken[r], want[r]);
}

/// Textbook matrices used by public solvers' own tests (J. Munkres 1957 implementations).
static void munkres(void) {
    matrix a = {{400, 150, 400}, {400, 450, 600}, {300, 225, 300}};
    CHECK_SAME(bw_match_sum(a, 3, 3).sum, 850);
    matrix b = {{400, 150, 400, 1}, {400, 450, 600, 2}, {300, 225, 300, 3}};
    CHECK_SAME(bw_match_sum(b, 3, 4).sum, 452);
    matrix c = {{10, 10, 8}, {9, 8, 1}, {9, 7, 4}};
    CHECK_SAME(bw_match_sum(c, 3, 3).sum, 18);
    matrix d = {{10, 10, 8, 11}, {9, 8, 1, 1}, {9, 7, 4, 10}};
    CHECK_SAME(bw_match_sum(d, 3, 4).sum, 15);
    matrix e = {{4, 1, 3}, {2, 0, 5}, {3, 2, 2}};
    CHECK_SAME(bw_match_sum(e, 3, 3).sum, 5);
}

/// The worst pair is made least first (R. Burkard, M. Dell'Amico, S. Martello 2009, ch. 6); the first
/// matrix has different, unique optima for the two aims.
static void bottleneck(void) {
    matrix a = {{9, 9, 7}, {9, 8, 1}, {2, 8, 1}};
    CHECK_SAME(bw_match_sum(a, 3, 3).sum, 12);
    const bw_matching m = bw_match(a, 3, 3);
    CHECK_SAME(m.worst, 8);
    CHECK_SAME(m.sum, 17);
    CHECK_INT(m.taken[0], 2);
    CHECK_INT(m.taken[1], 1);
    CHECK_INT(m.taken[2], 0);
    matrix b = {{400, 150, 400}, {400, 450, 600}, {300, 225, 300}};
    CHECK_SAME(bw_match(b, 3, 3).worst, 400);
    CHECK_SAME(bw_match(b, 3, 3).sum, 850);
    matrix c = {{10, 10, 8}, {9, 8, 1}, {9, 7, 4}};
    CHECK_SAME(bw_match(c, 3, 3).worst, 9);
    matrix d = {{10, 10, 8, 11}, {9, 8, 1, 1}, {9, 7, 4, 10}};
    CHECK_SAME(bw_match(d, 3, 4).worst, 8);
}

/// Six defenders and six attackers: values worked out apart by two methods.
static void six_a_side(void) {
    const double d[6][2] = {{0, 4}, {3, 6}, {-3, 6}, {0, 9}, {5, 10}, {-5, 10}};
    const double a[6][2] = {{1, 11}, {6, 8}, {-6, 7}, {2, 5}, {-3, 3}, {7, 2}};
    matrix cost;
    for (int r = 0; r < 6; r++) {
        for (int c = 0; c < 6; c++)
            cost[r][c] = hypot(d[r][0] - a[c][0], d[r][1] - a[c][1]);
    }
    const bw_matching m = bw_match_sum(cost, 6, 6);
    const int want[] = {3, 5, 4, 0, 1, 2};
    for (int r = 0; r < 6; r++)
        CHECK_INT(m.taken[r], want[r]);
    CHECK_NEAR(m.sum, 18.5273358422, 1e-9);
    CHECK_NEAR(m.worst, 5.6568542495, 1e-9);
}

/// The expected optimum of random exponential costs is 1 + 1/4 + ... + 1/n^2 (G. Parisi 1998; proved
/// by S. Linusson and J. Wastlund 2004): 1.4913888889 for six.
static void parisi(void) {
    unsigned long long seed = 11;
    double mean = 0;
    enum { DRAWS = 4000 };
    for (int n = 0; n < DRAWS; n++) {
        matrix cost;
        for (int r = 0; r < 6; r++) {
            for (int c = 0; c < 6; c++)
                cost[r][c] = -log(1 - test_uniform(&seed, 0, 1));
        }
        mean += bw_match_sum(cost, 6, 6).sum / DRAWS;
    }
    CHECK_NEAR(mean, 1.4913888889, 0.02);
}

/// All permutations, the slow and obvious way.
static void every_permutation(matrix cost, int rows, int columns, int row, unsigned used,
                              double worst, double sum, double best[2], double *least) {
    if (row == rows) {
        if (worst < best[0] || (worst == best[0] && sum < best[1])) {
            best[0] = worst;
            best[1] = sum;
        }
        if (sum < *least) *least = sum;
        return;
    }
    for (int c = 0; c < columns; c++) {
        if (used >> c & 1) continue;
        const double x = cost[row][c];
        every_permutation(cost, rows, columns, row + 1, used | 1u << c, x > worst ? x : worst,
                          sum + x, best, least);
    }
}

static void brute_force(void) {
    unsigned long long seed = 3;
    for (int n = 0; n < 400; n++) {
        const int rows = 1 + (int)(test_random(&seed) % 5),
                  columns = rows + (int)(test_random(&seed) % 2);
        matrix cost;
        for (int r = 0; r < 6; r++) {
            // Whole numbers, so that sums are exact; few of them every other time, so that ties are
            // common, and many otherwise, so that worst and sum pull apart.
            for (int c = 0; c < 6; c++)
                cost[r][c] = (double)(test_random(&seed) % (n % 2 ? 7 : 100));
        }
        double best[2] = {1e9, 1e9}, least = 1e9;
        every_permutation(cost, rows, columns, 0, 0, 0, 0, best, &least);
        const bw_matching m = bw_match(cost, rows, columns);
        CHECK_SAME(m.worst, best[0]);
        CHECK_SAME(m.sum, best[1]);
        CHECK_SAME(bw_match_sum(cost, rows, columns).sum, least);
    }
}

int main(int argc, char **argv) {
    RUN(kuhn);
    RUN(munkres);
    RUN(bottleneck);
    RUN(six_a_side);
    RUN(parisi);
    RUN(brute_force);
    return test_report(argc, argv);
}
