/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The test report's phrases. Text and pages are built from the same ones.
#ifndef BW_TRIAL_WORDS_H
#define BW_TRIAL_WORDS_H

#include "core/sentence.h"
#include "trial/trial.h"

/// "Harbour, Port Merrow Terns": the scheme and its team.
void bw_say_owner(const bw_scheme *scheme, bw_text *out);

/// "6 against 4, attack set 2-2-2, ball at top centre, high school."
void bw_say_break(const bw_ground *ground, const bw_break_def *def, bw_text *out);

/// "First midfielder (+1) comes from 30.0 yd behind, second midfielder (+2) from 45.0 yd." or "Nobody
/// comes back to help." +1 and +2 are their discs on the chart.
void bw_say_late_men(const bw_ground *ground, const bw_break *b, bw_text *out);

/// "first midfielder": a late man's role, by his order.
void bw_say_late_man(const bw_scheme *scheme, int index, bw_text *out);

/// A place's short name: "left wing", "crease".
void bw_say_node(const bw_ground *ground, int place, bw_text *out);

/// "2 passes to 4 at left wing, 3 cuts to the crease": what ply i of the answer is.
void bw_say_step(const bw_trial *trial, int i, bw_text *out);

/// "kept 94 in 100", for the shot "scores 61 in 100".
void bw_say_step_chance(const bw_trial *trial, int i, bw_text *out);

/// "LL is 0.4 s late, 2.1 yd away.", or nothing when nobody is. He goes by the spot he began at, as on
/// the chart; where the unit has given him another since, that is said too.
void bw_say_straggler(const bw_trial *trial, const bw_straggler *man, bw_text *out);

/// "low left", "man on 3": a job in the unit of the moment.
void bw_say_defender(const bw_ground *ground, int stage, int job, bool matched, bw_text *out);

/// A place and a defender as what fills a place of a sentence.
bw_arg bw_as_node(const char *name, const bw_ground *ground, int place);
bw_arg bw_as_defender(const char *name, const bw_ground *ground, int stage, int job, bool matched);

/// "26 to 30": two standard errors either side, in a hundred.
void bw_say_range(double worth, double error, bw_text *out);

#endif
