/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Writing JSON (RFC 8259), a piece at a time, into a text or wherever else: keys keep the order they are
/// written in, no space stands between anything. Numbers have at most four decimals and are never "-0".
#ifndef BW_CORE_JSON_H
#define BW_CORE_JSON_H

#include "core/text.h"

/// JSON under construction. `put` takes n bytes further to `to`.
typedef struct bw_json {
    void (*put)(void *to, const char *s, size_t n);
    void *to;
    bool comma; ///< a value stands before in this object or array
} bw_json;

/// JSON at the end of a text.
bw_json bw_json_in(bw_text *out);

void bw_json_open(bw_json *json, char bracket);  ///< '{' or '['
void bw_json_close(bw_json *json, char bracket); ///< '}' or ']'
void bw_json_key(bw_json *json, const char *key);

/// UTF-8, in quotes; a quote, a backslash and control characters are escaped.
void bw_json_text(bw_json *json, const char *text);

/// What JSON has no figure for, not finite or 1e9 and more either way, is null.
void bw_json_number(bw_json *json, double value);
void bw_json_null(bw_json *json);

/// A key with its value.
void bw_json_put_number(bw_json *json, const char *key, double value);
void bw_json_put_text(bw_json *json, const char *key, const char *text);
void bw_json_put_bool(bw_json *json, const char *key, bool value);

/// A key, and the bracket of the object or array that is its value.
void bw_json_put_open(bw_json *json, const char *key, char bracket);

void bw_json_end(bw_json *json); ///< the final newline

/// A text in quotes as bw_json_text writes it, for what sets its JSON out in lines.
void bw_put_quoted(bw_text *out, const char *text);

#endif
