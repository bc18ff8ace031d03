/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What a quiz asks and answers, said to the player. The same words stand on the hand-out's page with
/// scripts off.
#ifndef BW_SCHEME_QUIZ_WORDS_H
#define BW_SCHEME_QUIZ_WORDS_H

#include "core/recall.h"
#include "core/sentence.h"

/// Places asked for before anything is said of what they have in common.
enum { BW_TRIES_FOR_BIAS = 3 };

/// "Ball at left goal-line extended. You are top left. Where do you stand?"
void bw_ask_where(const bw_scheme *scheme, int stage, int spot, bw_vec ball, bw_text *out);

/// The same with "What do you do?"
void bw_ask_duty(const bw_scheme *scheme, int stage, int spot, bw_vec ball, bw_text *out);

/// A duty as something one is told: "Cover the crease".
void bw_say_order(bw_voice voice, bw_duty duty, bw_text *out);

/// "Your place: 3.5 yd left, 2.0 yd out. Hold your post, call “port low”."
void bw_answer_where(const bw_scheme *scheme, int stage, int spot, const bw_station *station,
                     bw_vec ball, bw_text *out);

/// Why he belongs there, in one sentence; `landmark` is where the ball is.
void bw_say_reason(const bw_scheme *scheme, int stage, int spot, const bw_station *station,
                   int landmark, bw_text *out);

/// What the answer was: "Right, within 1.2 yd.", "Not there: 5.0 yd too far right, 2.0 yd too deep."
void bw_say_mark(const bw_scheme *scheme, int stage, const bw_mark_given *given, bw_text *out);

/// "2.0 yd too far left and 1.5 yd too deep", parts under half a unit left out; "" when both are.
void bw_say_offset(bw_units units, bw_vec error, bw_text *out);

/// What many answers have in common: "Over 6 places you stand 2.0 yd too deep." with how far they scatter.
/// Under three tries it says that there are too few.
void bw_say_bias(bw_units units, const bw_tally *tally, bw_text *out);

#endif
