/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What a rehearsal says, for terminal, JSON and paper alike.
#ifndef BW_REPORT_REHEARSAL_WORDS_H
#define BW_REPORT_REHEARSAL_WORDS_H

#include "report/rehearsal.h"

/// "2-2, four in": the stage by its shape and call.
void bw_say_unit_name(const bw_script *script, bw_text *out);

/// How many passes, through how many rotations, and what is proven.
void bw_say_script(const bw_script *script, bw_text *out);

/// How long once through takes at each pace.
void bw_say_script_length(const bw_script *script, bw_text *out);

/// "LL low left, LR low right": the spots' codes.
void bw_say_codes(const bw_script *script, bw_text *out);

/// What the coach looks for at stop number i: who takes the ball and calls what, the crease, the longest
/// way.
void bw_say_look(const bw_script *script, int i, bw_text *out);

/// What the plan gives everyone, what does not fit and how long it would take.
void bw_say_plan(const bw_rehearsal *r, const bw_rehearsal_stage *stage, bw_text *out);

/// Round number i: "Round 3, half speed, at 6:20 for 1:05", and who stands, feeds and waits;
/// `between` parts goal from goal, a space or a newline.
void bw_say_round(const bw_rehearsal_stage *stage, int i, bw_text *out);
void bw_say_round_men(const bw_rehearsal *r, const bw_rehearsal_stage *stage, int i,
                      const char *between, bw_text *out);

/// The game at the end, with its one changed rule.
void bw_say_game(const bw_rehearsal_stage *stage, bw_text *out);

#endif
