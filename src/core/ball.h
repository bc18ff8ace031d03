/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The ball in the air and whether a pass is caught: quadratic drag, flat flight. v' = -k v^2.
/// Source: any mechanics text; J. E. Goff, "A review of recent research into aerodynamics of sport
/// projectiles", Sports Engineering 16, 2013. Limits: no gravity, spin or bounce (under 0.1 % of the
/// time of a flat 20 m pass); the drag coefficient of a lacrosse ball is not published, a smooth
/// sphere's 0.45 is taken.
#ifndef BW_CORE_BALL_H
#define BW_CORE_BALL_H

#include "core/level.h"
#include "core/vec.h"

/// Drag constant k = rho Cd A / (2 m), 1/m: 145.3 g, 0.2000 m round, Cd 0.45, 1.225 kg/m3.
#define BW_BALL_DRAG 0.006

/// Seconds to fly d >= 0 metres when released at `speed` > 0 m/s: (exp(k d) - 1) / (k speed).
double bw_ball_time(double speed, double drag, double d);

/// Metres flown after t >= 0 seconds: log(1 + k speed t) / k.
double bw_ball_distance(double speed, double drag, double t);

/// Speed after d metres, m/s: speed exp(-k d).
double bw_ball_speed(double speed, double drag, double d);

#endif
