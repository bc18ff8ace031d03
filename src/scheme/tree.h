/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A document as a tree of values in memory the caller owns; scheme/tree_build.h builds it.
#ifndef BW_SCHEME_TREE_H
#define BW_SCHEME_TREE_H

#include "scheme/error.h"

enum {
    BW_TREE_DEPTH = 12,         ///< deepest nesting a scheme needs is 7
    BW_TREE_NODES = 8192,       ///< values in one document
    BW_TREE_TEXT = 192 * 1024,  ///< bytes of all keys and strings; the fullest scheme has 140 kB
    BW_TREE_KEYS = 64,          ///< members of one object; a scheme needs at most 24
    BW_TREE_KEY_BYTES = 63,     ///< longest key
    BW_DOCUMENT_BYTES = 1 << 20 ///< largest file accepted
};

typedef enum bw_node_kind {
    BW_NODE_NULL,
    BW_NODE_BOOL,
    BW_NODE_NUMBER,
    BW_NODE_STRING,
    BW_NODE_ARRAY,
    BW_NODE_OBJECT
} bw_node_kind;

/// One value. Children are linked by index, in document order; 0 is "none" (node 0 is the root).
typedef struct bw_tree_node {
    int32_t kind;   ///< bw_node_kind
    int32_t parent; ///< -1 for the root
    int32_t first, next;
    int32_t count;           ///< children
    int32_t key, key_length; ///< offset into text, or -1 when the parent is no object
    int32_t text, text_length;
    double number; ///< numbers; booleans as 0 or 1
} bw_tree_node;

typedef struct bw_tree {
    int32_t node_count, text_used;
    int32_t depth;
    int32_t open[BW_TREE_DEPTH], last[BW_TREE_DEPTH];
    int32_t key, key_length; ///< the key waiting for its value, or -1
    bw_error error;          ///< first refusal; later events are ignored
    bw_tree_node nodes[BW_TREE_NODES];
    char text[BW_TREE_TEXT];
} bw_tree;

#endif
