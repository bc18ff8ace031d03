/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Homes and pins where nobody can or should stand, and the things a document names that are not in
/// reach: landmarks on top of each other, late men with nothing to take.
#include "scheme/lint_part.h"

/// A step over the line is no fault: this far inside the crease is.
static const double inside_crease = 0.5 * BW_METRES_PER_YARD;

/// Landmarks nearer than this look like one on paper and on the field.
static const double one_place = 1.0 * BW_METRES_PER_YARD;

typedef enum place_kind { GOOD, OFF_FIELD, IN_GOAL, IN_CREASE } place_kind;

static place_kind kind_of(const bw_field *field, bw_vec p) {
    if (!bw_field_contains(field, p)) return OFF_FIELD;
    if (bw_abs(p.x) < field->goal / 2 && p.y <= 0 && p.y > -field->goal_depth) return IN_GOAL;
    if (bw_length(p) < field->crease - inside_crease) return IN_CREASE;
    return GOOD;
}

/// One finding about a spot; `landmark` is -1 for its home.
static void say(bw_lint *lint, place_kind kind, int landmark, int spot) {
    bw_finding *f = bw_lint_begin(lint, kind == IN_CREASE ? BW_WARNING : BW_ERROR);
    if (landmark < 0) {
        char room[BW_POINTER_SIZE];
        bw_text part = bw_text_in(room, sizeof room);
        bw_put(&part, "/spots/");
        bw_put_int(&part, spot);
        bw_put(&part, "/home");
        bw_lint_point(lint, f, room);
    } else {
        bw_lint_point_spot(lint, f, landmark, spot);
    }
    bw_text t = bw_lint_message(f);
    bw_put(&t, "The spot \"");
    bw_put(&t, bw_lint_spot_name(lint, spot));
    bw_put(&t, kind == OFF_FIELD ? "\" is off the field"
                                 : (kind == IN_GOAL ? "\" is inside the goal"
                                                    : "\" stands well inside the crease"));
    if (landmark >= 0) bw_lint_put_ball(lint, &t, landmark);
    bw_put_char(&t, '.');
    if (kind == OFF_FIELD) {
        bw_lint_remedy(f, "Move him inside the lines.");
        return;
    }
    bw_text remedy = bw_text_in(f->remedy, sizeof f->remedy);
    bw_put(&remedy, "Move him at least ");
    bw_say_length(lint->scheme->units, lint->field->crease, &remedy);
    bw_put(&remedy, " from the goal's centre, where the crease ends.");
}

void bw_lint_places(bw_lint *lint) {
    const bw_stage *stage = bw_lint_stage(lint);
    for (int s = 0; s < stage->defenders; s++) {
        place_kind kind = kind_of(lint->field, stage->spots[s].home);
        if (kind != GOOD && !stage->spots[s].derived) say(lint, kind, -1, s);
    }
    for (int l = 0; l < lint->scheme->landmark_count; l++) {
        for (int s = 0; s < stage->defenders; s++) {
            if (stage->pinned[l][s] != 1) continue;
            place_kind kind = kind_of(lint->field, stage->pins[l][s]);
            if (kind != GOOD) say(lint, kind, l, s);
        }
    }
}

void bw_lint_landmarks(bw_lint *lint) {
    const bw_scheme *scheme = lint->scheme;
    for (int l = 0; l < scheme->landmark_count; l++) {
        const bw_landmark *a = &scheme->landmarks[l];
        if (a->derived) continue;
        for (int k = 0; k < l; k++) {
            const bw_landmark *b = &scheme->landmarks[k];
            if (bw_distance(a->at, b->at) >= one_place) continue;
            bw_finding *f = bw_lint_begin(lint, BW_WARNING);
            char room[BW_POINTER_SIZE];
            bw_text part = bw_text_in(room, sizeof room);
            bw_put(&part, "/landmarks/");
            bw_put_int(&part, l);
            bw_lint_point(lint, f, room);
            bw_text t = bw_lint_message(f);
            bw_put(&t, "The landmarks \"");
            bw_put(&t, b->id);
            bw_put(&t, "\" and \"");
            bw_put(&t, a->id);
            bw_put(&t, "\" are ");
            bw_say_length(lint->scheme->units, bw_distance(a->at, b->at), &t);
            bw_put(&t, " apart, too near to tell one from the other.");
            bw_lint_remedy(f, "Move one of them, or leave one out.");
        }
    }
}

/// Whether the stage this late man completes has one of the spots he may take.
static bool finds_place(const bw_stage *stage, const bw_late *late) {
    for (int k = 0; k < late->take_count; k++) {
        if (bw_stage_spot(stage, late->takes[k]) >= 0) return true;
    }
    return late->take_count == 0;
}

void bw_lint_late(bw_lint *lint) {
    const bw_scheme *scheme = lint->scheme;
    if (scheme->stage_count == 0) return;
    for (int i = 0; i < scheme->late_count; i++) {
        // The first late man completes the stage one bigger than the smallest, and so on.
        int defenders = scheme->stages[0].defenders + 1 + i;
        int stage = bw_scheme_stage(scheme, defenders);
        if (stage < 0 || finds_place(&scheme->stages[stage], &scheme->late[i])) continue;
        bw_finding *f = bw_lint_begin(lint, BW_WARNING);
        char room[BW_POINTER_SIZE];
        bw_text part = bw_text_in(room, sizeof room);
        bw_put(&part, "/late/");
        bw_put_int(&part, i);
        bw_put(&part, "/takes");
        bw_lint_point(lint, f, room);
        bw_text t = bw_lint_message(f);
        bw_put(&t, "The ");
        bw_put(&t, scheme->late[i].role);
        bw_put(&t, " makes the stage ");
        bw_put(&t, scheme->stages[stage].shape);
        bw_put(&t, " but takes no spot that it has.");
        bw_lint_remedy(f, "Name one of that stage's spots in \"takes\", or say \"match\".");
    }
}
