/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "scheme/rotation.h"

#include "core/field.h"
#include "core/graph.h"
#include "core/ground.h"

static const double shot_next = 9 * BW_METRES_PER_YARD;

bool bw_shot_next(bw_vec ball) {
    return ball.y >= 0 && bw_length(ball) < shot_next;
}

double bw_goal_clearance(bw_vec a, bw_vec b) {
    const bw_vec along = bw_sub(b, a);
    const double l2 = bw_length2(along);
    const double t = l2 > 0 ? bw_clamp(-bw_dot(a, along) / l2, 0, 1) : 0;
    return bw_length(bw_lerp(a, b, t));
}

void bw_rotations_of(const bw_scheme *scheme, bw_rotations *out) {
    *out = (bw_rotations){0};
    if (scheme->landmark_count == 0) return;
    const double half_goal = bw_field_at(scheme->field)->goal / 2;
    bw_vec at[BW_MAX_LANDMARKS];
    for (int l = 0; l < scheme->landmark_count; l++)
        at[l] = scheme->landmarks[l].at;
    bw_graph graph;
    bw_graph_build(at, scheme->landmark_count, BW_NEIGHBOURS_WITHIN, &graph);
    for (int a = 0; a < scheme->landmark_count; a++) {
        for (int b = 0; b < scheme->landmark_count; b++) {
            if (a == b || bw_shot_next(at[a]) || bw_shot_next(at[b])) continue;
            if (bw_goal_clearance(at[a], at[b]) < half_goal) continue;
            out->rotation[a][b] = graph.linked[a][b];
            out->pass[a][b] = graph.linked[a][b] || bw_distance(at[a], at[b]) <= BW_LONGEST_PASS;
            out->count += out->rotation[a][b];
        }
    }
}
