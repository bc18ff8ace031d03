/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Assignment of at most six rows by subsets of columns, last row first: best[row][used] is the best
/// that rows row.. can do when the columns in `used` are gone. At most 6 x 64 x 6 looks, and every
/// tie is settled where it arises, by the lowest column.
#include "core/match.h"

typedef struct score {
    double worst;
    double sum;
    int8_t column;
} score;

/// Members of each set of six columns: a look-up, for the portable count is a function call.
#define TWO(n) (n), (n) + 1
#define FOUR(n) TWO(n), TWO((n) + 1)
#define SIXTEEN(n) FOUR(n), FOUR((n) + 1), FOUR((n) + 1), FOUR((n) + 2)
static const uint8_t members[1 << BW_MATCH_MAX] = {SIXTEEN(0), SIXTEEN(1), SIXTEEN(1), SIXTEEN(2)};

static bool better(double worst, double sum, const score *than, bool bottleneck) {
    if (bottleneck && worst != than->worst) return worst < than->worst;
    return sum < than->sum;
}

static bw_matching solve(double cost[BW_MATCH_MAX][BW_MATCH_MAX], int rows, int columns,
                         bool bottleneck) {
    BW_ASSERT(rows >= 1 && rows <= columns && columns <= BW_MATCH_MAX);
    static const score nothing = {0, 0, -1};
    score best[BW_MATCH_MAX + 1][1 << BW_MATCH_MAX];
    for (int used = 0; used < 1 << columns; used++)
        best[rows][used] = nothing;
    for (int row = rows - 1; row >= 0; row--) {
        for (int used = 0; used < 1 << columns; used++) {
            // Only `row` columns can be gone when this row's turn comes.
            if (members[used] != row) continue;
            score least = {0, 0, -1};
            for (int c = 0; c < columns; c++) {
                if (used >> c & 1) continue;
                const score *rest = &best[row + 1][used | 1 << c];
                const double worst = cost[row][c] > rest->worst ? cost[row][c] : rest->worst;
                const double sum = cost[row][c] + rest->sum;
                if (least.column < 0 || better(worst, sum, &least, bottleneck))
                    least = (score){worst, sum, (int8_t)c};
            }
            best[row][used] = least;
        }
    }
    bw_matching m = {.worst = best[0][0].worst};
    int used = 0;
    for (int row = 0; row < rows; row++) {
        m.taken[row] = best[row][used].column;
        m.sum += cost[row][m.taken[row]];
        used |= 1 << m.taken[row];
    }
    return m;
}

bw_matching bw_match(double cost[BW_MATCH_MAX][BW_MATCH_MAX], int rows, int columns) {
    return solve(cost, rows, columns, true);
}

bw_matching bw_match_sum(double cost[BW_MATCH_MAX][BW_MATCH_MAX], int rows, int columns) {
    return solve(cost, rows, columns, false);
}
