/* SPDX-License-Identifier: GPL-3.0-or-later */
/// How late a defender is: the seconds of the shortest run that has him at a place and keeps him there.
#ifndef BW_CORE_LATE_H
#define BW_CORE_LATE_H

#include "core/break.h"

/// Seconds until defender `defender` of state `s` could be at `place`, m, and stay there, by his own
/// legs or the level's. Reaction is not counted: he has seen it.
double bw_seconds_to(const bw_break *b, const bw_state *s, int defender, bw_vec place);

/// Whether a man so many seconds and metres from his place is called late: 0.15 s and a yard.
bool bw_is_late(double seconds, double metres);

#endif
