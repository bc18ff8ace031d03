/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Timed splits as a sheet: one a row, with the distance in metres or in yards.
#include "core/entry.h"
#include "team/sheet/sheet.h"
#include "team/splits.h"

enum { JERSEY, DATE, METRES, YARDS, SECONDS, CLOCK, COLUMNS };

static const bw_sheet_column columns[COLUMNS] = {{"jersey", true},      {"date", true},
                                                 {"distance_m", false}, {"distance_yd", false},
                                                 {"seconds", true},     {"clock", true}};

static bool take_distance(bw_cells *cells, bw_timed_split *s) {
    const bool metres = bw_cell_text(cells, METRES)[0] != '\0',
               yards = bw_cell_text(cells, YARDS)[0] != '\0';
    if (metres == yards)
        return bw_cell_fault(cells, METRES,
                             metres ? "give metres or yards, not both" : "a distance is missing");
    const int column = metres ? METRES : YARDS;
    if (!bw_cell_real(cells, column, &s->distance)) return false;
    if (yards) s->distance *= BW_METRES_PER_YARD;
    if (s->distance >= 1 && s->distance <= 200) return true;
    return bw_cell_fault(cells, column, "a distance is from 1 to 200 m, not %s%s",
                         bw_cell_text(cells, column), yards ? " yards" : " m");
}

static bool take(bw_cells *cells, bw_timed_split *s) {
    int64_t jersey = 0;
    if (!bw_cell_int(cells, JERSEY, 0, BW_MAX_JERSEY, &jersey)) return false;
    s->jersey = (int)jersey;
    if (!bw_copy(s->date, sizeof s->date, bw_cell_text(cells, DATE)) || !bw_date_good(s->date))
        return bw_cell_fault(cells, DATE, "a day is written like 2026-03-02, not \"%s\"",
                             bw_cell_text(cells, DATE));
    if (!take_distance(cells, s) || !bw_cell_real(cells, SECONDS, &s->seconds)) return false;
    if (!(s->seconds >= 0.3 && s->seconds <= 60))
        return bw_cell_fault(cells, SECONDS, "a time is from 0.3 to 60 s, not %s",
                             bw_cell_text(cells, SECONDS));
    if (!bw_copy(s->clock, sizeof s->clock, bw_cell_text(cells, CLOCK)) ||
        !bw_split_clock_good(s->clock))
        return bw_cell_fault(cells, CLOCK, "move, signal or gate, not \"%s\"",
                             bw_cell_text(cells, CLOCK));
    return true;
}

static bool store(bw_team *team, bw_cells *cells, void *shared, bw_import *done, bw_error *error) {
    (void)shared;
    bw_timed_split split = {0};
    int added = 0;
    bw_odd odd;
    if (!take(cells, &split)) return false;
    const bw_status status = bw_team_add_splits(team, &split, 1, &added, error);
    if (status == BW_NOT_FOUND) {
        bw_cell_fault(cells, JERSEY, "%s; import the roster first", error->message);
        error->status = BW_OK;
    }
    done->added += added;
    done->known += status == BW_OK && added == 0;
    if (added == 0 || !bw_odd_split(cells->known, &split, &odd)) return status == BW_OK;
    return bw_cell_odd(cells, odd.kind == BW_ODD_SPRINT_AHEAD ? DATE : SECONDS, &odd);
}

const bw_sheet_kind bw_sheet_splits = {"splits", columns, COLUMNS, store};
