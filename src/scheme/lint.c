/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The lint: which parts look at what, and the writing they share.
#include "scheme/lint.h"

#include "core/ball.h"
#include "scheme/caption.h"
#include "scheme/lint_part.h"

/// Attackers a man is thought to choose between: six against those who are in.
static const double attackers = 6;

bw_finding *bw_lint_begin(bw_lint *lint, bw_severity severity) {
    bw_finding *f = lint->count < lint->room ? &lint->findings[lint->count] : &lint->spare;
    lint->count++;
    *f = (bw_finding){.severity = severity};
    return f;
}

/// "/" and "~" are written "~1" and "~0" in a JSON Pointer.
static void put_token(bw_text *out, const char *token) {
    bw_put_char(out, '/');
    for (; *token; token++) {
        if (*token == '~')
            bw_put(out, "~0");
        else if (*token == '/')
            bw_put(out, "~1");
        else
            bw_put_char(out, *token);
    }
}

void bw_lint_point(const bw_lint *lint, bw_finding *finding, const char *part) {
    bw_text out = bw_text_in(finding->pointer, sizeof finding->pointer);
    if (lint->stage >= 0) {
        bw_put(&out, "/stages/");
        bw_put_int(&out, lint->stage);
    }
    bw_put(&out, part);
}

void bw_lint_point_spot(const bw_lint *lint, bw_finding *finding, int landmark, int spot) {
    const bw_stage *stage = bw_lint_stage(lint);
    char room[BW_POINTER_SIZE];
    bw_text part = bw_text_in(room, sizeof room);
    if (!stage->pinned[landmark][spot]) {
        bw_put(&part, "/spots/");
        bw_put_int(&part, spot);
    } else {
        // A pin that follows by mirror is changed where its twin is given.
        bool derived = stage->pinned[landmark][spot] == 2;
        int l = derived ? lint->scheme->landmarks[landmark].twin : landmark;
        int s = derived ? stage->spots[spot].twin : spot;
        bw_put(&part, "/pins");
        put_token(&part, lint->scheme->landmarks[l].id);
        put_token(&part, stage->spots[s].id);
    }
    bw_lint_point(lint, finding, room);
}

void bw_lint_point_to(const bw_lint *lint, bw_finding *finding, const char *list, int index,
                      const char *member) {
    char room[BW_POINTER_SIZE];
    bw_text part = bw_text_in(room, sizeof room);
    bw_put(&part, list);
    bw_put_int(&part, index);
    bw_put(&part, member);
    bw_lint_point(lint, finding, room);
}

void bw_lint_say_with(const bw_lint *lint, bw_finding *finding, const bw_sentence *sentence,
                      const bw_sentence *mend, const bw_arg *args) {
    bw_text t = bw_text_in(finding->message, sizeof finding->message);
    bw_put_sentence_with(&t, lint->voice, sentence, args);
    t = bw_text_in(finding->remedy, sizeof finding->remedy);
    bw_put_sentence_with(&t, lint->voice, mend, args);
}

bw_arg bw_lint_as_spot(const char *name, const bw_lint *lint, int spot) {
    return bw_as_word(name, bw_lint_stage(lint)->spots[spot].name);
}

bw_arg bw_lint_as_at(const char *name, const bw_lint *lint, int landmark) {
    return bw_as_at(name, lint->scheme, lint->scheme->landmarks[landmark].at);
}

bool bw_lint_told(const bw_lint *lint, int landmark) {
    int twin = lint->scheme->landmarks[landmark].twin;
    return lint->symmetric && twin >= 0 && twin < landmark;
}

bw_arg bw_lint_as_sides(const char *name, const bw_lint *lint, int landmark) {
    const bool same = lint->symmetric && lint->scheme->landmarks[landmark].twin != landmark;
    return bw_as_part(name, same ? &bw_s_lint_other_side : NULL);
}

bool bw_lint_shot_next(const bw_lint *lint, int landmark) {
    return bw_shot_next(lint->scheme->landmarks[landmark].at);
}

double bw_lint_time(const bw_lint *lint, bw_vec from, bw_vec to) {
    const bw_level *level = lint->level;
    double reaction = bw_reaction(level, attackers / bw_lint_stage(lint)->defenders);
    double flight = bw_ball_time(level->pass_speed, BW_BALL_DRAG, bw_distance(from, to));
    double carry = bw_max(bw_length(to) - BW_LINT_HOLE, 0) / level->carry_speed;
    return bw_max(level->release + flight + carry + level->shoot - reaction, 0);
}

static bool same_place(bw_vec a, bw_vec b) {
    return a.x == b.x && a.y == b.y;
}

static bool landmarks_symmetric(const bw_scheme *scheme) {
    for (int l = 0; l < scheme->landmark_count; l++) {
        int twin = scheme->landmarks[l].twin;
        if (twin < 0) return false;
        if (!same_place(scheme->landmarks[twin].at, bw_mirror(scheme->landmarks[l].at)))
            return false;
    }
    return true;
}

/// Pins of landmarks on the centre line speak for either side (core/shape.h) and are looked at there.
static bool pins_symmetric(const bw_scheme *scheme, const bw_stage *stage) {
    for (int l = 0; l < scheme->landmark_count; l++) {
        int other = scheme->landmarks[l].twin;
        if (other == l) continue;
        for (int s = 0; s < stage->defenders; s++) {
            int twin = stage->spots[s].twin;
            if (!stage->pinned[l][s] != !stage->pinned[other][twin]) return false;
            if (!stage->pinned[l][s]) continue;
            if (!same_place(stage->pins[other][twin], bw_mirror(stage->pins[l][s]))) return false;
        }
    }
    return true;
}

static bool stage_symmetric(const bw_scheme *scheme, const bw_stage *stage) {
    if (!landmarks_symmetric(scheme) || stage->rule.crease_at.x != 0) return false;
    for (int s = 0; s < stage->defenders; s++) {
        int twin = stage->spots[s].twin;
        if (twin < 0) return false;
        if (!same_place(stage->spots[twin].home, bw_mirror(stage->spots[s].home))) return false;
    }
    return pins_symmetric(scheme, stage);
}

void bw_lint_stage_ready(bw_lint *lint) {
    bw_plan_build(lint->scheme, lint->stage, &lint->plan);
    for (int l = 0; l < lint->scheme->landmark_count; l++)
        bw_where(&lint->plan, lint->scheme->landmarks[l].at, NULL, 0, lint->at[l]);
}

static void look_at_stage(bw_lint *lint, int stage) {
    lint->stage = stage;
    lint->symmetric = stage_symmetric(lint->scheme, bw_lint_stage(lint));
    bw_lint_words(lint);
    bw_lint_places(lint);
    // With men to mark, places follow the attackers; without them there is nothing to measure.
    if (bw_lint_stage(lint)->match_up) return;
    bw_lint_stage_ready(lint);
    bw_lint_cover(lint);
    bw_lint_runs(lint);
}

int bw_scheme_lint(const bw_scheme *scheme, bw_finding *findings, int room) {
    bw_lint lint = {.scheme = scheme,
                    .voice = bw_voice_of(scheme),
                    .level = bw_level_at(scheme->level),
                    .field = bw_field_at(scheme->field),
                    .findings = findings,
                    .room = room,
                    .stage = -1};
    bw_rotations_of(scheme, &lint.rotations);
    bw_lint_landmarks(&lint);
    for (int i = 0; i < scheme->stage_count; i++)
        look_at_stage(&lint, i);
    lint.stage = -1;
    bw_lint_late(&lint);
    bw_lint_lessons(&lint);
    return lint.count;
}
