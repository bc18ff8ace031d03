/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "bench/plain_where.h"

enum { MOST_CORNERS = 2 * BW_MAX_SITES };

/// Farther than any site, so that a cell that reaches it is an open one.
static const double frame = 1e4; // metres

typedef struct corner {
    bw_vec at;
    int face; ///< site whose bisector carries the side from here to the next corner, -1 the frame
} corner;

/// Cuts a convex polygon with the half-plane nearer to the origin than to `site`.
static int clip(corner *polygon, int count, bw_vec site, int face) {
    corner kept[MOST_CORNERS];
    int n = 0;
    const double half = bw_length2(site) / 2;
    for (int i = 0; i < count; i++) {
        const corner a = polygon[i], b = polygon[(i + 1) % count];
        const double from = bw_dot(a.at, site) - half, to = bw_dot(b.at, site) - half;
        if (from <= 0) kept[n++] = a;
        if ((from < 0 && to > 0) || (from > 0 && to < 0))
            kept[n++] = (corner){bw_lerp(a.at, b.at, from / (from - to)), from < 0 ? face : a.face};
    }
    for (int i = 0; i < n; i++)
        polygon[i] = kept[i];
    return n;
}

static void weigh(const bw_sites *sites, bw_vec p, double *weight) {
    corner cell[MOST_CORNERS] = {
        {{-frame, -frame}, -1}, {{frame, -frame}, -1}, {{frame, frame}, -1}, {{-frame, frame}, -1}};
    int count = 4;
    for (int s = 0; s < sites->count; s++) {
        weight[s] = 0;
        count = clip(cell, count, bw_sub(sites->at[s], p), s);
    }
    double sum = 0;
    for (int i = 0; i < count; i++) {
        const int face = cell[i].face;
        if (face < 0) continue;
        const double side = bw_distance(cell[i].at, cell[(i + 1) % count].at);
        weight[face] += side / bw_distance(sites->at[face], p);
        sum += side / bw_distance(sites->at[face], p);
    }
    for (int s = 0; s < sites->count; s++)
        weight[s] /= sum;
}

static bool any_pin(const bw_stage *stage, int landmark) {
    for (int s = 0; s < stage->defenders; s++) {
        if (stage->pinned[landmark][s]) return true;
    }
    return false;
}

void plain_where(const bw_scheme *scheme, const bw_scheme *bare, int stage, bw_vec ball,
                 bw_station *out) {
    const bw_stage *pinned = &scheme->stages[stage];
    bw_plan by_rule, ready;
    bw_plan_build(bare, stage, &by_rule);
    bw_where(&by_rule, ball, NULL, 0, out);

    bw_plan_build(scheme, stage, &ready);
    if (ready.pin_sites == 0) return;
    double weight[BW_MAX_SITES];
    weigh(&ready.sites, ball, weight);
    for (int l = 0; l < scheme->landmark_count; l++) {
        if (!any_pin(pinned, l)) continue;
        bw_station there[BW_MAX_SPOTS];
        bw_where(&by_rule, scheme->landmarks[l].at, NULL, 0, there);
        for (int s = 0; s < pinned->defenders; s++) {
            if (!pinned->pinned[l][s]) continue;
            const bw_vec pull = bw_sub(pinned->pins[l][s], there[s].at);
            out[s].at = bw_add(out[s].at, bw_scale(pull, weight[l]));
        }
    }
    for (int s = 0; s < pinned->defenders; s++)
        out[s].at = bw_field_clamp(bw_field_at(scheme->field), out[s].at);
}
