/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "scheme/twin.h"
#include "core/rule.h"

static bool images(bw_vec a, bw_vec b) {
    return a.x == -b.x && a.y == b.y;
}

void bw_find_twins(bw_scheme *scheme) {
    for (int i = 0; i < scheme->landmark_count; i++) {
        scheme->landmarks[i].twin = -1;
        for (int k = 0; k < scheme->landmark_count; k++) {
            if (images(scheme->landmarks[i].at, scheme->landmarks[k].at)) {
                scheme->landmarks[i].twin = k;
            }
        }
    }
    for (int g = 0; g < scheme->stage_count; g++) {
        bw_stage *stage = &scheme->stages[g];
        for (int i = 0; i < stage->defenders; i++) {
            stage->spots[i].twin = -1;
            for (int k = 0; k < stage->defenders; k++) {
                if (images(stage->spots[i].home, stage->spots[k].home)) stage->spots[i].twin = k;
            }
        }
    }
}

/// At a landmark on the centre line the unit leans to one side, so a pin there speaks for the man
/// named (core/shape.c finds his twin when the ball comes from the other side). The low pair holding
/// behind are the exception: they stand as images of each other.
static bool leans(const bw_stage *stage, bw_vec landmark, int spot) {
    if (landmark.x != 0) return false;
    bw_vec home[BW_MAX_SPOTS];
    int low[2];
    for (int s = 0; s < stage->defenders; s++)
        home[s] = stage->spots[s].home;
    bw_rule_low_pair(home, stage->defenders, low);
    bool holding = landmark.y < 0 && stage->rule.hold_behind && stage->spots[low[0]].twin == low[1];
    return !(holding && (spot == low[0] || spot == low[1]));
}

void bw_mirror_pins(const bw_scheme *scheme, bw_stage *stage) {
    for (int l = 0; l < scheme->landmark_count; l++) {
        int twin_l = scheme->landmarks[l].twin;
        if (twin_l < 0) continue;
        for (int s = 0; s < stage->defenders; s++) {
            int twin_s = stage->spots[s].twin;
            if (stage->pinned[l][s] != 1 || twin_s < 0 || stage->pinned[twin_l][twin_s]) continue;
            if (leans(stage, scheme->landmarks[l].at, s)) continue;
            stage->pinned[twin_l][twin_s] = 2;
            stage->pins[twin_l][twin_s] = bw_mirror(stage->pins[l][s]);
        }
    }
}
