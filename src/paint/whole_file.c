/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Temporary file, flush, sync, rename.
#include "paint/whole_file.h"

#include <errno.h>
#include <fcntl.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

static bw_status fail(const char *what, const char *path, int error, bw_text *why) {
    bw_put(why, what);
    bw_put(why, path);
    bw_put(why, ": ");
    bw_put(why, strerror(error));
    bw_put(why, ".");
    return BW_FILE;
}

/// A new file beside the place, under a name nobody has; -1 with errno set.
static int open_part(bw_whole_file *file) {
    int descriptor = -1;
    for (int i = 0; i < 100 && descriptor < 0; i++) {
        snprintf(file->part, sizeof file->part, "%s.%ld-%d", file->path, (long)getpid(), i);
        descriptor = open(file->part, O_RDWR | O_CREAT | O_EXCL | O_CLOEXEC, 0666);
        if (descriptor < 0 && errno != EEXIST) return -1;
    }
    return descriptor;
}

bw_status bw_whole_open(bw_whole_file *file, const char *path, bw_text *why) {
    file->stream = NULL;
    if (!bw_copy(file->path, sizeof file->path, path) || !path[0])
        return fail("Cannot write ", path, path[0] ? ENAMETOOLONG : ENOENT, why);
    struct stat info;
    if (stat(path, &info) == 0 && S_ISDIR(info.st_mode))
        return fail("Cannot write ", path, EISDIR, why);
    const int descriptor = open_part(file);
    if (descriptor < 0) return fail("Cannot write ", path, errno, why);
    file->stream = fdopen(descriptor, "w+b");
    if (file->stream) return BW_OK;
    const int error = errno;
    close(descriptor);
    unlink(file->part);
    return fail("Cannot write ", path, error, why);
}

bw_status bw_whole_close(bw_whole_file *file, bw_status status, bw_text *why) {
    if (!file->stream) return status;
    int error = 0;
    if (status == BW_OK &&
        (ferror(file->stream) || fflush(file->stream) != 0 || fsync(fileno(file->stream)) != 0))
        error = errno ? errno : EIO;
    if (fclose(file->stream) != 0 && status == BW_OK && !error) error = errno;
    file->stream = NULL;
    if (status == BW_OK && !error && rename(file->part, file->path) != 0) error = errno;
    if (status == BW_OK && !error) return BW_OK;
    unlink(file->part);
    return error ? fail("Cannot write ", file->path, error, why) : status;
}
