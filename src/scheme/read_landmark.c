/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Landmarks: given by place, or as the mirror image of another.
#include "scheme/reading.h"
#include "scheme/twin.h"

static const char *const keys[] = {"id", "name", "at", "mirror_of"};

static bool read_names(bw_reading *r, int32_t node, int index) {
    bw_landmark *landmark = &r->scheme->landmarks[index];
    int32_t id, name;
    if (!bw_take_object(r, node, "a landmark such as {\"id\": \"top\", ...}", BW_WORDS(keys)))
        return false;
    if (!bw_take_member(r, node, "id", &id) || !bw_take_id(r, id, landmark->id)) return false;
    for (int i = 0; i < index; i++) {
        if (bw_same(r->scheme->landmarks[i].id, landmark->id)) {
            return bw_fail(r, id, "the landmark ", landmark->id,
                           " is there twice; give each its own id");
        }
    }
    return bw_take_member(r, node, "name", &name) &&
           bw_take_text(r, name, landmark->name, sizeof landmark->name, false);
}

/// Landmarks with a place of their own; the others wait for their image.
static bool read_place(bw_reading *r, int32_t node, int index) {
    bw_landmark *landmark = &r->scheme->landmarks[index];
    int32_t at = bw_node_member(r->tree, node, "at");
    int32_t mirror = bw_node_member(r->tree, node, "mirror_of");
    if (at && mirror) {
        return bw_fail(r, at, "a landmark with ", "mirror_of",
                       " takes its place from there; leave this out");
    }
    if (!at && !mirror) return bw_fail(r, node, "the key ", "at", " is missing here");
    if (mirror) {
        landmark->derived = 1;
        return true;
    }
    return bw_take_place(r, at, &landmark->at);
}

static bool read_mirror(bw_reading *r, int32_t node, int index) {
    bw_landmark *landmark = &r->scheme->landmarks[index];
    if (!landmark->derived) return true;
    int32_t mirror = bw_node_member(r->tree, node, "mirror_of");
    int other = 0;
    if (!bw_take_landmark(r, mirror, &other)) return false;
    if (other == index || r->scheme->landmarks[other].derived) {
        return bw_fail(r, mirror, "the landmark ", r->scheme->landmarks[other].id,
                       " has no place of its own to mirror; name one that has \"at\"");
    }
    landmark->at = bw_mirror(r->scheme->landmarks[other].at);
    return true;
}

static bool check_apart(bw_reading *r, int32_t node, int index) {
    bw_vec at = r->scheme->landmarks[index].at;
    for (int i = 0; i < index; i++) {
        bw_vec other = r->scheme->landmarks[i].at;
        if (at.x == other.x && at.y == other.y) {
            return bw_fail(r, node, "this landmark is at the very place of ",
                           r->scheme->landmarks[i].id, "; move one or leave it out");
        }
    }
    return true;
}

bool bw_read_landmarks(bw_reading *r, int32_t list) {
    if (!bw_take_array(r, list, "a list of landmarks", 1, BW_MAX_LANDMARKS)) return false;
    int i = 0;
    for (int32_t n = bw_first(r, list); n; n = bw_next(r, n), i++) {
        if (!read_names(r, n, i) || !read_place(r, n, i)) return false;
    }
    r->scheme->landmark_count = i;
    i = 0;
    for (int32_t n = bw_first(r, list); n; n = bw_next(r, n), i++) {
        if (!read_mirror(r, n, i)) return false;
    }
    i = 0;
    for (int32_t n = bw_first(r, list); n; n = bw_next(r, n), i++) {
        if (!check_apart(r, n, i)) return false;
    }
    bw_find_twins(r->scheme);
    return true;
}
