/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The table of the standard set: a row for each pair of numbers and attack set, by its worst start.
#include "core/text.h"
#include "harness.h"
#include "trial/ranking.h"

enum { COUNT = 5 };

static bw_trial trials[COUNT];
static bw_ranking table;

static void fill(bw_trial *trial, int defence, const char *set, const char *start, double plateau) {
    trial->status = BW_OK;
    trial->def.offence = 6;
    trial->def.defence = defence;
    bw_copy(trial->def.set, sizeof trial->def.set, set);
    bw_copy(trial->def.start, sizeof trial->def.start, start);
    trial->curve.plateau = plateau;
    trial->curve.error[BW_MAX_SECONDS] = plateau / 10;
}

static void build(void) {
    fill(&trials[0], 4, "1-4-1", "top", 0.1);
    fill(&trials[1], 5, "2-2-2", "top", 0.3);
    fill(&trials[2], 4, "2-2-2", "top", 0.5);
    fill(&trials[3], 4, "2-2-2", "x", 0.2);
    fill(&trials[4], 4, "spread", "top", 0.9);
    trials[4].status = BW_NOT_FOUND;
    bw_ranking_build(trials, COUNT, &table);
}

static void a_row_is_as_bad_as_its_worst_start_and_the_worst_comes_first(void) {
    build();
    CHECK_INT(table.rows, 3); // what has no result is left out
    CHECK_INT(table.columns, 2);
    CHECK_SAME(table.row[0].worst, 0.5);
    CHECK_SAME(table.row[1].worst, 0.3);
    CHECK_SAME(table.row[2].worst, 0.1);
    CHECK(table.row[0].cell[0] == &trials[2] && table.row[0].cell[1] == &trials[3]);
    CHECK(table.row[2].cell[1] == NULL);
}

static void four_in_and_five_in_are_never_one_row(void) {
    build();
    for (int r = 0; r < table.rows; r++) {
        const bw_ranking_row *row = &table.row[r];
        for (int c = 0; c < table.columns; c++) {
            if (!row->cell[c]) continue;
            CHECK_INT(row->cell[c]->def.defence, row->defence);
            CHECK_TEXT(row->cell[c]->def.set, row->set);
            CHECK_TEXT(row->cell[c]->def.start, table.start[c]);
        }
    }
}

static void the_noise_is_twice_the_mean_error_of_what_is_shown(void) {
    build();
    CHECK_NEAR(table.noise, 2 * (0.01 + 0.03 + 0.05 + 0.02) / 4, 1e-12);
}

int main(int argc, char **argv) {
    RUN(a_row_is_as_bad_as_its_worst_start_and_the_worst_comes_first);
    RUN(four_in_and_five_in_are_never_one_row);
    RUN(the_noise_is_twice_the_mean_error_of_what_is_shown);
    return test_report(argc, argv);
}
