/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The log as a sheet (CSV): a break a row. A row without an id gets one made from what it says and which row it
/// is, so that the same file read twice is still the same breaks.
#include "core/hash.h"
#include "team/breaks.h"
#include "team/games.h"
#include "team/sheet/sheet.h"
#include "team/sql.h"
#include <string.h>

enum {
    ID,
    DATE,
    OPPONENT,
    FIELD,
    TIME,
    OFFENCE,
    DEFENCE,
    OUTCOME,
    SECONDS,
    PASSES,
    X_YARDS,
    Y_YARDS,
    X_METRES,
    Y_METRES,
    OUT,
    STAGE,
    REVISION,
    NOTE,
    COLUMNS
};

static const bw_sheet_column columns[COLUMNS] = {
    {"id", false},       {"date", false},     {"opponent", false},  {"field", false},
    {"time", false},     {"offence", true},   {"defence", true},    {"outcome", true},
    {"seconds", false},  {"passes", false},   {"shot_x_yd", false}, {"shot_y_yd", false},
    {"shot_x_m", false}, {"shot_y_m", false}, {"out", false},       {"stage", false},
    {"revision", false}, {"note", false}};

static void make_id(const bw_cells *cells, int row, bw_entry *e) {
    uint64_t hash = bw_hash_u64(BW_HASH_START, (uint64_t)row);
    for (int c = 0; c < COLUMNS; c++) {
        for (const char *p = bw_cell_text(cells, c); *p; p++)
            hash = bw_hash_u64(hash, (unsigned char)*p);
        hash = bw_hash_u64(hash, 256);
    }
    snprintf(e->client, sizeof e->client, "row-%016llx", (unsigned long long)hash);
}

static bool take_id(bw_cells *cells, int row, bw_entry *e) {
    if (bw_cell_text(cells, ID)[0] != '\0')
        return bw_cell_copy(cells, ID, e->client, sizeof e->client);
    make_id(cells, row, e);
    return true;
}

static bool take_whole(bw_cells *cells, int column, int low, int high, int *out) {
    int64_t value = *out;
    if (!bw_cell_int(cells, column, low, high, &value)) return false;
    *out = (int)value;
    return true;
}

/// In the file, less than none stands for "unknown": in a sheet it is a slip.
static bool take_seconds(bw_cells *cells, bw_entry *e) {
    if (!bw_cell_real(cells, SECONDS, &e->seconds)) return false;
    const bool given = bw_cell_text(cells, SECONDS)[0] != '\0';
    if (!given || (e->seconds >= 0 && e->seconds <= BW_MAX_BREAK_TIME)) return true;
    return bw_cell_fault(cells, SECONDS, "a break lasts from 0 to %d seconds, not \"%s\"",
                         BW_MAX_BREAK_TIME, bw_cell_text(cells, SECONDS));
}

static bool take_numbers(bw_cells *cells, bw_entry *e) {
    const char *time = bw_cell_text(cells, TIME), *outcome = bw_cell_text(cells, OUTCOME);
    if (time[0] && !bw_time_read(time, &e->time))
        return bw_cell_fault(cells, TIME, "a time is written like 2026-04-11T18:05:00Z, not \"%s\"",
                             time);
    e->outcome = bw_outcome_find(outcome);
    if (e->outcome == BW_OUTCOME_COUNT)
        return bw_cell_fault(cells, OUTCOME,
                             "goal, save, wide, forced, unforced, ground-ball, matched-up or "
                             "whistle, not \"%s\"",
                             outcome);
    return take_whole(cells, OFFENCE, 3, BW_MAX_ATTACKERS, &e->offence) &&
           take_whole(cells, DEFENCE, 2, BW_MAX_ATTACKERS, &e->defence) &&
           take_whole(cells, PASSES, 0, BW_MAX_PASSES, &e->passes) &&
           take_whole(cells, STAGE, 3, BW_MAX_SPOTS, &e->stage) &&
           bw_cell_int(cells, REVISION, 1, INT32_MAX, &e->revision) && take_seconds(cells, e) &&
           bw_cell_copy(cells, NOTE, e->note, BW_NOTE_SIZE);
}

static bool take_shot(bw_cells *cells, bw_entry *e) {
    const bool yards = bw_cell_text(cells, X_YARDS)[0] || bw_cell_text(cells, Y_YARDS)[0];
    const bool metres = bw_cell_text(cells, X_METRES)[0] || bw_cell_text(cells, Y_METRES)[0];
    if (!yards && !metres) return true;
    if (yards && metres) return bw_cell_fault(cells, X_YARDS, "give metres or yards, not both");
    const int x = yards ? X_YARDS : X_METRES, y = yards ? Y_YARDS : Y_METRES;
    if (!bw_cell_text(cells, x)[0] || !bw_cell_text(cells, y)[0])
        return bw_cell_fault(cells, x, "a place has both x and y");
    if (!bw_cell_real(cells, x, &e->shot.x) || !bw_cell_real(cells, y, &e->shot.y)) return false;
    if (yards) e->shot = bw_scale(e->shot, BW_METRES_PER_YARD);
    e->shot_known = true;
    return true;
}

static bool take_out(bw_cells *cells, bw_entry *e) {
    const char *at = bw_cell_text(cells, OUT);
    char who[BW_ID_SIZE];
    while (bw_cell_word(&at, who, sizeof who)) {
        if (e->out_count == BW_MAX_OUT)
            return bw_cell_fault(cells, OUT, "at most 6 men can be out of place in one break");
        bw_copy(e->out[e->out_count++], BW_ID_SIZE, who);
    }
    return true;
}

/// The game of this row, put into the file when it is new.
static bool take_game(bw_team *team, bw_cells *cells, bw_game *game, bw_error *error) {
    bw_odd odd;
    if (!bw_cell_text(cells, DATE)[0] && !bw_cell_text(cells, OPPONENT)[0]) return true;
    if (!bw_copy(game->date, sizeof game->date, bw_cell_text(cells, DATE)) ||
        !bw_date_good(game->date))
        return bw_cell_fault(cells, DATE, "a day is written like 2026-04-11, not \"%s\"",
                             bw_cell_text(cells, DATE));
    if (!bw_cell_text(cells, OPPONENT)[0])
        return bw_cell_fault(cells, OPPONENT, "a game has an opponent as well as a date");
    if (!bw_cell_copy(cells, OPPONENT, game->opponent, sizeof game->opponent) ||
        !bw_cell_copy(cells, FIELD, game->field, sizeof game->field))
        return false;
    if (bw_odd_game(cells->known, game, &odd) &&
        !bw_cell_odd(cells, odd.kind == BW_ODD_OPPONENT ? OPPONENT : DATE, &odd))
        return false;
    const bw_status status = bw_team_put_game(team, game, error);
    if (status == BW_BAD_INPUT) {
        bw_cell_fault(cells, OPPONENT, "%s", error->message);
        error->status = BW_OK;
    }
    if (status != BW_OK) return false;
    if (!game->fresh || bw_known_add_game(cells->known, game) == BW_OK) return true;
    bw_team_fail(error, BW_NO_ROOM, BW_NO_MEMORY);
    return false;
}

static bool apart(double a, double b) {
    const double off = a - b;
    return off > 1e-3 || off < -1e-3; // a sheet has four decimals, of yards or of metres
}

/// Whether a row says something else than the log, in the columns the sheet has.
static bool says_otherwise(const bw_cells *cells, const bw_entry *e, const bw_entry *kept) {
    const int *where = cells->where;
    const bool shot = where[X_YARDS] >= 0 || where[X_METRES] >= 0;
    bw_entry is = *e;
    if (where[DATE] < 0) is.game = kept->game;
    if (where[TIME] < 0) is.time = kept->time;
    if (where[PASSES] < 0) is.passes = kept->passes;
    if (where[STAGE] < 0) is.stage = kept->stage;
    if (where[REVISION] < 0) is.revision = kept->revision;
    if (where[NOTE] < 0) bw_copy(is.note, sizeof is.note, kept->note);
    if (where[SECONDS] < 0 || !apart(is.seconds, kept->seconds)) is.seconds = kept->seconds;
    if (!shot) is.shot_known = kept->shot_known;
    if (!shot || (!apart(is.shot.x, kept->shot.x) && !apart(is.shot.y, kept->shot.y)))
        is.shot = kept->shot;
    if (where[OUT] < 0) {
        is.out_count = kept->out_count;
        memcpy(is.out, kept->out, sizeof is.out);
    }
    return !bw_entry_same(&is, kept);
}

static bool refuse(bw_cells *cells, bw_status status, bw_error *error) {
    if (status != BW_BAD_INPUT && status != BW_NOT_FOUND) return false;
    const bool revision = status == BW_NOT_FOUND; // the game is there
    bw_cell_fault(cells, revision ? REVISION : OUTCOME, "%s",
                  revision ? "the team file has no such scheme revision" : error->message);
    error->status = BW_OK;
    return false;
}

static int odd_column(const bw_cells *cells, bw_odd_kind kind) {
    switch (kind) {
    case BW_ODD_STAGE: return STAGE;
    case BW_ODD_SHOT: return bw_cell_text(cells, X_YARDS)[0] ? X_YARDS : X_METRES;
    case BW_ODD_BREAK_AHEAD: return DATE;
    default: return OUT;
    }
}

/// A row whose id is in the log already leaves the log as it is; what it says otherwise is not lost in
/// silence.
static bool note_known(bw_team *team, bw_cells *cells, const bw_entry *e, bw_error *error) {
    bw_entry kept;
    if (e->order == 0) {
        bw_cell_note(cells, "this break was removed from the log; it stays removed");
        return true;
    }
    if (bw_team_entry(team, e->order, &kept, error) != BW_OK) return false;
    if (!says_otherwise(cells, e, &kept)) return true;
    bw_cell_note(cells,
                 "break %lld is in the log and says something else; the log stays as it is, and "
                 "`breakwater log FILE edit %lld` changes it",
                 (long long)e->order, (long long)e->order);
    return true;
}

static bool store(bw_team *team, bw_cells *cells, void *shared, bw_import *done, bw_error *error) {
    (void)shared;
    bw_entry e = bw_entry_default();
    bw_game game = {0};
    bw_odd odd;
    int added = 0;
    if (!take_id(cells, done->rows, &e) || !take_numbers(cells, &e) || !take_shot(cells, &e) ||
        !take_out(cells, &e) || !take_game(team, cells, &game, error))
        return false;
    e.game = game.id;
    const bw_status status = bw_team_add_entries(team, &e, 1, NULL, &added, error);
    if (status != BW_OK) return refuse(cells, status, error);
    done->added += added;
    done->known += added == 0;
    if (added == 0) return note_known(team, cells, &e, error);
    if (!bw_odd_entry(cells->known, &e, game.id ? &game : NULL, &odd)) return true;
    return bw_cell_odd(cells, odd_column(cells, odd.kind), &odd);
}

const bw_sheet_kind bw_sheet_breaks = {"breaks", columns, COLUMNS, store};
