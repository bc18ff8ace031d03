/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The keys a document may have, object by object, in the order in which they are written. The
/// reader refuses any other; docs/scheme.schema.json lists the same (tests/scheme/test_schema.c).
#ifndef BW_SCHEME_KEYS_H
#define BW_SCHEME_KEYS_H

#include "core/base.h"

typedef enum bw_noun {
    BW_NOUN_SCHEME,
    BW_NOUN_LANDMARK,
    BW_NOUN_STAGE,
    BW_NOUN_SPOT,
    BW_NOUN_RULE,
    BW_NOUN_LATE,
    BW_NOUN_SET,
    BW_NOUN_LESSON,
    BW_NOUN_STOP,
    BW_NOUN_COUNT
} bw_noun;

typedef struct bw_key {
    const char *word;
    bool required; ///< in every object of this kind, whatever else it says
} bw_key;

enum { BW_MAX_KEYS = 16 }; ///< in one kind of object

typedef struct bw_keys {
    const char *name;    ///< the kind of object, and its definition in the JSON Schema
    const char *article; ///< "a landmark"
    const bw_key *key;
    int count;
} bw_keys;

const bw_keys *bw_keys_of(bw_noun noun);

#endif
