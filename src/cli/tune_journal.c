/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli/tune_journal.h"
#include "cli/say.h"
#include <errno.h>
#include <inttypes.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#define HEAD "breakwater-tuning 1 "

static int refuse(const char *path, const char *what) {
    bw_say_error("%s %s; name another file, or remove it to begin anew.", path, what);
    return BW_EXIT_WRONG;
}

/// Reads the values that stand whole; *end is where they end. False: a line that is none.
static bool read_values(FILE *file, bw_tune_journal *journal, int most, long *end) {
    char line[64];
    *end = ftell(file);
    while (journal->count < most && fgets(line, sizeof line, file)) {
        const size_t length = strlen(line);
        if (line[length - 1] != '\n') return feof(file) != 0;
        char *rest;
        const double value = strtod(line, &rest);
        if (rest == line || *rest != '\n' || !(value > -1e6 && value < 1e6)) return false;
        journal->values[journal->count++] = value;
        *end = ftell(file);
    }
    return true;
}

static int take_up(const char *path, const bw_tuning *def, bw_tune_journal *journal) {
    char line[64], want[64];
    snprintf(want, sizeof want, HEAD "%016" PRIx64 "\n", bw_tuning_hash(def));
    if (!fgets(line, sizeof line, journal->file)) {
        fputs(want, journal->file);
        return fflush(journal->file) == 0 ? BW_EXIT_OK : refuse(path, "could not be written");
    }
    if (strncmp(line, HEAD, strlen(HEAD)) != 0) return refuse(path, "is not the work of a tuning");
    if (strcmp(line, want) != 0)
        return refuse(path, "is the work of another tuning (scheme, seed or options differ)");
    journal->values = calloc((size_t)def->budget, sizeof *journal->values);
    if (!journal->values) return bw_say_no_memory();
    long end;
    if (!read_values(journal->file, journal, def->budget, &end))
        return refuse(path, "is damaged: a line in it is no value");
    if (ftruncate(fileno(journal->file), end) != 0 || fseek(journal->file, end, SEEK_SET) != 0)
        return refuse(path, "could not be written");
    return BW_EXIT_OK;
}

int bw_tune_journal_open(const bw_args *args, bw_tuning *def, bw_tune_journal *journal) {
    *journal = (bw_tune_journal){.file = NULL};
    const char *path = bw_option_text(args, "resume");
    if (!path) return BW_EXIT_OK;
    journal->file = fopen(path, "a+");
    if (!journal->file) {
        bw_say_error("%s cannot be opened: %s.", path, strerror(errno));
        return BW_EXIT_FILE;
    }
    struct stat about;
    if (fstat(fileno(journal->file), &about) != 0 || !S_ISREG(about.st_mode))
        return refuse(path, "is no file");
    rewind(journal->file);
    const int code = take_up(path, def, journal);
    def->known = journal->values;
    def->known_count = journal->count;
    if (code == BW_EXIT_OK && journal->count > 0)
        bw_say("Going on from %s: %d candidates are known.", path, journal->count);
    return code;
}

void bw_tune_journal_add(bw_tune_journal *journal, double value) {
    if (!journal->file) return;
    fprintf(journal->file, "%a\n", value);
    fflush(journal->file);
}

void bw_tune_journal_close(bw_tune_journal *journal) {
    if (journal->file) fclose(journal->file);
    free(journal->values);
    *journal = (bw_tune_journal){.file = NULL};
}
