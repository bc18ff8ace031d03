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
    const bool home = landmark < 0, off = kind == OFF_FIELD;
    bw_finding *f = bw_lint_begin(lint, kind == IN_CREASE ? BW_WARNING : BW_ERROR);
    if (home)
        bw_lint_point_to(lint, f, "/spots/", spot, "/home");
    else
        bw_lint_point_spot(lint, f, landmark, spot);
    bw_lint_say(lint, f,
                off               ? &bw_s_lint_off_field
                : kind == IN_GOAL ? &bw_s_lint_in_goal
                                  : &bw_s_lint_in_crease,
                off ? &bw_s_lint_off_field_mend : &bw_s_lint_in_crease_mend,
                bw_lint_as_spot("spot", lint, spot),
                bw_as_part("with_ball", home ? NULL : &bw_s_lint_with_ball),
                bw_lint_as_at("at", lint, home ? 0 : landmark),
                bw_as_length("crease", lint->field->crease));
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
            bw_lint_point_to(lint, f, "/landmarks/", l, "");
            bw_lint_say(lint, f, &bw_s_lint_one_place, &bw_s_lint_one_place_mend,
                        bw_as_word("earlier", b->id), bw_as_word("landmark", a->id),
                        bw_as_length("apart", bw_distance(a->at, b->at)));
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
        bw_lint_point_to(lint, f, "/late/", i, "/takes");
        bw_lint_say(lint, f, &bw_s_lint_late_nowhere, &bw_s_lint_late_nowhere_mend,
                    bw_as_word("role", scheme->late[i].role),
                    bw_as_word("shape", scheme->stages[stage].shape));
    }
}
