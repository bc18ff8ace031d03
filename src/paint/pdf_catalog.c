/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The catalogue is the last object before the cross-reference table, so what is added there moves
/// nothing but the table itself, and only `startxref` has to follow.
#include "paint/pdf_catalog.h"

#include <stdlib.h>
#include <string.h>

/// The last occurrence of `word` in text, or NULL.
static char *find_last(char *text, const char *word) {
    char *last = NULL;
    for (char *p = strstr(text, word); p; p = strstr(p + 1, word)) {
        last = p;
    }
    return last;
}

/// Bytes from `from` to the end of the file as a string, NULL when they cannot be had or hold a zero.
static char *read_tail(FILE *file, long from, size_t size) {
    char *tail = malloc(size + 1);
    if (!tail) return NULL;
    tail[size] = '\0';
    if (fseek(file, from, SEEK_SET) == 0 && fread(tail, 1, size, file) == size) return tail;
    free(tail);
    return NULL;
}

/// Where the table of cross references begins, by the file's last lines; -1 if they do not say.
static long find_table(FILE *file, long size) {
    enum { LAST_LINES = 64 };
    if (size < LAST_LINES) return -1;
    char *tail = read_tail(file, size - LAST_LINES, LAST_LINES);
    const char *start = tail ? find_last(tail, "startxref\n") : NULL;
    const long table = start ? strtol(start + strlen("startxref\n"), NULL, 10) : -1;
    free(tail);
    return table < size ? table : -1;
}

bool bw_pdf_mark_tagged(FILE *file, const char *language) {
    enum { CATALOG_BYTES = 1024 };
    if (fseek(file, 0, SEEK_END) != 0) return false;
    const long size = ftell(file), table = find_table(file, size);
    if (table < CATALOG_BYTES) return false;
    char *catalog = read_tail(file, table - CATALOG_BYTES, CATALOG_BYTES);
    char *rest = read_tail(file, table, (size_t)(size - table));
    static const char type[] = "/Type /Catalog\n";
    const char *line = catalog ? find_last(catalog, type) : NULL;
    char *start = rest ? find_last(rest, "startxref\n") : NULL;
    const bool known = line && start && !strstr(line, " 0 obj") && strncmp(rest, "xref\n", 5) == 0;
    if (known) {
        const long at = table - CATALOG_BYTES + (line - catalog) + (long)strlen(type);
        char entries[96];
        const int added = snprintf(entries, sizeof entries,
                                   "   /MarkInfo << /Marked true >>\n   /Lang (%s)\n", language);
        *start = '\0';
        fseek(file, at, SEEK_SET);
        fprintf(file, "%s%s%sstartxref\n%ld\n%%%%EOF\n", entries, line + strlen(type), rest,
                table + added);
    }
    free(catalog);
    free(rest);
    return known;
}
