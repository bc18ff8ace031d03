/* SPDX-License-Identifier: GPL-3.0-or-later */
/// One record a line, so that two versions of a scheme compare well line by line.
#include "scheme/write.h"
#include "core/field.h"
#include "core/json.h"
#include "core/level.h"
#include "scheme/rule_param.h"
#include "scheme/sides.h"

enum { PLACES = 4 };

typedef struct writing {
    const bw_scheme *scheme;
    bw_text *out;
    double per; ///< metres in the file's unit
} writing;

/// "key": before a value.
static void put_key(bw_text *out, const char *key) {
    bw_put_quoted(out, key);
    bw_put(out, ": ");
}

static void put_pair(bw_text *out, const char *key, const char *value) {
    put_key(out, key);
    bw_put_quoted(out, value);
}

static void put_length(const writing *w, double metres) {
    bw_put_number(w->out, metres / w->per, PLACES);
}

static void put_place(const writing *w, bw_vec at) {
    bw_put_char(w->out, '[');
    put_length(w, at.x);
    bw_put(w->out, ", ");
    put_length(w, at.y);
    bw_put_char(w->out, ']');
}

/// What stands between one record and the next: a comma except before the first, and a fresh line.
static void put_line(bw_text *out, bool first, int indent) {
    if (!first) bw_put_char(out, ',');
    bw_put_char(out, '\n');
    for (int i = 0; i < indent; i++)
        bw_put_char(out, ' ');
}

/// Whether a place is left out for its twin's: the twin must keep a place of its own.
static bool follows(int derived, int index, int twin, int twin_derived) {
    return derived && twin >= 0 && twin != index && !twin_derived;
}

/// A name or call, left out where the reader would give the same from the twin.
static void put_follower(bw_text *out, const char *key, const char *text, const char *twin_text) {
    char other[BW_NAME_SIZE];
    if (bw_other_side(twin_text, other, sizeof other) && bw_same(other, text)) return;
    bw_put(out, ", ");
    put_pair(out, key, text);
}

static void put_landmarks(const writing *w) {
    bw_text *out = w->out;
    for (int i = 0; i < w->scheme->landmark_count; i++) {
        const bw_landmark *landmark = &w->scheme->landmarks[i];
        const bw_landmark *twin = &w->scheme->landmarks[landmark->twin < 0 ? i : landmark->twin];
        put_line(out, i == 0, 4);
        bw_put_char(out, '{');
        put_pair(out, "id", landmark->id);
        if (follows(landmark->derived, i, landmark->twin, twin->derived)) {
            put_follower(out, "name", landmark->name, twin->name);
            bw_put(out, ", ");
            put_pair(out, "mirror_of", twin->id);
        } else {
            bw_put(out, ", ");
            put_pair(out, "name", landmark->name);
            bw_put(out, ", \"at\": ");
            put_place(w, landmark->at);
        }
        bw_put_char(out, '}');
    }
}

static void put_spots(const writing *w, const bw_stage *stage) {
    bw_text *out = w->out;
    for (int s = 0; s < stage->defenders; s++) {
        const bw_spot *spot = &stage->spots[s];
        const bw_spot *twin = &stage->spots[spot->twin < 0 ? s : spot->twin];
        put_line(out, s == 0, 8);
        bw_put_char(out, '{');
        put_pair(out, "id", spot->id);
        if (follows(spot->derived, s, spot->twin, twin->derived)) {
            put_follower(out, "name", spot->name, twin->name);
            bw_put(out, ", ");
            put_pair(out, "mirror_of", twin->id);
            put_follower(out, "call", spot->call, twin->call);
        } else {
            bw_put(out, ", ");
            put_pair(out, "name", spot->name);
            bw_put(out, ", \"home\": ");
            put_place(w, spot->home);
            if (spot->call[0]) {
                bw_put(out, ", ");
                put_pair(out, "call", spot->call);
            }
        }
        bw_put_char(out, '}');
    }
}

static void put_rule(const writing *w, const bw_stage *stage) {
    const bw_rule *rule = &stage->rule;
    bw_text *out = w->out;
    bw_rule copy = *rule;
    for (int i = 0; i < BW_RULE_PARAM_COUNT; i++) {
        const bw_rule_param_id id = (bw_rule_param_id)i;
        const bw_rule_param *param = bw_rule_param_at(id);
        if (!param->whole) continue;
        if (i > 0) bw_put(out, ", ");
        put_key(out, param->key);
        const double value = *bw_rule_param_in(&copy, id);
        if (param->length)
            put_length(w, value);
        else
            bw_put_number(out, value, PLACES);
    }
    put_line(out, false, 8);
    bw_put(out, " \"hold_behind\": ");
    bw_put(out, rule->hold_behind ? "true" : "false");
    bw_put(out, ", \"hold_at\": ");
    put_place(w, rule->hold_at);
    bw_put(out, ", \"crease_at\": ");
    put_place(w, rule->crease_at);
    bw_put(out, ", \"crease\": ");
    bw_put_quoted(out, rule->crease == BW_CREASE_FARTHEST ? "farthest"
                       : rule->crease == BW_CREASE_NONE   ? "none"
                                                          : stage->spots[rule->crease].id);
}

/// Pins the coach gave; those that follow by mirror are left out again.
static void put_pins(const writing *w, const bw_stage *stage) {
    bw_text *out = w->out;
    bool first_landmark = true;
    for (int l = 0; l < w->scheme->landmark_count; l++) {
        bool first_spot = true;
        for (int s = 0; s < stage->defenders; s++) {
            if (stage->pinned[l][s] != 1) continue;
            if (first_spot) {
                if (first_landmark) bw_put(out, ",\n      \"pins\": {");
                put_line(out, first_landmark, 8);
                put_key(out, w->scheme->landmarks[l].id);
            }
            bw_put(out, first_spot ? "{" : ", ");
            put_key(out, stage->spots[s].id);
            put_place(w, stage->pins[l][s]);
            first_spot = first_landmark = false;
        }
        if (!first_spot) bw_put_char(out, '}');
    }
    if (!first_landmark) bw_put(out, "\n      }");
}

static void put_stages(const writing *w) {
    bw_text *out = w->out;
    for (int g = 0; g < w->scheme->stage_count; g++) {
        const bw_stage *stage = &w->scheme->stages[g];
        put_line(out, g == 0, 4);
        bw_put(out, "{\n      \"defenders\": ");
        bw_put_int(out, stage->defenders);
        bw_put(out, ", ");
        put_pair(out, "shape", stage->shape);
        if (stage->call[0]) {
            bw_put(out, ", ");
            put_pair(out, "call", stage->call);
        }
        bw_put(out, ",\n      \"spots\": [");
        put_spots(w, stage);
        bw_put(out, "\n      ],\n      \"rule\": {");
        put_rule(w, stage);
        bw_put_char(out, '}');
        put_pins(w, stage);
        bw_put(out, "\n    }");
    }
}

static void put_late(const writing *w) {
    bw_text *out = w->out;
    for (int i = 0; i < w->scheme->late_count; i++) {
        const bw_late *late = &w->scheme->late[i];
        put_line(out, i == 0, 4);
        bw_put_char(out, '{');
        put_pair(out, "role", late->role);
        bw_put(out, ", \"behind\": ");
        put_length(w, late->behind);
        bw_put(out, ", \"takes\": ");
        if (late->take_count == 0) bw_put(out, "\"match\"");
        for (int t = 0; t < late->take_count; t++) {
            bw_put(out, t == 0 ? "[" : ", ");
            bw_put_quoted(out, late->takes[t]);
        }
        bw_put(out, late->take_count == 0 ? "}" : "]}");
    }
}

static void put_sets(const writing *w) {
    bw_text *out = w->out;
    for (int i = 0; i < w->scheme->set_count; i++) {
        const bw_set *set = &w->scheme->sets[i];
        put_line(out, i == 0, 4);
        bw_put_char(out, '{');
        put_pair(out, "id", set->id);
        bw_put(out, ", ");
        put_pair(out, "name", set->name);
        bw_put(out, ", \"at\": [");
        for (int a = 0; a < set->count; a++) {
            if (a > 0) bw_put(out, ", ");
            put_place(w, set->at[a]);
        }
        bw_put(out, "]}");
    }
}

static void put_stop(const writing *w, const bw_stop *stop) {
    bw_put(w->out, "{\"ball\": ");
    if (stop->at_landmark)
        bw_put_quoted(w->out, w->scheme->landmarks[stop->landmark].id);
    else
        put_place(w, stop->ball);
    bw_put(w->out, ", \"pause\": ");
    bw_put_number(w->out, stop->pause, PLACES);
    if (stop->caption[0]) {
        bw_put(w->out, ", ");
        put_pair(w->out, "caption", stop->caption);
    }
    bw_put_char(w->out, '}');
}

static void put_lessons(const writing *w) {
    bw_text *out = w->out;
    for (int i = 0; i < w->scheme->lesson_count; i++) {
        const bw_lesson *lesson = &w->scheme->lessons[i];
        put_line(out, i == 0, 4);
        bw_put_char(out, '{');
        put_pair(out, "id", lesson->id);
        bw_put(out, ", ");
        put_pair(out, "name", lesson->name);
        bw_put(out, ", \"stage\": ");
        bw_put_int(out, lesson->defenders);
        bw_put(out, ", \"stops\": [");
        for (int k = 0; k < lesson->stop_count; k++) {
            put_line(out, k == 0, 6);
            put_stop(w, &lesson->stops[k]);
        }
        bw_put(out, "\n    ]}");
    }
}

/// One list of the document: ,\n  "key": [ ... ].
static void put_list(const writing *w, const char *key, int count, void (*put)(const writing *)) {
    if (count == 0) return;
    put_line(w->out, false, 2);
    put_key(w->out, key);
    bw_put_char(w->out, '[');
    put(w);
    bw_put(w->out, "\n  ]");
}

static void put_member(const writing *w, const char *key, const char *value) {
    put_line(w->out, false, 2);
    put_pair(w->out, key, value);
}

void bw_scheme_write(const bw_scheme *scheme, bw_text *out) {
    const writing w = {scheme, out, bw_unit_length(scheme->units)};
    bw_put(out, "{\n  \"format\": \"breakwater-scheme\",\n  \"version\": 1");
    if (scheme->id[0]) put_member(&w, "id", scheme->id);
    put_member(&w, "name", scheme->name);
    if (scheme->team[0]) put_member(&w, "team", scheme->team);
    put_member(&w, "field", bw_field_at(scheme->field)->id);
    put_member(&w, "units", bw_unit_short(scheme->units));
    put_member(&w, "level", bw_level_at(scheme->level)->id);
    if (scheme->lead == BW_LEFT) put_member(&w, "lead", "left");
    put_list(&w, "landmarks", scheme->landmark_count, put_landmarks);
    put_list(&w, "stages", scheme->stage_count, put_stages);
    put_list(&w, "late", scheme->late_count, put_late);
    put_list(&w, "sets", scheme->set_count, put_sets);
    put_list(&w, "lessons", scheme->lesson_count, put_lessons);
    if (scheme->notes[0]) put_member(&w, "notes", scheme->notes);
    bw_put(out, "\n}\n");
}
