/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The bytes gather in an unnamed file; saving them is the file room's business.
#include "paint/whole_file.h"
#include "file/document.h"

#include <errno.h>
#include <stdlib.h>
#include <string.h>

/// "Cannot write out.pdf: No space left on device."
static bw_status fail(const char *path, const char *reason, bw_text *why) {
    bw_put(why, "Cannot write ");
    bw_put(why, path);
    bw_put(why, ": ");
    bw_put(why, reason);
    bw_put(why, ".");
    return BW_FILE;
}

bw_status bw_whole_open(bw_whole_file *file, const char *path, bw_text *why) {
    file->stream = NULL;
    if (!bw_copy(file->path, sizeof file->path, path) || !path[0])
        return fail(path, strerror(path[0] ? ENAMETOOLONG : ENOENT), why);
    file->stream = tmpfile();
    return file->stream ? BW_OK : fail(path, strerror(errno), why);
}

/// Everything written so far; NULL with errno set. The caller frees it.
static char *read_back(FILE *stream, size_t *length) {
    if (ferror(stream) || fflush(stream) != 0 || fseek(stream, 0, SEEK_END) != 0) return NULL;
    const long end = ftell(stream);
    if (end < 0 || fseek(stream, 0, SEEK_SET) != 0) return NULL;
    char *bytes = malloc((size_t)end + 1);
    if (!bytes) return NULL;
    *length = fread(bytes, 1, (size_t)end, stream);
    if (*length == (size_t)end) return bytes;
    free(bytes);
    return NULL;
}

/// bw_file_save says "what: reason"; the reason alone is wanted here.
static const char *reason_of(const bw_error *error) {
    const char *colon = strstr(error->message, ": ");
    return colon ? colon + 2 : error->message;
}

bw_status bw_whole_close(bw_whole_file *file, bw_status status, bw_text *why) {
    if (!file->stream) return status;
    if (status == BW_OK) {
        size_t length = 0;
        errno = 0;
        char *bytes = read_back(file->stream, &length);
        bw_error error;
        if (!bytes)
            status = fail(file->path, strerror(errno ? errno : EIO), why);
        else if (bw_file_save(file->path, bytes, length, &error) != BW_OK)
            status = fail(file->path, reason_of(&error), why);
        free(bytes);
    }
    fclose(file->stream);
    file->stream = NULL;
    return status;
}
