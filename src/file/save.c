/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Whole or not at all: a temporary file in the same folder, flushed to the disk, then renamed, and the
/// folder flushed, for the new name is kept there.
#define _XOPEN_SOURCE 700 // realpath
#include "core/text.h"
#include "file/beside.h"
#include "file/document.h"
#include <errno.h>
#include <fcntl.h>
#include <pthread.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

static bw_status system_says(bw_error *error, const char *what) {
    *error = (bw_error){.status = BW_FILE};
    bw_text t = bw_text_in(error->message, sizeof error->message);
    bw_put(&t, what);
    bw_put(&t, ": ");
    bw_put(&t, strerror(errno));
    return BW_FILE;
}

static bool write_all(int file, const char *bytes, size_t length) {
    while (length > 0) {
        ssize_t n = write(file, bytes, length);
        if (n < 0 && errno == EINTR) continue;
        if (n <= 0) return false;
        bytes += n;
        length -= (size_t)n;
    }
    return true;
}

/// The umask, which can only be read by setting it: one thread at a time.
static mode_t mask_now(void) {
    static pthread_mutex_t lock = PTHREAD_MUTEX_INITIALIZER;
    pthread_mutex_lock(&lock);
    const mode_t mask = umask(077);
    umask(mask);
    pthread_mutex_unlock(&lock);
    return mask;
}

/// A file that is there keeps its mode; a new one gets what the umask allows, where the temporary file is
/// its owner's alone. When even the umask wants that (as for what holds players), a file that others could
/// read is closed to them.
static mode_t usual_mode(const char *path) {
    struct stat about;
    const mode_t mask = mask_now();
    if (stat(path, &about) != 0) return 0666 & ~mask;
    return about.st_mode & ((mask & 077) == 077 ? 0700 : 0777);
}

/// Flushes the folder a path lies in. The file is in its place by now, so a file system that cannot do
/// this (some cannot) changes nothing.
static void sync_folder(char *path) {
    char *const slash = strrchr(path, '/');
    if (slash) slash[slash == path] = '\0';
    const int folder = open(slash ? path : ".", O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (folder < 0) return;
    fsync(folder);
    close(folder);
}

static bw_status replace(const char *path, const void *bytes, size_t length, bw_error *error) {
    bw_beside beside;
    if (!bw_beside_open(path, &beside)) return system_says(error, "it cannot be written");
    const bool fine = write_all(beside.file, bytes, length) &&
                      fchmod(beside.file, usual_mode(path)) == 0 && fsync(beside.file) == 0 &&
                      rename(beside.path, path) == 0;
    bw_status status = fine ? BW_OK : system_says(error, "it cannot be written");
    if (!bw_beside_close(&beside) && fine) status = system_says(error, "it cannot be written");
    if (fine) sync_folder(beside.path); // no longer a file's name
    return status;
}

/// Makes a file beside `path` and takes it away again.
static bw_status try_beside(const char *path, bw_error *error) {
    bw_beside beside;
    if (!bw_beside_open(path, &beside)) return system_says(error, "it cannot be written");
    bw_beside_close(&beside);
    return BW_OK;
}

/// A device or a pipe is written to; a file put in its place would break it.
static bw_status write_through(const char *path, const void *bytes, size_t length,
                               bw_error *error) {
    int file = open(path, O_WRONLY);
    if (file < 0) return system_says(error, "it cannot be written");
    bool fine = write_all(file, bytes, length);
    if (close(file) != 0) fine = false;
    return fine ? BW_OK : system_says(error, "it cannot be written");
}

/// What stands under a name. BW_OK with *target the file to replace, which the caller frees: a link goes
/// on pointing to it; NULL for a device or a pipe. A folder is refused.
static bw_status look(const char *path, char **target, bw_error *error) {
    struct stat about;
    *target = NULL;
    const bool there = stat(path, &about) == 0;
    if (there && S_ISDIR(about.st_mode)) {
        errno = EISDIR;
        return system_says(error, "it cannot be written");
    }
    if (there && !S_ISREG(about.st_mode)) return BW_OK;
    *target = there ? realpath(path, NULL) : strdup(path);
    return *target ? BW_OK : system_says(error, "it cannot be written");
}

bw_status bw_file_save(const char *path, const void *bytes, size_t length, bw_error *error) {
    if (strcmp(path, "-") == 0) {
        if (fwrite(bytes, 1, length, stdout) == length && fflush(stdout) == 0) return BW_OK;
        return system_says(error, "standard output cannot be written");
    }
    char *target;
    const bw_status status = look(path, &target, error);
    if (status != BW_OK) return status;
    if (!target) return write_through(path, bytes, length, error);
    const bw_status saved = replace(target, bytes, length, error);
    free(target);
    return saved;
}

bw_status bw_file_can_save(const char *path, bw_error *error) {
    if (strcmp(path, "-") == 0) return BW_OK;
    char *target;
    bw_status status = look(path, &target, error);
    if (status != BW_OK) return status;
    if (target)
        status = try_beside(target, error);
    else if (access(path, W_OK) != 0)
        status = system_says(error, "it cannot be written");
    free(target);
    return status;
}
