/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "scheme/knob.h"

static const bw_knob knobs[BW_KNOBS] = {
    {"pickup", "how far from the goal the ball is met straight in front", 4, 25, true},
    {"cushion", "gap the man on the ball leaves to it", 0, 6, true},
    {"shift", "share of the ball's sideways move the unit makes", 0, 1, false},
    {"soft", "how much nearer the goal the ball is met on the wings", 0, 1, false},
    {"area", "how far from his place a man looks for an attacker", 0, 10, true},
    {"pull", "share of the way he shades to that attacker", 0, 1, false},
};

const bw_knob *bw_knob_at(int index) {
    BW_ASSERT(index >= 0 && index < BW_KNOBS);
    return &knobs[index];
}

double *bw_knob_in(bw_rule *rule, int index) {
    double *const places[BW_KNOBS] = {&rule->pickup, &rule->cushion, &rule->shift,
                                      &rule->soft,   &rule->area,    &rule->pull};
    BW_ASSERT(index >= 0 && index < BW_KNOBS);
    return places[index];
}
