/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A scanner that follows brackets, keys and commas, nothing more. jansson says whether text is JSON;
/// this only says where in it one is.
#include "file/locate.h"
#include "core/text.h"
#include "scheme/path.h"
#include "scheme/tree.h"
#include <string.h>

enum { DEEPEST = 2 * BW_TREE_DEPTH, KEY_KEPT = 64 };

/// One open container.
typedef struct level {
    bool object;
    bool after_colon;
    int index; ///< of the element being read
    char key[KEY_KEPT];
} level;

typedef struct scanner {
    const char *text;
    size_t length, at;
    int depth; ///< containers open; only the outer DEEPEST are remembered
    level levels[DEEPEST];
} scanner;

static void put_way(const scanner *s, bw_text *out) {
    int depth = s->depth < DEEPEST ? s->depth : DEEPEST;
    for (int i = 0; i < depth; i++) {
        const level *l = &s->levels[i];
        if (!l->object) {
            bw_put_char(out, '/');
            bw_put_int(out, l->index);
        } else if (l->after_colon) {
            bw_put_pointer_key(out, l->key, strlen(l->key));
        }
    }
}

static level *innermost(scanner *s) {
    return s->depth > 0 && s->depth <= DEEPEST ? &s->levels[s->depth - 1] : NULL;
}

/// Skips a string from its opening quote; keeps its plain characters in `keep`, unless that is NULL.
static void skip_string(scanner *s, char *keep) {
    char none[1];
    bw_text kept = bw_text_in(keep ? keep : none, keep ? KEY_KEPT : 1);
    for (s->at++; s->at < s->length && s->text[s->at] != '"'; s->at++) {
        if (s->text[s->at] == '\\' && s->at + 1 < s->length) s->at++;
        bw_put_char(&kept, s->text[s->at]);
    }
    if (s->at < s->length) s->at++;
}

/// Reads one token and keeps the way up to date. Returns true when the token began a value.
static bool step(scanner *s, size_t *value_at) {
    level *l = innermost(s);
    char c = s->text[s->at];
    if (c == '"' && l && l->object && !l->after_colon) {
        skip_string(s, l->key);
        return false;
    }
    *value_at = s->at;
    switch (c) {
    case '"': skip_string(s, NULL); return true;
    case '{':
    case '[':
        s->at++;
        if (s->depth < DEEPEST) s->levels[s->depth] = (level){.object = c == '{'};
        s->depth++;
        return true;
    case '}':
    case ']':
        s->at++;
        if (s->depth > 0) s->depth--;
        return false;
    case ':':
        s->at++;
        if (l) l->after_colon = true;
        return false;
    case ',':
        s->at++;
        if (l) {
            l->after_colon = false;
            l->index++;
        }
        return false;
    case ' ':
    case '\t':
    case '\r':
    case '\n': s->at++; return false;
    default:
        while (s->at < s->length && !strchr(" \t\r\n,:{}[]\"", s->text[s->at]))
            s->at++;
        if (s->at == *value_at) s->at++; // a NUL byte ends strchr's list too
        return true;
    }
}

static void line_and_column(const bw_source *source, size_t offset, int *line, int *column) {
    *line = 1;
    *column = 1;
    for (size_t i = 0; i < offset && i < source->length; i++) {
        unsigned char c = (unsigned char)source->text[i];
        if (c == '\n') {
            ++*line;
            *column = 1;
        } else if ((c & 0xc0) != 0x80) {
            ++*column;
        }
    }
}

void bw_locate_offset(const bw_source *source, size_t offset, bw_error *error) {
    scanner s = {.text = source->text, .length = source->length};
    if (offset > source->length) offset = source->length;
    size_t value_at = 0;
    // jansson's position is the end of the token it refused, so what began before it counts.
    while (s.at < offset && s.at < s.length)
        step(&s, &value_at);
    bw_text pointer = bw_text_in(error->pointer, sizeof error->pointer);
    put_way(&s, &pointer);
    line_and_column(source, offset > 0 ? offset - 1 : 0, &error->line, &error->column);
}

/// Length of the part of `pointer` that `way` follows, in whole keys; -1 when way leaves it.
static int followed(const char *pointer, const char *way) {
    size_t n = strlen(way);
    if (strncmp(pointer, way, n) != 0) return -1;
    return pointer[n] == '\0' || pointer[n] == '/' ? (int)n : -1;
}

void bw_source_locate(const bw_source *source, const char *pointer, int *line, int *column) {
    scanner s = {.text = source->text, .length = source->length};
    int best = -1;
    size_t best_at = 0;
    while (s.at < s.length) {
        char way[BW_POINTER_SIZE];
        bw_text t = bw_text_in(way, sizeof way);
        int depth = s.depth; // a bracket opens its level only after its own place was asked
        put_way(&s, &t);
        size_t value_at = 0;
        if (!step(&s, &value_at) || depth > DEEPEST) continue;
        int n = followed(pointer, way);
        if (n <= best) continue;
        best = n;
        best_at = value_at;
        if (pointer[n] == '\0') break;
    }
    line_and_column(source, best_at, line, column);
}
