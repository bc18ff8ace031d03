/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Pieces of JSON appended to a text: for the short answers the hand-out's page is given.
#ifndef BW_WEB_HAND_JSON_H
#define BW_WEB_HAND_JSON_H

#include "core/text.h"

/// A comma where one is due in an object, then the key.
void bw_hand_put_key(bw_text *out, const char *key);

/// Text without control characters, in quotes.
void bw_hand_put_string(bw_text *out, const char *s);

/// A member of an object: text, number (at most four decimals), truth.
void bw_hand_put_words(bw_text *out, const char *key, const char *words);
void bw_hand_put_value(bw_text *out, const char *key, double value);
void bw_hand_put_truth(bw_text *out, const char *key, bool value);

/// A comma in an array.
void bw_hand_put_comma(bw_text *out, bool due);

#endif
