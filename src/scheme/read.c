/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The head of the document, and the order in which its parts are read.
#include "scheme/read.h"
#include "core/level.h"
#include "scheme/reading.h"

static const char *const keys[] = {"format", "version", "id",    "name",    "team",
                                   "field",  "units",   "level", "lead",    "landmarks",
                                   "stages", "late",    "sets",  "lessons", "notes"};

static bool read_format(bw_reading *r, int32_t root) {
    int32_t format, version;
    if (!bw_take_member(r, root, "format", &format)) return false;
    if (!bw_node_text_is(r->tree, format, "breakwater-scheme")) {
        return bw_fail(r, format, "this is not a scheme; the format must be ", "breakwater-scheme",
                       "");
    }
    if (!bw_take_member(r, root, "version", &version)) return false;
    const bw_node *n = &r->tree->nodes[version];
    if (n->kind == BW_NODE_NUMBER && n->number > 1 && n->number < 1e6) {
        return bw_fail_number(r, version, "this scheme is of version ", n->number,
                              ", newer than this program, which knows version 1");
    }
    int one = 0;
    return bw_take_whole(r, version, 1, 1, &one);
}

static bool read_field(bw_reading *r, int32_t root) {
    const char *ids[16];
    int count = bw_field_count() < BW_COUNT(ids) ? bw_field_count() : BW_COUNT(ids);
    for (int i = 0; i < count; i++)
        ids[i] = bw_field_at(i)->id;
    int32_t node;
    if (!bw_take_member(r, root, "field", &node)) return false;
    if (!bw_take_choice(r, node, "field", (bw_words){ids, count}, &r->scheme->field)) return false;
    r->field = bw_field_at(r->scheme->field);
    return true;
}

static bool read_level(bw_reading *r, int32_t root) {
    const char *ids[16];
    int count = bw_level_count() < BW_COUNT(ids) ? bw_level_count() : BW_COUNT(ids);
    for (int i = 0; i < count; i++)
        ids[i] = bw_level_at(i)->id;
    int32_t node;
    return bw_take_member(r, root, "level", &node) &&
           bw_take_choice(r, node, "level", (bw_words){ids, count}, &r->scheme->level);
}

static bool read_units(bw_reading *r, int32_t root) {
    static const char *const names[] = {"yd", "m"};
    int32_t node;
    int index = 0;
    if (!bw_take_member(r, root, "units", &node)) return false;
    if (!bw_take_choice(r, node, "unit", BW_WORDS(names), &index)) return false;
    r->scheme->units = index == 0 ? BW_YARDS : BW_METRES;
    r->per = index == 0 ? BW_METRES_PER_YARD : 1;
    return true;
}

static bool read_head(bw_reading *r, int32_t root) {
    static const char *const sides[] = {"right", "left"};
    bw_scheme *scheme = r->scheme;
    int32_t node;
    if (!bw_take_member(r, root, "name", &node)) return false;
    if (!bw_take_text(r, node, scheme->name, sizeof scheme->name, false)) return false;
    if ((node = bw_node_member(r->tree, root, "id")) &&
        !bw_take_text(r, node, scheme->id, sizeof scheme->id, false))
        return false;
    if ((node = bw_node_member(r->tree, root, "team")) &&
        !bw_take_text(r, node, scheme->team, sizeof scheme->team, true))
        return false;
    if (!read_field(r, root) || !read_units(r, root) || !read_level(r, root)) return false;
    if ((node = bw_node_member(r->tree, root, "lead"))) {
        int side = 0;
        if (!bw_take_choice(r, node, "side", BW_WORDS(sides), &side)) return false;
        scheme->lead = side == 0 ? BW_RIGHT : BW_LEFT;
    }
    return true;
}

static bool read_all(bw_reading *r) {
    const int32_t root = 0;
    int32_t node;
    if (!bw_take_object(r, root, "an object: a scheme begins with {", BW_WORDS(keys))) return false;
    if (!read_format(r, root) || !read_head(r, root)) return false;
    if (!bw_take_member(r, root, "landmarks", &node) || !bw_read_landmarks(r, node)) return false;
    if (!bw_take_member(r, root, "stages", &node) || !bw_read_stages(r, node)) return false;
    if ((node = bw_node_member(r->tree, root, "late")) && !bw_read_late(r, node)) return false;
    if ((node = bw_node_member(r->tree, root, "sets")) && !bw_read_sets(r, node)) return false;
    if ((node = bw_node_member(r->tree, root, "lessons")) && !bw_read_lessons(r, node))
        return false;
    if ((node = bw_node_member(r->tree, root, "notes")) &&
        !bw_take_prose(r, node, r->scheme->notes, sizeof r->scheme->notes))
        return false;
    return true;
}

bw_status bw_scheme_read(const bw_tree *tree, bw_scheme *scheme, bw_error *error) {
    *error = (bw_error){.status = BW_OK};
    if (tree->error.status != BW_OK) {
        *error = tree->error;
        return error->status;
    }
    *scheme = (bw_scheme){.units = BW_YARDS, .lead = BW_RIGHT};
    bw_reading reading = {
        .tree = tree, .scheme = scheme, .error = error, .per = BW_METRES_PER_YARD};
    return read_all(&reading) ? BW_OK : error->status;
}
