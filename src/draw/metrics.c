/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Text widths by look-up, and greedy line breaking (which is optimal in the number of lines).
#include "draw/metrics.h"

#include "core/text.h"

uint32_t bw_code_point(const char *s, size_t length, int *bytes) {
    const unsigned char *u = (const unsigned char *)s;
    const int size = u[0] < 0x80 ? 1 : u[0] < 0xC2 ? 0 : u[0] < 0xE0 ? 2 : u[0] < 0xF0 ? 3 : 4;
    *bytes = 1;
    if (size == 1) return u[0];
    if (size == 0 || (size_t)size > length || u[0] > 0xF4) return 0xFFFD;
    uint32_t code = u[0] & (0x7Fu >> size);
    for (int i = 1; i < size; i++) {
        if ((u[i] & 0xC0) != 0x80) return 0xFFFD;
        code = code << 6 | (u[i] & 0x3Fu);
    }
    *bytes = size;
    return code;
}

/// Index in the table, or -1.
static int find(uint32_t code) {
    int low = 0, high = bw_advance_count;
    while (low < high) {
        const int middle = (low + high) / 2;
        if (bw_advances[middle].code < code)
            low = middle + 1;
        else
            high = middle;
    }
    return low < bw_advance_count && bw_advances[low].code == code ? low : -1;
}

bool bw_glyph_known(uint32_t code) {
    return find(code) >= 0;
}

double bw_text_width(const char *s, size_t length, double size) {
    int64_t sum = 0;
    for (size_t i = 0; i < length;) {
        int bytes;
        const int entry = find(bw_code_point(s + i, length - i, &bytes));
        sum += entry >= 0 ? bw_advances[entry].width : 1000;
        i += (size_t)bytes;
    }
    return (double)sum * size / 1000;
}

double bw_width(const char *s, double size) {
    return bw_text_width(s, bw_text_length(s), size);
}

/// End of the longest piece of s[start..] that fits in `width` and ends where a line may end.
static int32_t fit(const char *s, int32_t start, int32_t end, double size, double width) {
    int32_t best = start, i = start;
    double used = 0;
    while (i < end) {
        int bytes;
        bw_code_point(s + i, (size_t)(end - i), &bytes);
        const double wide = bw_text_width(s + i, (size_t)bytes, size);
        if (s[i] == ' ') best = i;
        if (used + wide > width && s[i] != ' ') break;
        used += wide;
        i += bytes;
        if (s[i - 1] == '-' && i < end) best = i;
    }
    if (i >= end) return end;
    if (best > start) return best;
    return i > start ? i
                     : start + 1; // a word wider than the line, or a line narrower than a letter
}

static int32_t skip_spaces(const char *s, int32_t i, int32_t end) {
    while (i < end && s[i] == ' ') {
        i++;
    }
    return i;
}

static int32_t trim(const char *s, int32_t start, int32_t end) {
    while (end > start && s[end - 1] == ' ') {
        end--;
    }
    return end;
}

/// Start of the last word of s[start..end), or `start` when there is only one.
static int32_t last_word(const char *s, int32_t start, int32_t end) {
    for (int32_t i = end - 1; i > start; i--) {
        if (s[i] == ' ') return i + 1;
    }
    return start;
}

/// Gives a lonely last word the last word of the line before it, where that leaves it one at least.
static void keep_company(const char *s, bw_span *before, bw_span *last, double size, double width) {
    const int32_t end = last->start + last->length;
    if (last_word(s, last->start, end) != last->start) return;
    if (bw_text_width(s + last->start, (size_t)last->length, size) > width / 3) return;
    const int32_t before_end = before->start + before->length;
    const int32_t split = last_word(s, before->start, before_end);
    if (split == before->start) return;
    if (bw_text_width(s + split, (size_t)(end - split), size) > width) return;
    *before = (bw_span){before->start, trim(s, before->start, split) - before->start};
    *last = (bw_span){split, end - split};
}

int bw_wrap(const char *s, double size, double width, bw_span *lines, int room) {
    const int32_t whole = (int32_t)bw_text_length(s);
    int count = 0;
    for (int32_t start = 0; start < whole;) {
        int32_t end = start; // of this paragraph
        while (end < whole && s[end] != '\n') {
            end++;
        }
        const int first = count;
        int32_t i = skip_spaces(s, start, end);
        if (i == end && count < room) lines[count] = (bw_span){i, 0};
        if (i == end) count++;
        while (i < end) {
            const int32_t stop = fit(s, i, end, size, width);
            if (count < room) lines[count] = (bw_span){i, trim(s, i, stop) - i};
            count++;
            i = skip_spaces(s, stop, end);
        }
        if (count - first >= 2 && count <= room)
            keep_company(s, &lines[count - 2], &lines[count - 1], size, width);
        start = end + 1;
    }
    return count;
}
