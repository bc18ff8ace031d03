/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Figures for people: a length, a speed, a time or a share as words, in the unit a scheme's people
/// read. Inside everything is metres, seconds, radians and shares of 1 (docs/units.md).
#ifndef BW_CORE_UNITS_H
#define BW_CORE_UNITS_H

#include "core/text.h"

typedef enum bw_units { BW_YARDS, BW_METRES } bw_units;

/// One yard or one metre, in metres.
double bw_unit_length(bw_units units);

/// A length in metres as so many yards or metres.
double bw_in_unit(bw_units units, double metres);

/// "yd" or "m", "yards" or "metres".
const char *bw_unit_short(bw_units units);
const char *bw_unit_long(bw_units units);

/// "3.0 yd", from metres; "7.3 yd/s", from metres a second.
void bw_say_length(bw_units units, double metres, bw_text *out);
void bw_say_speed(bw_units units, double metres_per_second, bw_text *out);

/// "2.4 s"
void bw_say_seconds(double seconds, bw_text *out);

/// A share of 1 in whole hundredths: 0.283 is 28. Halves away from zero, the same everywhere.
int bw_in_100(double share);

#endif
