/* SPDX-License-Identifier: GPL-3.0-or-later */
/// How a player moves: first-order drag with bounded drive, x'' = F - x'/tau, |F| <= vmax/tau.
/// Everything is closed form; no time stepping. The pair (vmax, tau) is the one a sprint test
/// measures (mono-exponential sprint), so a timed split feeds the model directly.
///
/// Source: A. Fujimura, K. Sugihara, "Geometric analysis and quantitative evaluation of sport
/// teamwork", Systems and Computers in Japan 36(6), 2005. Arrive-and-stop is derived in
/// docs/model.md. Limits: isotropic (backpedal as fast as a sprint), braking stronger than people.
#ifndef BW_CORE_MOTION_H
#define BW_CORE_MOTION_H

#include "core/vec.h"

/// One player's legs.
typedef struct bw_legs {
    double vmax; ///< top speed, m/s, (0, 12]
    double tau;  ///< seconds to reach 63 % of top speed from rest, (0, 3]
} bw_legs;

/// Where a player is and how fast he goes.
typedef struct bw_body {
    bw_vec at;       ///< metres
    bw_vec velocity; ///< m/s
} bw_body;

/// C(t) = tau (1 - exp(-t/tau)), seconds: how far a unit starting speed carries. t >= 0.
double bw_coast(bw_legs legs, double t);

/// R(t) = vmax (t - C(t)), metres: radius of the disc reachable at time t, centred on
/// at + velocity C(t). Keeps its digits for small t, where the difference cancels.
double bw_reach(bw_legs legs, double t);

/// Body after t >= 0 seconds of constant effort. `effort` is the velocity the player would settle
/// at, |effort| <= vmax, m/s. Exact for any t.
bw_body bw_advance(bw_legs legs, bw_body body, bw_vec effort, double t);

/// Two different questions about getting somewhere at full effort, kept apart on purpose: a fast
/// player can touch a near target at once, overrun it, and need a second to come back.
typedef enum bw_arrival {
    BW_FIRST_TOUCH, ///< first moment the target is inside the reachable disc: interception
    BW_HOLD_FROM    ///< moment from which it never leaves the disc again: marking
} bw_arrival;

/// Seconds until `target` can be reached, passing through it at speed. Safeguarded root finding,
/// absolute error below 1e-9 s. Never negative. Distances up to 1000 m.
double bw_arrive(bw_legs legs, bw_body body, bw_vec target, bw_arrival kind);

/// Seconds to go a distance d >= 0 (metres) from rest and stop there: full drive, then full
/// opposite drive. (2 tau) artanh(sqrt(1 - exp(-d / (vmax tau)))).
double bw_arrive_and_stop(bw_legs legs, double d);

/// The constant effort that puts the body on `target` after `horizon` > 0 seconds, shortened to
/// vmax when that is not possible.
bw_vec bw_effort_toward(bw_legs legs, bw_body body, bw_vec target, double horizon);

/// Top speed a player with this tau would need to cover d metres from rest in t seconds, m/s;
/// +infinity when t <= 0. Compared with the top speed he has, it says whether he can be there.
double bw_speed_needed(double tau, double d, double t);

#endif
