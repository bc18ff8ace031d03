/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "serve/target.h"

#include "core/text.h"

static bool letter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

static bool digit(char c) {
    return c >= '0' && c <= '9';
}

/// Copies the path; *text moves to its end.
static bw_status read_path(const char **text, bw_target *target) {
    if (**text != '/') return BW_BAD_INPUT;
    int n = 0;
    char before = 0;
    for (; **text && **text != '?'; ++*text) {
        const char c = **text;
        if (!letter(c) && !digit(c) && c != '/' && c != '-' && c != '_' && c != '.')
            return BW_BAD_INPUT;
        if ((before == '/' && (c == '/' || c == '.')) || (before == '.' && c == '.'))
            return BW_BAD_INPUT;
        if (n == BW_PATH_SIZE - 1) return BW_LIMIT;
        target->path[n++] = before = c;
    }
    target->path[n] = '\0';
    return BW_OK;
}

static int hex(char c) {
    if (digit(c)) return c - '0';
    if (c >= 'a' && c <= 'f') return c - 'a' + 10;
    if (c >= 'A' && c <= 'F') return c - 'A' + 10;
    return -1;
}

/// One character of a value, "%2C" and "+" decoded; -1 when it is none.
static int read_character(const char **text) {
    int c = (unsigned char)**text;
    if (c == '%') {
        const int high = hex((*text)[1]), low = high < 0 ? -1 : hex((*text)[2]);
        if (low < 0) return -1;
        c = high * 16 + low;
        *text += 2;
    } else if (c == '+') {
        c = ' ';
    }
    ++*text;
    return c >= 0x20 && c < 0x7f ? c : -1;
}

static bw_status read_value(const char **text, bw_named_value *out) {
    int n = 0;
    for (; **text >= 'a' && **text <= 'z'; ++*text) {
        if (n == BW_VALUE_NAME_SIZE - 1) return BW_LIMIT;
        out->name[n++] = **text;
    }
    out->name[n] = '\0';
    if (n == 0 || **text != '=') return BW_BAD_INPUT;
    ++*text;
    for (n = 0; **text && **text != '&';) {
        const int c = read_character(text);
        if (c < 0) return BW_BAD_INPUT;
        if (n == BW_VALUE_SIZE - 1) return BW_LIMIT;
        out->value[n++] = (char)c;
    }
    out->value[n] = '\0';
    return BW_OK;
}

bw_status bw_target_read(const char *text, bw_target *target) {
    *target = (bw_target){.value_count = 0};
    bw_status status = read_path(&text, target);
    while (status == BW_OK && *text) {
        text++; // over "?" or "&"
        if (target->value_count == BW_MAX_VALUES) return BW_LIMIT;
        bw_named_value *value = &target->values[target->value_count];
        status = read_value(&text, value);
        if (status == BW_OK && bw_target_value(target, value->name)) status = BW_BAD_INPUT;
        if (status == BW_OK) target->value_count++;
    }
    return status;
}

const char *bw_target_value(const bw_target *target, const char *name) {
    for (int i = 0; i < target->value_count; i++) {
        if (bw_same(target->values[i].name, name)) return target->values[i].value;
    }
    return NULL;
}

bool bw_target_number(const bw_target *target, const char *name, int low, int high, int standard,
                      int *out) {
    const char *text = bw_target_value(target, name);
    *out = standard;
    if (!text) return true;
    int n = 0, digits = 0;
    for (; digit(*text) && digits < 7; text++, digits++)
        n = n * 10 + (*text - '0');
    *out = n;
    return digits > 0 && *text == '\0' && n >= low && n <= high;
}
