/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "scheme/style.h"

#include "core/base.h"

/// Terms in common use among coaches. Beginnings count: "rotat" is rotate, rotates and rotation.
static const bw_jargon jargon[] = {
    {"hedge", {"step toward {him} and back"}},
    {"recover", {"get back"}},
    {"rotat", {"move"}},
    {"sluff", {"drop off"}},
    {"slough", {"drop off"}},
    {"sag", {"drop off"}},
    {"splash", {"slide"}},
    {"utiliz", {"use"}},
    {"utilis", {"use"}},
    {"communicat", {"talk"}},
    {"initiat", {"begin"}},
    {"transition", {"break"}},
    {"personnel", {"players"}},
    {"trailer", {"late {man}"}},
};

static bool is_letter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

static char lower(char c) {
    return c >= 'A' && c <= 'Z' ? (char)(c - 'A' + 'a') : c;
}

int bw_style_words(const char *text) {
    int count = 0;
    for (bool between = true; *text; text++) {
        count += between && *text != ' ';
        between = *text == ' ';
    }
    return count;
}

int bw_style_sentence(const char *text) {
    int most = 0, count = 0;
    for (bool between = true; *text; text++) {
        count += between && *text != ' ';
        between = *text == ' ';
        if (count > most) most = count;
        const bool stop = *text == '.' || *text == '!' || *text == '?';
        if (stop && (text[1] == ' ' || !text[1])) count = 0;
    }
    return most;
}

/// Whether the word at `text` begins like this.
static bool begins(const char *text, const char *with) {
    while (*with && lower(*text) == *with) {
        text++;
        with++;
    }
    return !*with;
}

/// "sag" is a whole word, or sags, sagged, sagging; never "sagacious".
static bool is_short_word(const char *text) {
    static const char *const ends[] = {"s", "ged", "ging"};
    const char *rest = text + 3;
    if (!is_letter(*rest)) return true;
    for (int i = 0; i < BW_COUNT(ends); i++) {
        if (!begins(rest, ends[i])) continue;
        const char *after = rest;
        while (is_letter(*after))
            after++;
        int length = 0;
        while (ends[i][length])
            length++;
        if (after - rest == length) return true;
    }
    return false;
}

const bw_jargon *bw_style_jargon(const char *text) {
    for (bool between = true; *text; text++) {
        for (int i = 0; between && i < BW_COUNT(jargon); i++) {
            if (!begins(text, jargon[i].word)) continue;
            const bool is_short = !jargon[i].word[3];
            if (!is_short || is_short_word(text)) return &jargon[i];
        }
        between = !is_letter(*text);
    }
    return NULL;
}
