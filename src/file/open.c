/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "file/open.h"

#include "core/text.h"
#include <errno.h>
#include <fcntl.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

static FILE *refuse_as(bw_status status, bw_error *error, const char *why, const char *what,
                       const char *rest) {
    *error = (bw_error){.status = status};
    bw_text t = bw_text_in(error->message, sizeof error->message);
    bw_put(&t, why);
    bw_put(&t, what);
    bw_put(&t, rest);
    return NULL;
}

static FILE *refuse(bw_error *error, const char *why, const char *what, const char *rest) {
    return refuse_as(BW_FILE, error, why, what, rest);
}

/// What was opened is looked at, not what the name stood for a moment before.
static FILE *look_at(int file, const char *what, bw_error *error) {
    struct stat about;
    if (fstat(file, &about) != 0) return refuse(error, "it cannot be read: ", strerror(errno), "");
    if (S_ISDIR(about.st_mode))
        return refuse_as(BW_BAD_INPUT, error, "this is a folder; name a ", what, " in it");
    if (S_ISFIFO(about.st_mode) || S_ISSOCK(about.st_mode))
        return refuse(error, "this is a pipe; name a ", what, ", or send it to standard input");
    if (!S_ISREG(about.st_mode)) return refuse(error, "this is a device; name a ", what, "");
    FILE *stream = fdopen(file, "rb");
    return stream ? stream : refuse(error, "it cannot be read: ", strerror(errno), "");
}

FILE *bw_file_open(const char *path, const char *what, bw_error *error) {
    const int file = open(path, O_RDONLY | O_NONBLOCK | O_CLOEXEC);
    if (file < 0) {
        if (errno == ENXIO) return refuse(error, "this is a pipe; name a ", what, "");
        return refuse(error, "it cannot be read: ", strerror(errno), "");
    }
    FILE *stream = look_at(file, what, error);
    if (!stream) close(file);
    return stream;
}
