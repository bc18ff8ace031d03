/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Every document in tests/scheme/broken is refused at the place and in the words that
/// tests/scheme/broken/expected.txt has for it.
#include "harness.h"
#include "scheme_text.h"
#include <dirent.h>

enum { FIELDS = 5, LEAST = 30 };

/// Cuts the next line off *rest; NULL at the end.
static char *next_line(char **rest) {
    char *line = *rest;
    if (!*line) return NULL;
    char *end = strchr(line, '\n');
    *rest = end ? end + 1 : line + strlen(line);
    if (end) *end = '\0';
    return line;
}

/// Splits a line at its tabs; true when it has just the fields wanted.
static int split(char *line, char *field[FIELDS]) {
    int count = 0;
    for (char *at = line; at; count++) {
        if (count == FIELDS) return 0;
        field[count] = at;
        at = strchr(at, '\t');
        if (at) *at++ = '\0';
    }
    return count == FIELDS;
}

/// One sentence: it begins, ends and stays on one line, and nothing in it controls a terminal.
static void reads_well(const char *sentence) {
    const size_t length = strlen(sentence);
    CHECK(length > 10 && length < BW_MESSAGE_SIZE - 1);
    for (const char *c = sentence; *c; c++)
        CHECK((unsigned char)*c >= 0x20 && *c != 0x7f);
}

static void refused(char *const field[FIELDS]) {
    static bw_scheme scheme;
    bw_error error;
    char name[256], place[64];
    size_t length;
    snprintf(name, sizeof name, "tests/scheme/broken/%s", field[0]);
    char *text = text_of_file(name, &length);
    const int failures = test_failures;
    bw_status status = bw_document_parse(text, length, &scheme, &error);
    free(text);
    CHECK(status == BW_BAD_INPUT || status == BW_LIMIT);
    CHECK_INT(error.status, status);
    if (status == BW_OK) return;
    snprintf(place, sizeof place, "%d:%d", error.line, error.column);
    CHECK_TEXT(error.pointer, field[2]);
    CHECK_TEXT(place, field[3]);
    CHECK(strncmp(error.message, field[4], strlen(field[4])) == 0);
    reads_well(error.message);
    if (test_failures > failures) fprintf(stderr, "  %s: %s\n", field[0], error.message);
}

static void every_document_is_refused(void) {
    size_t length;
    char *list = text_of_file("tests/scheme/broken/expected.txt", &length), *rest = list;
    int count = 0;
    for (char *line = next_line(&rest); line; line = next_line(&rest)) {
        char *field[FIELDS];
        if (line[0] == '#') continue;
        const int whole = split(line, field);
        CHECK(whole);
        if (!whole) continue;
        refused(field);
        count++;
    }
    free(list);
    CHECK(count >= LEAST);
}

/// No document lies in the folder unasked.
static void every_document_is_listed(void) {
    size_t length;
    char *list = text_of_file("tests/scheme/broken/expected.txt", &length), path[4096];
    const char *root = getenv("BW_ROOT");
    snprintf(path, sizeof path, "%s/tests/scheme/broken", root ? root : ".");
    DIR *folder = opendir(path);
    CHECK(folder != NULL);
    for (const struct dirent *entry; folder && (entry = readdir(folder));) {
        char line_begins[300];
        if (!strstr(entry->d_name, ".json")) continue;
        snprintf(line_begins, sizeof line_begins, "\n%s\t", entry->d_name);
        CHECK(strstr(list, line_begins) != NULL);
    }
    if (folder) closedir(folder);
    free(list);
}

int main(int argc, char **argv) {
    RUN(every_document_is_refused);
    RUN(every_document_is_listed);
    return test_report(argc, argv);
}
