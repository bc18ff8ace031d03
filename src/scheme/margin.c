/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "scheme/margin.h"
#include "core/maths.h"
#include "core/sprint.h"
#include "scheme/lint_part.h"

static void look(const bw_lint *lint, bw_legs legs, int from, int to, int spot, bw_margin *m) {
    const double d =
        bw_distance(lint->at[from][spot].at, lint->at[to][spot].at) - lint->level->stick_reach;
    if (d <= 0) return;
    const double spare = bw_lint_time_for(lint, from, to, spot) - bw_sprint_time(legs, d);
    m->mean += (spare - m->mean) / ++m->rotations;
    m->late += spare < 0;
    if (m->from >= 0 && spare >= m->worst) return;
    m->worst = spare;
    m->from = from;
    m->to = to;
}

void bw_margins(const bw_scheme *scheme, int stage, bw_legs legs, bw_margin *out) {
    bw_lint lint = {.scheme = scheme,
                    .level = bw_level_at(scheme->level),
                    .field = bw_field_at(scheme->field),
                    .stage = stage};
    for (int s = 0; s < BW_MAX_SPOTS; s++)
        out[s] = (bw_margin){.from = -1, .to = -1};
    if (scheme->stages[stage].match_up) return;
    if (legs.vmax <= 0) legs = lint.level->defender;
    bw_rotations_of(scheme, &lint.rotations);
    bw_lint_stage_ready(&lint);
    for (int from = 0; from < scheme->landmark_count; from++) {
        for (int to = 0; to < scheme->landmark_count; to++) {
            if (!lint.rotations.rotation[from][to]) continue;
            for (int s = 0; s < scheme->stages[stage].defenders; s++)
                look(&lint, legs, from, to, s, &out[s]);
        }
    }
}
