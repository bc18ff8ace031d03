/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli/say.h"
#include "cli/term.h"
#include <stdarg.h>
#include <stdio.h>

/// One line of talk: whatever stands in it, it stays one.
static void put_line(const char *format, va_list list) {
    char line[8192]; // two file names of the longest kind
    vsnprintf(line, sizeof line, format, list);
    bw_term_put(stderr, line);
    fputc('\n', stderr);
}

/// "breakwater: error: ".
static void say_head(const char *who) {
    bw_term_set(stderr, BW_TERM_BOLD);
    bw_term_put(stderr, who);
    bw_term_set(stderr, BW_TERM_PLAIN);
    fputs(": ", stderr);
    bw_term_set(stderr, BW_TERM_RED);
    fputs("error", stderr);
    bw_term_set(stderr, BW_TERM_PLAIN);
    fputs(": ", stderr);
}

void bw_say_error(const char *format, ...) {
    va_list list;
    say_head("breakwater");
    va_start(list, format);
    put_line(format, list);
    va_end(list);
}

void bw_say(const char *format, ...) {
    va_list list;
    va_start(list, format);
    put_line(format, list);
    va_end(list);
}

int bw_usage(const bw_command *verb, const char *format, ...) {
    va_list list;
    say_head("breakwater");
    va_start(list, format);
    put_line(format, list);
    va_end(list);
    if (verb)
        bw_say("See: breakwater help %s", verb->name);
    else
        bw_say("See: breakwater help");
    return BW_EXIT_USAGE;
}

int bw_say_refusal(const char *path, const bw_error *error) {
    char who[4200];
    const char *name = path[0] == '-' && path[1] == '\0' ? "standard input" : path;
    if (error->line > 0 && error->status != BW_FILE)
        snprintf(who, sizeof who, "%s:%d:%d", name, error->line, error->column);
    else
        snprintf(who, sizeof who, "%s", name[0] ? name : "a file without a name");
    say_head(who);
    bw_term_put(stderr, error->message);
    if (error->pointer[0]) {
        fputs(" (", stderr);
        bw_term_put(stderr, error->pointer);
        fputc(')', stderr);
    }
    fputc('\n', stderr);
    return bw_exit_code(error->status);
}

int bw_say_no_memory(void) {
    bw_say_error(BW_NO_MEMORY ".");
    return BW_EXIT_LIMIT;
}

int bw_exit_code(bw_status status) {
    switch (status) {
    case BW_OK: return BW_EXIT_OK;
    case BW_FILE: return BW_EXIT_FILE;
    case BW_NO_ROOM: return BW_EXIT_LIMIT;
    // A document beyond the reader's limits is a wrong document, not a search cut short.
    default: return BW_EXIT_WRONG;
    }
}
