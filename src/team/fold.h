/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Inside src/team only: the words of a text in any script, each folded so that what a reader takes for the
/// same word compares as the same bytes. The Unicode tables are those of utf8proc.
#ifndef BW_TEAM_FOLD_H
#define BW_TEAM_FOLD_H

#include <stdbool.h>
#include <stddef.h>

enum { BW_FOLD_BYTES = 128 }; ///< of a folded word, terminator included; a longer one is cut

/// A run of letters with their marks, or a run of digits.
typedef struct bw_word {
    size_t from, to;           ///< bytes of the text
    char exact[BW_FOLD_BYTES]; ///< case folded, decomposed (NFKD), without invisible characters
    char plain[BW_FOLD_BYTES]; ///< the same without accents and strokes: "ångström" is "angstrom"
    int letters;               ///< characters of `plain`
    bool number;               ///< digits, as 0 to 9 in `plain`
    bool capitals;             ///< no letter of it is small
} bw_word;

/// The next word at or after *at, which moves past it; false at the end. Bytes that are no UTF-8 are
/// between words.
bool bw_word_next(const char *text, size_t length, size_t *at, bw_word *word);

#endif
