/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Writing JSON: a stream, and whether a comma is due. Keys keep the order they are written in.
/// Numbers have at most four decimals and are never "-0".
#ifndef BW_REPORT_JSON_OUT_H
#define BW_REPORT_JSON_OUT_H

#include <stdbool.h>
#include <stdio.h>

typedef struct bw_json {
    FILE *stream;
    bool comma; ///< a value stands before in this object or array
} bw_json;

void bw_json_open(bw_json *json, char bracket);  ///< '{' or '['
void bw_json_close(bw_json *json, char bracket); ///< '}' or ']'
void bw_json_key(bw_json *json, const char *key);
void bw_json_text(bw_json *json, const char *text); ///< UTF-8
void bw_json_number(bw_json *json, double value);   ///< |value| < 1e9
void bw_json_bool(bw_json *json, bool value);
void bw_json_null(bw_json *json);
/// A key with its value.
void bw_json_put_number(bw_json *json, const char *key, double value);
void bw_json_put_text(bw_json *json, const char *key, const char *text);
void bw_json_put_bool(bw_json *json, const char *key, bool value);

void bw_json_end(bw_json *json); ///< the final newline

#endif
