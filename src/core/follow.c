/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/follow.h"

#include "core/ground.h"

/// A man this near his place and this slow stands on it, m and m/s.
static const double there = 0.05;
static const double slow = 0.2;
/// Nearer than this he is where he belongs, m.
static const double close = 0.15;

bool bw_follow(bw_legs legs, bw_body *body, bw_vec *effort, bw_vec place) {
    *body = bw_advance(legs, *body, *effort, BW_FOLLOW_STEP);
    if (bw_distance(body->at, place) <= there && bw_length(body->velocity) <= slow) {
        *body = (bw_body){place, bw_v(0, 0)};
        *effort = bw_v(0, 0);
        return false;
    }
    *effort = bw_effort_toward(legs, *body, place, BW_HORIZON);
    return true;
}

double bw_follow_needs(bw_legs legs, bw_body body, bw_vec place, double unseen) {
    if (bw_distance(body.at, place) < close) return 0;
    return unseen + bw_arrive(legs, body, place, BW_HOLD_FROM);
}

int bw_follow_delay(const bw_level *level, int attackers, int defenders) {
    const double men = defenders;
    const double choices = (attackers > 0 ? attackers : men + 1) / men;
    return (int)(bw_reaction(level, choices) / BW_FOLLOW_STEP + 0.5);
}
