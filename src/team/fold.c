/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "team/fold.h"
#include <string.h>
#include <utf8proc.h>

typedef enum character { BETWEEN, LETTER, DIGIT, WITHIN } character;

/// A character at `at`, at most `length` bytes on; its size goes to *size.
static character next(const char *at, size_t length, size_t *size, bool *small) {
    utf8proc_int32_t point;
    const utf8proc_ssize_t got =
        utf8proc_iterate((const utf8proc_uint8_t *)at, (utf8proc_ssize_t)length, &point);
    *size = got > 0 ? (size_t)got : 1;
    *small = false;
    if (got <= 0 || point == 0x200b) return BETWEEN; // the zero width space parts words
    switch (utf8proc_category(point)) {
    case UTF8PROC_CATEGORY_LL: *small = true; return LETTER;
    case UTF8PROC_CATEGORY_LU:
    case UTF8PROC_CATEGORY_LT:
    case UTF8PROC_CATEGORY_LM:
    case UTF8PROC_CATEGORY_LO: return LETTER;
    case UTF8PROC_CATEGORY_ND:
    case UTF8PROC_CATEGORY_NL:
    case UTF8PROC_CATEGORY_NO: return DIGIT;
    case UTF8PROC_CATEGORY_MN:
    case UTF8PROC_CATEGORY_MC:
    case UTF8PROC_CATEGORY_ME:
    case UTF8PROC_CATEGORY_CF: return WITHIN; // marks; soft hyphens and joiners
    default: return BETWEEN;
    }
}

/// Letters that have no decomposition, as those write them who do not have them.
static const char *stroked(utf8proc_int32_t point) {
    switch (point) {
    case 0xe6: return "ae";
    case 0xf0: return "d";
    case 0xf8: return "o";
    case 0xfe: return "th";
    case 0x111: return "d";
    case 0x127: return "h";
    case 0x131: return "i";
    case 0x142: return "l";
    case 0x153: return "oe";
    default: return NULL;
    }
}

/// Appends n bytes whole, or none.
static bool append(char *to, size_t *used, const void *bytes, size_t n) {
    if (*used + n >= BW_FOLD_BYTES) return false;
    memcpy(to + *used, bytes, n);
    *used += n;
    to[*used] = '\0';
    return true;
}

/// Folds the bytes of a word, with or without its marks. Returns the characters.
static int fold(const char *text, size_t length, bool marks, char *to) {
    enum { POINTS = 4 * BW_FOLD_BYTES };
    utf8proc_int32_t points[POINTS];
    const utf8proc_option_t how = UTF8PROC_DECOMPOSE | UTF8PROC_COMPAT | UTF8PROC_CASEFOLD |
                                  UTF8PROC_IGNORE | (marks ? 0 : UTF8PROC_STRIPMARK);
    // What does not fit is cut: no name is as long.
    if (length > BW_FOLD_BYTES) length = BW_FOLD_BYTES;
    while (length > 0 && utf8proc_decompose((const utf8proc_uint8_t *)text,
                                            (utf8proc_ssize_t)length, NULL, 0, how) < 0)
        length--; // a character was cut through
    utf8proc_ssize_t count = utf8proc_decompose((const utf8proc_uint8_t *)text,
                                                (utf8proc_ssize_t)length, points, POINTS, how);
    if (count > POINTS || count < 0) count = 0;
    size_t used = 0;
    int characters = 0;
    to[0] = '\0';
    for (utf8proc_ssize_t i = 0; i < count; i++, characters++) {
        utf8proc_uint8_t bytes[4];
        const char *other = marks ? NULL : stroked(points[i]);
        const size_t size = other ? strlen(other) : (size_t)utf8proc_encode_char(points[i], bytes);
        if (!append(to, &used, other ? other : (const char *)bytes, size)) break;
    }
    return characters;
}

bool bw_word_next(const char *text, size_t length, size_t *at, bw_word *word) {
    size_t size = 0;
    bool small = false;
    character is = BETWEEN;
    for (; *at < length; *at += size) {
        is = next(text + *at, length - *at, &size, &small);
        if (is == LETTER || is == DIGIT) break;
    }
    if (*at >= length) return false;
    const character kind = is;
    word->from = *at;
    word->capitals = kind == LETTER;
    while (*at < length && (is == kind || is == WITHIN)) {
        if (small) word->capitals = false;
        *at += size;
        if (*at < length) is = next(text + *at, length - *at, &size, &small);
    }
    word->to = *at;
    word->number = kind == DIGIT;
    fold(text + word->from, word->to - word->from, true, word->exact);
    word->letters = fold(text + word->from, word->to - word->from, false, word->plain);
    return true;
}
