/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A lesson as a film: a title card, the lesson at true speed, an end card, each moment a page of ink of
/// BW_FILM_WIDE by BW_FILM_TALL points. The chart stands on the left, beside it who does what, who is
/// late and the key, below it the caption of the stop the ball is at or going to. Nothing moves but the
/// ball, the men and their tethers. Where nobody moves two moments give the same ink.
#ifndef BW_DRAW_LESSON_LESSON_FILM_H
#define BW_DRAW_LESSON_LESSON_FILM_H

#include "core/text.h"
#include "draw/lesson/lesson_ready.h"

/// Seconds of the card before and of the card after.
#define BW_FILM_TITLE 2.5
#define BW_FILM_END 4.0

/// Enough for the captions of any lesson.
enum { BW_FILM_CAPTIONS = 96 * 1024, BW_FILM_CAPTION = 900 };

/// Makes a lesson of a valid scheme ready.
void bw_lesson_film_build(const bw_scheme *scheme, const bw_lesson *lesson, bw_lesson_film *film);

/// How long it lasts, cards included.
double bw_lesson_film_seconds(const bw_lesson_film *film);

/// The words of a stop: the coach's own, or made from the duties.
void bw_lesson_caption(const bw_lesson_film *film, int stop, bw_text *out);

/// The picture at `seconds`. BW_NO_ROOM: ink->need tells how many bytes it takes.
bw_status bw_lesson_film_page(const bw_lesson_film *film, double seconds, bw_ink *ink);

/// The same captions as a WebVTT file (W3C, WebVTT: The Web Video Text Tracks Format): one cue for
/// each stop, from when the ball leaves for it until it leaves it again. A stop without time has none.
void bw_lesson_film_captions(const bw_lesson_film *film, bw_text *out);

#endif
