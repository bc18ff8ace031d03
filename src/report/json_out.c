/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report/json_out.h"
#include "core/text.h"

static void separate(bw_json *json) {
    if (json->comma) fputc(',', json->stream);
    json->comma = true;
}

static void quote(FILE *stream, const char *text) {
    fputc('"', stream);
    for (const unsigned char *p = (const unsigned char *)text; *p; p++) {
        if (*p == '"' || *p == '\\')
            fprintf(stream, "\\%c", *p);
        else if (*p == '\n')
            fputs("\\n", stream);
        else if (*p < 0x20 || *p == 0x7f)
            fprintf(stream, "\\u%04x", *p);
        else
            fputc(*p, stream);
    }
    fputc('"', stream);
}

void bw_json_open(bw_json *json, char bracket) {
    separate(json);
    fputc(bracket, json->stream);
    json->comma = false;
}

void bw_json_close(bw_json *json, char bracket) {
    fputc(bracket, json->stream);
    json->comma = true;
}

void bw_json_key(bw_json *json, const char *key) {
    separate(json);
    quote(json->stream, key);
    fputc(':', json->stream);
    json->comma = false;
}

void bw_json_text(bw_json *json, const char *text) {
    separate(json);
    quote(json->stream, text);
}

void bw_json_number(bw_json *json, double value) {
    char digits[32];
    bw_text text = bw_text_in(digits, sizeof digits);
    bw_put_number(&text, value, 4);
    separate(json);
    fputs(digits, json->stream);
}

void bw_json_bool(bw_json *json, bool value) {
    separate(json);
    fputs(value ? "true" : "false", json->stream);
}

void bw_json_null(bw_json *json) {
    separate(json);
    fputs("null", json->stream);
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
    bw_json_bool(json, value);
}

void bw_json_end(bw_json *json) {
    fputc('\n', json->stream);
}
