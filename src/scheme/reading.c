/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "scheme/reading.h"

static const char *const kind_names[] = {"null",   "true or false", "a number",
                                         "a text", "a list",        "an object"};

static bw_text begin(bw_reading *r, int32_t node) {
    r->error->status = BW_BAD_INPUT;
    bw_text pointer = bw_text_in(r->error->pointer, sizeof r->error->pointer);
    bw_put_pointer(r->tree, node, &pointer);
    return bw_text_in(r->error->message, sizeof r->error->message);
}

bool bw_fail(bw_reading *r, int32_t node, const char *a, const char *b, const char *c) {
    bw_text t = begin(r, node);
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
    bw_text t = begin(r, node);
    bw_put(&t, a);
    bw_put_number(&t, n, 4);
    bw_put(&t, c);
    return false;
}

static bool wrong_kind(bw_reading *r, int32_t node, const char *wanted) {
    bw_text t = begin(r, node);
    bw_put(&t, "this is ");
    bw_put(&t, kind_names[r->tree->nodes[node].kind]);
    bw_put(&t, "; it must be ");
    bw_put(&t, wanted);
    return false;
}

/// The nearest word, or NULL when none is near enough to be meant.
static const char *nearest(bw_words words, const char *word) {
    const char *best = NULL;
    int best_d = 3;
    for (int i = 0; i < words.count; i++) {
        int d = bw_edit_distance(word, words.word[i], 2);
        if (d < best_d) {
            best_d = d;
            best = words.word[i];
        }
    }
    return best;
}

/// A short printable copy of text from the document, for a sentence about it.
static void excerpt(const char *text, int32_t length, char *to, size_t room) {
    bw_text t = bw_text_in(to, room);
    bw_put_n(&t, text, (size_t)length);
}

static bool unknown_word(bw_reading *r, int32_t node, const char *what, const char *word,
                         bw_words words) {
    const char *near = nearest(words, word);
    bw_text t = begin(r, node);
    bw_put(&t, "there is no ");
    bw_put(&t, what);
    bw_put(&t, " \"");
    bw_put(&t, word);
    bw_put(&t, "\"; ");
    if (near) {
        bw_put(&t, "did you mean \"");
        bw_put(&t, near);
        bw_put(&t, "\"?");
        return false;
    }
    bw_put(&t, words.count > 1 ? "it is one of " : "it is ");
    for (int i = 0; i < words.count; i++) {
        if (i > 0) bw_put(&t, ", ");
        bw_put(&t, words.word[i]);
    }
    return false;
}

bool bw_take_object(bw_reading *r, int32_t node, const char *what, bw_words keys) {
    if (r->tree->nodes[node].kind != BW_NODE_OBJECT) return wrong_kind(r, node, what);
    for (int32_t i = bw_first(r, node); i; i = bw_next(r, i)) {
        const bw_node *n = &r->tree->nodes[i];
        const char *key = r->tree->text + n->key;
        bool known = false;
        for (int k = 0; k < keys.count && !known; k++) {
            known = bw_node_key_is(r->tree, i, keys.word[k], bw_text_length(keys.word[k]));
        }
        if (known) continue;
        char word[48];
        excerpt(key, n->key_length, word, sizeof word);
        return unknown_word(r, i, "key", word, keys);
    }
    return true;
}

bool bw_take_array(bw_reading *r, int32_t node, const char *what, int low, int high) {
    if (r->tree->nodes[node].kind != BW_NODE_ARRAY) return wrong_kind(r, node, what);
    int n = bw_children(r, node);
    if (n >= low && n <= high) return true;
    bw_text t = begin(r, node);
    bw_put(&t, "this list has ");
    bw_put_int(&t, n);
    bw_put(&t, n == 1 ? " entry; it must have " : " entries; it must have ");
    if (low == high) {
        bw_put(&t, "exactly ");
    } else {
        bw_put_int(&t, low);
        bw_put(&t, " to ");
    }
    bw_put_int(&t, high);
    return false;
}

bool bw_take_member(bw_reading *r, int32_t object, const char *key, int32_t *member) {
    *member = bw_node_member(r->tree, object, key);
    return *member || bw_fail(r, object, "the key ", key, " is missing here");
}

static bool take_string(bw_reading *r, int32_t node, char *to, size_t room, bool line_ends) {
    const bw_node *n = &r->tree->nodes[node];
    if (n->kind != BW_NODE_STRING) return wrong_kind(r, node, "a text in quotes");
    if ((size_t)n->text_length >= room) {
        return bw_fail_number(r, node, "this text is too long; it may have ", (double)room - 1,
                              " bytes");
    }
    const char *text = r->tree->text + n->text;
    for (int32_t i = 0; i < n->text_length; i++) {
        unsigned char c = (unsigned char)text[i];
        if (c >= 0x20 && c != 0x7f) continue;
        if (line_ends && c == '\n') continue;
        return bw_fail(r, node, "this text has a control character in it; write it plain", NULL,
                       "");
    }
    excerpt(text, n->text_length, to, room);
    return true;
}

bool bw_take_text(bw_reading *r, int32_t node, char *to, size_t room, bool may_be_empty) {
    if (!take_string(r, node, to, room, false)) return false;
    return may_be_empty || to[0] || bw_fail(r, node, "this text is empty; say something", NULL, "");
}

bool bw_take_prose(bw_reading *r, int32_t node, char *to, size_t room) {
    return take_string(r, node, to, room, true);
}

static bool small_letter(char c) {
    return c >= 'a' && c <= 'z';
}
static bool large_letter(char c) {
    return c >= 'A' && c <= 'Z';
}
static bool digit(char c) {
    return c >= '0' && c <= '9';
}

bool bw_take_id(bw_reading *r, int32_t node, char *to) {
    if (!take_string(r, node, to, BW_ID_SIZE, false)) return false;
    bool fine = to[0] != '\0';
    for (const char *c = to; *c; c++)
        fine = fine && (small_letter(*c) || digit(*c) || *c == '-');
    return fine ||
           bw_fail(r, node, "the id ", to, " must be 1 to 15 small letters, digits and hyphens");
}

bool bw_take_code(bw_reading *r, int32_t node, char *to) {
    char code[BW_ID_SIZE];
    if (!take_string(r, node, code, sizeof code, false)) return false;
    bool fine = code[0] && bw_text_length(code) <= 3;
    for (const char *c = code; *c; c++) {
        fine = fine && (small_letter(*c) || large_letter(*c) || digit(*c));
    }
    if (!fine) return bw_fail(r, node, "the spot's id ", code, " must be 1 to 3 letters or digits");
    return bw_copy(to, BW_ID_SIZE, code);
}

bool bw_take_number(bw_reading *r, int32_t node, double low, double high, const char *unit,
                    double *out) {
    const bw_node *n = &r->tree->nodes[node];
    if (n->kind != BW_NODE_NUMBER) return wrong_kind(r, node, "a number");
    if (n->number >= low && n->number <= high) {
        *out = bw_round_to(n->number, 1e4);
        return true;
    }
    bw_text t = begin(r, node);
    // A number from the browser may be anything a double can be; only tame ones are repeated.
    if (n->number > -1e6 && n->number < 1e6) {
        bw_put_number(&t, n->number, 4);
    } else {
        bw_put(&t, "this number");
    }
    bw_put(&t, " is out of range; it must be from ");
    bw_put_number(&t, low, 2);
    bw_put(&t, " to ");
    bw_put_number(&t, high, 2);
    bw_put(&t, unit);
    return false;
}

bool bw_take_whole(bw_reading *r, int32_t node, int low, int high, int *out) {
    double n = 0;
    if (!bw_take_number(r, node, low, high, "", &n)) return false;
    if (n != bw_floor(n)) return bw_fail_number(r, node, "", n, " is not a whole number");
    *out = (int)n;
    return true;
}

bool bw_take_flag(bw_reading *r, int32_t node, bool *out) {
    if (r->tree->nodes[node].kind != BW_NODE_BOOL) return wrong_kind(r, node, "true or false");
    *out = r->tree->nodes[node].number != 0;
    return true;
}

static const char *unit_word(const bw_reading *r) {
    return r->scheme->units == BW_METRES ? " m" : " yd";
}

bool bw_take_length(bw_reading *r, int32_t node, double low_yd, double high_yd, double *out) {
    double scale = BW_METRES_PER_YARD / r->per, n = 0;
    if (!bw_take_number(r, node, low_yd * scale, high_yd * scale, unit_word(r), &n)) return false;
    *out = n * r->per;
    return true;
}

bool bw_take_place(bw_reading *r, int32_t node, bw_vec *out) {
    const double far = 1000;
    if (!bw_take_array(r, node, "a place such as [3.5, 2.5]", 2, 2)) return false;
    int32_t x = bw_first(r, node), y = bw_next(r, x);
    double px = 0, py = 0;
    if (!bw_take_number(r, x, -far, far, unit_word(r), &px)) return false;
    if (!bw_take_number(r, y, -far, far, unit_word(r), &py)) return false;
    *out = bw_v(px * r->per, py * r->per);
    if (bw_field_contains(r->field, *out)) return true;

    bw_text t = begin(r, node);
    bw_put(&t, "this place is off the field; x must be from ");
    bw_put_number(&t, -r->field->width / 2 / r->per, 1);
    bw_put(&t, " to ");
    bw_put_number(&t, r->field->width / 2 / r->per, 1);
    bw_put(&t, " and y from ");
    bw_put_number(&t, -r->field->end_line / r->per, 1);
    bw_put(&t, " to ");
    bw_put_number(&t, r->field->midline / r->per, 1);
    bw_put(&t, unit_word(r));
    return false;
}

bool bw_take_choice(bw_reading *r, int32_t node, const char *what, bw_words words, int *index) {
    if (r->tree->nodes[node].kind != BW_NODE_STRING) return wrong_kind(r, node, "a text in quotes");
    for (int i = 0; i < words.count; i++) {
        if (bw_node_text_is(r->tree, node, words.word[i])) {
            *index = i;
            return true;
        }
    }
    char word[48];
    excerpt(r->tree->text + r->tree->nodes[node].text, r->tree->nodes[node].text_length, word,
            sizeof word);
    return unknown_word(r, node, what, word, words);
}

bool bw_take_landmark(bw_reading *r, int32_t node, int *index) {
    const char *ids[BW_MAX_LANDMARKS];
    for (int i = 0; i < r->scheme->landmark_count; i++)
        ids[i] = r->scheme->landmarks[i].id;
    return bw_take_choice(r, node, "landmark", (bw_words){ids, r->scheme->landmark_count}, index);
}
