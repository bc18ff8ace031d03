/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Making and opening a team file: what is refused, in words, and that refusing changes nothing.
#define _XOPEN_SOURCE 700
#include "team/schema.h"
#include "team/sql.h"
#include "team/team.h"

#include "harness.h"
#include "tests/team/scratch.h"
#include <fcntl.h>
#include <signal.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

static void a_new_file_opens(void) {
    const char *path = scratch_path("new.team");
    bw_error error;
    bw_team *team;
    CHECK_INT(bw_team_create(path, &error), BW_OK);
    CHECK_INT(bw_team_open(path, BW_TEAM_WRITE, &team, &error), BW_OK);
    CHECK_INT(bw_team_verify(team, &error), BW_OK);
    CHECK_TEXT(bw_team_path(team), path);
    int format = 0;
    CHECK_INT(bw_team_format(team, &format, &error), BW_OK);
    CHECK_INT(format, bw_team_steps().count);
    bw_team_close(team);
    bw_team_close(NULL);
    CHECK_INT(scratch_count(), 1); // no log, no temporary file
    struct stat about;
    CHECK(stat(path, &about) == 0 && (about.st_mode & 077) == 0);
    CHECK_INT(bw_team_create(path, &error), BW_FILE);
    CHECK_TEXT(error.message, "it is there already");
    CHECK_INT(bw_team_create(scratch_path("no/such/folder.team"), &error), BW_FILE);
    CHECK_INT(scratch_count(), 1);
}

static bool refused(const char *path, const char *words) {
    bw_error error = {0};
    bw_team *team;
    const bw_status read = bw_team_open(path, BW_TEAM_READ, &team, &error);
    const bool said = strstr(error.message, words) != NULL;
    if (!said) fprintf(stderr, "said \"%s\"\n", error.message);
    bw_team_close(team);
    const bw_status write = bw_team_open(path, BW_TEAM_WRITE, &team, &error);
    bw_team_close(team);
    return read != BW_OK && write != BW_OK && said;
}

static void write_bytes(const char *path, const char *bytes, size_t length) {
    FILE *out = fopen(path, "wb");
    CHECK(out && fwrite(bytes, 1, length, out) == length && fclose(out) == 0);
}

static void strangers_are_refused(void) {
    const char *path = scratch_path("strange");
    CHECK(refused(path, "cannot be opened"));
    write_bytes(path, "", 0);
    CHECK(refused(path, "it is empty"));
    write_bytes(path, "{\"format\": 1}", 13);
    CHECK(refused(path, "not a team file"));
    CHECK(refused(scratch_path(""), "folder"));
    CHECK(refused("/dev/null", "device"));

    sqlite3 *db;
    unlink(path);
    CHECK_INT(sqlite3_open(path, &db), SQLITE_OK);
    CHECK_INT(sqlite3_exec(db, "CREATE TABLE t (a); PRAGMA user_version = 1", NULL, NULL, NULL), 0);
    sqlite3_close(db);
    CHECK(refused(path, "another program"));
}

static void change(const char *path, const char *sql) {
    sqlite3 *db;
    CHECK_INT(sqlite3_open(path, &db), SQLITE_OK);
    CHECK_INT(sqlite3_exec(db, sql, NULL, NULL, NULL), SQLITE_OK);
    sqlite3_close(db);
}

static void newer_and_changed_files_are_refused(void) {
    const char *path = fresh_team("newer.team");
    change(path, "PRAGMA user_version = 99");
    CHECK(refused(path, "newer Breakwater (format 99"));
    path = fresh_team("changed.team");
    change(path, "CREATE VIEW all_players AS SELECT * FROM player");
    CHECK(refused(path, "another program changed it"));
    path = fresh_team("triggered.team");
    change(path, "CREATE TRIGGER t AFTER INSERT ON player BEGIN DELETE FROM entry; END");
    CHECK(refused(path, "another program changed it"));
    path = fresh_team("poorer.team");
    change(path, "DROP TABLE quiz");
    CHECK(refused(path, "another program changed it"));
}

static void migrations_are_whole(void) {
    static const char *const more[] = {"CREATE TABLE one (a)", "CREATE TABLE two (a)",
                                       "CREATE TABLE three (a); INSERT INTO nothing VALUES (1)"};
    bw_error error;
    bw_team team = {.mode = BW_TEAM_WRITE};
    int format;
    int64_t tables;
    const char count[] = "SELECT count(*) FROM sqlite_schema";
    CHECK_INT(sqlite3_open(":memory:", &team.db), SQLITE_OK);
    CHECK_INT(bw_team_migrate(&team, (bw_steps){more, 1}, &error), BW_OK);
    CHECK(bw_team_migrate(&team, (bw_steps){more, 3}, &error) != BW_OK);
    CHECK_INT(bw_team_format(&team, &format, &error), BW_OK);
    CHECK_INT(format, 1);
    CHECK_INT(bw_sql_number(&team, count, -1, &tables, &error), BW_OK);
    CHECK_INT(tables, 1);
    CHECK_INT(bw_team_migrate(&team, (bw_steps){more, 2}, &error), BW_OK);
    CHECK_INT(bw_sql_number(&team, count, -1, &tables, &error), BW_OK);
    CHECK_INT(tables, 2);
    CHECK_INT(bw_team_migrate(&team, (bw_steps){more, 2}, &error), BW_OK); // nothing left to do
    CHECK_INT(bw_team_migrate(&team, (bw_steps){more, 1}, &error), BW_BAD_INPUT);
    sqlite3_close(team.db);
}

static void an_unfinished_file_is_brought_up(void) {
    const char *path = scratch_path("old.team");
    unlink(path);
    change(path, "PRAGMA application_id = 1115116646");
    CHECK_INT(1115116646, BW_TEAM_APPLICATION);
    bw_error error;
    bw_team *team;
    CHECK_INT(bw_team_open(path, BW_TEAM_READ, &team, &error), BW_BAD_INPUT);
    CHECK(strstr(error.message, "older Breakwater") != NULL);
    CHECK_INT(bw_team_open(path, BW_TEAM_WRITE, &team, &error), BW_OK);
    bw_team_close(team);
    CHECK_INT(bw_team_open(path, BW_TEAM_READ, &team, &error), BW_OK);
    CHECK_INT(bw_team_begin(team, &error), BW_FILE);
    bw_team_close(team);
}

/// As someone who may read the file but not write to it or its folder.
static int as_a_stranger(const char *path) {
    if (getuid() == 0 && setuid(65534) != 0) return 9;
    bw_error error;
    bw_team *team;
    if (bw_team_open(path, BW_TEAM_WRITE, &team, &error) != BW_FILE) return 1;
    if (!strstr(error.message, "read-only")) return 2;
    if (bw_team_open(path, BW_TEAM_READ, &team, &error) != BW_OK) return 3;
    if (bw_team_verify(team, &error) != BW_OK) return 4;
    bw_team_close(team);
    return 0;
}

static void a_read_only_file_is_read(void) {
    const char *path = fresh_team("read-only?#%.team"); // and its name means nothing
    CHECK(chmod(path, 0444) == 0 && chmod(scratch_path(""), 0555) == 0);
    const pid_t child = fork();
    if (child == 0) _exit(as_a_stranger(path));
    int status = -1;
    CHECK(waitpid(child, &status, 0) == child);
    CHECK_INT(WIFEXITED(status) ? WEXITSTATUS(status) : -1, 0);
    CHECK(chmod(scratch_path(""), 0755) == 0);
}

static void a_busy_file_is_waited_for_and_then_said(void) {
    const char *path = fresh_team("busy.team");
    bw_error error;
    bw_team *first, *second;
    CHECK_INT(bw_team_open(path, BW_TEAM_WRITE, &first, &error), BW_OK);
    CHECK_INT(bw_team_open(path, BW_TEAM_WRITE, &second, &error), BW_OK);
    sqlite3_busy_timeout(second->db, 10);
    CHECK_INT(bw_team_begin(first, &error), BW_OK);
    CHECK_INT(bw_team_begin(second, &error), BW_FILE);
    CHECK(strstr(error.message, "another program is writing") != NULL);
    CHECK_INT(bw_team_begin(first, &error), BW_OK);
    CHECK_INT(bw_sql_run(first, "INSERT INTO setting VALUES ('a', 'b')", &error), BW_OK);
    CHECK_INT(bw_team_end(first, BW_BAD_INPUT, &error), BW_BAD_INPUT);
    CHECK(bw_team_end(first, BW_OK, &error) != BW_OK); // what an inner part spoiled is not kept
    CHECK_INT(bw_team_begin(second, &error), BW_OK);
    int64_t rows = -1;
    CHECK_INT(bw_sql_number(second, "SELECT count(*) FROM setting", -1, &rows, &error), BW_OK);
    CHECK_INT(rows, 0);
    CHECK_INT(bw_team_end(second, BW_OK, &error), BW_OK);
    bw_team_close(first);
    bw_team_close(second);
}

/// Whether another process finds this one's lock on the file: SQLite's range for those who have it open.
static bool held_by_us(const char *path) {
    const pid_t child = fork();
    if (child == 0) {
        struct flock look = {.l_type = F_WRLCK, .l_start = 0x40000002, .l_len = 510};
        const int file = open(path, O_RDWR);
        _exit(file >= 0 && fcntl(file, F_GETLK, &look) == 0 && look.l_type != F_UNLCK ? 0 : 1);
    }
    int status = 1;
    CHECK(child > 0 && waitpid(child, &status, 0) == child);
    return WIFEXITED(status) && WEXITSTATUS(status) == 0;
}

/// A server has the file open several times. Opening and closing it once more takes nothing from those
/// that have it: without their lock another program takes itself for the last one, and tidies up the log
/// they are writing to.
static void opening_it_again_takes_no_lock_away(void) {
    bw_team *first = open_fresh("twice.team"), *second;
    bw_error error;
    int format;
    CHECK_INT(bw_team_format(first, &format, &error), BW_OK);
    CHECK(held_by_us(bw_team_path(first)));
    CHECK_INT(bw_team_open(bw_team_path(first), BW_TEAM_READ, &second, &error), BW_OK);
    CHECK(held_by_us(bw_team_path(first)));
    bw_team_close(second);
    CHECK(held_by_us(bw_team_path(first)));
    bw_team_close(first);
}

/// A file-size limit of nothing is a full disk that a test can have: not a byte can be added anywhere.
static void a_file_on_a_full_disk_is_read(void) {
    const char *path = scratch_path("full.team");
    bw_error error;
    bw_team *team;
    CHECK_INT(bw_team_create(path, &error), BW_OK);
    struct rlimit before, none;
    CHECK(getrlimit(RLIMIT_FSIZE, &before) == 0);
    none = before;
    none.rlim_cur = 0;
    signal(SIGXFSZ, SIG_IGN);
    CHECK(setrlimit(RLIMIT_FSIZE, &none) == 0);
    const bw_status reading = bw_team_open(path, BW_TEAM_READ, &team, &error);
    const bw_status sound = reading == BW_OK ? bw_team_verify(team, &error) : reading;
    if (reading == BW_OK) bw_team_close(team);
    const bw_status writing = bw_team_open(path, BW_TEAM_WRITE, &team, &error);
    if (writing == BW_OK) bw_team_close(team);
    CHECK(setrlimit(RLIMIT_FSIZE, &before) == 0);
    CHECK_INT(reading, BW_OK);
    CHECK_INT(sound, BW_OK);
    CHECK_INT(writing, BW_FILE);
}

int main(int argc, char **argv) {
    scratch_begin();
    RUN(a_new_file_opens);
    RUN(strangers_are_refused);
    RUN(newer_and_changed_files_are_refused);
    RUN(migrations_are_whole);
    RUN(an_unfinished_file_is_brought_up);
    RUN(a_read_only_file_is_read);
    RUN(opening_it_again_takes_no_lock_away);
    RUN(a_file_on_a_full_disk_is_read);
    RUN(a_busy_file_is_waited_for_and_then_said);
    scratch_end();
    return test_report(argc, argv);
}
