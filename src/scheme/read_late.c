/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Late men, and attack sets of the coach's own.
#include "scheme/reading.h"

/// A spot that some stage has: which stage a man completes depends on the break.
static bool read_take(bw_reading *r, int32_t node, bw_late *late) {
    const char *ids[BW_MAX_STAGES * BW_MAX_SPOTS];
    int count = 0, index = 0;
    for (int g = 0; g < r->scheme->stage_count; g++) {
        for (int s = 0; s < r->scheme->stages[g].defenders; s++)
            ids[count++] = r->scheme->stages[g].spots[s].id;
    }
    r->unsure = r->stages_bad;
    const bool found =
        bw_take_choice(r, node, "no stage has a spot", (bw_words){ids, count}, &index);
    r->unsure = false;
    if (!found) return false;
    for (int t = 0; t < late->take_count; t++) {
        if (bw_same(late->takes[t], ids[index]))
            return bw_fail(r, node, "the spot ", ids[index], " is listed twice; keep one");
    }
    return bw_copy(late->takes[late->take_count++], BW_ID_SIZE, ids[index]);
}

static bool read_takes(bw_reading *r, int32_t node, bw_late *late) {
    if (bw_node_text_is(r->tree, node, "match")) return true;
    if (!bw_take_array(r, node, "a list of spots, such as [\"TL\", \"TR\"], or \"match\"", 1,
                       BW_MAX_SPOTS))
        return false;
    for (int32_t n = bw_first(r, node); n; n = bw_next(r, n)) {
        if (!read_take(r, n, late)) return false;
    }
    return true;
}

static bool read_man(bw_reading *r, int32_t node, bw_late *late) {
    if (!bw_take_object(r, node, BW_NOUN_LATE)) return false;
    if (!bw_take_name(r, bw_member(r, node, "role"), late->role, sizeof late->role)) return false;
    if (!bw_take_length(r, bw_member(r, node, "behind"), 1, 100, &late->behind)) return false;
    return read_takes(r, bw_member(r, node, "takes"), late);
}

bool bw_read_late(bw_reading *r, int32_t list) {
    if (!bw_take_array(r, list, "a list of late men", 0, BW_MAX_LATE)) return false;
    bool good = true;
    for (int32_t n = bw_first(r, list); n; n = bw_next(r, n))
        good = read_man(r, n, &r->scheme->late[r->scheme->late_count++]) && good;
    return good;
}

static bool read_set(bw_reading *r, int32_t node, bw_set *set) {
    if (!bw_take_object(r, node, BW_NOUN_SET)) return false;
    const int32_t id = bw_member(r, node, "id"), at = bw_member(r, node, "at");
    if (!bw_take_id(r, id, set->id)) return false;
    for (const bw_set *other = r->scheme->sets; other < set; other++) {
        if (bw_same(other->id, set->id)) {
            return bw_fail(r, id, "there are two sets ", set->id, "; give each an id of its own");
        }
    }
    if (!bw_take_name(r, bw_member(r, node, "name"), set->name, sizeof set->name)) return false;
    if (!bw_take_array(r, at, "a list of places, one for each attacker", 3, BW_MAX_ATTACKERS))
        return false;
    for (int32_t n = bw_first(r, at); n; n = bw_next(r, n)) {
        bw_vec place;
        if (!bw_take_place(r, n, &place)) return false;
        for (int i = 0; i < set->count; i++) {
            if (set->at[i].x == place.x && set->at[i].y == place.y)
                return bw_fail(r, n, "two attackers stand in one place; move one of them", NULL,
                               "");
        }
        set->at[set->count++] = place;
    }
    return true;
}

bool bw_read_sets(bw_reading *r, int32_t list) {
    if (!bw_take_array(r, list, "a list of attack sets", 0, BW_MAX_SETS)) return false;
    bool good = true;
    for (int32_t n = bw_first(r, list); n; n = bw_next(r, n))
        good = read_set(r, n, &r->scheme->sets[r->scheme->set_count++]) && good;
    return good;
}
