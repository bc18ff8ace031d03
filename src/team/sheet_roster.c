/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The roster as a sheet: a player a row.
#include "core/text.h"
#include "team/roster.h"
#include "team/sheet.h"
#include <string.h>

enum { JERSEY, INITIALS, NAME, SPOTS, FIXED, COLUMNS };

static const bw_column columns[COLUMNS] = {
    {"jersey", true}, {"initials", false}, {"name", false}, {"spots", false}, {"fixed", false}};

/// Adds the spot, or finds it. NULL when there is no room or it is no code.
static bw_player_spot *spot_of(bw_player *p, const char *code) {
    for (int i = 0; i < p->spot_count; i++) {
        if (strcmp(p->spots[i].spot, code) == 0) return &p->spots[i];
    }
    if (p->spot_count == BW_MAX_PLAYER_SPOTS) return NULL;
    bw_player_spot *spot = &p->spots[p->spot_count];
    if (!bw_copy(spot->spot, sizeof spot->spot, code)) return NULL;
    p->spot_count++;
    return spot;
}

static bool there(const bw_cells *cells, int column) {
    return cells->where[column] >= 0;
}

static bool take_list(bw_cells *cells, int column, bw_player *p) {
    const char *at = bw_cell(cells, column);
    char code[16];
    while (bw_cell_word(&at, code, sizeof code)) {
        bw_player_spot *spot = spot_of(p, code);
        if (!spot)
            return bw_cell_fault(cells, column,
                                 "at most 8 codes of 1 to 3 letters or digits, such as \"TL M\"");
        if (column == FIXED) spot->fixed = true;
    }
    return true;
}

static bool take_spots(bw_cells *cells, bw_player *p) {
    bw_player_spot before[BW_MAX_PLAYER_SPOTS];
    const int count = p->spot_count;
    memcpy(before, p->spots, sizeof before);
    if (there(cells, SPOTS)) {
        p->spot_count = 0;
        memset(p->spots, 0, sizeof p->spots);
        if (!take_list(cells, SPOTS, p)) return false;
    }
    if (!there(cells, FIXED)) {
        for (int i = 0; i < count; i++) { // what was fixed stays so where it is still his
            for (int k = 0; k < p->spot_count; k++)
                p->spots[k].fixed |= before[i].fixed && !strcmp(before[i].spot, p->spots[k].spot);
        }
        return true;
    }
    for (int k = 0; k < p->spot_count; k++)
        p->spots[k].fixed = false;
    return take_list(cells, FIXED, p);
}

/// A column that the sheet does not have leaves what is known.
static bool take(bw_cells *cells, bw_player *p) {
    if (there(cells, INITIALS) && !bw_cell_copy(cells, INITIALS, p->initials, sizeof p->initials))
        return false;
    if (there(cells, NAME) && !bw_cell_copy(cells, NAME, p->name, sizeof p->name)) return false;
    return take_spots(cells, p);
}

static bool store(bw_team *team, bw_cells *cells, void *shared, bw_import *done, bw_error *error) {
    bool *seen = shared; // by jersey
    int64_t jersey = 0;
    bw_player p = {0};
    if (!bw_cell_int(cells, JERSEY, 0, BW_MAX_JERSEY, &jersey)) return false;
    if (seen[jersey])
        return bw_cell_fault(cells, JERSEY, "%d is there twice; one of them is another player",
                             (int)jersey);
    seen[jersey] = true;
    bw_status status = bw_team_player(team, (int)jersey, &p, error);
    if (status != BW_OK && status != BW_NOT_FOUND) return false;
    error->status = BW_OK;
    p.jersey = (int)jersey;
    if (!take(cells, &p)) return false;
    status = bw_team_put_player(team, &p, error);
    if (status == BW_BAD_INPUT) {
        bw_cell_fault(cells, p.name[0] ? NAME : JERSEY, "%s", error->message);
        error->status = BW_OK;
    }
    done->added += status == BW_OK;
    return status == BW_OK;
}

const bw_sheet_kind bw_sheet_roster = {"roster", columns, COLUMNS, store};

_Static_assert((BW_MAX_JERSEY + 1) * sizeof(bool) <= BW_SHARED_SIZE, "a mark for every jersey");
