/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What the parts of the reader share: taking one value of a stated kind out of the tree, or saying in
/// one sentence why it cannot be taken. Every bw_take_ and bw_read_ function returns false when its value
/// cannot be used; why has then been reported, unless it may only follow from what was reported before.
/// Lists and objects go on with their next part. A document is good when nothing was reported.
/// Private to src/scheme.
#ifndef BW_SCHEME_READING_H
#define BW_SCHEME_READING_H

#include "core/field.h"
#include "core/scheme.h"
#include "scheme/keys.h"
#include "scheme/path.h"

typedef struct bw_reading {
    const bw_tree *tree;
    bw_scheme *scheme;
    bw_error *errors; ///< the first `room` that were reported
    int room;
    int count;             ///< reported, those without room among them
    bw_error spare;        ///< for those
    const bw_field *field; ///< known once the head has been read
    double per;            ///< metres in the file's unit of length
    bool landmarks_bad;    ///< one of them could not be read
    bool stages_bad;       ///< likewise, or one of their spots
    bool spots_bad;        ///< likewise of the stage being read
    bool unsure; ///< a name that is not among those read may be one that could not be read
} bw_reading;

/// A list of words: keys, choices, ids.
typedef struct bw_words {
    const char *const *word;
    int count;
} bw_words;

/// A range a number must lie in, ends included, and the word that follows its figures (may be "").
typedef struct bw_range {
    double low, high;
    const char *unit;
} bw_range;

#define BW_WORDS(array) ((bw_words){(array), BW_COUNT(array)})

// read_error.c: the sentences.

/// Begins an error about a value: its status and pointer. The sentence is to be written.
bw_text bw_begin_error(bw_reading *r, int32_t node);

/// Appends what a value is called: "pickup" in quotes, entry 2 of "stages", the document.
void bw_put_subject(const bw_reading *r, int32_t node, bw_text *out);

/// Reports `a`, then `b` in quotes unless NULL, then `c`. Always false, as are the next three.
bool bw_fail(bw_reading *r, int32_t node, const char *a, const char *b, const char *c);

/// Reports the value's name, then `a`, n, `c`.
bool bw_fail_number(bw_reading *r, int32_t node, const char *a, double n, const char *c);

/// "pickup" is a text; it must be `wanted`.
bool bw_fail_kind(bw_reading *r, int32_t node, const char *wanted);

/// `before` "topp"; did you mean "top"? Or, when nothing is near: it is one of ...
bool bw_fail_word(bw_reading *r, int32_t node, const char *before, const char *text, int32_t length,
                  bw_words words);

// reading.c: the values.

/// An object of a known kind: unknown keys are reported and passed over, none is missing that must be
/// there.
bool bw_take_object(bw_reading *r, int32_t node, bw_noun noun);

/// An object whose keys are among `keys`; others are reported, called `before` in the sentence, and passed
/// over.
bool bw_take_map(bw_reading *r, int32_t node, const char *wanted, const char *before,
                 bw_words keys);

/// An array of low to high entries, called `wanted` in the sentence when it is something else.
bool bw_take_array(bw_reading *r, int32_t node, const char *wanted, int low, int high);

/// A member of an object, or 0.
static inline int32_t bw_member(const bw_reading *r, int32_t object, const char *key) {
    return bw_node_member(r->tree, object, key);
}

/// A text on one line, of at most room - 1 bytes.
bool bw_take_text(bw_reading *r, int32_t node, char *to, size_t room);

/// The same, not empty.
bool bw_take_name(bw_reading *r, int32_t node, char *to, size_t room);

/// A text that may have several lines.
bool bw_take_prose(bw_reading *r, int32_t node, char *to, size_t room);

/// An identifier: 1 to 15 of a-z, 0-9 and "-".
bool bw_take_id(bw_reading *r, int32_t node, char *to);

/// A spot's code: 1 to 3 letters or digits.
bool bw_take_code(bw_reading *r, int32_t node, char *to);

/// A number, rounded to four places.
bool bw_take_number(bw_reading *r, int32_t node, bw_range range, double *out);

bool bw_take_whole(bw_reading *r, int32_t node, int low, int high, int *out);
bool bw_take_flag(bw_reading *r, int32_t node, bool *out);

/// A length in the file's unit, rounded to four places of it, in metres. The limits are yards.
bool bw_take_length(bw_reading *r, int32_t node, double low_yd, double high_yd, double *out);

/// [x, y] in the file's unit, on the defended half of the field, in metres.
bool bw_take_place(bw_reading *r, int32_t node, bw_vec *out);

/// One of a list of words; `before` begins the sentence about another: "there is no landmark".
bool bw_take_choice(bw_reading *r, int32_t node, const char *before, bw_words words, int *index);

/// Index of the landmark a text names.
bool bw_take_landmark(bw_reading *r, int32_t node, int *index);

/// What a length read from the file would be: metres, after rounding in the file's unit.
double bw_file_length(const bw_reading *r, double metres);

/// Every entry or member of a container in turn: for (n = bw_first(r, c); n; n = bw_next(r, n)).
static inline int32_t bw_first(const bw_reading *r, int32_t node) {
    return r->tree->nodes[node].first;
}
static inline int32_t bw_next(const bw_reading *r, int32_t node) {
    return r->tree->nodes[node].next;
}

// The parts, in the order in which they are read (read.c).
bool bw_read_landmarks(bw_reading *r, int32_t list);
bool bw_read_stages(bw_reading *r, int32_t list);
bool bw_read_rule(bw_reading *r, int32_t node, bw_stage *stage);
bool bw_read_pins(bw_reading *r, int32_t node, bw_stage *stage);
bool bw_read_late(bw_reading *r, int32_t list);
bool bw_read_sets(bw_reading *r, int32_t list);
bool bw_read_lessons(bw_reading *r, int32_t list);

#endif
