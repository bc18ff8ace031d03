/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "web/abi.h"

#include "core/base.h"
#include "core/json.h"

static void put_block(bw_json *json, const bw_abi_block *block) {
    bw_json_put_open(json, block->name, '{');
    bw_json_put_number(json, "size", (double)block->size);
    bw_json_put_open(json, "fields", '{');
    for (int i = 0; i < block->count; i++) {
        const bw_abi_field *f = &block->fields[i];
        bw_json_put_open(json, f->name, '[');
        bw_json_number(json, (double)f->offset);
        bw_json_text(json, f->kind);
        bw_json_number(json, (double)(f->size / f->one));
        bw_json_close(json, ']');
    }
    bw_json_close(json, '}');
    bw_json_close(json, '}');
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

static void put_enumeration(bw_json *json, const bw_abi_enumeration *e) {
    bw_json_put_open(json, e->name, '{');
    for (int i = 0; i < e->count; i++) {
        char name[64];
        bw_text t = bw_text_in(name, sizeof name);
        put_camel(&t, e->values[i].name);
        BW_ASSERT(!t.full);
        bw_json_put_number(json, name, e->values[i].value);
    }
    bw_json_close(json, '}');
}

void bw_put_abi(bw_text *out, const bw_abi_block *blocks, int block_count,
                const bw_abi_enumeration *enumerations, int enumeration_count) {
    bw_json json = bw_json_in(out);
    bw_json_open(&json, '{');
    bw_json_put_open(&json, "blocks", '{');
    for (int i = 0; i < block_count; i++)
        put_block(&json, &blocks[i]);
    bw_json_close(&json, '}');
    bw_json_put_open(&json, "enumerations", '{');
    for (int i = 0; i < enumeration_count; i++)
        put_enumeration(&json, &enumerations[i]);
    bw_json_close(&json, '}');
    bw_json_close(&json, '}');
}
