/* SPDX-License-Identifier: GPL-3.0-or-later */
/// jansson says that something else was expected; what was most likely meant is told from the
/// character at fault and the one before it. A slip that no line here knows keeps jansson's reason.
#include "file/explain.h"
#include "core/text.h"
#include <string.h>

enum { WORD = 24 }; ///< bytes repeated of a word that is no JSON

typedef struct slip {
    char before; ///< last character before the one at fault that is not blank; 0 when there is none
    char at;     ///< the character at fault
    const char *reason;
    const char *word; ///< letters at fault, "" when it is no letter
} slip;

static bool blank(char c) {
    return c == ' ' || c == '\t' || c == '\r' || c == '\n';
}

static bool letter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '_';
}

static bool digit(char c) {
    return c >= '0' && c <= '9';
}

static bool starts_with(const char *text, const char *start) {
    return strncmp(text, start, strlen(start)) == 0;
}

static bool starts_value(char c) {
    return c == '"' || c == '{' || c == '[' || c == '-' || letter(c) || digit(c);
}

static bool ends_value(char c) {
    return c == '"' || c == '}' || c == ']' || letter(c) || digit(c);
}

/// Slips inside a text.
static const char *slip_in_text(const slip *s) {
    if (starts_with(s->reason, "unexpected newline"))
        return "a text is not closed on its line; close the quote, or write \\n for a line end";
    if (starts_with(s->reason, "control character"))
        return "a text has a control character in it; leave it out";
    if (starts_with(s->reason, "invalid Unicode '"))
        return "a \\u here is only half a character; write the character itself";
    if (starts_with(s->reason, "invalid escape") || starts_with(s->reason, "invalid Unicode"))
        return "after a backslash a text has one of \" \\ / b f n r t, or u and four hex digits";
    return NULL;
}

/// Things that other languages allow.
static const char *slip_of_habit(const slip *s) {
    if (s->at == '\'') return "texts and keys stand in double quotes, not in single ones";
    if (s->at == '/' || s->at == '#')
        return "JSON has no comments; \"notes\" holds what you want to say";
    if (s->at == '+' || s->at == '.' || digit(s->at))
        return starts_with(s->reason, "invalid token")
                   ? "numbers are written like 3, 0.5 or -2: no plus, no zero in front, digits on "
                     "both sides of the point"
                   : NULL;
    return NULL;
}

/// Commas, colons and brackets.
static const char *slip_of_pen(const slip *s) {
    if (strstr(s->reason, "':' expected")) return "a colon is missing between a key and its value";
    if ((s->at == '}' || s->at == ']') && s->before == ',')
        return "there is a comma too many before this bracket";
    if ((s->at == '}' || s->at == ']' || s->at == ',') && s->before == ':')
        return "a value is missing after the colon";
    if (s->at == ',') return "there is a comma too many here";
    if (s->at == '}' || s->at == ']')
        return "this bracket does not close the one that is open; { goes with } and [ with ]";
    if (starts_value(s->at) && ends_value(s->before)) return "a comma is missing before this";
    return NULL;
}

static void put_syntax(bw_text *t, const slip *s) {
    const char *known = slip_in_text(s);
    if (!known) known = slip_of_habit(s);
    if (!known) known = slip_of_pen(s);
    if (known) {
        bw_put(t, known);
    } else if (s->word[0] && strstr(s->reason, "string or '}' expected")) {
        bw_put(t, "keys stand in double quotes: \"");
        bw_put(t, s->word);
        bw_put_char(t, '"');
    } else if (s->word[0]) {
        bw_put(t, s->word);
        bw_put(t, " is no value; write a number, a text in double quotes, true or false");
    } else {
        bw_put(t, "this is not JSON here (");
        for (const char *c = s->reason; *c; c++)
            bw_put_n(t, (unsigned char)*c < 0x20 || *c == 0x7f ? "?" : c, 1);
        bw_put(t, "); look for a missing comma, quote or bracket");
    }
}

static void put_slip(bw_text *t, const bw_source *source, size_t at, const char *reason) {
    char word[WORD] = "";
    bw_text kept = bw_text_in(word, sizeof word);
    size_t before = at, end = at;
    while (before > 0 && blank(source->text[before - 1]))
        before--;
    if (end < source->length && source->text[end] == '-') end++;
    const size_t first = end;
    while (end < source->length && (letter(source->text[end]) || digit(source->text[end])))
        end++;
    if (first < source->length && letter(source->text[first]))
        bw_put_n(&kept, source->text + at, end - at);
    put_syntax(t, &(slip){.before = before > 0 ? source->text[before - 1] : '\0',
                          .at = at < source->length ? source->text[at] : '\0',
                          .reason = reason,
                          .word = word});
}

void bw_explain(const bw_source *source, size_t at, const json_error_t *why, bw_error *error) {
    bw_text t = bw_text_in(error->message, sizeof error->message);
    error->status = BW_BAD_INPUT;
    switch (json_error_code(why)) {
    case json_error_duplicate_key: {
        const char *key = strrchr(error->pointer, '/'); // none when it could not be shown
        bw_put(&t, key ? "the key \"" : "a key");
        bw_put(&t, key ? key + 1 : "");
        bw_put(&t, key ? "\" is" : " is");
        bw_put(&t, " said twice in one object; keep one");
        break;
    }
    case json_error_premature_end_of_input:
        bw_put(&t, "the document ends before it is whole; a bracket or quote is not closed");
        break;
    case json_error_end_of_input_expected:
        bw_put(&t, "something follows the document; a file holds one scheme");
        break;
    case json_error_invalid_utf8:
        bw_put(&t, "the text is not UTF-8 here; save the file as UTF-8");
        break;
    case json_error_null_character:
    case json_error_null_byte_in_key:
        bw_put(&t, "a text has a NUL character in it; leave it out");
        break;
    case json_error_numeric_overflow:
        bw_put(&t, "this number is too large; lengths stay below 1000");
        break;
    case json_error_stack_overflow:
        bw_put(&t, "values are nested more than 12 deep; a scheme needs at most 7");
        error->status = BW_LIMIT;
        break;
    default: put_slip(&t, source, at, why->text);
    }
}

bool bw_stops_before(const json_error_t *why) {
    return json_error_code(why) == json_error_invalid_utf8 ||
           starts_with(why->text, "unexpected newline") ||
           starts_with(why->text, "control character");
}
