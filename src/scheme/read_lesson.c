/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Lessons and their stops.
#include "scheme/reading.h"

static const bw_range pause_range = {0, 60, "seconds"};
static const double usual_pause = 2;

static bool read_ball(bw_reading *r, int32_t node, bw_stop *stop) {
    const int kind = r->tree->nodes[node].kind;
    if (kind == BW_NODE_ARRAY) return bw_take_place(r, node, &stop->ball);
    if (kind != BW_NODE_STRING)
        return bw_fail_kind(r, node, "a landmark's id or a place such as [3.5, 2.5]");
    stop->at_landmark = true;
    if (!bw_take_landmark(r, node, &stop->landmark)) return false;
    stop->ball = r->scheme->landmarks[stop->landmark].at;
    return true;
}

static bool read_stop(bw_reading *r, int32_t node, bw_stop *stop) {
    if (!bw_take_object(r, node, BW_NOUN_STOP)) return false;
    if (!read_ball(r, bw_member(r, node, "ball"), stop)) return false;
    stop->pause = usual_pause;
    const int32_t pause = bw_member(r, node, "pause"), caption = bw_member(r, node, "caption");
    if (pause && !bw_take_number(r, pause, pause_range, &stop->pause)) return false;
    return !caption || bw_take_text(r, caption, stop->caption, sizeof stop->caption);
}

static bool read_lesson(bw_reading *r, int32_t node, bw_lesson *lesson) {
    if (!bw_take_object(r, node, BW_NOUN_LESSON)) return false;
    const int32_t id = bw_member(r, node, "id"), stage = bw_member(r, node, "stage");
    const int32_t stops = bw_member(r, node, "stops");
    if (!bw_take_id(r, id, lesson->id)) return false;
    for (const bw_lesson *other = r->scheme->lessons; other < lesson; other++) {
        if (bw_same(other->id, lesson->id)) {
            return bw_fail(r, id, "there are two lessons ", lesson->id,
                           "; give each an id of its own");
        }
    }
    if (!bw_take_name(r, bw_member(r, node, "name"), lesson->name, sizeof lesson->name))
        return false;
    if (!bw_take_whole(r, stage, 3, BW_MAX_SPOTS, &lesson->defenders)) return false;
    if (bw_scheme_stage(r->scheme, lesson->defenders) < 0) {
        return !r->stages_bad &&
               bw_fail_number(r, stage, " is ", lesson->defenders,
                              "; it must be the number of defenders of one of the scheme's stages");
    }
    if (!bw_take_array(r, stops, "a list of stops", 1, BW_MAX_STOPS)) return false;
    bool good = true;
    for (int32_t n = bw_first(r, stops); n; n = bw_next(r, n))
        good = read_stop(r, n, &lesson->stops[lesson->stop_count++]) && good;
    return good;
}

bool bw_read_lessons(bw_reading *r, int32_t list) {
    if (!bw_take_array(r, list, "a list of lessons", 0, BW_MAX_LESSONS)) return false;
    bool good = true;
    for (int32_t n = bw_first(r, list); n; n = bw_next(r, n))
        good = read_lesson(r, n, &r->scheme->lessons[r->scheme->lesson_count++]) && good;
    return good;
}
