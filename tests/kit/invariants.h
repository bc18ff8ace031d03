/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What every scheme must be, however it was made: the promise of core/scheme.h, checked.
#ifndef BW_TESTS_INVARIANTS_H
#define BW_TESTS_INVARIANTS_H

#include "core/field.h"
#include "core/level.h"
#include "core/scheme.h"
#include <math.h>
#include <string.h>

static inline int inv_text(const char *text, size_t room, int may_be_empty) {
    const char *end = memchr(text, '\0', room);
    if (!end || (!may_be_empty && end == text)) return 0;
    for (const char *c = text; c < end; c++) {
        if (((unsigned char)*c < 0x20 && *c != '\n') || *c == 0x7f) return 0;
    }
    return 1;
}

static inline int inv_place(const bw_scheme *scheme, bw_vec at) {
    return isfinite(at.x) && isfinite(at.y) && bw_field_contains(bw_field_at(scheme->field), at);
}

static inline int inv_range(double x, double low, double high) {
    return x >= low - 1e-9 && x <= high + 1e-9;
}

/// Twins are mutual and exact mirror images.
static inline int inv_twin(bw_vec at, bw_vec twin_at, int index, int twin_twin) {
    return twin_twin == index && at.x == -twin_at.x && at.y == twin_at.y;
}

static inline const char *inv_landmarks(const bw_scheme *s) {
    if (s->landmark_count < 1 || s->landmark_count > BW_MAX_LANDMARKS) return "landmark count";
    for (int i = 0; i < s->landmark_count; i++) {
        const bw_landmark *l = &s->landmarks[i];
        if (!inv_text(l->id, sizeof l->id, 0)) return "landmark id";
        if (!inv_text(l->name, sizeof l->name, 0)) return "landmark name";
        if (!inv_place(s, l->at)) return "landmark place";
        if (l->twin < -1 || l->twin >= s->landmark_count) return "landmark twin";
        if (l->twin >= 0 &&
            !inv_twin(l->at, s->landmarks[l->twin].at, i, s->landmarks[l->twin].twin))
            return "landmark twin's place";
        if (l->derived && (l->twin < 0 || s->landmarks[l->twin].derived)) return "landmark derived";
        for (int k = 0; k < i; k++) {
            const bw_landmark *other = &s->landmarks[k];
            if (strcmp(other->id, l->id) == 0) return "landmark id twice";
            if (other->at.x == l->at.x && other->at.y == l->at.y) return "landmark place twice";
        }
    }
    return NULL;
}

static inline const char *inv_rule(const bw_scheme *s, const bw_stage *stage) {
    const double yd = BW_METRES_PER_YARD;
    const bw_rule *r = &stage->rule;
    // A file in metres may have a limit rounded to its fourth decimal.
    const double slack = 1e-4;
    if (!inv_range(r->pickup, 4 * yd - slack, 25 * yd + slack)) return "pickup";
    if (!inv_range(r->cushion, 0, 6 * yd + slack)) return "cushion";
    if (!inv_range(r->shift, 0, 1) || !inv_range(r->soft, 0, 1)) return "shift or soft";
    if (!inv_range(r->area, 0, 10 * yd + slack) || !inv_range(r->pull, 0, 1)) return "area or pull";
    if (!inv_place(s, r->hold_at) || r->hold_at.x <= 0 || r->hold_at.y < 0) return "hold_at";
    if (!inv_place(s, r->crease_at)) return "crease_at";
    if (r->crease < BW_CREASE_NONE || r->crease >= stage->defenders) return "crease";
    return NULL;
}

static inline const char *inv_pins(const bw_scheme *s, const bw_stage *stage) {
    for (int l = 0; l < BW_MAX_LANDMARKS; l++) {
        for (int i = 0; i < BW_MAX_SPOTS; i++) {
            const int pinned = stage->pinned[l][i];
            if (pinned > 2) return "pinned";
            if (!pinned) continue;
            if (l >= s->landmark_count || i >= stage->defenders) return "pin beyond the lists";
            if (!inv_place(s, stage->pins[l][i])) return "pin's place";
        }
    }
    return NULL;
}

static inline const char *inv_stage(const bw_scheme *s, int index) {
    const bw_stage *stage = &s->stages[index];
    if (stage->defenders < 3 || stage->defenders > BW_MAX_SPOTS) return "defenders";
    if (index > 0 && stage->defenders <= s->stages[index - 1].defenders) return "stage order";
    if (!inv_text(stage->shape, sizeof stage->shape, 0)) return "shape";
    if (stage->match_up != (strcmp(stage->shape, "match-up") == 0)) return "match_up";
    if (!inv_text(stage->call, sizeof stage->call, 1)) return "stage call";
    for (int i = 0; i < stage->defenders; i++) {
        const bw_spot *spot = &stage->spots[i];
        if (!inv_text(spot->id, sizeof spot->id, 0) || strlen(spot->id) > 3) return "spot id";
        if (!inv_text(spot->name, sizeof spot->name, 0)) return "spot name";
        if (!inv_text(spot->call, sizeof spot->call, 1)) return "spot call";
        if (!inv_place(s, spot->home)) return "home";
        if (spot->twin < -1 || spot->twin >= stage->defenders) return "spot twin";
        if (spot->twin >= 0 &&
            !inv_twin(spot->home, stage->spots[spot->twin].home, i, stage->spots[spot->twin].twin))
            return "spot twin's home";
        if (spot->derived && (spot->twin < 0 || stage->spots[spot->twin].derived))
            return "spot derived";
        for (int k = 0; k < i; k++) {
            if (strcmp(stage->spots[k].id, spot->id) == 0) return "spot id twice";
        }
    }
    const char *fault = inv_rule(s, stage);
    return fault ? fault : inv_pins(s, stage);
}

static inline const char *inv_late(const bw_scheme *s) {
    if (s->late_count < 0 || s->late_count > BW_MAX_LATE) return "late count";
    for (int i = 0; i < s->late_count; i++) {
        const bw_late *late = &s->late[i];
        if (!inv_text(late->role, sizeof late->role, 0)) return "role";
        if (!inv_range(late->behind, 0, 100 * BW_METRES_PER_YARD + 1e-4)) return "behind";
        if (late->take_count < 0 || late->take_count > BW_MAX_SPOTS) return "take count";
        for (int t = 0; t < late->take_count; t++) {
            int found = 0;
            for (int g = 0; g < s->stage_count; g++)
                found |= bw_stage_spot(&s->stages[g], late->takes[t]) >= 0;
            if (!found) return "takes a spot no stage has";
        }
    }
    return NULL;
}

static inline const char *inv_sets(const bw_scheme *s) {
    if (s->set_count < 0 || s->set_count > BW_MAX_SETS) return "set count";
    for (int i = 0; i < s->set_count; i++) {
        const bw_set *set = &s->sets[i];
        if (!inv_text(set->id, sizeof set->id, 0)) return "set id";
        if (!inv_text(set->name, sizeof set->name, 0)) return "set name";
        if (set->count < 3 || set->count > BW_MAX_ATTACKERS) return "attackers in a set";
        for (int k = 0; k < set->count; k++) {
            if (!inv_place(s, set->at[k])) return "attacker's place";
        }
        for (int k = 0; k < i; k++) {
            if (strcmp(s->sets[k].id, set->id) == 0) return "set id twice";
        }
    }
    return NULL;
}

static inline const char *inv_lessons(const bw_scheme *s) {
    if (s->lesson_count < 0 || s->lesson_count > BW_MAX_LESSONS) return "lesson count";
    for (int i = 0; i < s->lesson_count; i++) {
        const bw_lesson *lesson = &s->lessons[i];
        if (!inv_text(lesson->id, sizeof lesson->id, 0)) return "lesson id";
        if (!inv_text(lesson->name, sizeof lesson->name, 0)) return "lesson name";
        if (bw_scheme_stage(s, lesson->defenders) < 0) return "lesson's stage";
        if (lesson->stop_count < 1 || lesson->stop_count > BW_MAX_STOPS) return "stop count";
        for (int k = 0; k < lesson->stop_count; k++) {
            const bw_stop *stop = &lesson->stops[k];
            if (stop->at_landmark && (stop->landmark < 0 || stop->landmark >= s->landmark_count))
                return "stop's landmark";
            if (!inv_place(s, stop->ball)) return "stop's place";
            if (!inv_range(stop->pause, 0, 60)) return "pause";
            if (!inv_text(stop->caption, sizeof stop->caption, 1)) return "caption";
        }
        for (int k = 0; k < i; k++) {
            if (strcmp(s->lessons[k].id, lesson->id) == 0) return "lesson id twice";
        }
    }
    return NULL;
}

/// What is wrong with a scheme, in a word or two, or NULL.
static inline const char *scheme_fault(const bw_scheme *s) {
    if (s->field < 0 || s->field >= bw_field_count()) return "field";
    if (s->level < 0 || s->level >= bw_level_count()) return "level";
    if (s->units != BW_YARDS && s->units != BW_METRES) return "units";
    if (s->lead != BW_RIGHT && s->lead != BW_LEFT) return "lead";
    if (!inv_text(s->id, sizeof s->id, 1) || !inv_text(s->name, sizeof s->name, 0) ||
        !inv_text(s->team, sizeof s->team, 1) || !inv_text(s->notes, sizeof s->notes, 1))
        return "head";
    if (s->stage_count < 1 || s->stage_count > BW_MAX_STAGES) return "stage count";
    const char *fault = inv_landmarks(s);
    for (int g = 0; !fault && g < s->stage_count; g++)
        fault = inv_stage(s, g);
    if (!fault) fault = inv_late(s);
    if (!fault) fault = inv_sets(s);
    return fault ? fault : inv_lessons(s);
}

#endif
