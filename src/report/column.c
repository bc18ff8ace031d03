/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report/column.h"
#include "core/base.h"

enum { ROW_BYTES = 512 }; ///< of one text on one line

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

static void put_cut(bw_text *out, const char *text, int width) {
    size_t length = 0;
    for (int n = 0; text[length]; length++) {
        n += ((unsigned char)text[length] & 0xC0) != 0x80;
        if (n > width) break;
    }
    bw_put_n(out, text, length);
}

void bw_put_left(bw_text *out, const char *text, int width) {
    const int columns = bw_columns(text);
    put_cut(out, text, width - 1);
    put_spaces(out, columns < width ? width - columns : 1);
}

/// Bytes of the words that fit into `width` columns; of a word that alone is wider, what fits of it.
static size_t fitting(const char *text, int width) {
    size_t fits = 0, length = 0;
    for (int n = 0; text[length]; length++) {
        if (text[length] == ' ') fits = length;
        n += ((unsigned char)text[length] & 0xC0) != 0x80;
        if (n > width) return fits > 0 ? fits : length;
    }
    return length;
}

void bw_put_row(bw_text *out, int at, const bw_column *columns, int count) {
    const char *rest[BW_ROW_COLUMNS];
    BW_ASSERT(count <= BW_ROW_COLUMNS);
    for (int c = 0; c < count; c++)
        rest[c] = columns[c].text;
    for (bool more = true, first = true; more; first = false) {
        int begins = 0, stands = first ? 0 : -at; // columns from the row's first
        more = false;
        for (int c = 0; c < count; c++) {
            const size_t length = fitting(rest[c], columns[c].width - 1);
            if (length > 0) {
                char line[ROW_BYTES];
                bw_text t = bw_text_in(line, sizeof line);
                bw_put_n(&t, rest[c], length);
                put_spaces(out, begins - stands);
                bw_put(out, line);
                stands = begins + bw_columns(line);
            }
            begins += columns[c].width;
            rest[c] += length;
            while (*rest[c] == ' ')
                rest[c]++;
            more = more || *rest[c];
        }
        bw_put_char(out, '\n');
    }
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
