/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Assignment of at most six rows by subsets of columns, last row first: best[row][used] is the best
/// that rows row.. can do when the columns in `used` are gone. At most 6 x 64 x 6 looks, and every
/// tie is settled where it arises, by the lowest column. The two aims are taken one after the other:
/// a rest with a worse worst but a lesser sum can still be the better one under a costly first row,
/// so no single table holds both.
#include "core/match.h"

/// Above every cost and every sum of costs.
#define NO_LIMIT 1e300

typedef struct score {
    double sum;
    int8_t column;
} score;

/// Members of each set of six columns: a look-up, for the portable count is a function call.
#define TWO(n) (n), (n) + 1
#define FOUR(n) TWO(n), TWO((n) + 1)
#define SIXTEEN(n) FOUR(n), FOUR((n) + 1), FOUR((n) + 1), FOUR((n) + 2)
static const uint8_t members[1 << BW_MATCH_MAX] = {SIXTEEN(0), SIXTEEN(1), SIXTEEN(1), SIXTEEN(2)};

/// Least largest cost of all assignments.
static double least_worst(double cost[BW_MATCH_MAX][BW_MATCH_MAX], int rows, int columns) {
    double best
        [1 << BW_MATCH_MAX]; // of the rows from the one on whose turn it is when `used` are gone
    for (int used = (1 << columns) - 1; used >= 0; used--) {
        const int row = members[used];
        if (row > rows) continue;
        best[used] = row == rows ? 0 : BW_MATCH_NEVER;
        for (int c = 0; row < rows && c < columns; c++) {
            if (used >> c & 1) continue;
            const double rest = best[used | 1 << c];
            const double worst = cost[row][c] > rest ? cost[row][c] : rest;
            if (worst < best[used]) best[used] = worst;
        }
    }
    return best[0];
}

/// Least sum of the assignments that use no cost above `most`; there is one.
static bw_matching least_sum(double cost[BW_MATCH_MAX][BW_MATCH_MAX], int rows, int columns,
                             double most) {
    score best[1 << BW_MATCH_MAX];
    for (int used = (1 << columns) - 1; used >= 0; used--) {
        const int row = members[used];
        if (row > rows) continue;
        best[used] = (score){row == rows ? 0 : NO_LIMIT, -1};
        for (int c = 0; row < rows && c < columns; c++) {
            if (used >> c & 1 || cost[row][c] > most) continue;
            const double sum = cost[row][c] + best[used | 1 << c].sum;
            if (sum < best[used].sum) best[used] = (score){sum, (int8_t)c};
        }
    }
    bw_matching m = {.worst = 0};
    int used = 0;
    for (int row = 0; row < rows; row++) {
        const int c = best[used].column;
        m.taken[row] = c;
        m.sum += cost[row][c];
        if (cost[row][c] > m.worst) m.worst = cost[row][c];
        used |= 1 << c;
    }
    return m;
}

bw_matching bw_match(double cost[BW_MATCH_MAX][BW_MATCH_MAX], int rows, int columns) {
    BW_ASSERT(rows >= 1 && rows <= columns && columns <= BW_MATCH_MAX);
    return least_sum(cost, rows, columns, least_worst(cost, rows, columns));
}

bw_matching bw_match_sum(double cost[BW_MATCH_MAX][BW_MATCH_MAX], int rows, int columns) {
    BW_ASSERT(rows >= 1 && rows <= columns && columns <= BW_MATCH_MAX);
    return least_sum(cost, rows, columns, NO_LIMIT);
}
