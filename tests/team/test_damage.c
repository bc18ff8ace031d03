/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Damaged team files: bytes changed, pieces cut off, zeroed or swapped, in the file and in the log beside
/// it. Each is refused in words or read; none ends the program (the sanitised build looks closer), and
/// what is read is in bounds.
#define _XOPEN_SOURCE 700
#include "team/sql.h"

#include "harness.h"
#include "tests/team/everything.h"
#include "tests/team/scratch.h"

static unsigned char *whole;
static size_t whole_length;

static unsigned char *bytes_of(const char *path, size_t *length) {
    FILE *in = fopen(path, "rb");
    unsigned char *bytes = malloc(1 << 20);
    CHECK(in != NULL);
    *length = in ? fread(bytes, 1, 1 << 20, in) : 0;
    if (in) fclose(in);
    return bytes;
}

static void write_bytes(const char *path, const unsigned char *bytes, size_t length) {
    FILE *out = fopen(path, "wb");
    CHECK(out && fwrite(bytes, 1, length, out) == length && fclose(out) == 0);
}

/// 1 when it was read, 0 when it was refused with a sentence.
static int opens(const char *path, bw_team_mode mode) {
    bw_error error = {0};
    bw_team *team;
    bw_status status = bw_team_open(path, mode, &team, &error);
    if (status == BW_OK) status = read_everything(team, &error);
    if (status != BW_OK) CHECK(error.message[0] != '\0' && bw_text_plain(error.message));
    if (team && status == BW_OK) status = bw_team_verify(team, &error);
    bw_team_close(team);
    return status == BW_OK;
}

static void damage(unsigned char *bytes, size_t *length, unsigned long long *seed) {
    const size_t at = test_random(seed) % *length;
    const int kind = entry_below(seed, 6);
    size_t run = 1 + (size_t)entry_below(seed, 64);
    if (run > *length - at) run = *length - at;
    switch (kind) {
    case 0: bytes[at] ^= (unsigned char)(1 + entry_below(seed, 255)); return;
    case 1: memset(bytes + at, 0, run); return;
    case 2: memset(bytes + at, 0xff, run); return;
    case 3: *length = at + 1; return;
    case 4: // a page in another's place
        memcpy(bytes + (at / 4096) * 4096, bytes + (test_random(seed) % (*length / 4096)) * 4096,
               4096);
        return;
    default: // page headers and cell pointers are where damage hurts most
        bytes[(at / 4096) * 4096 + (size_t)entry_below(seed, 120)] =
            (unsigned char)entry_below(seed, 256);
    }
}

static void damaged_files_are_refused_or_read(void) {
    enum { TRIES = 1500 };
    const char *path = scratch_path("damaged.team");
    unsigned char *bytes = malloc(whole_length);
    unsigned long long seed = 2026;
    int read = 0;
    for (int i = 0; i < TRIES; i++) {
        size_t length = whole_length;
        memcpy(bytes, whole, whole_length);
        for (int k = 1 + entry_below(&seed, 3); k > 0; k--) {
            if (length >= 8192) damage(bytes, &length, &seed);
        }
        write_bytes(path, bytes, length);
        read += opens(path, i % 8 == 0 ? BW_TEAM_WRITE : BW_TEAM_READ);
    }
    free(bytes);
    CHECK(read > 0 && read < TRIES); // both ways happen, so both were tried
    printf("%d damaged files: %d refused, %d still whole where it mattered\n", TRIES, TRIES - read,
           read);
}

/// A file with its log as a crash leaves them, the log damaged.
static void damaged_logs_are_refused_or_read(void) {
    bw_error error;
    bw_team *team = open_fresh("log.team");
    size_t file_length, log_length;
    CHECK(fill_everything(team, 50));
    unsigned char *file = bytes_of(scratch_path("log.team"), &file_length);
    unsigned char *log = bytes_of(scratch_path("log.team-wal"), &log_length);
    bw_team_close(team);
    CHECK(log_length > 4096);
    const char *path = scratch_path("crashed.team"), *beside = scratch_path("crashed.team-wal");
    unsigned char *bytes = malloc(log_length);
    unsigned long long seed = 12;
    for (int i = 0; i < 150; i++) {
        size_t length = log_length;
        memcpy(bytes, log, log_length);
        if (i > 0) damage(bytes, &length, &seed);
        write_bytes(path, file, file_length);
        write_bytes(beside, bytes, length);
        bw_entry *list = NULL;
        int count = -1;
        const bw_status status = bw_team_open(path, BW_TEAM_WRITE, &team, &error);
        if (status == BW_OK) CHECK_INT(bw_team_entries(team, NULL, &list, &count, &error), BW_OK);
        if (i == 0) CHECK_INT(count, 50);
        // All of the last change or none of it, for the log's sums tell which is whole.
        if (status == BW_OK) CHECK(count == 50 || count == 0);
        free(list);
        bw_team_close(team);
        unlink(beside);
    }
    free(bytes);
    free(file);
    free(log);
}

/// Values that no statement of ours would store, in a file whose pages are sound.
static void values_out_of_bounds_are_refused(void) {
    static const char *const changes[] = {"UPDATE entry SET outcome = 'win'",
                                          "UPDATE entry SET client = 'a b' WHERE id = 1",
                                          "UPDATE entry SET note = x'41' || 'b'",
                                          "UPDATE entry_out SET who = '1234567'",
                                          "UPDATE revision SET hash = '0123456789abcdef'",
                                          "UPDATE revision SET document = '{}'",
                                          "UPDATE entry SET note = char(27) || '[2J'",
                                          "UPDATE entry SET shot_x = 1e300, shot_y = 2"};
    for (int i = 0; i < (int)(sizeof changes / sizeof *changes); i++) {
        const char *path = scratch_path("values.team");
        sqlite3 *db;
        write_bytes(path, whole, whole_length);
        CHECK_INT(sqlite3_open(path, &db), SQLITE_OK);
        CHECK_INT(sqlite3_exec(db, "PRAGMA ignore_check_constraints = ON", NULL, NULL, NULL), 0);
        CHECK_INT(sqlite3_exec(db, changes[i], NULL, NULL, NULL), SQLITE_OK);
        sqlite3_close(db);
        const int read = opens(path, BW_TEAM_READ);
        if (i != 2) CHECK(!read);
    }
}

int main(int argc, char **argv) {
    scratch_begin();
    bw_team *team = open_fresh("whole.team");
    CHECK(fill_everything(team, 120));
    bw_team_close(team);
    whole = bytes_of(scratch_path("whole.team"), &whole_length);
    CHECK(opens(scratch_path("whole.team"), BW_TEAM_READ));
    RUN(damaged_files_are_refused_or_read);
    RUN(damaged_logs_are_refused_or_read);
    RUN(values_out_of_bounds_are_refused);
    free(whole);
    scratch_end();
    return test_report(argc, argv);
}
