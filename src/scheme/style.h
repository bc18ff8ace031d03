/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The style of a caption: short, and in words that a player new to the game knows.
#ifndef BW_SCHEME_STYLE_H
#define BW_SCHEME_STYLE_H

#include "core/sentence.h"

/// Words one sentence and a whole caption may have. Our own figures: what is read while a picture stands
/// two seconds, and on one line or two below it.
enum { BW_SENTENCE_WORDS = 14, BW_CAPTION_WORDS = 28 };

/// Words of a text: runs of anything but spaces.
int bw_style_words(const char *text);

/// Words of its longest sentence; one ends with a full stop, ! or ?.
int bw_style_sentence(const char *text);

/// A word of the trade that new players do not know, and a plain one for it.
typedef struct bw_jargon {
    const char *word;
    bw_sentence plain;
} bw_jargon;

/// The first such word in a text, whatever its case, or NULL.
const bw_jargon *bw_style_jargon(const char *text);

#endif
