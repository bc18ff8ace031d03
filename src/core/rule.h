/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The rule alone: from a few numbers to a place and a duty for every spot, before pins and
/// attackers. Works in the canonical frame, in which the ball is on the right (x >= 0); shape.c
/// mirrors in and out, which is what makes left and right exact images of each other.
#ifndef BW_CORE_RULE_H
#define BW_CORE_RULE_H

#include "core/scheme.h"

/// What the rule needs to know of a stage, in the canonical frame.
typedef struct bw_formation {
    int spots;
    bool match_up;
    const bw_rule *rule;
    bw_vec home[BW_MAX_SPOTS];
    double crease_x; ///< crease_at.x in this frame
    double keep_out; ///< metres from the goal's centre that belong to the goalkeeper
    int low_near;    ///< the one of the low pair on the ball's side
    int low_far;
} bw_formation;

/// One spot's place by the rule.
typedef struct bw_ruled {
    bw_vec at;
    bw_duty duty;
} bw_ruled;

/// Places of all unit->spots spots for a ball with ball.x >= 0. Ties are broken by where the homes
/// lie, never by the order of the spots.
void bw_rule_places(const bw_formation *unit, bw_vec ball, bw_ruled *out);

/// Where the man on the ball belongs: on the line from goal to ball, no farther out than the rule
/// meets it there, a cushion off the carrier, never behind the goal line.
bw_vec bw_rule_on_ball(const bw_rule *rule, bw_vec ball);

/// The two lowest homes, the wider first on a tie: indices into home, [0] the one away from the ball,
/// [1] the one on its side.
void bw_rule_low_pair(const bw_vec *home, int spots, int low[2]);

#endif
