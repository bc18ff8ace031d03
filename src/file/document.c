/* SPDX-License-Identifier: GPL-3.0-or-later */
/// jansson parses; its tree is walked into the same events that the browser sends.
#include "file/document.h"
#include "core/text.h"
#include "file/explain.h"
#include "file/locate.h"
#include "file/open.h"
#include "scheme/kind.h"
#include "scheme/read.h"
#include "scheme/tree_build.h"
#include "scheme/write.h"
#include <errno.h>
#include <jansson.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>

static bw_status fail(bw_error *error, bw_status status, const char *message) {
    *error = (bw_error){.status = status, .line = 1, .column = 1};
    bw_copy(error->message, sizeof error->message, message);
    return status;
}

/// Depth is bounded: the tree refuses nesting deeper than BW_TREE_DEPTH and the walk stops there.
static void feed(bw_tree *tree, const json_t *value) {
    if (tree->error.status != BW_OK) return;
    switch (json_typeof(value)) {
    case JSON_OBJECT: {
        const char *key;
        json_t *member;
        bw_tree_object(tree);
        json_object_foreach((json_t *)value, key, member) {
            bw_tree_key(tree, key, strlen(key));
            feed(tree, member);
        }
        bw_tree_end(tree);
        return;
    }
    case JSON_ARRAY:
        bw_tree_array(tree);
        for (size_t i = 0; i < json_array_size(value); i++)
            feed(tree, json_array_get(value, i));
        bw_tree_end(tree);
        return;
    case JSON_STRING:
        bw_tree_string(tree, json_string_value(value), json_string_length(value));
        return;
    case JSON_INTEGER: bw_tree_number(tree, (double)json_integer_value(value)); return;
    case JSON_REAL: bw_tree_number(tree, json_real_value(value)); return;
    case JSON_TRUE: bw_tree_bool(tree, true); return;
    case JSON_FALSE: bw_tree_bool(tree, false); return;
    default: bw_tree_null(tree);
    }
}

/// jansson would build a tree a hundred times the size of a text of empty brackets, so what cannot be a
/// scheme is refused unparsed. False with the place at which the limit was passed.
static bool few_enough(const char *text, size_t length, size_t *at) {
    const int most = 2 * BW_TREE_NODES; // empty brackets count twice
    bool in_text = false;
    int count = 0;
    for (*at = 0; *at < length; ++*at) {
        const char c = text[*at];
        if (in_text && c == '\\')
            ++*at;
        else if (c == '"')
            in_text = !in_text;
        else if (!in_text && (c == ',' || c == '[' || c == '{') && ++count > most)
            return false;
    }
    return true;
}

/// A NUL byte: every second byte of most UTF-16, and in a text file nothing but damage.
static const char *nul_means(const char *text, size_t length) {
    const bool marked =
        length >= 2 && (memcmp(text, "\xff\xfe", 2) == 0 || memcmp(text, "\xfe\xff", 2) == 0);
    const bool wide = length >= 4 && (text[0] == '\0') != (text[1] == '\0') &&
                      (text[0] == '\0') == (text[2] == '\0') &&
                      (text[1] == '\0') == (text[3] == '\0');
    return marked || wide
               ? "the file is UTF-16 text; save it as UTF-8"
               : "there is a NUL byte here, which no text has; the file is damaged, or no "
                 "scheme";
}

bw_status bw_tree_parse(const char *text, size_t length, bw_tree *tree, bw_error *error) {
    if (length == 0) return fail(error, BW_BAD_INPUT, "the file is empty; a scheme begins with {");
    const char *kind = bw_file_kind(text, length);
    if (kind) return fail(error, BW_BAD_INPUT, kind);
    if (length > BW_DOCUMENT_BYTES) {
        return fail(error, BW_LIMIT, "the file is larger than a scheme can be (1 MB)");
    }
    if (length >= 3 && memcmp(text, "\xef\xbb\xbf", 3) == 0) {
        return fail(error, BW_BAD_INPUT,
                    "the file begins with a byte order mark; save it as UTF-8 without one");
    }
    const bw_source source = {(char *)text, length};
    const char *nul = memchr(text, '\0', length);
    if (nul) {
        fail(error, BW_BAD_INPUT, nul_means(text, length));
        bw_locate_offset(&source, (size_t)(nul - text) + 1, error);
        return error->status;
    }
    size_t too_far;
    if (!few_enough(text, length, &too_far)) {
        fail(error, BW_LIMIT, "there are more values than a scheme can hold (8192)");
        bw_locate_offset(&source, too_far + 1, error);
        return error->status;
    }
    json_error_t why;
    json_t *root = json_loadb(text, length, JSON_REJECT_DUPLICATES | JSON_DECODE_ANY, &why);
    if (!root) {
        *error = (bw_error){.status = BW_BAD_INPUT};
        size_t at = why.position > 0 ? (size_t)why.position : 0;
        if (bw_stops_before(&why)) at++;
        at = bw_locate_offset(&source, at, error);
        bw_explain(&source, at, &why, error);
        return error->status;
    }
    bw_tree_begin(tree);
    feed(tree, root);
    json_decref(root);
    if (bw_tree_finish(tree)) return BW_OK;
    *error = tree->error;
    bw_source_locate(&source, error->pointer, &error->line, &error->column);
    return error->status;
}

static bw_status parse_all(const char *text, size_t length, bw_scheme *scheme, bw_error *errors,
                           int room, int *count) {
    *count = 1;
    bw_tree *tree = malloc(sizeof *tree);
    if (!tree) return fail(errors, BW_NO_ROOM, BW_NO_MEMORY);
    bw_status status = bw_tree_parse(text, length, tree, errors);
    if (status == BW_OK) {
        status = bw_scheme_read_all(tree, scheme, errors, room, count);
        const bw_source source = {(char *)text, length};
        for (int i = 0; i < *count && i < room; i++)
            bw_source_locate(&source, errors[i].pointer, &errors[i].line, &errors[i].column);
    }
    free(tree);
    return status;
}

bw_status bw_document_parse(const char *text, size_t length, bw_scheme *scheme, bw_error *error) {
    int count;
    return parse_all(text, length, scheme, error, 1, &count);
}

static bw_status system_says(bw_error *error, const char *what) {
    char message[BW_MESSAGE_SIZE];
    bw_text t = bw_text_in(message, sizeof message);
    bw_put(&t, what);
    bw_put(&t, ": ");
    bw_put(&t, strerror(errno));
    return fail(error, BW_FILE, message);
}

/// Reads at most one byte more than a document may have: enough to know it is too large.
static bw_status read_all(FILE *in, bw_source *source, bw_error *error) {
    const size_t most = (size_t)BW_DOCUMENT_BYTES + 1;
    source->text = malloc(most);
    if (!source->text) return fail(error, BW_NO_ROOM, BW_NO_MEMORY);
    source->length = fread(source->text, 1, most, in);
    if (ferror(in)) return system_says(error, "it cannot be read");
    return BW_OK;
}

bw_status bw_document_examine(const char *path, bw_scheme *scheme, bw_source *source,
                              bw_error *errors, int room, int *count) {
    bw_error *error = errors;
    *count = 1;
    *source = (bw_source){NULL, 0};
    bool standard = strcmp(path, "-") == 0;
    FILE *in = standard ? stdin : bw_file_open(path, "scheme file", error);
    if (!in) return error->status;
    bw_status status = read_all(in, source, error);
    if (!standard) fclose(in);
    if (status == BW_OK)
        status = parse_all(source->text, source->length, scheme, errors, room, count);
    if (status != BW_OK) bw_source_drop(source);
    return status;
}

bw_status bw_document_load(const char *path, bw_scheme *scheme, bw_source *source,
                           bw_error *error) {
    int count;
    return bw_document_examine(path, scheme, source, error, 1, &count);
}

void bw_source_drop(bw_source *source) {
    free(source->text);
    *source = (bw_source){NULL, 0};
}

bw_status bw_document_save(const char *path, const bw_scheme *scheme, bw_error *error) {
    char *memory = malloc(BW_DOCUMENT_BYTES);
    if (!memory) return fail(error, BW_NO_ROOM, BW_NO_MEMORY);
    bw_text out = bw_text_in(memory, BW_DOCUMENT_BYTES);
    bw_scheme_write(scheme, &out);
    bw_status status = out.full ? fail(error, BW_LIMIT, "the scheme is larger than a file may be")
                                : bw_file_save(path, out.data, out.used, error);
    free(memory);
    return status;
}
