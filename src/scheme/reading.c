/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "scheme/reading.h"

/// Places a number of a file keeps: a ten-thousandth of a yard is less than a tenth of a millimetre.
static const double places = 1e4;

/// How far off the field a place may be, m: what rounding in the file's unit can do to a place that
/// is on a line. It is brought back onto the line.
static const double on_line = 1e-4;

/// Numbers beyond this are not repeated in a sentence.
static const double tame = 1e6;

bool bw_take_object(bw_reading *r, int32_t node, bw_noun noun) {
    const bw_keys *keys = bw_keys_of(noun);
    const char *words[BW_MAX_KEYS];
    char wanted[64], before[64];
    for (int k = 0; k < keys->count; k++)
        words[k] = keys->key[k].word;
    bw_text t = bw_text_in(wanted, sizeof wanted);
    bw_put(&t, keys->article);
    bw_put(&t, " in braces, such as {\"");
    bw_put(&t, words[0]);
    bw_put(&t, "\": ...}");
    t = bw_text_in(before, sizeof before);
    bw_put(&t, keys->article);
    bw_put(&t, " has no key");
    const int known = r->count;
    if (!bw_take_map(r, node, wanted, before, (bw_words){words, keys->count})) return false;
    for (int k = 0; k < keys->count; k++) {
        if (!keys->key[k].required || bw_member(r, node, words[k])) continue;
        if (r->count > known) return false; // an unknown key is most likely this one, mistyped
        t = bw_text_in(before, sizeof before);
        bw_put(&t, keys->article);
        bw_put(&t, " needs the key ");
        return bw_fail(r, node, before, words[k], ", which is missing here");
    }
    return true;
}

bool bw_take_map(bw_reading *r, int32_t node, const char *wanted, const char *before,
                 bw_words keys) {
    if (r->tree->nodes[node].kind != BW_NODE_OBJECT) return bw_fail_kind(r, node, wanted);
    for (int32_t i = bw_first(r, node); i; i = bw_next(r, i)) {
        bool known = false;
        for (int k = 0; k < keys.count && !known; k++)
            known = bw_node_key_is(r->tree, i, keys.word[k], bw_text_length(keys.word[k]));
        if (known || r->unsure) continue;
        const bw_tree_node *n = &r->tree->nodes[i];
        bw_fail_word(r, i, before, r->tree->text + n->key, n->key_length, keys);
    }
    return true;
}

bool bw_take_array(bw_reading *r, int32_t node, const char *wanted, int low, int high) {
    if (r->tree->nodes[node].kind != BW_NODE_ARRAY) return bw_fail_kind(r, node, wanted);
    int n = r->tree->nodes[node].count;
    if (n >= low && n <= high) return true;
    bw_text t = bw_begin_error(r, node);
    bw_put_subject(r, node, &t);
    bw_put(&t, " has ");
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

static bool take_string(bw_reading *r, int32_t node, char *to, size_t room, bool line_ends) {
    const bw_tree_node *n = &r->tree->nodes[node];
    if (n->kind != BW_NODE_STRING) return bw_fail_kind(r, node, "a text in quotes");
    const char *text = r->tree->text + n->text;
    for (int32_t i = 0; i < n->text_length; i++) {
        if (!bw_is_control(text, (size_t)i, (size_t)n->text_length)) continue;
        if (line_ends && text[i] == '\n') continue;
        bw_text t = bw_begin_error(r, node);
        bw_put_subject(r, node, &t);
        bw_put(&t, line_ends ? " has a control character in it; only line ends may stay"
                             : " has a line end or control character in it; write it on one line");
        return false;
    }
    if ((size_t)n->text_length >= room) {
        bw_text t = bw_begin_error(r, node);
        bw_put_subject(r, node, &t);
        bw_put(&t, " is ");
        bw_put_int(&t, n->text_length);
        bw_put(&t, " bytes long; at most ");
        bw_put_int(&t, (long long)room - 1);
        bw_put(&t, " fit");
        return false;
    }
    bw_text out = bw_text_in(to, room);
    bw_put_n(&out, text, (size_t)n->text_length);
    return true;
}

bool bw_take_text(bw_reading *r, int32_t node, char *to, size_t room) {
    return take_string(r, node, to, room, false);
}

bool bw_take_name(bw_reading *r, int32_t node, char *to, size_t room) {
    if (!take_string(r, node, to, room, false)) return false;
    if (to[0]) return true;
    bw_text t = bw_begin_error(r, node);
    bw_put_subject(r, node, &t);
    bw_put(&t, " is empty; it must say something");
    return false;
}

bool bw_take_prose(bw_reading *r, int32_t node, char *to, size_t room) {
    return take_string(r, node, to, room, true);
}

static bool small_or_digit(char c) {
    return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
}
static bool large(char c) {
    return c >= 'A' && c <= 'Z';
}

bool bw_take_id(bw_reading *r, int32_t node, char *to) {
    char id[BW_NAME_SIZE];
    if (!bw_take_name(r, node, id, sizeof id)) return false;
    bool fine = bw_copy(to, BW_ID_SIZE, id);
    for (const char *c = id; *c; c++)
        fine = fine && (small_or_digit(*c) || *c == '-');
    return fine || bw_fail(r, node, "the id ", id,
                           " must be 1 to 15 small letters, digits or hyphens, such as \"top\"");
}

bool bw_take_code(bw_reading *r, int32_t node, char *to) {
    char code[BW_NAME_SIZE];
    if (!bw_take_name(r, node, code, sizeof code)) return false;
    bool fine = bw_text_length(code) <= 3;
    for (const char *c = code; *c; c++)
        fine = fine && (small_or_digit(*c) || large(*c));
    if (!fine) {
        return bw_fail(r, node, "the spot's id ", code,
                       " must be 1 to 3 letters or digits, such as \"LL\"");
    }
    return bw_copy(to, BW_ID_SIZE, code);
}

bool bw_take_number(bw_reading *r, int32_t node, bw_range range, double *out) {
    const bw_tree_node *n = &r->tree->nodes[node];
    if (n->kind != BW_NODE_NUMBER) {
        char wanted[32];
        bw_text t = bw_text_in(wanted, sizeof wanted);
        bw_put(&t, range.unit[0] ? "a number of " : "a number");
        bw_put(&t, range.unit);
        return bw_fail_kind(r, node, wanted);
    }
    double x = bw_round_to(n->number, places) + 0.0; // -0 becomes 0
    if (x >= range.low && x <= range.high) {
        *out = x;
        return true;
    }
    bw_text t = bw_begin_error(r, node);
    bw_put_subject(r, node, &t);
    if (bw_abs(n->number) < tame) {
        bw_put(&t, " is ");
        bw_put_number(&t, n->number, 4);
    } else {
        bw_put(&t, " is far too large");
    }
    bw_put(&t, "; it must be ");
    bw_put_number(&t, range.low, 4);
    if (range.high > range.low) {
        bw_put(&t, " to ");
        bw_put_number(&t, range.high, 4);
    }
    if (range.unit[0]) bw_put_char(&t, ' ');
    bw_put(&t, range.unit);
    return false;
}

bool bw_take_whole(bw_reading *r, int32_t node, int low, int high, int *out) {
    double n = 0;
    if (!bw_take_number(r, node, (bw_range){low, high, ""}, &n)) return false;
    if (n != bw_floor(n)) return bw_fail_number(r, node, " is ", n, "; it must be a whole number");
    *out = (int)n;
    return true;
}

bool bw_take_flag(bw_reading *r, int32_t node, bool *out) {
    if (r->tree->nodes[node].kind != BW_NODE_BOOL) return bw_fail_kind(r, node, "true or false");
    *out = r->tree->nodes[node].number != 0;
    return true;
}

static const char *unit_word(const bw_reading *r) {
    return bw_unit_long(r->scheme->units);
}

double bw_file_length(const bw_reading *r, double metres) {
    return bw_round_to(metres / r->per, places) * r->per;
}

bool bw_take_length(bw_reading *r, int32_t node, double low_yd, double high_yd, double *out) {
    const double scale = BW_METRES_PER_YARD / r->per;
    const bw_range range = {bw_round_to(low_yd * scale, places),
                            bw_round_to(high_yd * scale, places), unit_word(r)};
    double n = 0;
    if (!bw_take_number(r, node, range, &n)) return false;
    *out = n * r->per;
    return true;
}

/// A limit of the field in the file's unit, to a tenth and never beyond the line.
static void put_limit(bw_reading *r, bw_text *out, double metres) {
    double tenths = bw_floor(bw_abs(metres) / r->per * 10 + 1e-6) / 10;
    bw_put_number(out, metres < 0 ? -tenths : tenths, 1);
}

static bool off_field(bw_reading *r, int32_t node) {
    bw_text t = bw_begin_error(r, node);
    bw_put_subject(r, node, &t);
    bw_put(&t, " is off the field; on \"");
    bw_put(&t, r->field->id);
    bw_put(&t, "\" x is from ");
    put_limit(r, &t, -r->field->width / 2);
    bw_put(&t, " to ");
    put_limit(r, &t, r->field->width / 2);
    bw_put(&t, " and y from ");
    put_limit(r, &t, -r->field->end_line);
    bw_put(&t, " to ");
    put_limit(r, &t, r->field->midline);
    bw_put_char(&t, ' ');
    bw_put(&t, unit_word(r));
    return false;
}

bool bw_take_place(bw_reading *r, int32_t node, bw_vec *out) {
    const bw_range any = {-1000, 1000, unit_word(r)};
    if (!bw_take_array(r, node, "a place such as [3.5, 2.5]", 2, 2)) return false;
    int32_t x = bw_first(r, node), y = bw_next(r, x);
    bw_vec given;
    if (!bw_take_number(r, x, any, &given.x) || !bw_take_number(r, y, any, &given.y)) return false;
    given = bw_scale(given, r->per);
    *out = bw_field_clamp(r->field, given);
    return bw_distance(*out, given) <= on_line || off_field(r, node);
}

bool bw_take_choice(bw_reading *r, int32_t node, const char *before, bw_words words, int *index) {
    const bw_tree_node *n = &r->tree->nodes[node];
    if (n->kind != BW_NODE_STRING) return bw_fail_kind(r, node, "a text in quotes");
    for (int i = 0; i < words.count; i++) {
        if (bw_node_text_is(r->tree, node, words.word[i])) {
            *index = i;
            return true;
        }
    }
    return !r->unsure &&
           bw_fail_word(r, node, before, r->tree->text + n->text, n->text_length, words);
}

bool bw_take_landmark(bw_reading *r, int32_t node, int *index) {
    const char *ids[BW_MAX_LANDMARKS];
    for (int i = 0; i < r->scheme->landmark_count; i++)
        ids[i] = r->scheme->landmarks[i].id;
    r->unsure = r->landmarks_bad;
    const bool found = bw_take_choice(r, node, "there is no landmark",
                                      (bw_words){ids, r->scheme->landmark_count}, index);
    r->unsure = false;
    return found;
}
