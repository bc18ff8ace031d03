/* SPDX-License-Identifier: GPL-3.0-or-later */
#define _DEFAULT_SOURCE // flock, mkdtemp
#include "file/beside.h"

#include <ctype.h>
#include <dirent.h>
#include <errno.h>
#include <fcntl.h>
#include <limits.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

static const char mark[] = ".breakwater-", scratch[] = "breakwater-scratch-";

enum { LETTERS = 6, TRIES = 8 };

/// Whether a name ends in `before` and six letters or digits.
static bool ends_in(const char *name, const char *before) {
    const size_t n = strlen(name), m = strlen(before);
    if (n < m + LETTERS || memcmp(name + n - LETTERS - m, before, m) != 0) return false;
    for (size_t i = n - LETTERS; i < n; i++) {
        if (!isalnum((unsigned char)name[i])) return false;
    }
    return true;
}

static bool is_folder_name(const char *name) {
    return strlen(name) == sizeof scratch - 1 + LETTERS && ends_in(name, scratch);
}

/// Whether what is open under this name is ours, in nobody's use, and still what the name stands for. It
/// is locked then.
static bool left_behind(int folder, const char *name, int file, mode_t kind) {
    struct stat about, now;
    return fstat(file, &about) == 0 && (about.st_mode & S_IFMT) == kind &&
           about.st_uid == geteuid() && (about.st_mode & 077) == 0 &&
           (kind == S_IFDIR || about.st_nlink == 1) && flock(file, LOCK_EX | LOCK_NB) == 0 &&
           fstatat(folder, name, &now, AT_SYMLINK_NOFOLLOW) == 0 && now.st_dev == about.st_dev &&
           now.st_ino == about.st_ino;
}

/// What SQLite puts beside a file goes first: without the file its names would mean nothing.
static void remove_file(int folder, const char *name) {
    static const char *const ends[] = {"-wal", "-shm", "-journal", ""};
    char one[NAME_MAX + 16];
    for (size_t i = 0; i < sizeof ends / sizeof ends[0]; i++) {
        snprintf(one, sizeof one, "%s%s", name, ends[i]);
        unlinkat(folder, one, 0);
    }
}

/// A folder of ours has plain files in it and nothing else.
static void remove_folder(int parent, const char *name, int folder) {
    DIR *list = fdopendir(dup(folder));
    for (const struct dirent *entry; list && (entry = readdir(list));) {
        if (entry->d_name[0] != '.') unlinkat(folder, entry->d_name, 0);
    }
    if (list) closedir(list);
    unlinkat(parent, name, AT_REMOVEDIR);
}

static void sweep_one(int folder, const char *name) {
    const bool whole = is_folder_name(name);
    if (!whole && !ends_in(name, mark)) return;
    const int file = openat(
        folder, name, O_RDONLY | O_NOFOLLOW | O_NONBLOCK | O_CLOEXEC | (whole ? O_DIRECTORY : 0));
    if (file < 0) return;
    if (left_behind(folder, name, file, whole ? S_IFDIR : S_IFREG)) {
        if (whole)
            remove_folder(folder, name, file);
        else
            remove_file(folder, name);
    }
    close(file);
}

void bw_beside_sweep(const char *folder) {
    DIR *list = opendir(folder);
    for (const struct dirent *entry; list && (entry = readdir(list));)
        sweep_one(dirfd(list), entry->d_name);
    if (list) closedir(list);
}

void bw_beside_sweep_of(const char *path) {
    char folder[BW_BESIDE_SIZE];
    const char *slash = strrchr(path, '/');
    const int n = slash ? (int)(slash - path) : 0;
    if (n >= (int)sizeof folder) return;
    if (slash)
        snprintf(folder, sizeof folder, "%.*s/", n, path);
    else
        snprintf(folder, sizeof folder, ".");
    bw_beside_sweep(folder);
}

/// Locks what was just made. False when a sweeper was quicker: then there is another.
static bool keep(int file) {
    struct stat about;
    while (flock(file, LOCK_EX) != 0) {
        if (errno != EINTR) return true; // no locks here: then a sweeper has none either
    }
    return fstat(file, &about) == 0 && about.st_nlink > 0;
}

static int make_file(char *path) {
    const int file = mkstemp(path);
    if (file >= 0) fcntl(file, F_SETFD, FD_CLOEXEC);
    return file;
}

static int make_folder(char *path) {
    return mkdtemp(path) ? open(path, O_RDONLY | O_DIRECTORY | O_CLOEXEC) : -1;
}

static bool make(const char *before, const char *between, int (*one)(char *path),
                 bw_beside *beside) {
    for (int i = 0; i < TRIES; i++) {
        const int n = snprintf(beside->path, sizeof beside->path, "%s%sXXXXXX", before, between);
        if (n >= (int)sizeof beside->path) errno = ENAMETOOLONG;
        if (n >= (int)sizeof beside->path) return false;
        beside->file = one(beside->path);
        if (beside->file < 0) return false;
        if (keep(beside->file)) return true;
        close(beside->file);
    }
    errno = EBUSY;
    return false;
}

bool bw_beside_open(const char *path, bw_beside *beside) {
    bw_beside_sweep_of(path);
    return make(path, mark, make_file, beside);
}

bool bw_beside_folder(bw_beside *beside) {
    char before[BW_BESIDE_SIZE];
    const char *parent = getenv("TMPDIR");
    if (!parent || !parent[0]) parent = "/tmp";
    bw_beside_sweep(parent);
    if (snprintf(before, sizeof before, "%s/", parent) >= (int)sizeof before) {
        errno = ENAMETOOLONG;
        return false;
    }
    return make(before, scratch, make_folder, beside);
}

bool bw_beside_close(bw_beside *beside) {
    struct stat about, now;
    const bool ours = fstat(beside->file, &about) == 0 && lstat(beside->path, &now) == 0 &&
                      now.st_dev == about.st_dev && now.st_ino == about.st_ino;
    if (ours && S_ISDIR(about.st_mode))
        rmdir(beside->path);
    else if (ours)
        unlink(beside->path);
    return close(beside->file) == 0;
}
