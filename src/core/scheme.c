/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Look-ups in a scheme, the practice rule, and the mirror image.
#include "core/scheme.h"
#include "core/text.h"

int bw_scheme_stage(const bw_scheme *scheme, int defenders) {
    for (int i = 0; i < scheme->stage_count; i++) {
        if (scheme->stages[i].defenders == defenders) return i;
    }
    return -1;
}

int bw_scheme_landmark(const bw_scheme *scheme, const char *id) {
    for (int i = 0; i < scheme->landmark_count; i++) {
        if (bw_same(scheme->landmarks[i].id, id)) return i;
    }
    return -1;
}

int bw_scheme_lesson(const bw_scheme *scheme, const char *id) {
    for (int i = 0; i < scheme->lesson_count; i++) {
        if (bw_same(scheme->lessons[i].id, id)) return i;
    }
    return -1;
}

int bw_stage_spot(const bw_stage *stage, const char *id) {
    for (int i = 0; i < stage->defenders; i++) {
        if (bw_same(stage->spots[i].id, id)) return i;
    }
    return -1;
}

bw_vec bw_stop_ball(const bw_scheme *scheme, const bw_stop *stop) {
    return stop->at_landmark ? scheme->landmarks[stop->landmark].at : stop->ball;
}

const char *bw_duty_name(bw_duty duty) {
    static const char *const names[BW_DUTY_COUNT] = {"ball",     "adjacent", "crease",
                                                     "backside", "hold",     "man"};
    BW_ASSERT(duty < BW_DUTY_COUNT);
    return names[duty];
}

bw_rule bw_rule_default(void) {
    const double ONE = 1, YARDS = BW_METRES_PER_YARD;
    return (bw_rule){
#define RULE_NUMBER(ID, key, UNIT, usual, ...) .key = (usual)*UNIT,
#define RULE_PLACE(ID, key, side, usual, ...) .key.side = (usual)*YARDS,
#include "core/rule_params.def"
        .hold_behind = true,
        .crease = BW_CREASE_FARTHEST,
    };
}

static void mirror_stage(bw_stage *stage) {
    for (int s = 0; s < stage->defenders; s++)
        stage->spots[s].home = bw_mirror(stage->spots[s].home);
    for (int l = 0; l < BW_MAX_LANDMARKS; l++) {
        for (int s = 0; s < BW_MAX_SPOTS; s++) {
            if (stage->pinned[l][s]) stage->pins[l][s] = bw_mirror(stage->pins[l][s]);
        }
    }
    // hold_at is the right man's post and serves both sides; crease_at lies on the unit's own axis.
    stage->rule.crease_at = bw_mirror(stage->rule.crease_at);
}

void bw_scheme_mirror(const bw_scheme *scheme, bw_scheme *out) {
    *out = *scheme;
    out->lead = scheme->lead == BW_RIGHT ? BW_LEFT : BW_RIGHT;
    for (int i = 0; i < out->landmark_count; i++)
        out->landmarks[i].at = bw_mirror(out->landmarks[i].at);
    for (int i = 0; i < out->stage_count; i++)
        mirror_stage(&out->stages[i]);
    for (int i = 0; i < out->set_count; i++) {
        for (int k = 0; k < out->sets[i].count; k++)
            out->sets[i].at[k] = bw_mirror(out->sets[i].at[k]);
    }
    for (int i = 0; i < out->lesson_count; i++) {
        bw_lesson *lesson = &out->lessons[i];
        for (int k = 0; k < lesson->stop_count; k++) {
            if (!lesson->stops[k].at_landmark)
                lesson->stops[k].ball = bw_mirror(lesson->stops[k].ball);
        }
    }
}
