/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Sentences of book and packet that are not captions.
#ifndef BW_DRAW_BOOK_WORDS_H
#define BW_DRAW_BOOK_WORDS_H

#include "core/shape.h"
#include "core/text.h"

/// "2-2, four in": a stage's title. "Match-up, six in".
void bw_say_stage(const bw_stage *stage, bw_text *out);

/// The rule as short paragraphs, one a line.
void bw_say_rule(const bw_scheme *scheme, int stage, bw_text *out);

/// Who completes a stage: "first midfielder takes TL or TR". Nothing for the first stage or when the
/// scheme names no late man for it.
void bw_say_completes(const bw_scheme *scheme, int stage, bw_text *out);

/// The landmarks at which spot number `spot` has a duty, after `lead`; nothing when there are none.
void bw_put_duty_places(bw_text *out, const bw_scheme *scheme, const bw_plan *plan, int spot,
                        bw_duty duty, const char *lead);

#endif
