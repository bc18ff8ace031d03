/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What the parts of the reader share: taking one value of a stated kind out of the tree, or saying in
/// one sentence why it cannot be taken. Every function returns false once something was wrong.
#ifndef BW_SCHEME_READING_H
#define BW_SCHEME_READING_H

#include "core/field.h"
#include "core/scheme.h"
#include "scheme/path.h"

typedef struct bw_reading {
    const bw_tree *tree;
    bw_scheme *scheme;
    bw_error *error;
    const bw_field *field; ///< known once the head has been read
    double per;            ///< metres in the file's unit of length
} bw_reading;

/// A list of words, for keys and choices.
typedef struct bw_words {
    const char *const *word;
    int count;
} bw_words;

#define BW_WORDS(array) ((bw_words){(array), BW_COUNT(array)})

/// Reports: `a`, then `b` in quotes unless NULL, then `c`. Always false.
bool bw_fail(bw_reading *r, int32_t node, const char *a, const char *b, const char *c);

/// The same at a place inside `node` that may not exist in the document ("" for node itself).
bool bw_fail_number(bw_reading *r, int32_t node, const char *a, double n, const char *c);

/// An object whose keys are all among `keys`; an unknown one is answered with the nearest.
bool bw_take_object(bw_reading *r, int32_t node, const char *what, bw_words keys);

/// An array with low to high elements.
bool bw_take_array(bw_reading *r, int32_t node, const char *what, int low, int high);

/// A member that must be there.
bool bw_take_member(bw_reading *r, int32_t object, const char *key, int32_t *member);

/// A text of at most room - 1 bytes, not empty unless `may_be_empty`, no control characters.
bool bw_take_text(bw_reading *r, int32_t node, char *to, size_t room, bool may_be_empty);

/// A text in which line ends are allowed.
bool bw_take_prose(bw_reading *r, int32_t node, char *to, size_t room);

/// An identifier: 1 to 15 of a-z, 0-9 and "-".
bool bw_take_id(bw_reading *r, int32_t node, char *to);

/// A spot's code: 1 to 3 letters or digits.
bool bw_take_code(bw_reading *r, int32_t node, char *to);

/// A plain number in [low, high]; `unit` (may be "") follows the figures in the sentence.
bool bw_take_number(bw_reading *r, int32_t node, double low, double high, const char *unit,
                    double *out);

bool bw_take_whole(bw_reading *r, int32_t node, int low, int high, int *out);
bool bw_take_flag(bw_reading *r, int32_t node, bool *out);

/// A length in the file's unit, in metres; the limits are in yards whatever the unit.
bool bw_take_length(bw_reading *r, int32_t node, double low_yd, double high_yd, double *out);

/// [x, y] in the file's unit, on the defended half of the field.
bool bw_take_place(bw_reading *r, int32_t node, bw_vec *out);

/// One of a list of words.
bool bw_take_choice(bw_reading *r, int32_t node, const char *what, bw_words words, int *index);

/// Every element or member of a container in turn: for (each = first; each; each = next).
static inline int32_t bw_first(const bw_reading *r, int32_t node) {
    return r->tree->nodes[node].first;
}
static inline int32_t bw_next(const bw_reading *r, int32_t node) {
    return r->tree->nodes[node].next;
}
static inline int bw_children(const bw_reading *r, int32_t node) {
    return r->tree->nodes[node].count;
}

/// Index of the landmark a string names, or false with the nearest one suggested.
bool bw_take_landmark(bw_reading *r, int32_t node, int *index);

// The parts, in the order in which they are read (read.c).
bool bw_read_landmarks(bw_reading *r, int32_t node);
bool bw_read_stages(bw_reading *r, int32_t node);
bool bw_read_late(bw_reading *r, int32_t node);
bool bw_read_sets(bw_reading *r, int32_t node);
bool bw_read_lessons(bw_reading *r, int32_t node);

#endif
