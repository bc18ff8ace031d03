/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The plain way to the same answer as bw_where: nothing made ready beforehand, and the pins blended
/// by the textbook: clip the Voronoi cell of the ball corner by corner and measure its sides.
#ifndef BW_BENCH_PLAIN_WHERE_H
#define BW_BENCH_PLAIN_WHERE_H

#include "core/shape.h"

/// Balls to the right of the centre line, no attackers. `bare` is the same scheme without pins.
void plain_where(const bw_scheme *scheme, const bw_scheme *bare, int stage, bw_vec ball,
                 bw_station *out);

#endif
