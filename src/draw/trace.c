/* SPDX-License-Identifier: GPL-3.0-or-later */
/// One line for each item: kind, role, style, numbers, text. Groups and clips indent.
#include "draw/trace.h"

#include "core/hash.h"

static void put_tenth(bw_text *out, double x) {
    bw_put_char(out, ' ');
    bw_put_number(out, x, 1);
}

enum { LETTERS = 8, DIGITS = 16 };

/// A path of moves and lines only, up to eight of them, is written out; a longer or a curved one as its
/// box, its number of verbs and a hash of its coordinates in tenths of a point.
static void put_path(bw_text *out, const bw_ink_item *item) {
    static const char letters[] = "MLCZ", digits[] = "0123456789abcdef";
    static const int values[] = {2, 2, 6, 0};
    const double *n = bw_ink_numbers(item);
    int verbs = 0;
    bool curved = false;
    double low[2] = {1e9, 1e9}, high[2] = {-1e9, -1e9};
    uint64_t hash = BW_HASH_START;
    for (int i = 0; i < item->numbers; verbs++) {
        const int verb = (int)n[i++];
        curved |= verb == BW_CURVE;
        hash = bw_hash_u64(hash, (uint64_t)verb);
        for (int k = 0; k < values[verb]; k++, i++) {
            low[k & 1] = bw_min(low[k & 1], n[i]);
            high[k & 1] = bw_max(high[k & 1], n[i]);
            hash = bw_hash_double(hash, bw_round_to(n[i], 10));
        }
    }
    if (curved || verbs > LETTERS) {
        bw_put(out, " box");
        put_tenth(out, low[0]);
        put_tenth(out, low[1]);
        put_tenth(out, high[0]);
        put_tenth(out, high[1]);
        bw_put(out, " verbs ");
        bw_put_int(out, verbs);
        bw_put(out, " #");
        for (int i = DIGITS - 1; i >= DIGITS / 2; i--) {
            bw_put_char(out, digits[hash >> (4 * i) & 15]);
        }
        return;
    }
    for (int i = 0; i < item->numbers;) {
        const int verb = (int)n[i++];
        bw_put_char(out, ' ');
        bw_put_char(out, letters[verb]);
        for (int k = 0; k < values[verb]; k++) {
            put_tenth(out, n[i++]);
        }
    }
}

static void put_quoted(bw_text *out, const bw_ink_item *item) {
    bw_put(out, " \"");
    bw_put_n(out, bw_ink_string(item), (size_t)item->text);
    bw_put_char(out, '"');
}

static void put_item(bw_text *out, const bw_ink_item *item) {
    static const char *const tags[] = {"h1", "h2", "p", "figure", "artifact"};
    static const char *const aligns[] = {"left", "centre", "right"};
    const double *n = bw_ink_numbers(item);
    switch ((bw_ink_kind)item->kind) {
    case BW_INK_FILL:
        bw_put(out, "fill ");
        bw_put(out, bw_role_name((bw_role)item->role));
        put_path(out, item);
        break;
    case BW_INK_STROKE:
        bw_put(out, "stroke ");
        bw_put(out, bw_role_name((bw_role)item->role));
        put_tenth(out, item->size);
        if (item->dash[1] > 0) {
            bw_put(out, " dash");
            put_tenth(out, item->dash[0]);
            put_tenth(out, item->dash[1]);
        }
        put_path(out, item);
        break;
    case BW_INK_TEXT:
        bw_put(out, item->style == BW_BOLD ? "bold " : "text ");
        bw_put(out, bw_role_name((bw_role)item->role));
        put_tenth(out, item->size);
        bw_put_char(out, ' ');
        bw_put(out, aligns[item->align]);
        put_tenth(out, n[0]);
        put_tenth(out, n[1]);
        put_quoted(out, item);
        break;
    case BW_INK_CLIP:
        bw_put(out, "clip");
        for (int i = 0; i < 4; i++) {
            put_tenth(out, n[i]);
        }
        break;
    case BW_INK_OPEN:
        bw_put(out, tags[item->style]);
        put_quoted(out, item);
        break;
    case BW_INK_UNCLIP:
    case BW_INK_SHUT: bw_put(out, "end"); break;
    }
}

void bw_trace(const bw_ink *ink, bw_text *out) {
    int depth = 0;
    bw_put(out, "page");
    put_tenth(out, ink->width);
    put_tenth(out, ink->height);
    bw_put_char(out, '\n');
    for (const bw_ink_item *item = bw_ink_first(ink); item; item = bw_ink_next(ink, item)) {
        depth -= item->kind == BW_INK_SHUT || item->kind == BW_INK_UNCLIP;
        for (int i = 0; i < depth; i++) {
            bw_put(out, "  ");
        }
        put_item(out, item);
        bw_put_char(out, '\n');
        depth += item->kind == BW_INK_OPEN || item->kind == BW_INK_CLIP;
    }
}
