/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "core/units.h"

#include "core/base.h"
#include "core/maths.h"

double bw_unit_length(bw_units units) {
    return units == BW_METRES ? 1.0 : BW_METRES_PER_YARD;
}

double bw_in_unit(bw_units units, double metres) {
    return metres / bw_unit_length(units);
}

const char *bw_unit_short(bw_units units) {
    return units == BW_METRES ? "m" : "yd";
}

const char *bw_unit_long(bw_units units) {
    return units == BW_METRES ? "metres" : "yards";
}

static void put_figure(bw_text *out, double figure, const char *unit) {
    bw_put_fixed(out, figure, 1);
    bw_put_char(out, ' ');
    bw_put(out, unit);
}

void bw_say_length(bw_units units, double metres, bw_text *out) {
    put_figure(out, bw_in_unit(units, metres), bw_unit_short(units));
}

void bw_say_speed(bw_units units, double metres_per_second, bw_text *out) {
    put_figure(out, bw_in_unit(units, metres_per_second), units == BW_METRES ? "m/s" : "yd/s");
}

void bw_say_seconds(double seconds, bw_text *out) {
    put_figure(out, seconds, "s");
}

int bw_in_100(double share) {
    return (int)bw_floor(share * 100 + 0.5);
}
