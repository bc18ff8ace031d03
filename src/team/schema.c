/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The tables of a team file. STRICT, so that a column holds what it says; every bound that an entry,
/// a split or a player must keep is a CHECK as well, so that quick_check sees what was damaged.
/// A player's row is the only place that knows a name; everything else knows his number in the table.
#include "team/schema.h"
#include "team/sql.h"
#include <pthread.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static const char first[] =
    "CREATE TABLE setting (name TEXT PRIMARY KEY, value TEXT NOT NULL) STRICT, WITHOUT ROWID;"
    "CREATE TABLE player (id INTEGER PRIMARY KEY,"
    " jersey INTEGER NOT NULL UNIQUE CHECK (jersey BETWEEN 0 AND 999),"
    " initials TEXT, name TEXT) STRICT;"
    "CREATE TABLE player_spot ("
    " player INTEGER NOT NULL REFERENCES player (id) ON DELETE CASCADE,"
    " place INTEGER NOT NULL CHECK (place BETWEEN 0 AND 7), spot TEXT NOT NULL,"
    " fixed INTEGER NOT NULL CHECK (fixed IN (0, 1)),"
    " PRIMARY KEY (player, spot)) STRICT, WITHOUT ROWID;"
    "CREATE TABLE split (id INTEGER PRIMARY KEY,"
    " player INTEGER NOT NULL REFERENCES player (id) ON DELETE CASCADE,"
    " date TEXT NOT NULL, distance REAL NOT NULL CHECK (distance BETWEEN 1 AND 200),"
    " seconds REAL NOT NULL CHECK (seconds BETWEEN 0.3 AND 60), clock TEXT NOT NULL,"
    " UNIQUE (player, date, distance, seconds, clock)) STRICT;"
    "CREATE TABLE game (id INTEGER PRIMARY KEY AUTOINCREMENT, date TEXT NOT NULL,"
    " opponent TEXT NOT NULL, field TEXT NOT NULL, UNIQUE (date, opponent)) STRICT;"
    "CREATE TABLE scheme (id INTEGER PRIMARY KEY, name TEXT NOT NULL UNIQUE) STRICT;"
    "CREATE TABLE revision (id INTEGER PRIMARY KEY AUTOINCREMENT,"
    " scheme INTEGER NOT NULL REFERENCES scheme (id), time INTEGER NOT NULL,"
    " hash TEXT NOT NULL CHECK (length(hash) = 16), note TEXT NOT NULL,"
    " document TEXT NOT NULL CHECK (length(document) <= 1048576)) STRICT;"
    "CREATE INDEX revision_of_scheme ON revision (scheme);"
    "CREATE TABLE entry (id INTEGER PRIMARY KEY AUTOINCREMENT, client TEXT NOT NULL UNIQUE,"
    " game INTEGER REFERENCES game (id), time INTEGER NOT NULL CHECK (time >= 0),"
    " offence INTEGER NOT NULL CHECK (offence BETWEEN 3 AND 6),"
    " defence INTEGER NOT NULL CHECK (defence BETWEEN 2 AND offence), outcome TEXT NOT NULL,"
    " seconds REAL CHECK (seconds BETWEEN 0 AND 120),"
    " passes INTEGER CHECK (passes BETWEEN 0 AND 50), shot_x REAL, shot_y REAL,"
    " stage INTEGER CHECK (stage BETWEEN 3 AND 6), revision INTEGER REFERENCES revision (id),"
    " note TEXT NOT NULL, CHECK ((shot_x IS NULL) = (shot_y IS NULL))) STRICT;"
    "CREATE INDEX entry_of_game ON entry (game);"
    "CREATE INDEX entry_of_revision ON entry (revision);"
    "CREATE TABLE entry_out (entry INTEGER NOT NULL REFERENCES entry (id) ON DELETE CASCADE,"
    " place INTEGER NOT NULL CHECK (place BETWEEN 0 AND 5), who TEXT NOT NULL,"
    " PRIMARY KEY (entry, place)) STRICT, WITHOUT ROWID;"
    "CREATE TABLE removed (client TEXT PRIMARY KEY) STRICT, WITHOUT ROWID;"
    "CREATE TABLE quiz (id INTEGER PRIMARY KEY AUTOINCREMENT, code TEXT NOT NULL,"
    " player INTEGER NOT NULL REFERENCES player (id) ON DELETE CASCADE,"
    " time INTEGER NOT NULL CHECK (time >= 0), UNIQUE (player, code)) STRICT;";

bw_steps bw_team_steps(void) {
    static const char *const step[] = {first};
    return (bw_steps){step, BW_COUNT(step)};
}

bw_status bw_team_format(bw_team *team, int *format, bw_error *error) {
    int64_t number = 0;
    const bw_status status = bw_sql_number(team, "PRAGMA user_version", 0, &number, error);
    *format = (int)number;
    return status;
}

bw_status bw_team_known(int format, int known, bw_error *error) {
    if (format >= 0 && format <= known) return BW_OK;
    return bw_team_fail(error, BW_BAD_INPUT,
                        "it was written by a newer Breakwater (format %d; this one knows up to "
                        "%d); use that one",
                        format, known);
}

bw_status bw_team_migrate(bw_team *team, bw_steps steps, bw_error *error) {
    bw_status status = bw_team_begin(team, error);
    if (status != BW_OK) return status;
    int format;
    status = bw_team_format(team, &format, error);
    if (status == BW_OK) status = bw_team_known(format, steps.count, error);
    for (int k = format; status == BW_OK && k < steps.count; k++)
        status = bw_sql_run(team, steps.step[k], error);
    if (status == BW_OK) {
        char number[48]; // a pragma takes no bound value
        snprintf(number, sizeof number, "PRAGMA user_version = %d", steps.count);
        status = bw_sql_run(team, number, error);
    }
    return bw_team_end(team, status, error);
}

/// Every table and index there is, with the words that made it, as one text.
static const char all_tables[] =
    "SELECT group_concat(quote(type) || quote(name) || quote(tbl_name) || quote(sql)) "
    "FROM (SELECT * FROM sqlite_schema ORDER BY type, name)";

/// NULL with the refusal. The caller frees it.
static char *tables_of(bw_team *team, bw_error *error) {
    bw_sql q = bw_sql_of(team, all_tables);
    const char *text = bw_sql_row(&q) ? (const char *)sqlite3_column_text(q.statement, 0) : NULL;
    char *copy = strdup(text ? text : "");
    const bw_status status = bw_sql_end(&q, error);
    if (status == BW_OK && copy) return copy;
    free(copy);
    if (status == BW_OK) bw_team_fail(error, BW_NO_ROOM, BW_NO_MEMORY);
    return NULL;
}

static char *fresh_tables(bw_error *error) {
    bw_team fresh = {.mode = BW_TEAM_WRITE};
    const int code =
        sqlite3_open_v2(":memory:", &fresh.db, SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE, NULL);
    const bw_status status = code == SQLITE_OK ? bw_team_migrate(&fresh, bw_team_steps(), error)
                                               : bw_sql_says(code, error);
    char *text = status == BW_OK ? tables_of(&fresh, error) : NULL;
    sqlite3_close(fresh.db);
    return text;
}

/// What a file of ours has; made once, in memory, and kept. NULL with the refusal.
static const char *expected_tables(bw_error *error) {
    static pthread_mutex_t lock = PTHREAD_MUTEX_INITIALIZER;
    static char *text;
    pthread_mutex_lock(&lock);
    if (!text) text = fresh_tables(error);
    const char *expected = text;
    pthread_mutex_unlock(&lock);
    return expected;
}

bw_status bw_team_tables_ours(bw_team *team, bw_error *error) {
    const char *expected = expected_tables(error);
    char *theirs = expected ? tables_of(team, error) : NULL;
    if (!theirs) return error->status;
    const bool same = strcmp(theirs, expected) == 0;
    free(theirs);
    if (same) return BW_OK;
    return bw_team_fail(error, BW_BAD_INPUT,
                        "its tables are not those of a team file; it is damaged, or another "
                        "program changed it");
}
