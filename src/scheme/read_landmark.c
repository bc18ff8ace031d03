/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Landmarks: given by place, or as the mirror image of another.
#include "scheme/reading.h"
#include "scheme/sides.h"
#include "scheme/twin.h"

/// All that a landmark says of itself; one that mirrors another waits for it.
static bool read_landmark(bw_reading *r, int32_t node, int index) {
    bw_landmark *landmark = &r->scheme->landmarks[index];
    if (!bw_take_object(r, node, BW_NOUN_LANDMARK)) return false;
    const int32_t id = bw_member(r, node, "id"), name = bw_member(r, node, "name");
    const int32_t at = bw_member(r, node, "at"), mirror = bw_member(r, node, "mirror_of");
    if (!bw_take_id(r, id, landmark->id)) return false;
    for (int i = 0; i < index; i++) {
        if (bw_same(r->scheme->landmarks[i].id, landmark->id)) {
            return bw_fail(r, id, "there are two landmarks ", landmark->id,
                           "; give each an id of its own");
        }
    }
    if (name && !bw_take_name(r, name, landmark->name, sizeof landmark->name)) return false;
    landmark->derived = mirror != 0;
    if (at && mirror) {
        return bw_fail(r, at, "a landmark with ", "mirror_of",
                       " takes its place from there; leave out \"at\"");
    }
    if (mirror) return true;
    if (!at) {
        return bw_fail(r, node, "a landmark needs ", "at",
                       ", its place, or \"mirror_of\", the landmark it mirrors");
    }
    if (!name) return bw_fail(r, node, "a landmark needs the key ", "name", ", missing here");
    return bw_take_place(r, at, &landmark->at);
}

/// What follows from the other side: the place, and the name unless one is given.
static bool read_mirror(bw_reading *r, int32_t node, int index) {
    bw_landmark *landmark = &r->scheme->landmarks[index];
    if (!landmark->derived) return true;
    const int32_t mirror = bw_member(r, node, "mirror_of");
    int other = 0;
    if (!bw_take_landmark(r, mirror, &other)) return false;
    const bw_landmark *twin = &r->scheme->landmarks[other];
    if (twin->derived) {
        return bw_fail(r, mirror, "the landmark ", twin->id,
                       " has no place of its own to mirror; name one that has \"at\"");
    }
    landmark->at = bw_mirror(twin->at);
    if (landmark->name[0] || bw_other_side(twin->name, landmark->name, sizeof landmark->name))
        return true;
    return bw_fail(r, node, "the name of ", twin->id,
                   " is too long to follow on the other side; give this landmark a \"name\"");
}

static bool check_apart(bw_reading *r, int32_t node, int index) {
    const bw_vec at = r->scheme->landmarks[index].at;
    for (int i = 0; i < index; i++) {
        const bw_vec other = r->scheme->landmarks[i].at;
        if (at.x == other.x && at.y == other.y) {
            return bw_fail(r, node, "this landmark lies on top of ", r->scheme->landmarks[i].id,
                           "; move one of them or leave it out");
        }
    }
    return true;
}

bool bw_read_landmarks(bw_reading *r, int32_t list) {
    if (!bw_take_array(r, list, "a list of landmarks", 1, BW_MAX_LANDMARKS)) return false;
    int i = 0;
    bool good = true;
    for (int32_t n = bw_first(r, list); n; n = bw_next(r, n))
        good = read_landmark(r, n, i++) && good;
    r->scheme->landmark_count = i;
    if (!good) return false;
    i = 0;
    for (int32_t n = bw_first(r, list); n; n = bw_next(r, n)) {
        if (!read_mirror(r, n, i++)) return false;
    }
    i = 0;
    for (int32_t n = bw_first(r, list); n; n = bw_next(r, n)) {
        if (!check_apart(r, n, i++)) return false;
    }
    return true;
}
