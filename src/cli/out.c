/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli/out.h"
#include "cli/say.h"
#include "cli/term.h"
#include "file/document.h"
#include <errno.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

static bool is_standard(const char *path) {
    return !path || strcmp(path, "-") == 0;
}

static int standard_failed(void) {
    bw_say_error("standard output could not be written: %s.", strerror(errno));
    return BW_EXIT_FILE;
}

void bw_out_private(void) {
    umask(077);
}

bool bw_out_open(const bw_args *args, bw_out *out) {
    *out = (bw_out){.path = bw_option_text(args, "output")};
    out->stream = !is_standard(out->path)      ? open_memstream(&out->bytes, &out->length)
                  : isatty(STDOUT_FILENO) == 1 ? bw_term_open(stdout)
                                               : stdout;
    if (!out->stream) bw_say_no_memory();
    return out->stream != NULL;
}

static int save(const char *path, const void *bytes, size_t length) {
    bw_error error = {0};
    bw_status status = bw_file_save(path, bytes, length, &error);
    if (status == BW_OK) return BW_EXIT_OK;
    return bw_say_refusal(path, &error);
}

int bw_out_close(bw_out *out, int code) {
    if (is_standard(out->path)) {
        if (out->stream != stdout && !bw_term_close(out->stream)) {
            bw_say_no_memory();
            return BW_EXIT_LIMIT;
        }
        if (fflush(stdout) != 0 || ferror(stdout)) return standard_failed();
        return code;
    }
    bool whole = fclose(out->stream) == 0;
    int saved = whole ? save(out->path, out->bytes, out->length) : BW_EXIT_FILE;
    if (!whole) bw_say_no_memory();
    free(out->bytes);
    return saved == BW_EXIT_OK ? code : saved;
}

int bw_out_check(const bw_args *args) {
    const char *path = bw_option_text(args, "output");
    bw_error error = {0};
    if (!path || bw_file_can_save(path, &error) == BW_OK) return BW_EXIT_OK;
    return bw_say_refusal(path, &error);
}

int bw_out_bytes(const bw_args *args, const void *bytes, size_t length) {
    const char *path = bw_option_text(args, "output");
    if (!is_standard(path)) return save(path, bytes, length);
    if (isatty(STDOUT_FILENO) == 1)
        bw_term_put_bytes(stdout, bytes, length);
    else
        fwrite(bytes, 1, length, stdout);
    if (fflush(stdout) != 0 || ferror(stdout)) return standard_failed();
    return BW_EXIT_OK;
}

int bw_out_folder(const char *path, bool *made) {
    struct stat about;
    *made = mkdir(path, 0777) == 0;
    if (*made) return BW_EXIT_OK;
    const int reason = errno;
    if (stat(path, &about) == 0 && S_ISDIR(about.st_mode)) return BW_EXIT_OK;
    bw_say_error("the folder %s cannot be made: %s.", path,
                 strerror(reason == EEXIST ? ENOTDIR : reason));
    return BW_EXIT_FILE;
}
