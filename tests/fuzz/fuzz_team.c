/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A sound team file with bytes changed as the input says (four bytes a change: where, in three, and what),
/// the last byte alone cutting it off. It is refused with a sentence or read in bounds.
#define _XOPEN_SOURCE 700
#include "team/sql.h"
#include "tests/team/everything.h"
#include <fcntl.h>
#include <stdint.h>
#include <sys/stat.h>
#include <unistd.h>

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size);

enum { LARGEST = 1 << 18 };

static void must(int holds, const char *what) {
    if (holds) return;
    fprintf(stderr, "broken: %s\n", what);
    abort();
}

static char path[64];

static void remove_folder(void) {
    unlink(path);
    *strrchr(path, '/') = '\0';
    rmdir(path);
}

/// The sound file, made once.
static size_t sound_file(uint8_t *bytes) {
    bw_error error;
    bw_team *team;
    snprintf(path, sizeof path, "%s/fuzz-team.XXXXXX",
             access("/dev/shm", W_OK) ? "/tmp" : "/dev/shm");
    must(mkdtemp(path) != NULL, "a folder");
    strcat(path, "/t.team");
    must(bw_team_create(path, &error) == BW_OK, "a team file");
    must(bw_team_open(path, BW_TEAM_WRITE, &team, &error) == BW_OK, "opened");
    must(fill_everything(team, 30), "filled");
    // Without a log beside it, which is SQLite's business and takes as long again as the file.
    must(bw_sql_run(team, "PRAGMA journal_mode = DELETE", &error) == BW_OK, "without a log");
    bw_team_close(team);
    atexit(remove_folder);
    FILE *in = fopen(path, "rb");
    const size_t length = in ? fread(bytes, 1, LARGEST, in) : 0;
    if (in) fclose(in);
    must(length > 4096, "read");
    return length;
}

static void write_file(const uint8_t *bytes, size_t length) {
    const int file = open(path, O_WRONLY | O_CREAT | O_TRUNC, 0600);
    must(file >= 0 && write(file, bytes, length) == (ssize_t)length && close(file) == 0, "written");
}

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size) {
    static uint8_t sound[LARGEST], bytes[LARGEST];
    static size_t sound_length;
    if (sound_length == 0) {
        // A thousand pieces of memory a file, each watched by the sanitizer, take most of the time.
        sqlite3_config(SQLITE_CONFIG_LOOKASIDE, 1024, 2000);
        sound_length = sound_file(sound);
    }
    size_t length = sound_length;
    memcpy(bytes, sound, length);
    for (size_t i = 0; i + 4 <= size; i += 4) {
        const size_t at = (size_t)data[i] << 16 | (size_t)data[i + 1] << 8 | data[i + 2];
        bytes[at % length] = data[i + 3];
    }
    if (size % 4 == 1) length = length * data[size - 1] / 255;
    write_file(bytes, length);
    bw_error error = {0};
    bw_team *team;
    bw_status status = bw_team_open(path, BW_TEAM_READ, &team, &error);
    if (status == BW_OK) status = read_everything(team, &error);
    if (status != BW_OK) must(error.message[0] != '\0', "a refusal says why");
    if (status != BW_OK) must(bw_text_plain(error.message), "a refusal can be shown");
    bw_team_close(team);
    return 0;
}
