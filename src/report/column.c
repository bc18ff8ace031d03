/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report/column.h"

int bw_columns(const char *text) {
    int n = 0;
    for (; *text; text++)
        n += ((unsigned char)*text & 0xC0) != 0x80;
    return n;
}

static void put_spaces(bw_text *out, int count) {
    for (int i = 0; i < count; i++)
        bw_put_char(out, ' ');
}

void bw_put_cut(bw_text *out, const char *text, int width) {
    size_t length = 0;
    for (int n = 0; text[length]; length++) {
        n += ((unsigned char)text[length] & 0xC0) != 0x80;
        if (n > width) break;
    }
    bw_put_n(out, text, length);
}

void bw_put_left(bw_text *out, const char *text, int width) {
    const int columns = bw_columns(text);
    bw_put_cut(out, text, width - 1);
    put_spaces(out, columns < width ? width - columns : 1);
}

void bw_put_right(bw_text *out, double x, int decimals, int width) {
    char digits[32];
    bw_text t = bw_text_in(digits, sizeof digits);
    bw_put_fixed(&t, x, decimals);
    put_spaces(out, width - bw_columns(digits));
    bw_put(out, digits);
}

void bw_put_wrapped(bw_text *out, const char *words, int at, int indent, int width) {
    bool first = true; // word of the line
    while (*words) {
        size_t length = 0;
        int columns = 0;
        while (words[length] && words[length] != ' ') {
            columns += ((unsigned char)words[length] & 0xC0) != 0x80;
            length++;
        }
        if (!first && at + 1 + columns > width) {
            bw_put_char(out, '\n');
            put_spaces(out, indent);
            at = indent;
            first = true;
        }
        if (!first) bw_put_char(out, ' ');
        bw_put_n(out, words, length);
        at += columns + !first;
        first = false;
        words += length;
        while (*words == ' ')
            words++;
    }
    bw_put_char(out, '\n');
}
