/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "serve/form.h"

#include "scheme/path.h"

bool bw_form_refuse(const bw_form *form, const char *key, const char *rest) {
    *form->error = (bw_error){.status = BW_BAD_INPUT};
    bw_text t = bw_text_in(form->error->message, sizeof form->error->message);
    bw_put_char(&t, '"');
    bw_put(&t, key);
    bw_put(&t, "\" ");
    bw_put(&t, rest);
    return false;
}

static bool refuse_object(const bw_form *form, const char *what, const char *rest) {
    *form->error = (bw_error){.status = BW_BAD_INPUT};
    bw_text t = bw_text_in(form->error->message, sizeof form->error->message);
    bw_put(&t, what);
    bw_put(&t, rest);
    return false;
}

/// Whether it is an object without a key that is not in the table.
static bool keys_known(const bw_form *form, const bw_form_table *table) {
    const bw_tree_node *nodes = form->tree->nodes;
    if (nodes[form->at].kind != BW_NODE_OBJECT)
        return refuse_object(form, table->what, " is an object in braces");
    for (int32_t i = nodes[form->at].first; i; i = nodes[i].next) {
        bool known = false;
        for (int k = 0; k < table->count && !known; k++) {
            const char *key = table->members[k].key;
            known = bw_node_key_is(form->tree, i, key, bw_text_length(key));
        }
        if (!known) return refuse_object(form, table->what, " has a key that is not known here");
    }
    return true;
}

/// The member's node; 0 when it is not there or null.
static int32_t member(const bw_form *form, const char *key) {
    const int32_t node = bw_node_member(form->tree, form->at, key);
    return node && form->tree->nodes[node].kind == BW_NODE_NULL ? 0 : node;
}

bool bw_form_has(const bw_form *form, const char *key) {
    return member(form, key) != 0;
}

bool bw_form_text(const bw_form *form, const char *key, char *out, size_t room) {
    const int32_t node = member(form, key);
    if (!node) return true;
    const bw_tree_node *n = &form->tree->nodes[node];
    if (n->kind != BW_NODE_STRING) return bw_form_refuse(form, key, "is a text in quotes");
    if ((size_t)n->text_length >= room) return bw_form_refuse(form, key, "is too long");
    const char *text = form->tree->text + n->text;
    for (int32_t i = 0; i < n->text_length; i++) {
        if (bw_is_control(text, (size_t)i, (size_t)n->text_length))
            return bw_form_refuse(form, key, "is one line of plain text");
    }
    bw_text t = bw_text_in(out, room);
    bw_put_n(&t, text, (size_t)n->text_length);
    return true;
}

static bool form_number(const bw_form *form, const char *key, double low, double high,
                        double *out) {
    const int32_t node = member(form, key);
    if (!node) return true;
    const bw_tree_node *n = &form->tree->nodes[node];
    if (n->kind != BW_NODE_NUMBER) return bw_form_refuse(form, key, "is a number");
    if (n->number >= low && n->number <= high) {
        *out = n->number;
        return true;
    }
    char room[80];
    bw_text t = bw_text_in(room, sizeof room);
    bw_put(&t, "is from ");
    bw_put_number(&t, low, 1);
    bw_put(&t, " to ");
    bw_put_number(&t, high, 1);
    return bw_form_refuse(form, key, room);
}

bool bw_form_whole(const bw_form *form, const char *key, int low, int high, int *out) {
    double number = *out;
    if (!form_number(form, key, low, high, &number)) return false;
    if (number != (double)(int)number) return bw_form_refuse(form, key, "is a whole number");
    *out = (int)number;
    return true;
}

static bool take_flag(const bw_form *form, const char *key, bool *out) {
    const int32_t node = member(form, key);
    if (!node) return true;
    if (form->tree->nodes[node].kind != BW_NODE_BOOL)
        return bw_form_refuse(form, key, "is true or false");
    *out = form->tree->nodes[node].number != 0;
    return true;
}

bool bw_form_list(const bw_form *form, const char *key, int most, int32_t *out) {
    *out = member(form, key);
    if (!*out) return true;
    if (form->tree->nodes[*out].kind != BW_NODE_ARRAY)
        return bw_form_refuse(form, key, "is a list in brackets");
    if (form->tree->nodes[*out].count > most)
        return bw_form_refuse(form, key, "has too many entries");
    return true;
}

static bool take_row(const bw_form *form, const bw_form_member *m, int64_t *out) {
    int number = (int)*out;
    if (!bw_form_whole(form, m->key, (int)m->low, (int)m->high, &number)) return false;
    *out = number;
    return true;
}

static bool take_member(const bw_form *form, const bw_form_member *m, void *out) {
    void *at = (char *)out + m->offset;
    if (m->needed && !bw_form_has(form, m->key)) return bw_form_refuse(form, m->key, "is missing");
    if (m->take) return m->take(form, m, out);
    switch (m->kind) {
    case BW_MEMBER_TEXT: return bw_form_text(form, m->key, at, (size_t)m->high + 1);
    case BW_MEMBER_WHOLE: return bw_form_whole(form, m->key, (int)m->low, (int)m->high, at);
    case BW_MEMBER_ROW: return take_row(form, m, at);
    case BW_MEMBER_NUMBER: return form_number(form, m->key, m->low, m->high, at);
    case BW_MEMBER_FLAG: return take_flag(form, m->key, at);
    case BW_MEMBER_LIST:
    case BW_MEMBER_OBJECT:
    case BW_MEMBER_TOLD: break; // the first two have a `take`
    }
    return true;
}

bool bw_form_read(const bw_form *form, const bw_form_table *table, void *out) {
    if (!keys_known(form, table)) return false;
    for (int i = 0; i < table->count; i++) {
        if (!take_member(form, &table->members[i], out)) return false;
    }
    return true;
}
