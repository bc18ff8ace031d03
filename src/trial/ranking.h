/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The standard set as a table: a row for each pair of numbers and attack set, a column for each
/// place the ball starts at, worst row first.
#ifndef BW_TRIAL_RANKING_H
#define BW_TRIAL_RANKING_H

#include "trial/standard.h"
#include "trial/trial.h"

enum { BW_RANKING_COLUMNS = 4, BW_RANKING_ROWS = 64 };

typedef struct bw_ranking_row {
    int offence, defence;
    const char *set;
    const bw_trial *cell[BW_RANKING_COLUMNS]; ///< NULL where there is none
    double worst;                             ///< the row's highest plateau
} bw_ranking_row;

typedef struct bw_ranking {
    int columns;
    const char *start[BW_RANKING_COLUMNS]; ///< landmark ids
    double noise; ///< two standard errors of a plateau, mean over the cells
    int rows;
    bw_ranking_row row[BW_RANKING_ROWS];
} bw_ranking;

/// Sorts trials into the table; those without a result are left out. Points into `trials`.
void bw_ranking_build(const bw_trial *trials, int count, bw_ranking *table);

#endif
