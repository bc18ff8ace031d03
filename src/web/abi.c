/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "web/abi.h"

static void put_quoted(bw_text *out, const char *word) {
    bw_put_char(out, '"');
    bw_put(out, word);
    bw_put_char(out, '"');
}

static void put_block(bw_text *out, const bw_abi_block *block) {
    put_quoted(out, block->name);
    bw_put(out, ":{\"size\":");
    bw_put_int(out, (long long)block->size);
    bw_put(out, ",\"fields\":{");
    for (int i = 0; i < block->count; i++) {
        const bw_abi_field *f = &block->fields[i];
        if (i > 0) bw_put_char(out, ',');
        put_quoted(out, f->name);
        bw_put(out, ":[");
        bw_put_int(out, (long long)f->offset);
        bw_put_char(out, ',');
        put_quoted(out, f->kind);
        bw_put_char(out, ',');
        bw_put_int(out, (long long)(f->size / f->one));
        bw_put_char(out, ']');
    }
    bw_put(out, "}}");
}

/// A constant's name as JavaScript writes names: LATE_MEN becomes lateMen.
static void put_camel(bw_text *out, const char *name) {
    for (const char *c = name; *c; c++) {
        if (*c == '_') {
            bw_put_char(out, *++c);
            continue;
        }
        bw_put_char(out, *c >= 'A' && *c <= 'Z' ? (char)(*c - 'A' + 'a') : *c);
    }
}

static void put_enumeration(bw_text *out, const bw_abi_enumeration *e) {
    put_quoted(out, e->name);
    bw_put(out, ":{");
    for (int i = 0; i < e->count; i++) {
        bw_put(out, i > 0 ? ",\"" : "\"");
        put_camel(out, e->values[i].name);
        bw_put(out, "\":");
        bw_put_int(out, e->values[i].value);
    }
    bw_put_char(out, '}');
}

void bw_put_abi(bw_text *out, const bw_abi_block *blocks, int block_count,
                const bw_abi_enumeration *enumerations, int enumeration_count) {
    bw_put(out, "{\"blocks\":{");
    for (int i = 0; i < block_count; i++) {
        if (i > 0) bw_put_char(out, ',');
        put_block(out, &blocks[i]);
    }
    bw_put(out, "},\"enumerations\":{");
    for (int i = 0; i < enumeration_count; i++) {
        if (i > 0) bw_put_char(out, ',');
        put_enumeration(out, &enumerations[i]);
    }
    bw_put(out, "}}");
}
