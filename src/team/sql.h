/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Inside src/team only: statements with bound values, and what SQLite says turned into a sentence. A
/// statement that failed stays inert until bw_sql_end(), which tells: callers ask once, at the end.
#ifndef BW_TEAM_SQL_H
#define BW_TEAM_SQL_H

#include "team/team.h"
#include <sqlite3.h>
#include <stdbool.h>

struct bw_team {
    sqlite3 *db;
    bw_team_mode mode;
    int depth;    ///< of begins not ended
    bool spoiled; ///< an inner part failed, so the whole is taken back
    char path[1]; ///< as long as it needs
};

typedef struct bw_sql {
    bw_team *team;
    sqlite3_stmt *statement;
    int bound; ///< values bound so far
    int code;  ///< first failure, SQLITE_OK until then
} bw_sql;

/// Prepares one statement; its text is always a constant, never made from data.
bw_sql bw_sql_of(bw_team *team, const char *text);

/// Bind the next value.
void bw_sql_int(bw_sql *q, int64_t value);
void bw_sql_real(bw_sql *q, double value);
void bw_sql_text(bw_sql *q, const char *value); ///< copied; NULL binds null
void bw_sql_null(bw_sql *q);

/// Runs to the next row; false at the end and after a failure.
bool bw_sql_row(bw_sql *q);

/// Runs a statement that gives no rows, again from the first value bound; for many of a kind.
bool bw_sql_again(bw_sql *q);

/// Columns of the row. Text is cut to what fits, and what is null is empty, 0 or `otherwise`.
int64_t bw_sql_int_at(const bw_sql *q, int column);
double bw_sql_real_at(const bw_sql *q, int column, double otherwise);
void bw_sql_text_at(const bw_sql *q, int column, char *to, size_t room);
bool bw_sql_null_at(const bw_sql *q, int column);

/// Drops the statement and says whether all went well.
bw_status bw_sql_end(bw_sql *q, bw_error *error);

/// Makes room for one more row in a list of `count` that grows as it is read. False when there is no
/// memory, which bw_sql_end() will say.
bool bw_sql_grow(bw_sql *q, void **list, int count, size_t size);

/// The end of a statement that filled a list, which is dropped when it failed.
bw_status bw_sql_end_list(bw_sql *q, void **list, int *count, bw_error *error);

/// Runs constant statements in a row.
bw_status bw_sql_run(bw_team *team, const char *text, bw_error *error);

/// One whole number from a statement without values; `otherwise` when there is no row.
bw_status bw_sql_number(bw_team *team, const char *text, int64_t otherwise, int64_t *out,
                        bw_error *error);

/// The sentence for an SQLite result code.
bw_status bw_sql_says(int code, bw_error *error);

/// Fills *error with a sentence; returns the status.
bw_status bw_team_fail(bw_error *error, bw_status status, const char *format, ...)
    __attribute__((format(printf, 3, 4)));

#endif
