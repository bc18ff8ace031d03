/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Level presets: how fast players of an age run, react, throw and shoot. Every figure carries its
/// source or the word "assumed"; docs/model.md tells what they can and cannot support.
#ifndef BW_CORE_LEVEL_H
#define BW_CORE_LEVEL_H

#include "core/motion.h"

/// Seconds, metres, m/s.
typedef struct bw_level {
    const char *id;      ///< e.g. "high-school"
    const char *name;    ///< e.g. "high school"
    bw_legs defender;    ///< an unloaded defender facing the play
    bw_legs attacker;    ///< an attacker off the ball
    double carry_speed;  ///< top speed with the ball, m/s
    double react_base;   ///< Hick: seconds before a man moves when he has one thing to watch
    double react_bit;    ///< Hick: seconds more for each doubling of the men he might take
    double release;      ///< catch to release of a pass, s
    double pass_speed;   ///< speed of a pass at release, m/s
    double shoot;        ///< catch to release of a shot, s
    double shot_speed;   ///< speed of a shot at release, m/s
    const char *sources; ///< one line per figure: where it comes from, or "assumed"
} bw_level;

int bw_level_count(void);
const bw_level *bw_level_at(int index);

/// Level with this identifier, or NULL.
const bw_level *bw_level_find(const char *id);

/// Seconds before a man starts to move when he has `choices` >= 1 men he might take:
/// react_base + react_bit log2(choices). Form: R. Hyman 1953.
double bw_reaction(const bw_level *level, int choices);

#endif
