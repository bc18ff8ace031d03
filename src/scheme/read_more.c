/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Late men, attack sets of the coach's own, lessons.
#include "scheme/reading.h"

static const char *const late_keys[] = {"role", "behind", "takes"};
static const char *const set_keys[] = {"id", "name", "at"};
static const char *const lesson_keys[] = {"id", "name", "stage", "stops"};
static const char *const stop_keys[] = {"ball", "pause", "caption"};

/// A spot some stage has: late men are named before the stage they complete is known.
static bool read_take(bw_reading *r, int32_t node, bw_late *late) {
    const char *ids[BW_MAX_STAGES * BW_MAX_SPOTS];
    int count = 0, index = 0;
    for (int g = 0; g < r->scheme->stage_count; g++) {
        for (int s = 0; s < r->scheme->stages[g].defenders; s++) {
            ids[count++] = r->scheme->stages[g].spots[s].id;
        }
    }
    if (!bw_take_choice(r, node, "spot", (bw_words){ids, count}, &index)) return false;
    return bw_copy(late->takes[late->take_count++], BW_ID_SIZE, ids[index]);
}

static bool read_takes(bw_reading *r, int32_t node, bw_late *late) {
    if (bw_node_text_is(r->tree, node, "match")) return true;
    if (!bw_take_array(r, node, "a list of spots, or \"match\"", 1, BW_MAX_SPOTS)) return false;
    for (int32_t n = bw_first(r, node); n; n = bw_next(r, n)) {
        if (!read_take(r, n, late)) return false;
    }
    return true;
}

bool bw_read_late(bw_reading *r, int32_t list) {
    if (!bw_take_array(r, list, "a list of late men", 0, BW_MAX_LATE)) return false;
    for (int32_t node = bw_first(r, list); node; node = bw_next(r, node)) {
        bw_late *late = &r->scheme->late[r->scheme->late_count++];
        int32_t n;
        if (!bw_take_object(r, node, "a late man such as {\"role\": ...}", BW_WORDS(late_keys)))
            return false;
        if (!bw_take_member(r, node, "role", &n)) return false;
        if (!bw_take_text(r, n, late->role, sizeof late->role, false)) return false;
        if (!bw_take_member(r, node, "behind", &n)) return false;
        if (!bw_take_length(r, n, 0, 100, &late->behind)) return false;
        if (!bw_take_member(r, node, "takes", &n) || !read_takes(r, n, late)) return false;
    }
    return true;
}

static bool read_set(bw_reading *r, int32_t node, bw_set *set) {
    int32_t n;
    if (!bw_take_object(r, node, "an attack set such as {\"id\": ...}", BW_WORDS(set_keys)))
        return false;
    if (!bw_take_member(r, node, "id", &n) || !bw_take_id(r, n, set->id)) return false;
    for (const bw_set *other = r->scheme->sets; other < set; other++) {
        if (bw_same(other->id, set->id)) {
            return bw_fail(r, n, "the set ", set->id, " is there twice; give each its own id");
        }
    }
    if (!bw_take_member(r, node, "name", &n)) return false;
    if (!bw_take_text(r, n, set->name, sizeof set->name, false)) return false;
    if (!bw_take_member(r, node, "at", &n)) return false;
    if (!bw_take_array(r, n, "a list of places, one for each attacker", 3, BW_MAX_ATTACKERS))
        return false;
    for (int32_t place = bw_first(r, n); place; place = bw_next(r, place)) {
        if (!bw_take_place(r, place, &set->at[set->count++])) return false;
    }
    return true;
}

bool bw_read_sets(bw_reading *r, int32_t list) {
    if (!bw_take_array(r, list, "a list of attack sets", 0, BW_MAX_SETS)) return false;
    for (int32_t node = bw_first(r, list); node; node = bw_next(r, node)) {
        if (!read_set(r, node, &r->scheme->sets[r->scheme->set_count++])) return false;
    }
    return true;
}

static bool read_stop(bw_reading *r, int32_t node, bw_stop *stop) {
    int32_t n;
    if (!bw_take_object(r, node, "a stop such as {\"ball\": \"top\"}", BW_WORDS(stop_keys)))
        return false;
    if (!bw_take_member(r, node, "ball", &n)) return false;
    stop->at_landmark = r->tree->nodes[n].kind == BW_NODE_STRING;
    if (stop->at_landmark) {
        if (!bw_take_landmark(r, n, &stop->landmark)) return false;
        stop->ball = r->scheme->landmarks[stop->landmark].at;
    } else if (!bw_take_place(r, n, &stop->ball)) {
        return false;
    }
    stop->pause = 2;
    if ((n = bw_node_member(r->tree, node, "pause")) &&
        !bw_take_number(r, n, 0, 60, " s", &stop->pause))
        return false;
    if ((n = bw_node_member(r->tree, node, "caption")) &&
        !bw_take_text(r, n, stop->caption, sizeof stop->caption, true))
        return false;
    return true;
}

static bool read_lesson(bw_reading *r, int32_t node, bw_lesson *lesson) {
    int32_t n;
    if (!bw_take_object(r, node, "a lesson such as {\"id\": ...}", BW_WORDS(lesson_keys)))
        return false;
    if (!bw_take_member(r, node, "id", &n) || !bw_take_id(r, n, lesson->id)) return false;
    for (const bw_lesson *other = r->scheme->lessons; other < lesson; other++) {
        if (bw_same(other->id, lesson->id)) {
            return bw_fail(r, n, "the lesson ", lesson->id,
                           " is there twice; give each its own id");
        }
    }
    if (!bw_take_member(r, node, "name", &n)) return false;
    if (!bw_take_text(r, n, lesson->name, sizeof lesson->name, false)) return false;
    if (!bw_take_member(r, node, "stage", &n)) return false;
    if (!bw_take_whole(r, n, 3, BW_MAX_SPOTS, &lesson->defenders)) return false;
    if (bw_scheme_stage(r->scheme, lesson->defenders) < 0) {
        return bw_fail_number(r, n, "this scheme has no stage with ", lesson->defenders,
                              " defenders to walk through");
    }
    if (!bw_take_member(r, node, "stops", &n)) return false;
    if (!bw_take_array(r, n, "a list of stops", 1, BW_MAX_STOPS)) return false;
    for (int32_t stop = bw_first(r, n); stop; stop = bw_next(r, stop)) {
        if (!read_stop(r, stop, &lesson->stops[lesson->stop_count++])) return false;
    }
    return true;
}

bool bw_read_lessons(bw_reading *r, int32_t list) {
    if (!bw_take_array(r, list, "a list of lessons", 0, BW_MAX_LESSONS)) return false;
    for (int32_t node = bw_first(r, list); node; node = bw_next(r, node)) {
        if (!read_lesson(r, node, &r->scheme->lessons[r->scheme->lesson_count++])) return false;
    }
    return true;
}
