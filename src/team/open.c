/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Opening and making a team file. Whose file it is is read from its first hundred bytes before SQLite
/// makes anything of it, so that no other program's database is ever touched, not even to tidy up after a
/// crash. They are read through SQLite's own handle: a process that closes any other handle to a file
/// loses all the locks it has there (POSIX), also those of its other threads.
#include "core/text.h"
#include "file/beside.h"
#include "team/schema.h"
#include "team/sql.h"
#include <errno.h>
#include <fcntl.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

enum {
    WAIT = 5000,        ///< milliseconds to wait for another writer
    HEADER = 100,       ///< bytes of an SQLite header
    APPLICATION_AT = 68 ///< where the application id stands in it
};

static bw_status system_says(bw_error *error, const char *what) {
    return bw_team_fail(error, BW_FILE, "%s: %s", what, strerror(errno));
}

static uint32_t big_endian(const unsigned char *b) {
    return (uint32_t)b[0] << 24 | (uint32_t)b[1] << 16 | (uint32_t)b[2] << 8 | b[3];
}

static bw_status look_at_header(bw_team *team, bw_error *error) {
    unsigned char header[HEADER];
    sqlite3_file *file = NULL;
    sqlite3_file_control(team->db, "main", SQLITE_FCNTL_FILE_POINTER, &file);
    if (!file || !file->pMethods) return bw_sql_says(SQLITE_CANTOPEN, error);
    // What a short file does not have is filled up with zeros.
    const int code = file->pMethods->xRead(file, header, HEADER, 0);
    if (code != SQLITE_OK && code != SQLITE_IOERR_SHORT_READ) return bw_sql_says(code, error);
    if (code != SQLITE_OK || memcmp(header, "SQLite format 3", 16) != 0)
        return bw_team_fail(error, BW_BAD_INPUT, "it is not a team file; one is made by team new");
    if (big_endian(header + APPLICATION_AT) != BW_TEAM_APPLICATION)
        return bw_team_fail(error, BW_BAD_INPUT, "it is a database of another program");
    return BW_OK;
}

static bw_status look_first(const char *path, bw_error *error) {
    struct stat about;
    if (stat(path, &about) != 0 || access(path, R_OK) != 0)
        return system_says(error, "it cannot be opened");
    if (S_ISDIR(about.st_mode))
        return bw_team_fail(error, BW_BAD_INPUT, "this is a folder; name a team file in it");
    if (!S_ISREG(about.st_mode))
        return bw_team_fail(error, BW_FILE, "this is a device; name a team file");
    if (about.st_size == 0)
        return bw_team_fail(error, BW_BAD_INPUT, "it is empty; a team file is made by team new");
    return BW_OK;
}

/// Nothing in the file runs: no view, trigger or function of someone else's, and no value is larger than
/// a scheme's text.
static void lock_down(sqlite3 *db) {
    sqlite3_db_config(db, SQLITE_DBCONFIG_DEFENSIVE, 1, NULL);
    sqlite3_db_config(db, SQLITE_DBCONFIG_TRUSTED_SCHEMA, 0, NULL);
    sqlite3_db_config(db, SQLITE_DBCONFIG_ENABLE_TRIGGER, 0, NULL);
    sqlite3_db_config(db, SQLITE_DBCONFIG_ENABLE_VIEW, 0, NULL);
    sqlite3_limit(db, SQLITE_LIMIT_LENGTH, 4 << 20);
    sqlite3_limit(db, SQLITE_LIMIT_SQL_LENGTH, 100000);
    sqlite3_limit(db, SQLITE_LIMIT_ATTACHED, 1);
    sqlite3_busy_timeout(db, WAIT);
}

static const char settings[] =
    "PRAGMA foreign_keys = ON; PRAGMA secure_delete = ON; PRAGMA synchronous = FULL;"
    "PRAGMA temp_store = MEMORY; PRAGMA cell_size_check = ON; PRAGMA mmap_size = 0;";

static bw_team *handle(const char *path, bw_team_mode mode, bw_error *error) {
    const size_t length = strlen(path);
    bw_team *team = calloc(1, sizeof *team + length);
    if (!team) {
        bw_team_fail(error, BW_NO_ROOM, BW_NO_MEMORY);
        return NULL;
    }
    memcpy(team->path, path, length + 1);
    team->mode = mode;
    return team;
}

/// sqlite3_open_v2 takes a name that begins with "file:" for a URI only when asked to; as a plain name it
/// is asked to only here, and then every byte that means something in one is escaped.
static bw_status connect_unchanging(bw_team *team, bw_error *error) {
    static const char digits[] = "0123456789ABCDEF";
    char uri[4096] = "file:";
    bw_text out = bw_text_in(uri, sizeof uri);
    bw_put(&out, "file:");
    for (const unsigned char *c = (const unsigned char *)team->path; *c; c++) {
        if (*c > ' ' && *c < 0x7f && !strchr("%?#", *c)) {
            bw_put_char(&out, (char)*c);
            continue;
        }
        bw_put_char(&out, '%');
        bw_put_char(&out, digits[*c >> 4]);
        bw_put_char(&out, digits[*c & 15]);
    }
    bw_put(&out, "?immutable=1");
    if (out.full) return bw_team_fail(error, BW_FILE, "its name is too long");
    sqlite3_close(team->db);
    const int code = sqlite3_open_v2(uri, &team->db, SQLITE_OPEN_READONLY | SQLITE_OPEN_URI, NULL);
    return code == SQLITE_OK ? BW_OK : bw_sql_says(code, error);
}

static bool log_beside(const char *path) {
    char name[4096];
    struct stat about;
    snprintf(name, sizeof name, "%s-wal", path);
    return stat(name, &about) == 0 && about.st_size > 0;
}

/// Whether readers and writers have no place beside the file to agree on locks: a folder one may not
/// write to, or a full disk.
static bool no_place_for_locks(sqlite3 *db) {
    const int code = sqlite3_extended_errcode(db);
    return (code & 0xff) == SQLITE_CANTOPEN || (code & 0xff) == SQLITE_READONLY ||
           (code & 0xff) == SQLITE_FULL || code == SQLITE_IOERR_SHMOPEN ||
           code == SQLITE_IOERR_SHMSIZE || code == SQLITE_IOERR_SHMMAP ||
           code == SQLITE_IOERR_WRITE;
}

/// A file in a folder one may not write to, or on a full disk, can still be read: nobody else can have it
/// open for writing then, so it needs no lock, unless a log beside it holds changes that only a writer
/// may bring in.
static bw_status first_look(bw_team *team, bw_error *error) {
    int format;
    sqlite3_extended_result_codes(team->db, 1);
    lock_down(team->db);
    bw_status status = bw_team_format(team, &format, error);
    if (status == BW_OK || team->mode != BW_TEAM_READ || log_beside(team->path)) return status;
    if (!no_place_for_locks(team->db)) return status;
    status = connect_unchanging(team, error);
    if (status != BW_OK) return status;
    sqlite3_extended_result_codes(team->db, 1);
    lock_down(team->db);
    return bw_team_format(team, &format, error);
}

/// Opened for writing even to be read, where that is allowed: the last to close a file then tidies up the
/// log beside it. What is only to be read is kept from changing by query_only.
static bw_status attach(bw_team *team, bw_error *error) {
    const int code = sqlite3_open_v2(team->path, &team->db, SQLITE_OPEN_READWRITE, NULL);
    return code == SQLITE_OK ? BW_OK : bw_sql_says(code, error);
}

static bw_status connect(bw_team *team, bw_error *error) {
    bw_status status = first_look(team, error);
    if (status == BW_OK) status = bw_sql_run(team, settings, error);
    if (status != BW_OK) return status;
    if (team->mode == BW_TEAM_READ) return bw_sql_run(team, "PRAGMA query_only = ON", error);
    return sqlite3_db_readonly(team->db, "main") == 1 ? bw_sql_says(SQLITE_READONLY, error) : BW_OK;
}

static bw_status quick_check(bw_team *team, const char *pragma, bw_error *error) {
    bw_sql q = bw_sql_of(team, pragma);
    char answer[200] = "";
    if (bw_sql_row(&q)) bw_sql_text_at(&q, 0, answer, sizeof answer);
    bw_status status = bw_sql_end(&q, error);
    if (status == BW_OK && strcmp(answer, "ok") != 0) status = bw_sql_says(SQLITE_CORRUPT, error);
    return status;
}

static bw_status look_over(bw_team *team, bw_error *error) {
    int format;
    bw_status status = bw_team_format(team, &format, error);
    const int known = bw_team_steps().count;
    if (status == BW_OK) status = bw_team_known(format, known, error);
    if (status == BW_OK && format < known && team->mode == BW_TEAM_READ)
        return bw_team_fail(
            error, BW_BAD_INPUT,
            "it was written by an older Breakwater; team check brings it up to date");
    // Before a step of ours runs over it, the file must be sound.
    if (status == BW_OK) status = quick_check(team, "PRAGMA quick_check(1)", error);
    if (status == BW_OK && format != known) status = bw_team_migrate(team, bw_team_steps(), error);
    if (status == BW_OK) status = bw_team_tables_ours(team, error);
    if (status == BW_OK && team->mode == BW_TEAM_WRITE)
        status = bw_sql_run(team, "PRAGMA journal_mode = WAL", error);
    return status;
}

bw_status bw_team_open(const char *path, bw_team_mode mode, bw_team **team, bw_error *error) {
    *team = NULL;
    bw_status status = look_first(path, error);
    if (status != BW_OK) return status;
    bw_team *opened = handle(path, mode, error);
    if (!opened) return BW_NO_ROOM;
    status = attach(opened, error);
    if (status == BW_OK) status = look_at_header(opened, error);
    if (status == BW_OK) status = connect(opened, error);
    if (status == BW_OK) status = look_over(opened, error);
    if (status != BW_OK)
        bw_team_close(opened);
    else
        *team = opened;
    return status;
}

void bw_team_close(bw_team *team) {
    if (!team) return;
    sqlite3_close(team->db);
    free(team);
}

const char *bw_team_path(const bw_team *team) {
    return team->path;
}

static bw_status references(bw_team *team, bw_error *error) {
    bw_sql q = bw_sql_of(team, "PRAGMA foreign_key_check");
    const bool broken = bw_sql_row(&q);
    const bw_status status = bw_sql_end(&q, error);
    if (status != BW_OK || !broken) return status;
    return bw_sql_says(SQLITE_CORRUPT, error);
}

bw_status bw_team_verify(bw_team *team, bw_error *error) {
    const bw_status status = quick_check(team, "PRAGMA integrity_check(1)", error);
    return status == BW_OK ? references(team, error) : status;
}

/// Makes it whole under another name.
static bw_status make(const char *path, bw_error *error) {
    bw_team *team = handle(path, BW_TEAM_WRITE, error);
    if (!team) return BW_NO_ROOM;
    bw_status status = attach(team, error);
    if (status == BW_OK) status = connect(team, error);
    char id[48];
    snprintf(id, sizeof id, "PRAGMA application_id = %d", BW_TEAM_APPLICATION);
    if (status == BW_OK) status = bw_sql_run(team, id, error);
    if (status == BW_OK) status = bw_team_migrate(team, bw_team_steps(), error);
    if (status == BW_OK) status = bw_sql_run(team, "PRAGMA journal_mode = WAL", error);
    bw_team_close(team);
    return status;
}

static bw_status put_in_place(const char *from, const char *path, bw_error *error) {
    if (link(from, path) == 0) return BW_OK; // never over a file that is there
    if (errno == EEXIST) return bw_team_fail(error, BW_FILE, "it is there already");
    struct stat about; // a file system without links
    if (stat(path, &about) == 0) return bw_team_fail(error, BW_FILE, "it is there already");
    if (rename(from, path) == 0) return BW_OK;
    return system_says(error, "it cannot be written");
}

bw_status bw_team_create(const char *path, bw_error *error) {
    struct stat about;
    if (stat(path, &about) == 0) return bw_team_fail(error, BW_FILE, "it is there already");
    bw_beside beside; // only its owner may read it: it will hold minors' data
    if (!bw_beside_open(path, &beside)) return system_says(error, "it cannot be written");
    bw_status status = make(beside.path, error);
    if (status == BW_OK) status = put_in_place(beside.path, path, error);
    bw_beside_close(&beside);
    return status;
}
