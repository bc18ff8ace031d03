/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The standard set of breaks: each stage of a scheme against each attack set with the ball at a few
/// places, so that a scheme is judged on more than the break its coach thought of.
#ifndef BW_TRIAL_STANDARD_H
#define BW_TRIAL_STANDARD_H

#include "core/break.h"

enum { BW_STANDARD_MAX = 256 };

/// The break everybody asks about first: six against four, 2-2-2, ball up top, with the scheme's late
/// men; the nearest the scheme has a stage for otherwise.
bw_break_def bw_standard_break(const bw_scheme *scheme);

/// The id of the landmark behind the goal from which the standard set starts too.
const char *bw_standard_behind(const bw_scheme *scheme);

/// A break with these numbers, set and start, and the scheme's late men as far as it has stages for
/// them. `set` and `start` are ids that exist.
bw_break_def bw_standard_def(const bw_scheme *scheme, int offence, int defence, const char *set,
                             const char *start);

/// The whole set into list[BW_STANDARD_MAX]; returns how many. Three defenders meet four attackers,
/// four meet five and six, five meet six; every built-in set and the scheme's own; the ball up top,
/// on the right wing (both when the scheme's sides differ) and behind.
int bw_standard_set(const bw_scheme *scheme, bw_break_def *list);

/// Attack sets with at least `men` men: the built-in ones, then the scheme's own that take no built-in
/// set's name. Fills set[BW_MAX_SETS + 8] with their ids; returns how many.
int bw_standard_sets(const bw_scheme *scheme, int men, const char **set);

#endif
