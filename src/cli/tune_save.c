/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli/tune_save.h"
#include "cli/say.h"
#include "file/document.h"
#include "file/open.h"
#include "scheme/tree.h"
#include "scheme/write.h"
#include <errno.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

enum { MOST_NAMES = 1000 };

/// Adds the line to the notes; an old note is cut rather than the new line.
static void add_note(bw_scheme *scheme, const char *why) {
    const size_t length = strlen(why), most = sizeof scheme->notes - 1;
    bw_text notes = bw_text_in(scheme->notes, sizeof scheme->notes);
    char old[BW_NOTES_SIZE];
    memcpy(old, scheme->notes, sizeof old);
    old[most > length + 1 ? most - length - 1 : 0] = '\0';
    notes.used = 0;
    char kept[BW_NOTES_SIZE];
    bw_copy(kept, sizeof kept, old);
    bw_put(&notes, kept);
    if (kept[0]) bw_put_char(&notes, '\n');
    bw_put(&notes, why);
}

/// Whether a file holds exactly these bytes.
static bool holds(const char *path, const char *bytes, size_t length) {
    bw_error error;
    FILE *file = bw_file_open(path, "scheme file", &error);
    if (!file) return false;
    bool same = true;
    for (size_t i = 0; i < length && same; i++)
        same = fgetc(file) == (unsigned char)bytes[i];
    same = same && fgetc(file) == EOF;
    fclose(file);
    return same;
}

static bool there(const char *path) {
    return access(path, F_OK) == 0;
}

/// "…/mine.json" -> "mine-tuned.json", number 2 and up before the ending.
static bool name_file(const char *from, int number, char path[BW_TUNE_PATH]) {
    const char *slash = strrchr(from, '/'), *base = slash ? slash + 1 : from;
    if (strcmp(from, "-") == 0) base = "scheme";
    const char *dot = strrchr(base, '.');
    const int stem = (int)(dot && dot > base ? (size_t)(dot - base) : strlen(base));
    const int length = number == 1
                           ? snprintf(path, BW_TUNE_PATH, "%.*s-tuned.json", stem, base)
                           : snprintf(path, BW_TUNE_PATH, "%.*s-tuned-%d.json", stem, base, number);
    return length > 0 && length < BW_TUNE_PATH;
}

static int choose(const bw_args *args, const char *bytes, size_t length, char path[BW_TUNE_PATH]) {
    const char *given = bw_option_text(args, "output");
    if (given) {
        if (snprintf(path, BW_TUNE_PATH, "%s", given) >= BW_TUNE_PATH) {
            bw_say_error("the name of the file is too long.");
            return BW_EXIT_FILE;
        }
        if (strcmp(given, "-") == 0 || !there(path) || holds(path, bytes, length))
            return BW_EXIT_OK;
        bw_say_error("%s is there already; a tuned scheme is never written over another: choose "
                     "another name.",
                     path);
        return BW_EXIT_FILE;
    }
    for (int number = 1; number <= MOST_NAMES; number++) {
        if (!name_file(args->operands[0], number, path)) break;
        if (!there(path) || holds(path, bytes, length)) return BW_EXIT_OK;
    }
    bw_say_error("there is no free name for the tuned scheme here; name one with --output.");
    return BW_EXIT_FILE;
}

int bw_tune_save(const bw_args *args, const bw_tune_report *report, char path[BW_TUNE_PATH]) {
    static bw_scheme scheme;
    static char bytes[BW_DOCUMENT_BYTES];
    char why[BW_NOTES_SIZE];
    scheme = report->tuned->scheme;
    bw_text t = bw_text_in(why, sizeof why);
    bw_say_why(report, &t);
    add_note(&scheme, why);
    bw_text text = bw_text_in(bytes, sizeof bytes);
    bw_scheme_write(&scheme, &text);
    BW_ASSERT(!text.full);
    const int code = choose(args, bytes, text.used, path);
    if (code != BW_EXIT_OK) return code;
    bw_error error = {0};
    if (bw_file_save(path, bytes, text.used, &error) != BW_OK) return bw_say_refusal(path, &error);
    if (strcmp(path, "-") != 0)
        bw_say("Wrote %s, the suggested scheme. Next: breakwater check %s", path, path);
    return BW_EXIT_OK;
}
