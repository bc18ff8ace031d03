/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "team/backup.h"
#include "file/beside.h"
#include "team/sql.h"
#include <errno.h>
#include <fcntl.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

enum { PATH_ROOM = 4096, PAGES = 256, WAITS = 100 };

/// The online backup: a step at a time, so that a writer can come between; it then begins again by itself.
static bw_status copy(sqlite3 *from, sqlite3 *to, bw_error *error) {
    sqlite3_backup *backup = sqlite3_backup_init(to, "main", from, "main");
    if (!backup) return bw_sql_says(sqlite3_errcode(to), error);
    int code, waits = 0;
    do {
        code = sqlite3_backup_step(backup, PAGES);
        const bool held = code == SQLITE_BUSY || code == SQLITE_LOCKED;
        if (held && ++waits > WAITS) break;
        if (held) sqlite3_sleep(50);
        if (held) code = SQLITE_OK;
    } while (code == SQLITE_OK);
    const int finished = sqlite3_backup_finish(backup);
    if (code == SQLITE_DONE) code = finished;
    return code == SQLITE_OK ? BW_OK : bw_sql_says(code, error);
}

static bw_status copy_into_file(sqlite3 *from, const char *path, bw_error *error) {
    sqlite3 *to;
    int code = sqlite3_open_v2(path, &to, SQLITE_OPEN_READWRITE, NULL);
    bw_status status = code == SQLITE_OK ? copy(from, to, error) : bw_sql_says(code, error);
    code = sqlite3_close(to);
    if (status == BW_OK && code != SQLITE_OK) status = bw_sql_says(code, error);
    return status;
}

static bw_status look_over(const char *path, bw_error *error) {
    bw_team *copy_of;
    bw_status status = bw_team_open(path, BW_TEAM_READ, &copy_of, error);
    if (status == BW_OK) status = bw_team_verify(copy_of, error);
    bw_team_close(copy_of);
    return status;
}

static bw_status system_says(bw_error *error, const char *what) {
    return bw_team_fail(error, BW_FILE, "%s: %s", what, strerror(errno));
}

static void drop_beside(const char *path) {
    static const char *const ends[] = {"-wal", "-shm", "-journal"};
    for (int i = 0; i < BW_COUNT(ends); i++) {
        char name[PATH_ROOM];
        if (snprintf(name, sizeof name, "%s%s", path, ends[i]) < (int)sizeof name) unlink(name);
    }
}

/// A log that lies beside `path` belongs to the file that is replaced and would spoil the new one.
static bw_status put_in_place(const char *temporary, const char *path, bw_error *error) {
    drop_beside(path);
    return rename(temporary, path) == 0 ? BW_OK : system_says(error, "it cannot be written");
}

static bw_status copy_to(sqlite3 *from, const char *path, bw_error *error) {
    bw_beside beside;
    if (!bw_beside_open(path, &beside)) return system_says(error, "it cannot be written");
    bw_status status = copy_into_file(from, beside.path, error);
    if (status == BW_OK) status = look_over(beside.path, error);
    if (status == BW_OK) status = put_in_place(beside.path, path, error);
    drop_beside(beside.path);
    bw_beside_close(&beside);
    return status;
}

static bool same_file(const char *a, const char *b) {
    struct stat one, other;
    return stat(a, &one) == 0 && stat(b, &other) == 0 && one.st_dev == other.st_dev &&
           one.st_ino == other.st_ino;
}

/// Only a team file, or nothing, is replaced.
static bw_status may_replace(const char *from, const char *path, bool force, bw_error *error) {
    struct stat about;
    if (stat(path, &about) != 0) return BW_OK;
    if (!S_ISREG(about.st_mode)) return bw_team_fail(error, BW_FILE, "that is no file");
    if (same_file(from, path)) return bw_team_fail(error, BW_FILE, "both are the same file");
    if (!force) return bw_team_fail(error, BW_FILE, "it is there already; --force replaces it");
    return BW_OK;
}

bw_status bw_team_backup(bw_team *team, const char *path, bool force, bw_error *error) {
    const bw_status status = may_replace(team->path, path, force, error);
    return status == BW_OK ? copy_to(team->db, path, error) : status;
}

static bw_status restore(bw_team *from, const char *path, bw_error *error) {
    bw_team *target;
    if (access(path, F_OK) != 0) return copy_to(from->db, path, error);
    const bw_status opened = bw_team_open(path, BW_TEAM_WRITE, &target, error);
    if (opened == BW_FILE) return opened;
    if (opened != BW_OK) return copy_to(from->db, path, error); // not worth keeping
    const bw_status status = copy(from->db, target->db, error);
    bw_team_close(target);
    return status;
}

bw_status bw_team_restore(const char *backup, const char *path, bool force, bw_error *error) {
    bw_team *from;
    bw_status status = may_replace(backup, path, force, error);
    if (status != BW_OK) return status;
    status = bw_team_open(backup, BW_TEAM_READ, &from, error);
    if (status != BW_OK) {
        char said[BW_MESSAGE_SIZE];
        snprintf(said, sizeof said, "%.280s", error->message);
        return bw_team_fail(error, status, "the backup: %s", said);
    }
    status = bw_team_verify(from, error);
    if (status == BW_OK) status = restore(from, path, error);
    bw_team_close(from);
    return status;
}
