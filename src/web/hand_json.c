/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "web/hand_json.h"

/// A comma where one is due, then the key.
void bw_hand_put_key(bw_text *out, const char *key) {
    const char last = out->data[out->used - 1];
    if (last != '{') bw_put_char(out, ',');
    bw_put_char(out, '"');
    bw_put(out, key);
    bw_put(out, "\":");
}

/// Names and sentences have no control characters: the reader and this program see to it.
void bw_hand_put_string(bw_text *out, const char *s) {
    bw_put_char(out, '"');
    for (; *s; s++) {
        if (*s == '"' || *s == '\\') bw_put_char(out, '\\');
        bw_put_char(out, *s);
    }
    bw_put_char(out, '"');
}

void bw_hand_put_words(bw_text *out, const char *key, const char *words) {
    bw_hand_put_key(out, key);
    bw_hand_put_string(out, words);
}

void bw_hand_put_value(bw_text *out, const char *key, double value) {
    bw_hand_put_key(out, key);
    bw_put_number(out, value, 4);
}

void bw_hand_put_truth(bw_text *out, const char *key, bool value) {
    bw_hand_put_key(out, key);
    bw_put(out, value ? "true" : "false");
}

void bw_hand_put_comma(bw_text *out, bool due) {
    if (due) bw_put_char(out, ',');
}
