/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Matching up: who takes whom when numbers are even. The worst arrival decides a defence, so the
/// largest cost is made least first, and among those assignments the sum.
/// Source: R. Burkard, M. Dell'Amico, S. Martello, "Assignment Problems", SIAM 2009 (bottleneck and
/// linear sum assignment). With at most six men all assignments are searched by subsets, exactly.
#ifndef BW_CORE_MATCH_H
#define BW_CORE_MATCH_H

#include "core/base.h"

enum { BW_MATCH_MAX = 6 };

/// A cost that forbids a pair.
#define BW_MATCH_NEVER 1e30

typedef struct bw_matching {
    int taken[BW_MATCH_MAX]; ///< taken[row] is the column of that row
    double worst;            ///< largest cost used; >= BW_MATCH_NEVER when some row has no column
    double sum;              ///< sum of the costs used
} bw_matching;

/// Rows to different columns, 1 <= rows <= columns <= BW_MATCH_MAX; cost[row][column] >= 0. Least
/// worst cost, then least sum, then the lowest columns from row 0 on. Sums are added in row order.
bw_matching bw_match(double cost[BW_MATCH_MAX][BW_MATCH_MAX], int rows, int columns);

/// The same with the sum alone made least: the textbook assignment problem.
bw_matching bw_match_sum(double cost[BW_MATCH_MAX][BW_MATCH_MAX], int rows, int columns);

#endif
