/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "trial/ranking.h"

#include "core/text.h"

/// The column of a start, a new one when it has none yet; -1 when the table is full.
static int column_of(bw_ranking *table, const char *start) {
    for (int c = 0; c < table->columns; c++) {
        if (bw_same(table->start[c], start)) return c;
    }
    if (table->columns == BW_RANKING_COLUMNS) return -1;
    table->start[table->columns] = start;
    return table->columns++;
}

static bw_ranking_row *row_of(bw_ranking *table, const bw_break_def *def) {
    for (int r = 0; r < table->rows; r++) {
        bw_ranking_row *row = &table->row[r];
        if (row->offence == def->offence && row->defence == def->defence &&
            bw_same(row->set, def->set))
            return row;
    }
    if (table->rows == BW_RANKING_ROWS) return NULL;
    bw_ranking_row *row = &table->row[table->rows++];
    *row = (bw_ranking_row){.offence = def->offence, .defence = def->defence, .set = def->set};
    return row;
}

/// Falling worst; rows as bad keep their order.
static void sort_rows(bw_ranking *table) {
    for (int i = 1; i < table->rows; i++) {
        const bw_ranking_row row = table->row[i];
        int k = i;
        for (; k > 0 && table->row[k - 1].worst < row.worst; k--)
            table->row[k] = table->row[k - 1];
        table->row[k] = row;
    }
}

void bw_ranking_build(const bw_trial *trials, int count, bw_ranking *table) {
    *table = (bw_ranking){0};
    int cells = 0;
    for (int i = 0; i < count; i++) {
        const bw_trial *trial = &trials[i];
        if (trial->status != BW_OK) continue;
        const int column = column_of(table, trial->def.start);
        bw_ranking_row *row = row_of(table, &trial->def);
        if (column < 0 || !row) continue;
        row->cell[column] = trial;
        row->worst = bw_max(row->worst, trial->curve.plateau);
        table->noise += 2 * trial->curve.error[BW_MAX_SECONDS];
        cells++;
    }
    if (cells > 0) table->noise /= cells;
    sort_rows(table);
}
