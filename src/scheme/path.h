/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Finding one's way in a tree: members by key, and the JSON Pointer (RFC 6901) of a value.
#ifndef BW_SCHEME_PATH_H
#define BW_SCHEME_PATH_H

#include "core/text.h"
#include "scheme/tree.h"

bool bw_node_key_is(const bw_tree *tree, int32_t node, const char *key, size_t length);

/// True when a string value is exactly this word.
bool bw_node_text_is(const bw_tree *tree, int32_t node, const char *word);

/// Index of an object's member, or 0 (the root is never a member).
int32_t bw_node_member(const bw_tree *tree, int32_t object, const char *key);

/// Appends the pointer of a value: "" for the root, "/stages/0/rule/pickup" and the like.
void bw_put_pointer(const bw_tree *tree, int32_t node, bw_text *out);

/// True when the byte at text[i] begins a character that a terminal or a printer obeys instead of
/// showing: an ASCII control, DEL, or a C1 control (in UTF-8 the bytes C2 80 to C2 9F).
bool bw_is_control(const char *text, size_t i, size_t length);

/// Appends "/" and one key, with ~ and / escaped.
void bw_put_pointer_key(bw_text *out, const char *key, size_t length);

#endif
