/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The head of the document, and the order in which its parts are read.
#include "scheme/read.h"
#include "core/level.h"
#include "scheme/reading.h"

enum { MAX_CHOICES = 32 };

static bool read_format(bw_reading *r, int32_t root) {
    const int32_t format = bw_member(r, root, "format"), version = bw_member(r, root, "version");
    if (!bw_node_text_is(r->tree, format, "breakwater-scheme")) {
        return bw_fail(r, format, "this is not a scheme; \"format\" must be ", "breakwater-scheme",
                       "");
    }
    const bw_tree_node *n = &r->tree->nodes[version];
    if (n->kind == BW_NODE_NUMBER && n->number >= 2 && n->number < 1e6) {
        return bw_fail_number(r, version, " is ", n->number,
                              ", newer than this program, which knows version 1");
    }
    int one = 0;
    return bw_take_whole(r, version, 1, 1, &one);
}

static bool read_field(bw_reading *r, int32_t node) {
    const char *ids[MAX_CHOICES];
    const int count = bw_field_count();
    BW_ASSERT(count <= MAX_CHOICES);
    for (int i = 0; i < count; i++)
        ids[i] = bw_field_at(i)->id;
    if (!bw_take_choice(r, node, "there is no field", (bw_words){ids, count}, &r->scheme->field))
        return false;
    r->field = bw_field_at(r->scheme->field);
    return true;
}

static bool read_level(bw_reading *r, int32_t node) {
    const char *ids[MAX_CHOICES];
    const int count = bw_level_count();
    BW_ASSERT(count <= MAX_CHOICES);
    for (int i = 0; i < count; i++)
        ids[i] = bw_level_at(i)->id;
    return bw_take_choice(r, node, "there is no level", (bw_words){ids, count}, &r->scheme->level);
}

static bool read_units(bw_reading *r, int32_t node) {
    static const char *const names[] = {"yd", "m"};
    int index = 0;
    if (!bw_take_choice(r, node, "there is no unit", BW_WORDS(names), &index)) return false;
    r->scheme->units = index == 0 ? BW_YARDS : BW_METRES;
    r->per = bw_unit_length(r->scheme->units);
    return true;
}

static bool read_lead(bw_reading *r, int32_t node) {
    static const char *const sides[] = {"right", "left"};
    int side = 0;
    if (!bw_take_choice(r, node, "there is no side", BW_WORDS(sides), &side)) return false;
    r->scheme->lead = side == 0 ? BW_RIGHT : BW_LEFT;
    return true;
}

/// What the whole document hangs on comes last: false when no place in it can be judged.
static bool read_head(bw_reading *r, int32_t root) {
    bw_scheme *scheme = r->scheme;
    int32_t n = bw_member(r, root, "id");
    if (n) bw_take_text(r, n, scheme->id, sizeof scheme->id);
    n = bw_member(r, root, "name");
    bw_take_name(r, n, scheme->name, sizeof scheme->name);
    n = bw_member(r, root, "team");
    if (n) bw_take_text(r, n, scheme->team, sizeof scheme->team);
    const bool field = read_field(r, bw_member(r, root, "field"));
    const bool units = read_units(r, bw_member(r, root, "units"));
    read_level(r, bw_member(r, root, "level"));
    n = bw_member(r, root, "lead");
    if (n) read_lead(r, n);
    return field && units;
}

/// A list that may be left out.
static bool read_list(bw_reading *r, const char *key, bool (*read)(bw_reading *, int32_t)) {
    const int32_t list = bw_member(r, 0, key);
    return !list || read(r, list);
}

static bool read_all(bw_reading *r) {
    const int32_t root = 0;
    // Another program's file deserves a better word than its first unknown key.
    const int32_t format = bw_member(r, root, "format");
    if (format && !bw_node_text_is(r->tree, format, "breakwater-scheme"))
        return read_format(r, root);
    if (!bw_take_object(r, root, BW_NOUN_SCHEME)) {
        if (!format) r->count = 1; // nor is each of its keys worth a line
        return false;
    }
    if (!read_format(r, root) || !read_head(r, root)) return false;
    r->landmarks_bad = !read_list(r, "landmarks", bw_read_landmarks);
    r->stages_bad = !read_list(r, "stages", bw_read_stages);
    read_list(r, "late", bw_read_late);
    read_list(r, "sets", bw_read_sets);
    read_list(r, "lessons", bw_read_lessons);
    const int32_t notes = bw_member(r, root, "notes");
    if (notes) bw_take_prose(r, notes, r->scheme->notes, sizeof r->scheme->notes);
    return r->count == 0;
}

bw_status bw_scheme_read_all(const bw_tree *tree, bw_scheme *scheme, bw_error *errors, int room,
                             int *count) {
    BW_ASSERT(room > 0);
    errors[0] = (bw_error){.status = BW_OK};
    *count = 0;
    if (tree->error.status != BW_OK) {
        errors[0] = tree->error;
        *count = 1;
        return errors[0].status;
    }
    BW_ASSERT(tree->node_count > 0);
    *scheme = (bw_scheme){.units = BW_YARDS, .lead = BW_RIGHT};
    bw_reading reading = {
        .tree = tree, .scheme = scheme, .errors = errors, .room = room, .per = BW_METRES_PER_YARD};
    const bool good = read_all(&reading);
    BW_ASSERT(good == (reading.count == 0));
    *count = reading.count;
    return good ? BW_OK : errors[0].status;
}

bw_status bw_scheme_read(const bw_tree *tree, bw_scheme *scheme, bw_error *error) {
    int count;
    return bw_scheme_read_all(tree, scheme, error, 1, &count);
}
