/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "scheme/tree_build.h"
#include "core/text.h"
#include "scheme/path.h"

void bw_tree_begin(bw_tree *tree) {
    tree->node_count = 0;
    tree->text_used = 0;
    tree->depth = 0;
    tree->key = -1;
    tree->key_length = 0;
    tree->error = (bw_error){.status = BW_OK};
}

static bool refused(const bw_tree *tree) {
    return tree->error.status != BW_OK;
}

/// The innermost open container, or -1.
static int32_t innermost(const bw_tree *tree) {
    return tree->depth > 0 ? tree->open[tree->depth - 1] : -1;
}

/// Keeps the first refusal. Its place is the value that was about to come, or the one open around it.
static void refuse(bw_tree *tree, bw_status status, const char *message) {
    if (refused(tree)) return;
    tree->error.status = status;
    bw_copy(tree->error.message, sizeof tree->error.message, message);
    bw_text pointer = bw_text_in(tree->error.pointer, sizeof tree->error.pointer);
    const int32_t parent = innermost(tree);
    if (parent < 0) return;
    bw_put_pointer(tree, parent, &pointer);
    if (tree->key >= 0) {
        bw_put_pointer_key(&pointer, tree->text + tree->key, (size_t)tree->key_length);
    } else if (tree->nodes[parent].kind == BW_NODE_ARRAY) {
        bw_put_char(&pointer, '/');
        bw_put_int(&pointer, tree->nodes[parent].count);
    }
}

/// Copies text into the tree; -1 and a refusal when it does not fit or is not fit to keep.
static int32_t keep_text(bw_tree *tree, const char *text, size_t length) {
    if (length > (size_t)(BW_TREE_TEXT - tree->text_used)) {
        refuse(tree, BW_LIMIT, "there is more text than a scheme can hold (192 kB)");
        return -1;
    }
    const int32_t at = tree->text_used;
    for (size_t i = 0; i < length; i++) {
        if (text[i] == '\0') {
            refuse(tree, BW_BAD_INPUT, "a text has a NUL character in it; leave it out");
            return -1;
        }
        tree->text[at + (int32_t)i] = text[i];
    }
    tree->text_used += (int32_t)length;
    return at;
}

/// Adds a value under the innermost open container. -1 when refused.
static int32_t add(bw_tree *tree, bw_node_kind kind) {
    if (refused(tree)) return -1;
    if (tree->node_count == BW_TREE_NODES) {
        refuse(tree, BW_LIMIT, "there are more values than a scheme can hold (8192)");
        return -1;
    }
    if (tree->depth == 0 && tree->node_count > 0) {
        refuse(tree, BW_BAD_INPUT, "something follows the document; a file holds one scheme");
        return -1;
    }
    const int32_t index = tree->node_count++;
    const int32_t parent = innermost(tree);
    tree->nodes[index] = (bw_tree_node){
        .kind = kind, .parent = parent, .key = tree->key, .key_length = tree->key_length};
    tree->key = -1;
    tree->key_length = 0;
    if (parent < 0) return index;
    BW_ASSERT((tree->nodes[parent].kind == BW_NODE_OBJECT) == (tree->nodes[index].key >= 0));
    if (tree->nodes[parent].count++ == 0) {
        tree->nodes[parent].first = index;
    } else {
        tree->nodes[tree->last[tree->depth - 1]].next = index;
    }
    tree->last[tree->depth - 1] = index;
    return index;
}

static void open_container(bw_tree *tree, bw_node_kind kind) {
    if (tree->depth == BW_TREE_DEPTH) {
        refuse(tree, BW_LIMIT, "values are nested more than 12 deep; a scheme needs at most 7");
    }
    const int32_t index = add(tree, kind);
    if (index < 0) return;
    tree->open[tree->depth] = index;
    tree->last[tree->depth] = 0;
    tree->depth++;
}

void bw_tree_object(bw_tree *tree) {
    open_container(tree, BW_NODE_OBJECT);
}

void bw_tree_array(bw_tree *tree) {
    open_container(tree, BW_NODE_ARRAY);
}

void bw_tree_end(bw_tree *tree) {
    if (refused(tree)) return;
    BW_ASSERT(tree->depth > 0 && tree->key < 0);
    tree->depth--;
}

/// True when the object has the key already; its place is then the error's.
static bool said_before(bw_tree *tree, int32_t object, const char *text, size_t length) {
    for (int32_t i = tree->nodes[object].first; i != 0; i = tree->nodes[i].next) {
        if (!bw_node_key_is(tree, i, text, length)) continue;
        char message[BW_MESSAGE_SIZE];
        bw_text t = bw_text_in(message, sizeof message);
        bw_put(&t, "the key \"");
        bw_put_n(&t, text, length);
        bw_put(&t, "\" is said twice in one object; keep one");
        refuse(tree, BW_BAD_INPUT, message);
        bw_text pointer = bw_text_in(tree->error.pointer, sizeof tree->error.pointer);
        bw_put_pointer(tree, i, &pointer);
        return true;
    }
    return false;
}

void bw_tree_key(bw_tree *tree, const char *text, size_t length) {
    if (refused(tree)) return;
    const int32_t object = innermost(tree);
    BW_ASSERT(object >= 0 && tree->nodes[object].kind == BW_NODE_OBJECT && tree->key < 0);
    if (tree->nodes[object].count == BW_TREE_KEYS) {
        refuse(tree, BW_LIMIT, "an object has more than 64 keys; a scheme needs at most 24");
        return;
    }
    if (length > BW_TREE_KEY_BYTES) {
        refuse(tree, BW_LIMIT, "a key is longer than 63 bytes; no key of a scheme is");
        return;
    }
    for (size_t i = 0; i < length; i++) {
        if (!bw_is_control(text, i, length)) continue;
        refuse(tree, BW_BAD_INPUT, "a key has a control character in it; no key of a scheme has");
        return;
    }
    if (said_before(tree, object, text, length)) return;
    tree->key = keep_text(tree, text, length);
    tree->key_length = tree->key < 0 ? 0 : (int32_t)length;
}

void bw_tree_string(bw_tree *tree, const char *text, size_t length) {
    if (refused(tree)) return;
    const int32_t at = keep_text(tree, text, length);
    const int32_t index = at < 0 ? -1 : add(tree, BW_NODE_STRING);
    if (index < 0) return;
    tree->nodes[index].text = at;
    tree->nodes[index].text_length = (int32_t)length;
}

void bw_tree_number(bw_tree *tree, double value) {
    if (!(value - value == 0)) {
        refuse(tree, BW_BAD_INPUT, "a number is not finite; write it out in digits");
    }
    const int32_t index = add(tree, BW_NODE_NUMBER);
    if (index >= 0) tree->nodes[index].number = value;
}

void bw_tree_bool(bw_tree *tree, bool value) {
    const int32_t index = add(tree, BW_NODE_BOOL);
    if (index >= 0) tree->nodes[index].number = value ? 1 : 0;
}

void bw_tree_null(bw_tree *tree) {
    add(tree, BW_NODE_NULL);
}

void bw_tree_feed(bw_tree *tree, int event, const char *text, size_t room, double value) {
    const bool words = event == ':' || event == '"';
    BW_ASSERT(!words || (value >= 0 && value <= (double)room));
    const size_t length = words ? (size_t)value : 0;
    switch (event) {
    case 0: bw_tree_begin(tree); break;
    case ':': bw_tree_key(tree, text, length); break;
    case '"': bw_tree_string(tree, text, length); break;
    case '0': bw_tree_number(tree, value); break;
    case 't':
    case 'f': bw_tree_bool(tree, event == 't'); break;
    case 'n': bw_tree_null(tree); break;
    case '{': bw_tree_object(tree); break;
    case '[': bw_tree_array(tree); break;
    default: bw_tree_end(tree);
    }
}

bool bw_tree_finish(bw_tree *tree) {
    if (tree->node_count == 0 || tree->depth > 0) {
        refuse(tree, BW_BAD_INPUT, "the document ends before it is whole");
    }
    return !refused(tree);
}
