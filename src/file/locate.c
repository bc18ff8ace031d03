/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A scanner that follows brackets, keys and commas, nothing more. jansson says whether text is JSON;
/// this only says where in it one is.
#include "file/locate.h"
#include "core/text.h"
#include "scheme/path.h"
#include "scheme/tree.h"
#include <jansson.h>
#include <string.h>

enum { DEEPEST = 2 * BW_TREE_DEPTH };

/// One open container.
typedef struct level {
    bool object;
    bool after_colon;
    int index; ///< of the element being read
    char key[BW_POINTER_SIZE];
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

/// Takes "\uXXXX" from its u and gives the code; -1, and nothing taken, when it is something else.
static int take_code(scanner *s) {
    int code = 0;
    if (s->length - s->at < 5 || s->text[s->at] != 'u') return -1;
    for (size_t i = 1; i <= 4; i++) {
        const char *const digits = "0123456789abcdef0123456789ABCDEF";
        const char c = s->text[s->at + i], *digit = c ? strchr(digits, c) : NULL;
        if (!digit) return -1;
        code = code * 16 + (int)((digit - digits) % 16);
    }
    s->at += 5;
    return code;
}

static void put_utf8(bw_text *out, int code) {
    static const int first[] = {0, 0xc0, 0xe0, 0xf0}; // by the bytes that follow the first
    const int tails = code < 0x80 ? 0 : code < 0x800 ? 1 : code < 0x10000 ? 2 : 3;
    char bytes[4] = {(char)(first[tails] | code >> 6 * tails)};
    for (int i = 1; i <= tails; i++)
        bytes[i] = (char)(0x80 | (code >> 6 * (tails - i) & 0x3f));
    bw_put_n(out, bytes, (size_t)tails + 1);
}

/// Takes what follows a backslash.
static void take_escape(scanner *s, bw_text *kept) {
    int code = take_code(s);
    if (code >= 0xd800 && code < 0xdc00 && s->length - s->at > 1 && s->text[s->at] == '\\') {
        s->at++;
        const int low = take_code(s);
        if (low >= 0xdc00 && low < 0xe000) code = 0x10000 + (code - 0xd800) * 0x400 + low - 0xdc00;
    }
    if (code >= 0) {
        put_utf8(kept, code);
        return;
    }
    static const char letters[] = "bfnrt", meant[] = "\b\f\n\r\t";
    const char c = s->text[s->at++], *letter = c ? strchr(letters, c) : NULL;
    bw_put_char(kept, letter ? meant[letter - letters] : c);
}

/// Skips a string from its opening quote; keeps what it says in `keep`, unless that is NULL. Of one that
/// is not closed nothing is kept: half a key is another key.
static void skip_string(scanner *s, char *keep) {
    char none[1];
    bw_text kept = bw_text_in(keep ? keep : none, keep ? sizeof s->levels[0].key : sizeof none);
    s->at++;
    while (s->at < s->length && s->text[s->at] != '"') {
        const size_t from = s->at;
        while (s->at < s->length && s->text[s->at] != '"' && s->text[s->at] != '\\')
            s->at++;
        bw_put_n(&kept, s->text + from, s->at - from);
        if (s->at == s->length || s->text[s->at] == '"') break;
        s->at++;
        if (s->at < s->length) take_escape(s, &kept);
    }
    if (s->at < s->length)
        s->at++;
    else if (keep)
        keep[0] = '\0';
}

static bool at_key(scanner *s) {
    const level *l = innermost(s);
    return s->text[s->at] == '"' && l && l->object && !l->after_colon;
}

/// True when the next token begins a value.
static bool at_value(scanner *s) {
    const char c = s->text[s->at];
    return !at_key(s) && (c == '\0' || !strchr(" \t\r\n,:}]", c));
}

/// Takes one token and keeps the way up to date.
static void step(scanner *s) {
    level *l = innermost(s);
    const size_t from = s->at;
    const char c = s->text[from];
    switch (c) {
    case '"': skip_string(s, at_key(s) ? l->key : NULL); return;
    case '{':
    case '[':
        s->at++;
        if (s->depth < DEEPEST) s->levels[s->depth] = (level){.object = c == '{'};
        s->depth++;
        return;
    case '}':
    case ']':
        s->at++;
        if (s->depth > 0) s->depth--;
        return;
    case ':':
        s->at++;
        if (l) l->after_colon = true;
        return;
    case ',':
        s->at++;
        if (!l) return;
        l->after_colon = false;
        l->key[0] = '\0';
        l->index++;
        return;
    case ' ':
    case '\t':
    case '\r':
    case '\n': s->at++; return;
    default:
        while (s->at < s->length && !strchr(" \t\r\n,:{}[]\"", s->text[s->at]))
            s->at++;
        if (s->at == from) s->at++; // a NUL byte ends strchr's list too
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

/// A pointer is shown to people and written as JSON. In text that is no scheme a key may be anything.
static bool fit_to_show(const char *pointer) {
    const size_t length = strlen(pointer);
    for (size_t i = 0; i < length; i++) {
        if (bw_is_control(pointer, i, length)) return false;
    }
    json_t *string = json_string(pointer); // NULL unless it is UTF-8
    json_decref(string);
    return string != NULL;
}

size_t bw_locate_offset(const bw_source *source, size_t offset, bw_error *error) {
    scanner s = {.text = source->text, .length = source->length};
    size_t token = 0;
    if (offset > source->length) offset = source->length;
    // jansson's position is the end of the token it refused, so what began before it counts.
    while (s.at < offset) {
        token = s.at;
        step(&s);
    }
    bw_text pointer = bw_text_in(error->pointer, sizeof error->pointer);
    put_way(&s, &pointer);
    const bool whole = s.at <= offset;
    const level *l = innermost(&s);
    // A key that has no value yet: the key itself was refused, or what stands for its colon.
    if (whole && l && l->object && !l->after_colon && l->key[0])
        bw_put_pointer_key(&pointer, l->key, strlen(l->key));
    if (!fit_to_show(error->pointer)) error->pointer[0] = '\0';
    // Within a text, such as one that is not closed, the byte at fault; else the token's start.
    const size_t at = whole || source->text[token] != '"' ? token : offset - 1;
    line_and_column(source, at, &error->line, &error->column);
    return at;
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
    for (; s.at < s.length; step(&s)) {
        if (s.depth > DEEPEST || !at_value(&s)) continue;
        char way[BW_POINTER_SIZE];
        bw_text t = bw_text_in(way, sizeof way);
        put_way(&s, &t);
        int n = followed(pointer, way);
        if (n <= best) continue;
        best = n;
        best_at = s.at;
        if (pointer[n] == '\0') break;
    }
    line_and_column(source, best_at, line, column);
}
