/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The reader's sentences: what is wrong, and what would be right.
#include "scheme/reading.h"

enum { EXCERPT = 40, LIST = 200 }; ///< bytes repeated of a text; bytes of a list of words

bw_text bw_begin_error(bw_reading *r, int32_t node) {
    bw_error *error = r->count < r->room ? &r->errors[r->count] : &r->spare;
    r->count++;
    *error = (bw_error){.status = BW_BAD_INPUT};
    bw_text pointer = bw_text_in(error->pointer, sizeof error->pointer);
    bw_put_pointer(r->tree, node, &pointer);
    return bw_text_in(error->message, sizeof error->message);
}

/// Repeats a text of the document in quotes, cut short when it is long.
static void put_excerpt(bw_text *out, const char *text, int32_t length) {
    char room[EXCERPT];
    bw_text kept = bw_text_in(room, sizeof room);
    bw_put_n(&kept, text, (size_t)length);
    bw_put_char(out, '"');
    for (size_t i = 0; i < kept.used; i++) {
        const bool control = bw_is_control(room, i, kept.used);
        bw_put_char(out, control ? '?' : room[i]);
        if (control && (unsigned char)room[i] == 0xc2) i++;
    }
    bw_put(out, kept.full ? "...\"" : "\"");
}

void bw_put_subject(const bw_reading *r, int32_t node, bw_text *out) {
    const bw_tree_node *n = &r->tree->nodes[node];
    if (n->parent < 0) {
        bw_put(out, "the document");
    } else if (n->key >= 0) {
        put_excerpt(out, r->tree->text + n->key, n->key_length);
    } else {
        int32_t entry = 1;
        for (int32_t i = r->tree->nodes[n->parent].first; i != node; i = r->tree->nodes[i].next)
            entry++;
        bw_put(out, "entry ");
        bw_put_int(out, entry);
        bw_put(out, " of ");
        bw_put_subject(r, n->parent, out);
    }
}

bool bw_fail(bw_reading *r, int32_t node, const char *a, const char *b, const char *c) {
    bw_text t = bw_begin_error(r, node);
    bw_put(&t, a);
    if (b) {
        bw_put_char(&t, '"');
        bw_put(&t, b);
        bw_put_char(&t, '"');
    }
    bw_put(&t, c);
    return false;
}

bool bw_fail_number(bw_reading *r, int32_t node, const char *a, double n, const char *c) {
    bw_text t = bw_begin_error(r, node);
    bw_put_subject(r, node, &t);
    bw_put(&t, a);
    bw_put_number(&t, n, 4);
    bw_put(&t, c);
    return false;
}

bool bw_fail_kind(bw_reading *r, int32_t node, const char *wanted) {
    static const char *const kinds[] = {"null",   "true or false", "a number",
                                        "a text", "a list",        "an object"};
    bw_text t = bw_begin_error(r, node);
    bw_put_subject(r, node, &t);
    bw_put(&t, " is ");
    bw_put(&t, kinds[r->tree->nodes[node].kind]);
    bw_put(&t, "; it must be ");
    bw_put(&t, wanted);
    return false;
}

static bool begins(const char *word, const char *with) {
    while (*with && *word == *with) {
        word++;
        with++;
    }
    return !*with;
}

/// The word that was meant, or NULL when none is near: at most one change in three letters, two at
/// most; or its beginning.
static const char *nearest(bw_words words, const char *given) {
    size_t length = bw_text_length(given);
    int best = -1, best_d = length < 6 ? 2 : 3;
    if (length < 2) return NULL;
    for (int i = 0; i < words.count; i++) {
        int d = bw_edit_distance(given, words.word[i], 2);
        if (d >= best_d) continue;
        best_d = d;
        best = i;
    }
    for (int i = 0; i < words.count && best < 0 && length >= 3; i++) {
        if (begins(words.word[i], given)) best = i;
    }
    return best < 0 ? NULL : words.word[best];
}

static bool listed_before(bw_words words, int index) {
    for (int i = 0; i < index; i++) {
        if (bw_same(words.word[i], words.word[index])) return true;
    }
    return false;
}

static void put_list(bw_text *out, bw_words words) {
    bw_put(out, words.count > 1 ? "; it is one of " : "; there is only ");
    for (int i = 0; i < words.count; i++) {
        if (listed_before(words, i)) continue;
        if (i > 0) bw_put(out, ", ");
        if (out->used > LIST) {
            bw_put(out, "...");
            return;
        }
        bw_put(out, words.word[i]);
    }
}

bool bw_fail_word(bw_reading *r, int32_t node, const char *before, const char *text, int32_t length,
                  bw_words words) {
    char given[EXCERPT];
    bw_text kept = bw_text_in(given, sizeof given);
    bw_put_n(&kept, text, (size_t)length);
    const char *near = kept.full ? NULL : nearest(words, given);
    bw_text t = bw_begin_error(r, node);
    bw_put(&t, before);
    bw_put_char(&t, ' ');
    put_excerpt(&t, text, length);
    if (near) {
        bw_put(&t, "; did you mean \"");
        bw_put(&t, near);
        bw_put(&t, "\"?");
    } else {
        put_list(&t, words);
    }
    return false;
}
