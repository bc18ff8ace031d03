/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The roster as a sheet: a player a row.
#include "core/text.h"
#include "team/roster.h"
#include "team/sheet/sheet.h"
#include <string.h>

enum { JERSEY, INITIALS, NAME, SPOTS, FIXED, COLUMNS };

static const bw_sheet_column columns[COLUMNS] = {
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
    const char *at = bw_cell_text(cells, column);
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

static void put_spots(bw_text *out, const bw_player *p) {
    if (p->spot_count == 0) bw_put(out, "none");
    for (int i = 0; i < p->spot_count; i++) {
        if (i > 0) bw_put_char(out, ' ');
        bw_put(out, p->spots[i].spot);
        if (p->spots[i].fixed) bw_put(out, " (fixed)");
    }
}

static void put_text_change(bw_text *out, const char *what, const char *was, const char *is) {
    if (strcmp(was, is) == 0) return;
    bw_put(out, out->used > 0 ? ", " : "");
    bw_put(out, what);
    bw_put(out, " from ");
    bw_put(out, was[0] ? was : "none");
    bw_put(out, " to ");
    bw_put(out, is[0] ? is : "none");
}

/// Added, changed (and what) or unchanged.
static void count(bw_cells *cells, const bw_player *before, const bw_player *p, bw_import *done) {
    char changes[BW_MESSAGE_SIZE], was[96], is[96];
    bw_text t = bw_text_in(changes, sizeof changes);
    if (!before) {
        done->added++;
        return;
    }
    bw_text spots_were = bw_text_in(was, sizeof was), spots_are = bw_text_in(is, sizeof is);
    put_spots(&spots_were, before);
    put_spots(&spots_are, p);
    put_text_change(&t, "initials", before->initials, p->initials);
    put_text_change(&t, "name", before->name, p->name);
    put_text_change(&t, "spots", was, is);
    done->changed += t.used > 0;
    done->known += t.used == 0;
    if (t.used > 0) bw_cell_note(cells, "number %d changes: %s", p->jersey, changes);
}

static bool store(bw_team *team, bw_cells *cells, void *shared, bw_import *done, bw_error *error) {
    bool *seen = shared; // by jersey
    int64_t jersey = 0;
    bw_player p = {0};
    bw_odd odd, old;
    if (!bw_cell_int(cells, JERSEY, 0, BW_MAX_JERSEY, &jersey)) return false;
    if (seen[jersey])
        return bw_cell_fault(cells, JERSEY, "%d is there twice; one of them is another player",
                             (int)jersey);
    seen[jersey] = true;
    bw_status status = bw_team_player(team, (int)jersey, &p, error);
    if (status != BW_OK && status != BW_NOT_FOUND) return false;
    error->status = BW_OK;
    const bool is_known = status == BW_OK;
    p.jersey = (int)jersey;
    const bw_player before = p;
    if (!take(cells, &p)) return false;
    // What was odd in him before is kept already.
    if (bw_odd_player(cells->known, &p, &odd) &&
        !(bw_odd_player(cells->known, &before, &old) && !strcmp(odd.message, old.message)) &&
        !bw_cell_odd(cells, SPOTS, &odd))
        return false;
    status = bw_team_put_player(team, &p, error);
    if (status == BW_BAD_INPUT) {
        bw_cell_fault(cells, p.name[0] ? NAME : JERSEY, "%s", error->message);
        error->status = BW_OK;
    }
    if (status == BW_OK) count(cells, is_known ? &before : NULL, &p, done);
    return status == BW_OK;
}

const bw_sheet_kind bw_sheet_roster = {"roster", columns, COLUMNS, store};

_Static_assert((BW_MAX_JERSEY + 1) * sizeof(bool) <= BW_SHARED_SIZE, "a mark for every jersey");
