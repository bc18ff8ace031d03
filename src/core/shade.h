/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What attackers change: zone men shade toward one who stands in their area; with even numbers
/// every man takes one. Canonical frame (ball on the right), like rule.h.
#ifndef BW_CORE_SHADE_H
#define BW_CORE_SHADE_H

#include "core/rule.h"
#include "core/station.h"

/// Zone: moves each off-ball station toward at most one attacker within the rule's area of it, by a
/// bounded share, the crease man choosing first, no attacker twice. Men holding posts stay.
void bw_shade_zone(const bw_formation *unit, bw_vec ball, const bw_vec *attackers, int count,
                   bw_station *stations);

/// Man to man: the pairing whose worst run from home is least, then the least sum; each man goal side
/// of his. From home, not from where the ball has them: a pairing must not change with every pass.
/// Spots without an attacker keep their place by the rule; of more attackers than men the farthest from
/// the goal go free, but never the one with the ball.
void bw_shade_match(const bw_formation *unit, bw_vec ball, const bw_vec *attackers, int count,
                    bw_station *stations);

/// Where a man who has an attacker stands: goal side of him, tighter the nearer the ball.
bw_vec bw_mark_place(bw_vec attacker, bw_vec ball, bool has_ball);

/// The same while the attacker does not have the ball. Inline, for every man of every step of a break
/// asks: a tenth of a forecast's time. Share of the way to the goal: common practice, no source.
static inline bw_vec bw_sag_place(bw_vec attacker, bw_vec ball) {
    const double sag = bw_clamp(0.10 + 0.018 * bw_distance(attacker, ball), 0.10, 0.42);
    return bw_lerp(attacker, bw_v(0, 0), sag);
}

#endif
