/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "team/sql.h"
#include "core/text.h"
#include <stdarg.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

bw_status bw_team_fail(bw_error *error, bw_status status, const char *format, ...) {
    *error = (bw_error){.status = status};
    va_list list;
    va_start(list, format);
    vsnprintf(error->message, sizeof error->message, format, list);
    va_end(list);
    return status;
}

bw_status bw_sql_says(int code, bw_error *error) {
    switch (code & 0xff) {
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return bw_team_fail(error, BW_FILE,
                            "another program is writing to it; try again in a moment");
    case SQLITE_READONLY:
    case SQLITE_PERM:
        return bw_team_fail(
            error, BW_FILE,
            "it is read-only; nothing was changed. Copy it to a folder of your own");
    case SQLITE_FULL: return bw_team_fail(error, BW_FILE, "the disk is full; nothing was changed");
    case SQLITE_IOERR:
        return bw_team_fail(error, BW_FILE, "the disk failed or is full (%s); nothing was changed",
                            sqlite3_errstr(code));
    case SQLITE_CANTOPEN:
        return bw_team_fail(error, BW_FILE, "it cannot be opened; may you write to its folder?");
    case SQLITE_CORRUPT:
    case SQLITE_NOTADB:
    case SQLITE_MISMATCH:
        return bw_team_fail(error, BW_BAD_INPUT, "the file is damaged; restore a backup of it");
    case SQLITE_NOMEM: return bw_team_fail(error, BW_NO_ROOM, BW_NO_MEMORY);
    case SQLITE_TOOBIG:
        return bw_team_fail(error, BW_LIMIT, "something in it is larger than a team file holds");
    case SQLITE_CONSTRAINT:
        if (code == SQLITE_CONSTRAINT_FOREIGNKEY)
            return bw_team_fail(error, BW_NOT_FOUND,
                                "it names a game, a revision or a player that the team file does "
                                "not have");
        return bw_team_fail(error, BW_BAD_INPUT, "a value is not one the team file can hold");
    default:
        return bw_team_fail(error, BW_FILE, "the team file could not be used: %s",
                            sqlite3_errstr(code));
    }
}

bw_sql bw_sql_of(bw_team *team, const char *text) {
    bw_sql q = {.team = team};
    q.code = sqlite3_prepare_v2(team->db, text, -1, &q.statement, NULL);
    return q;
}

static void bound(bw_sql *q, int code) {
    if (q->code == SQLITE_OK) q->code = code;
}

void bw_sql_int(bw_sql *q, int64_t value) {
    if (q->code == SQLITE_OK) bound(q, sqlite3_bind_int64(q->statement, ++q->bound, value));
}

void bw_sql_real(bw_sql *q, double value) {
    if (q->code == SQLITE_OK) bound(q, sqlite3_bind_double(q->statement, ++q->bound, value));
}

void bw_sql_text(bw_sql *q, const char *value) {
    if (q->code == SQLITE_OK)
        bound(q, sqlite3_bind_text(q->statement, ++q->bound, value, -1, SQLITE_TRANSIENT));
}

void bw_sql_null(bw_sql *q) {
    if (q->code == SQLITE_OK) bound(q, sqlite3_bind_null(q->statement, ++q->bound));
}

bool bw_sql_row(bw_sql *q) {
    if (q->code != SQLITE_OK) return false;
    const int code = sqlite3_step(q->statement);
    if (code == SQLITE_ROW) return true;
    if (code != SQLITE_DONE) q->code = code;
    return false;
}

bool bw_sql_again(bw_sql *q) {
    if (q->code != SQLITE_OK) return false;
    const int code = sqlite3_step(q->statement);
    if (code != SQLITE_DONE) q->code = code == SQLITE_ROW ? SQLITE_MISUSE : code;
    sqlite3_reset(q->statement);
    q->bound = 0;
    return q->code == SQLITE_OK;
}

int64_t bw_sql_int_at(const bw_sql *q, int column) {
    return sqlite3_column_int64(q->statement, column);
}

double bw_sql_real_at(const bw_sql *q, int column, double otherwise) {
    return bw_sql_null_at(q, column) ? otherwise : sqlite3_column_double(q->statement, column);
}

void bw_sql_text_at(const bw_sql *q, int column, char *to, size_t room) {
    const char *text = (const char *)sqlite3_column_text(q->statement, column);
    bw_copy(to, room, text ? text : "");
}

bool bw_sql_null_at(const bw_sql *q, int column) {
    return sqlite3_column_type(q->statement, column) == SQLITE_NULL;
}

bw_status bw_sql_end(bw_sql *q, bw_error *error) {
    sqlite3_finalize(q->statement);
    q->statement = NULL;
    return q->code == SQLITE_OK ? BW_OK : bw_sql_says(q->code, error);
}

bool bw_sql_grow(bw_sql *q, void **list, int count, size_t size) {
    if ((count & (count - 1)) != 0) return true; // there is room up to the next power of two
    void *larger = realloc(*list, (count > 0 ? 2 * (size_t)count : 1) * size);
    if (larger)
        *list = larger;
    else
        bound(q, SQLITE_NOMEM);
    return larger != NULL;
}

bw_status bw_sql_end_list(bw_sql *q, void **list, int *count, bw_error *error) {
    const bw_status status = bw_sql_end(q, error);
    if (status == BW_OK) return BW_OK;
    free(*list);
    *list = NULL;
    *count = 0;
    return status;
}

bw_status bw_sql_run(bw_team *team, const char *text, bw_error *error) {
    const int code = sqlite3_exec(team->db, text, NULL, NULL, NULL);
    return code == SQLITE_OK ? BW_OK : bw_sql_says(code, error);
}

bw_status bw_sql_number(bw_team *team, const char *text, int64_t otherwise, int64_t *out,
                        bw_error *error) {
    bw_sql q = bw_sql_of(team, text);
    *out = bw_sql_row(&q) ? bw_sql_int_at(&q, 0) : otherwise;
    return bw_sql_end(&q, error);
}
