/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "scheme/path.h"

static bool same_bytes(const char *a, const char *b, size_t length) {
    for (size_t i = 0; i < length; i++) {
        if (a[i] != b[i]) return false;
    }
    return true;
}

bool bw_node_key_is(const bw_tree *tree, int32_t node, const char *key, size_t length) {
    const bw_tree_node *n = &tree->nodes[node];
    return n->key >= 0 && (size_t)n->key_length == length &&
           same_bytes(tree->text + n->key, key, length);
}

bool bw_node_text_is(const bw_tree *tree, int32_t node, const char *word) {
    const bw_tree_node *n = &tree->nodes[node];
    size_t length = bw_text_length(word);
    return n->kind == BW_NODE_STRING && (size_t)n->text_length == length &&
           same_bytes(tree->text + n->text, word, length);
}

int32_t bw_node_member(const bw_tree *tree, int32_t object, const char *key) {
    if (tree->nodes[object].kind != BW_NODE_OBJECT) return 0;
    size_t length = bw_text_length(key);
    for (int32_t i = tree->nodes[object].first; i != 0; i = tree->nodes[i].next) {
        if (bw_node_key_is(tree, i, key, length)) return i;
    }
    return 0;
}

bool bw_is_control(const char *text, size_t i, size_t length) {
    unsigned char c = (unsigned char)text[i];
    if (c < 0x20 || c == 0x7f) return true;
    return c == 0xc2 && i + 1 < length && (unsigned char)text[i + 1] < 0xa0;
}

void bw_put_pointer_key(bw_text *out, const char *key, size_t length) {
    bw_put_char(out, '/');
    size_t from = 0;
    for (size_t i = 0; i < length; i++) {
        if (key[i] != '~' && key[i] != '/') continue;
        bw_put_n(out, key + from, i - from);
        bw_put(out, key[i] == '~' ? "~0" : "~1");
        from = i + 1;
    }
    bw_put_n(out, key + from, length - from);
}

void bw_put_pointer(const bw_tree *tree, int32_t node, bw_text *out) {
    int32_t way[BW_TREE_DEPTH + 1];
    int steps = 0;
    for (int32_t i = node; i >= 0 && tree->nodes[i].parent >= 0; i = tree->nodes[i].parent) {
        way[steps++] = i;
    }
    while (steps > 0) {
        int32_t i = way[--steps];
        const bw_tree_node *n = &tree->nodes[i];
        if (n->key >= 0) {
            bw_put_pointer_key(out, tree->text + n->key, (size_t)n->key_length);
            continue;
        }
        int32_t index = 0;
        for (int32_t k = tree->nodes[n->parent].first; k != i; k = tree->nodes[k].next)
            index++;
        bw_put_char(out, '/');
        bw_put_int(out, index);
    }
}
