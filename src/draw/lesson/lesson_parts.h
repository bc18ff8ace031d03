/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The two halves of a film's picture. Private to the lesson film.
#ifndef BW_DRAW_LESSON_LESSON_PARTS_H
#define BW_DRAW_LESSON_LESSON_PARTS_H

#include "draw/lesson/lesson_ready.h"
#include "draw/view.h"

/// Draws the chart of a moment into the view's box.
void bw_lesson_chart(const bw_lesson_film *film, const bw_walk_moment *moment, const bw_view *view,
                     bw_ink *ink);

/// Whether he is said to be late: he will be when the ball is there.
bool bw_walker_late(const bw_walker *man);

/// What stands beside the chart, in `box`.
void bw_lesson_panel(const bw_lesson_film *film, const bw_walk_moment *moment, bw_box box,
                     bw_ink *ink);
void bw_lesson_title(const bw_lesson_film *film, bw_box box, bw_ink *ink);
void bw_lesson_end(const bw_lesson_film *film, bw_box box, bw_ink *ink);

#endif
