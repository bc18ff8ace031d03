/* SPDX-License-Identifier: GPL-3.0-or-later */
/// One chart with people on it: the field, the unit for one ball position, where its men came from,
/// how the ball got there, and the words beside them.
#ifndef BW_DRAW_SCENE_H
#define BW_DRAW_SCENE_H

#include "core/shape.h"
#include "draw/danger.h"
#include "draw/ink.h"
#include "draw/marks.h"
#include "draw/view.h"

/// What stands beside each defender's disc.
typedef enum bw_words_beside {
    BW_BESIDE_NOTHING,
    BW_BESIDE_DUTY, ///< the word for his duty
    BW_BESIDE_NAME  ///< the spot's name
} bw_words_beside;

/// Positions in metres. Pointers may be NULL where it says so; nothing is kept.
typedef struct bw_scene {
    const bw_scheme *scheme;
    int stage;                  ///< index in scheme->stages
    const bw_station *stations; ///< one for each spot
    bool duties;                ///< show edge patterns (false: homes, where nobody has a duty)
    bw_words_beside beside;
    const bw_vec *from;      ///< where each man was: a faint ghost and run; NULL: none
    bool from_soft;          ///< runs in the second rank (from home), else as ordered runs
    const bw_vec *ball;      ///< NULL: no ball
    const bw_vec *ball_from; ///< NULL, or the ball came by a pass from here
    int order;               ///< number on that pass; 0: none
    const bw_vec *attackers; ///< may be NULL with attacker_count 0
    int attacker_count;
    const bw_danger *danger; ///< NULL: no danger surface
} bw_scene;

/// The unit at home, with the spots' names: `homes` is filled in and must live as long as the scene.
bw_scene bw_scene_homes(const bw_scheme *scheme, int stage, bw_station homes[BW_MAX_SPOTS]);

/// Draws the chart into the view's box with its border. Returns how many labels could not be kept
/// clear of something.
int bw_draw_scene(bw_ink *ink, const bw_scene *scene, const bw_view *view, bw_mark_size size,
                  bool figures);

#endif
