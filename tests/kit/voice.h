/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What a text must not contain for the people it is said to, and a room's catalogue held against it.
#ifndef BW_TESTS_VOICE_H
#define BW_TESTS_VOICE_H

#include "core/sentence.h"
#include "harness.h"
#include <ctype.h>
#include <strings.h>

/// Words for men alone. No proper term of the game in these texts needs one: what is man-to-man for men is
/// player-to-player for women (common practice, no source).
static const char *const mens_words[] = {"man", "men", "he", "him", "his", "himself"};

/// Beginnings of words that are spelled otherwise in the United States.
static const char *const british_words[] = {
    "centre",    "defence", "offence", "metre",   "colour",    "favour",   "behaviour",
    "neighbour", "grey",    "practis", "organis", "recognis",  "analyse",  "programme",
    "licence",   "labell",  "modell",  "travell", "manoeuvre", "judgement"};

/// The word `word` in a text, or where one begins with it; NULL when it has none. Case does not matter.
static inline const char *word_in(const char *text, const char *word, bool beginning) {
    const size_t n = strlen(word);
    for (const char *at = text; *at; at++) {
        if (at > text && isalpha((unsigned char)at[-1])) continue;
        if (strncasecmp(at, word, n) != 0) continue;
        if (beginning || !isalpha((unsigned char)at[n])) return at;
    }
    return NULL;
}

/// Checks that a text suits a voice; `what` names it when it does not.
static inline void check_suits(const char *text, bw_voice voice, const char *what) {
    for (int i = 0; voice.women && i < BW_COUNT(mens_words); i++) {
        const bool found = word_in(text, mens_words[i], false);
        if (found) fprintf(stderr, "%s: \"%s\" in: %s\n", what, mens_words[i], text);
        CHECK(!found);
    }
    for (int i = 0; voice.american && i < BW_COUNT(british_words); i++) {
        const bool found = word_in(text, british_words[i], true);
        if (found) fprintf(stderr, "%s: \"%s\" in: %s\n", what, british_words[i], text);
        CHECK(!found);
    }
    CHECK(!strchr(text, '{') && !strchr(text, '}'));
}

/// A sentence of a catalogue by its name.
typedef struct listed {
    const char *id, *text;
} listed;

/// Fills every place with a number and says the sentence in every voice.
static inline void check_catalogue(const listed *list, int count) {
    static const bw_voice voices[] = {{.women = false},
                                      {.american = true},
                                      {.women = true},
                                      {.american = true, .women = true, .units = BW_METRES}};
    for (int i = 0; i < count; i++) {
        bw_arg args[16];
        char names[16][32];
        int n = 0;
        for (const char *at = list[i].text; (at = strchr(at, '{')) && n < 15; at++) {
            const size_t size = strcspn(at + 1, "|}");
            CHECK(size > 0 && size < sizeof names[0]);
            snprintf(names[n], sizeof names[n], "%.*s", (int)size, at + 1);
            names[n][0] = (char)tolower((unsigned char)names[n][0]);
            // A word of the wordbook has no argument, and so is said as the voice has it.
            char alone[64], said[64];
            snprintf(alone, sizeof alone, "{%s}", names[n]);
            bw_text t = bw_text_in(said, sizeof said);
            bw_put_plain_sentence(&t, voices[0], &(bw_sentence){alone});
            if (strcmp(alone, said) != 0) continue;
            args[n] = bw_as_count(names[n], 2);
            n++;
        }
        args[n] = (bw_arg){.kind = BW_ARG_END};
        for (int v = 0; v < BW_COUNT(voices); v++) {
            char said[2000];
            bw_text t = bw_text_in(said, sizeof said);
            bw_put_sentence_with(&t, voices[v], &(bw_sentence){list[i].text}, args);
            CHECK(!t.full);
            check_suits(said, voices[v], list[i].id);
        }
    }
}

#endif
