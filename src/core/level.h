/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Level presets: legs, reaction time, release, passes and shots of an age. Every figure carries its
/// source or the word "assumed"; docs/model.md tells what they can and cannot support.
#ifndef BW_CORE_LEVEL_H
#define BW_CORE_LEVEL_H

#include "core/motion.h"

/// Seconds, metres, m/s.
typedef struct bw_level {
    const char *id;     ///< e.g. "high-school"
    const char *name;   ///< e.g. "high school"
    bw_legs defender;   ///< an unloaded defender facing the play
    bw_legs attacker;   ///< an attacker off the ball
    double carry_speed; ///< top speed with the ball, m/s
    double react_base;  ///< Hick: seconds before a man moves when he has one thing to watch
    double react_bit;   ///< Hick: seconds more for each doubling of the men he might take
    double release;     ///< catch to release of a pass, s
    double pass_speed;  ///< speed of a pass at release, m/s
    double shoot;       ///< catch to release of a shot, s
    double shot_speed;  ///< speed of a shot at release, m/s

    double shot_error;    ///< standard deviation of a shot's direction, each way, radians
    double keeper_cover;  ///< half-width the goalkeeper fills without moving, m
    double keeper_react;  ///< seconds after release before he moves
    double keeper_speed;  ///< speed of his stick and body to the ball, m/s
    double keeper_spread; ///< spread of his timing, s
    double keeper_read;   ///< share of shots he reads before release, [0, 1]

    double body_contest; ///< share of a shot's worth a man on the shooter takes away, [0, 1]
    double lane_contest; ///< share a man standing in the shot's lane takes away, [0, 1]
    double stick_reach;  ///< how far from a defender his stick still troubles a shot, m

    double pass_sure;  ///< chance that a short pass nobody troubles is thrown and caught, (0, 1]
    double pass_fall;  ///< loss of that chance for each metre beyond 8 m
    double pass_reach; ///< how far from his feet a defender picks a pass off, m
    double dodge_loss; ///< chance to lose the ball when a carry runs into a defender, [0, 1]

    double sharpness; ///< logit sharpness of a typical choice, per goal
    double keep;      ///< what keeping the ball seems worth to a typical carrier, goals
    double hurry;     ///< how fast what comes later loses worth to him, 1/s
    int look_ahead;   ///< further plies a typical carrier thinks through before he chooses, 0 or 1
    const char *sources; ///< one line per figure: where it comes from, or "assumed"
} bw_level;

int bw_level_count(void);
const bw_level *bw_level_at(int index);

/// Level with this identifier, or NULL.
const bw_level *bw_level_find(const char *id);

/// Seconds before a man starts to move when he has `choices` men he might take:
/// react_base + react_bit log2(choices), choices below 1 counting as 1. May be a mean, such as 1.5
/// attackers to a defender. Form: R. Hyman 1953.
double bw_reaction(const bw_level *level, double choices);

#endif
