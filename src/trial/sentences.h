/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The findings about one break as whole sentences: what terminal and paper both say.
#ifndef BW_TRIAL_SENTENCES_H
#define BW_TRIAL_SENTENCES_H

#include "trial/ranking.h"

/// "Within 4 s typical play scores in about 28 of 100 such breaks ... Best play scores in 51."
void bw_say_worth_now(const bw_trial *trial, bw_text *out);

/// `margin` is the curve's: goals above even numbers that count as beaten.
void bw_say_bought(const bw_trial *trial, double margin, bw_text *out);
void bw_say_plateau(const bw_trial *trial, bw_text *out);
void bw_say_missing(const bw_trial *trial, bw_text *out);

/// What the answer comes to, and that it is a stress test.
void bw_say_answer(const bw_trial *trial, bw_text *out);

/// "Top centre to left wing"
void bw_say_rotation(const bw_ground *ground, const bw_rotation *rotation, bw_text *out);

/// "Costs about 1.2 goals in 100 breaks: thrown 34 times in 100, then worth 28 as it is and 21 if all
/// were in place."
void bw_say_cost(const bw_rotation *rotation, bw_text *out);

/// "Late: low left by 0.4 s and 2.3 yd, low right by 0.2 s and 1.3 yd.": the two latest; nothing when
/// nobody is late.
void bw_say_behind(const bw_ground *ground, const bw_rotation *rotation, bw_text *out);

/// How the table of the standard set is read, and how far its figures may be off by chance.
void bw_say_standard(const bw_ranking *ranking, bw_text *out);

/// Rotations at whose end the shape is at fault, not the running. Only when there are any.
void bw_say_faults(const bw_trial *trial, bw_text *out);

#endif
