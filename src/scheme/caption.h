/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Plain words made from duties and places. The same sentences serve the book, the board's buttons
/// and table, the lessons and the hand-out.
#ifndef BW_SCHEME_CAPTION_H
#define BW_SCHEME_CAPTION_H

#include "core/scheme.h"
#include "core/sentence.h"
#include "core/shape.h"

/// "3.5 yd right, 2.5 yd out": a place as a defender looking out from the goal would say it.
void bw_say_place(bw_units units, bw_vec at, bw_text *out);

/// "behind the goal", "left wing", ...: where the ball is, by the nearest landmark's name or by place.
void bw_say_ball(const bw_scheme *scheme, bw_vec ball, bw_text *out);

/// The same with the word it needs in a sentence: "behind the goal", "on the left wing".
void bw_say_at(const bw_scheme *scheme, bw_vec ball, bw_text *out);

/// These as what fills a place of a sentence.
bw_arg bw_as_ball(const char *name, const bw_scheme *scheme, bw_vec ball);
bw_arg bw_as_at(const char *name, const bw_scheme *scheme, bw_vec ball);
bw_arg bw_as_place(const char *name, bw_units units, bw_vec at);

/// A name as it stands at the head of a sentence: "Low left".
void bw_say_first(const char *name, bw_text *out);

/// What one spot does: "Low left holds at his post, 3.0 yd left, 1.5 yd out."
void bw_say_job(const bw_scheme *scheme, int stage, int spot, const bw_station *station,
                bw_text *out);

/// The same to the player himself, without his place: "hold your post, call “port low”". He calls his
/// word wherever he has ball, crease, post or man; next to the ball and away from it he need not.
void bw_say_your_job(const bw_scheme *scheme, int stage, int spot, const bw_station *station,
                     bw_vec ball, bw_text *out);

/// A line of a player's own page: "Ball behind the goal: hold your post, call “port low”."
void bw_say_you(const bw_scheme *scheme, int stage, int spot, const bw_station *station,
                bw_vec ball, bw_text *out);

/// The caption of a chart: "Ball behind the goal. The low pair hold. Top left has the crease. ..."
void bw_say_unit(const bw_scheme *scheme, int stage, const bw_station *stations, bw_vec ball,
                 bw_text *out);

#endif
