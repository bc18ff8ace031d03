/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Flat flight with quadratic drag, in closed form.
#include "core/ball.h"

double bw_ball_time(double speed, double drag, double d) {
    return (bw_exp(drag * d) - 1) / (drag * speed);
}

double bw_ball_distance(double speed, double drag, double t) {
    return bw_log(1 + drag * speed * t) / drag;
}

double bw_ball_speed(double speed, double drag, double d) {
    return speed * bw_exp(-drag * d);
}
