/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/json.h"

#include "core/base.h"
#include "core/maths.h"

static void put_char(const bw_json *json, char c) {
    json->put(json->to, &c, 1);
}

static void put(const bw_json *json, const char *s) {
    json->put(json->to, s, bw_text_length(s));
}

static void separate(bw_json *json) {
    if (json->comma) put_char(json, ',');
    json->comma = true;
}

/// The escape of a byte that may not stand as it is, into `room`; false for any other.
static bool escape(unsigned char c, char room[8]) {
    static const char hex[] = "0123456789abcdef";
    bw_text t = bw_text_in(room, 8);
    if (c == '"' || c == '\\') {
        bw_put_char(&t, '\\');
        bw_put_char(&t, (char)c);
    } else if (c == '\n') {
        bw_put(&t, "\\n");
    } else if (c < 0x20 || c == 0x7f) {
        bw_put(&t, "\\u00");
        bw_put_char(&t, hex[c >> 4]);
        bw_put_char(&t, hex[c & 15]);
    }
    return t.used > 0;
}

static void quote(const bw_json *json, const char *text) {
    char room[8];
    put_char(json, '"');
    for (; *text; text++) {
        if (escape((unsigned char)*text, room))
            put(json, room);
        else
            put_char(json, *text);
    }
    put_char(json, '"');
}

static void put_in_text(void *to, const char *s, size_t n) {
    bw_put_n(to, s, n);
}

bw_json bw_json_in(bw_text *out) {
    return (bw_json){.put = put_in_text, .to = out};
}

void bw_json_open(bw_json *json, char bracket) {
    separate(json);
    put_char(json, bracket);
    json->comma = false;
}

void bw_json_close(bw_json *json, char bracket) {
    put_char(json, bracket);
    json->comma = true;
}

void bw_json_key(bw_json *json, const char *key) {
    separate(json);
    quote(json, key);
    put_char(json, ':');
    json->comma = false;
}

void bw_json_text(bw_json *json, const char *text) {
    separate(json);
    quote(json, text);
}

void bw_json_number(bw_json *json, double value) {
    char digits[32];
    bw_text t = bw_text_in(digits, sizeof digits);
    if (!(bw_abs(value) < 1e9)) {
        bw_json_null(json);
        return;
    }
    bw_put_number(&t, value, 4);
    separate(json);
    put(json, digits);
}

void bw_json_null(bw_json *json) {
    separate(json);
    put(json, "null");
}

void bw_json_put_number(bw_json *json, const char *key, double value) {
    bw_json_key(json, key);
    bw_json_number(json, value);
}

void bw_json_put_text(bw_json *json, const char *key, const char *text) {
    bw_json_key(json, key);
    bw_json_text(json, text);
}

void bw_json_put_bool(bw_json *json, const char *key, bool value) {
    bw_json_key(json, key);
    separate(json);
    put(json, value ? "true" : "false");
}

void bw_json_put_open(bw_json *json, const char *key, char bracket) {
    bw_json_key(json, key);
    bw_json_open(json, bracket);
}

void bw_json_end(bw_json *json) {
    put_char(json, '\n');
}

void bw_put_quoted(bw_text *out, const char *text) {
    const bw_json json = bw_json_in(out);
    quote(&json, text);
}
