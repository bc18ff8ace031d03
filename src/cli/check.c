/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The verb `check`: read, validate, then say what a careful assistant would say.
#include "cli/load.h"
#include "cli/out.h"
#include "cli/say.h"
#include "cli/term.h"
#include "core/text.h"
#include "file/document.h"
#include "file/json_stream.h"
#include "file/locate.h"
#include "scheme/lint.h"
#include <string.h>

enum { MOST_ERRORS = 20 }; ///< told at once of a document that cannot be read

/// All that is to be said about one file.
typedef struct verdict {
    int count; ///< findings kept
    int left;  ///< findings beyond what is kept
    int errors, warnings;
    bw_finding findings[BW_MAX_FINDINGS];
} verdict;

static const char *severity_word(bw_severity severity) {
    static const char *const words[] = {"note", "warning", "error"};
    return words[severity];
}

static bool later(const bw_finding *a, const bw_finding *b) {
    return a->line != b->line ? a->line > b->line : a->column > b->column;
}

/// By place in the file; findings about one place keep their order.
static void sort(verdict *v) {
    for (int i = 1; i < v->count; i++) {
        bw_finding moving = v->findings[i];
        int k = i;
        for (; k > 0 && later(&v->findings[k - 1], &moving); k--)
            v->findings[k] = v->findings[k - 1];
        v->findings[k] = moving;
    }
}

static void count(verdict *v) {
    for (int i = 0; i < v->count; i++) {
        v->errors += v->findings[i].severity == BW_ERROR;
        v->warnings += v->findings[i].severity == BW_WARNING;
    }
}

static void refuse(const bw_error *error, verdict *v) {
    bw_finding *f = &v->findings[v->count++];
    *f = (bw_finding){.severity = BW_ERROR};
    if (error->status != BW_FILE) {
        f->line = error->line;
        f->column = error->column;
    }
    bw_copy(f->pointer, sizeof f->pointer, error->pointer);
    bw_copy(f->message, sizeof f->message, error->message);
}

/// Reads and lints. Returns BW_EXIT_OK, or the code of a document that cannot be read.
static int examine(const bw_args *args, verdict *v) {
    static bw_scheme scheme;
    bw_source source;
    static bw_error errors[MOST_ERRORS];
    int faults;
    const bw_status status =
        bw_document_examine(args->operands[0], &scheme, &source, errors, MOST_ERRORS, &faults);
    if (status != BW_OK) {
        for (int i = 0; i < faults && i < MOST_ERRORS; i++)
            refuse(&errors[i], v);
        v->left = faults - v->count;
        sort(v);
        count(v);
        return bw_exit_code(status);
    }
    bw_load_units(args, &scheme);
    int all = bw_scheme_lint(&scheme, v->findings, BW_MAX_FINDINGS);
    v->count = all < BW_MAX_FINDINGS ? all : BW_MAX_FINDINGS;
    v->left = all - v->count;
    for (int i = 0; i < v->count; i++) {
        bw_finding *f = &v->findings[i];
        bw_source_locate(&source, f->pointer, &f->line, &f->column);
    }
    bw_source_drop(&source);
    sort(v);
    count(v);
    return BW_EXIT_OK;
}

static void print_text(FILE *out, const char *path, const verdict *v) {
    static const bw_ink_colour colours[] = {BW_TERM_CYAN, BW_TERM_YELLOW, BW_TERM_RED};
    for (int i = 0; i < v->count; i++) {
        const bw_finding *f = &v->findings[i];
        bw_term_set(out, BW_TERM_BOLD);
        bw_term_put(out, path);
        if (f->line > 0) fprintf(out, ":%d:%d", f->line, f->column);
        bw_term_set(out, BW_TERM_PLAIN);
        fputs(": ", out);
        bw_term_set(out, colours[f->severity]);
        fputs(severity_word(f->severity), out);
        bw_term_set(out, BW_TERM_PLAIN);
        fprintf(out, ": %s", f->message);
        if (f->pointer[0]) fprintf(out, " (%s)", f->pointer);
        if (f->remedy[0]) fprintf(out, " \u2014 %s", f->remedy);
        fputc('\n', out);
    }
}

static void print_json(FILE *out, const verdict *v) {
    bw_json json = bw_json_to(out);
    bw_json_open(&json, '{');
    bw_json_put_bool(&json, "ok", v->errors == 0);
    bw_json_put_open(&json, "findings", '[');
    for (int i = 0; i < v->count; i++) {
        const bw_finding *f = &v->findings[i];
        bw_json_open(&json, '{');
        bw_json_put_text(&json, "severity", severity_word(f->severity));
        bw_json_put_text(&json, "at", f->pointer);
        bw_json_put_number(&json, "line", f->line);
        bw_json_put_number(&json, "column", f->column);
        bw_json_put_text(&json, "message", f->message);
        bw_json_put_text(&json, "remedy", f->remedy);
        bw_json_close(&json, '}');
    }
    bw_json_close(&json, ']');
    bw_json_close(&json, '}');
    bw_json_end(&json);
}

static void summarise(const char *path, const verdict *v) {
    if (v->left > 0)
        bw_say("%s: the first %d findings are shown, %d more are not.", path, v->count, v->left);
    if (v->count == 0)
        bw_say("%s: nothing to find fault with.", path);
    else
        bw_say("%s: %d error%s, %d warning%s.", path, v->errors, v->errors == 1 ? "" : "s",
               v->warnings, v->warnings == 1 ? "" : "s");
}

static int run(const bw_args *args) {
    static verdict v;
    const char *path = strcmp(args->operands[0], "-") == 0 ? "standard input" : args->operands[0];
    int code = examine(args, &v);
    bw_out out;
    if (!bw_out_open(args, &out)) return BW_EXIT_FILE;
    if (bw_option_given(args, "json"))
        print_json(out.stream, &v);
    else
        print_text(out.stream, path, &v);
    if (code == BW_EXIT_OK && v.errors > 0) code = BW_EXIT_WRONG;
    code = bw_out_close(&out, code);
    summarise(path, &v);
    return code;
}

const bw_command bw_command_check = {
    .name = "check",
    .operands = "FILE",
    .least = 1,
    .most = 1,
    .summary = "read a scheme and say what is wrong or doubtful in it",
    .text =
        "Of a document that cannot be read it tells what is wrong and what would be right, a "
        "line for each fault, the first twenty; what is not JSON ends with the first. A document "
        "that can be read is then looked at as a careful assistant would: gaps "
        "wider than two men can close, a crease left open, two men on one job, a ball nobody is "
        "on, a rotation that asks for more speed than the level has, men off the field or in the "
        "crease, calls missing or said twice. Each finding names the place and what would fix "
        "it.\n\n"
        "Only errors make the exit code 1; warnings and notes are the coach's to judge.\n\n"
        "With --json: {\"ok\":true,\"findings\":[{\"severity\",\"at\",\"line\",\"column\","
        "\"message\",\"remedy\"}]}, where \"at\" is a JSON Pointer.",
    .examples = "breakwater check mine.json # findings, one a line\n"
                "breakwater new | breakwater check - # straight from standard input\n"
                "breakwater check mine.json --json # for other programs\n",
    .run = run,
};
