/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A folder of one test program's own, gone at its end, and new team files in it.
#ifndef BW_TESTS_TEAM_SCRATCH_H
#define BW_TESTS_TEAM_SCRATCH_H

#include "team/team.h"

#include "harness.h"
#include <dirent.h>
#include <stdlib.h>
#include <sys/stat.h>
#include <unistd.h>

static char scratch_folder[256];

static inline void scratch_begin(void) {
    const char *parent = getenv("TMPDIR");
    snprintf(scratch_folder, sizeof scratch_folder, "%s/team.XXXXXX", parent ? parent : "/tmp");
    CHECK(mkdtemp(scratch_folder) != NULL);
    CHECK(chmod(scratch_folder, 0755) == 0);
}

/// A path in the folder; the last few stay valid.
static inline const char *scratch_path(const char *name) {
    static char paths[8][520];
    static int next;
    char *path = paths[next++ % 8];
    snprintf(path, sizeof paths[0], "%s/%s", scratch_folder, name);
    return path;
}

/// How many files are in the folder; with `remove` none are left.
static inline int scratch_files(int remove) {
    DIR *listing = opendir(scratch_folder);
    int count = 0;
    for (const struct dirent *entry; listing && (entry = readdir(listing));) {
        if (entry->d_name[0] == '.') continue;
        count++;
        if (remove) unlink(scratch_path(entry->d_name));
    }
    if (listing) closedir(listing);
    return count;
}

/// Whether a file there has these letters in its name.
static inline bool scratch_has(const char *letters) {
    DIR *listing = opendir(scratch_folder);
    bool found = false;
    for (const struct dirent *entry; listing && (entry = readdir(listing));)
        found = found || strstr(entry->d_name, letters);
    if (listing) closedir(listing);
    return found;
}

static inline int scratch_count(void) {
    return scratch_files(0);
}

static inline void scratch_end(void) {
    scratch_files(1);
    rmdir(scratch_folder);
}

/// A new, empty team file of this name.
static inline const char *fresh_team(const char *name) {
    const char *path = scratch_path(name);
    bw_error error;
    unlink(path);
    CHECK_INT(bw_team_create(path, &error), BW_OK);
    return path;
}

/// The same, open for writing.
static inline bw_team *open_fresh(const char *name) {
    bw_team *team = NULL;
    bw_error error;
    CHECK_INT(bw_team_open(fresh_team(name), BW_TEAM_WRITE, &team, &error), BW_OK);
    return team;
}

#endif
