/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "scheme/sides.h"
#include "core/text.h"

static const char *const pairs[][2] = {{"left", "right"}, {"Left", "Right"}, {"LEFT", "RIGHT"}};

/// Bytes beyond ASCII belong to letters with accents.
static bool in_word(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') ||
           (unsigned char)c >= 0x80;
}

static bool is_word(const char *text, size_t length, const char *word) {
    for (size_t i = 0; i < length; i++) {
        if (text[i] != word[i]) return false; // ends at the word's terminator at the latest
    }
    return word[length] == '\0';
}

static void put_word(bw_text *out, const char *word, size_t length) {
    for (int i = 0; i < (int)(sizeof pairs / sizeof pairs[0]); i++) {
        for (int side = 0; side < 2; side++) {
            if (!is_word(word, length, pairs[i][side])) continue;
            bw_put(out, pairs[i][!side]);
            return;
        }
    }
    bw_put_n(out, word, length);
}

bool bw_other_side(const char *name, char *to, size_t room) {
    bw_text out = bw_text_in(to, room);
    while (*name) {
        size_t length = 0;
        while (in_word(name[length]))
            length++;
        if (length > 0) {
            put_word(&out, name, length);
        } else {
            bw_put_char(&out, name[length++]);
        }
        name += length;
    }
    return !out.full;
}
