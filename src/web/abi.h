/* SPDX-License-Identifier: GPL-3.0-or-later */
/// How a module tells JavaScript what lies where in its memory and what its constants are worth, so that
/// nobody types an offset or a number twice:
///     {"blocks":{"ink":{"size":64,"fields":{"used":[4,"i32",1], ...}}, ...},
///      "enumerations":{"list":{"stages":0, ...}, ...}}
/// A field is its offset, the kind of one value (i32, f64, text, or the name of another block) and how
/// many there are (bytes for text). JavaScript knows both by name alone (board/abi.js).
#ifndef BW_WEB_ABI_H
#define BW_WEB_ABI_H

#include "core/text.h"
#include <stddef.h>

typedef struct bw_abi_field {
    const char *name, *kind;
    size_t offset, size, one; ///< one: bytes of one value
} bw_abi_field;

#define BW_ABI_I32(type, name)                                                                     \
    { #name, "i32", offsetof(type, name), sizeof((type *)0)->name, 4 }
#define BW_ABI_F64(type, name)                                                                     \
    { #name, "f64", offsetof(type, name), sizeof((type *)0)->name, 8 }
#define BW_ABI_TEXT(type, name)                                                                    \
    { #name, "text", offsetof(type, name), sizeof((type *)0)->name, 1 }

/// A list of blocks of the kind `block`, each an `of`.
#define BW_ABI_BLOCKS(type, name, block, of)                                                       \
    { #name, block, offsetof(type, name), sizeof((type *)0)->name, sizeof(of) }

typedef struct bw_abi_block {
    const char *name;
    size_t size;
    const bw_abi_field *fields;
    int count;
} bw_abi_block;

/// An enumerator by its name in C without what all of them begin with: LATE_MEN is told as lateMen.
typedef struct bw_abi_value {
    const char *name;
    int value;
} bw_abi_value;

#define BW_ABI_VALUE(prefix, name)                                                                 \
    { #name, prefix##name }

typedef struct bw_abi_enumeration {
    const char *name;
    const bw_abi_value *values;
    int count;
} bw_abi_enumeration;

void bw_put_abi(bw_text *out, const bw_abi_block *blocks, int block_count,
                const bw_abi_enumeration *enumerations, int enumeration_count);

#endif
