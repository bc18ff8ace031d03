/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Sentences. Each is one whole string of a catalogue (scheme/catalogue.def and others), with named places in
/// braces that are filled when it is said:
///
///     BW_SENTENCE(lint_off_ball, "Nobody is on the ball {at}: the nearest {man} is {gap} away.")
///     bw_put_sentence(&t, voice, &bw_s_lint_off_ball, bw_as_at("at", scheme, ball), bw_as_length("gap", metres));
///
/// A place is the name of an argument; or a word that depends on the people ({man}, {his}) or on the spelling
/// ({centre}), which needs none: core/wordbook.def has them. {Name} is {name} with a large first letter.
/// {count|pass|passes} picks the first form when the argument `count` is 1, otherwise the second.
///
/// A place that nothing fills stays as it is written; tests/scheme/test_sentences.sh holds every use against
/// the catalogue. A catalogue in another language is a second file with the same identifiers.
#ifndef BW_CORE_SENTENCE_H
#define BW_CORE_SENTENCE_H

#include "core/scheme.h"

/// To whom sentences are said. All zero is British spelling, men's words and yards.
typedef struct bw_voice {
    bw_units units;
    bool american; ///< center, defense
    bool women;    ///< player, she, her in place of man, he, his
} bw_voice;

/// The voice of a scheme: its unit, and what its field profile says (core/field.h).
bw_voice bw_voice_of(const bw_scheme *scheme);

typedef struct bw_sentence {
    const char *text;
} bw_sentence;

typedef enum bw_arg_kind {
    BW_ARG_END,
    BW_ARG_WORD,
    BW_ARG_PART,
    BW_ARG_COUNT,
    BW_ARG_NUMBER,
    BW_ARG_IN_100,
    BW_ARG_LENGTH,
    BW_ARG_SPEED,
    BW_ARG_SECONDS
} bw_arg_kind;

/// What fills a place of this name. Made by the bw_as_... functions.
typedef struct bw_arg {
    const char *name;
    bw_arg_kind kind;
    int decimals;
    long long count;
    double value;
    const char *word; ///< NULL: `own` has it
    const bw_sentence *part;
    char own[2 * BW_NAME_SIZE]; ///< a word made for this place
} bw_arg;

/// A word as it is; the text must live until the sentence is said.
bw_arg bw_as_word(const char *name, const char *word);

/// A word that is written into the argument itself: `own` of the argument, by this text.
bw_text bw_own_word(bw_arg *arg, const char *name);

/// A part of a sentence, itself of the catalogue, with the same arguments; nothing when it is NULL.
bw_arg bw_as_part(const char *name, const bw_sentence *part);

bw_arg bw_as_count(const char *name, long long n);
bw_arg bw_as_number(const char *name, double x, int decimals); ///< |x| < 1e9, decimals 0 to 9
bw_arg bw_as_in_100(const char *name, double share);  ///< a share of 1 in whole hundredths: "28"
bw_arg bw_as_length(const char *name, double metres); ///< "3.0 yd"
bw_arg bw_as_speed(const char *name, double metres_per_second); ///< "7.3 yd/s"
bw_arg bw_as_seconds(const char *name, double seconds);         ///< "2.4 s"

/// Adds a sentence to a text. `args` end with one of kind BW_ARG_END.
void bw_put_sentence_with(bw_text *out, bw_voice voice, const bw_sentence *sentence,
                          const bw_arg *args);

/// The same with its arguments one after the other; at least one.
#define bw_put_sentence(out, voice, sentence, ...)                                                 \
    bw_put_sentence_with(out, voice, sentence, (const bw_arg[]){__VA_ARGS__, {.kind = BW_ARG_END}})

/// A sentence that needs no argument.
void bw_put_plain_sentence(bw_text *out, bw_voice voice, const bw_sentence *sentence);

#endif
