/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Points and displacements in the plane of the field: metres, origin at the centre of the goal
/// line, y up-field, x to the right of a defender looking out from the goal (docs/units.md).
#ifndef BW_CORE_VEC_H
#define BW_CORE_VEC_H

#include "core/maths.h"

typedef struct bw_vec {
    double x; ///< metres, right of the defender
    double y; ///< metres, up-field
} bw_vec;

static inline bw_vec bw_v(double x, double y) {
    return (bw_vec){x, y};
}
static inline bw_vec bw_add(bw_vec a, bw_vec b) {
    return bw_v(a.x + b.x, a.y + b.y);
}
static inline bw_vec bw_sub(bw_vec a, bw_vec b) {
    return bw_v(a.x - b.x, a.y - b.y);
}
static inline bw_vec bw_scale(bw_vec a, double k) {
    return bw_v(a.x * k, a.y * k);
}
static inline double bw_dot(bw_vec a, bw_vec b) {
    return a.x * b.x + a.y * b.y;
}
static inline double bw_cross(bw_vec a, bw_vec b) {
    return a.x * b.y - a.y * b.x;
}
static inline double bw_length2(bw_vec a) {
    return a.x * a.x + a.y * a.y;
}
static inline double bw_length(bw_vec a) {
    return bw_sqrt(bw_length2(a));
}
static inline double bw_distance(bw_vec a, bw_vec b) {
    return bw_length(bw_sub(a, b));
}
static inline bw_vec bw_mirror(bw_vec a) {
    return bw_v(-a.x, a.y);
}

/// The point a fraction t of the way from a to b.
static inline bw_vec bw_lerp(bw_vec a, bw_vec b, double t) {
    return bw_v(a.x + (b.x - a.x) * t, a.y + (b.y - a.y) * t);
}

/// a shortened to at most `longest` (>= 0), direction kept.
static inline bw_vec bw_limit(bw_vec a, double longest) {
    double l2 = bw_length2(a);
    if (l2 <= longest * longest) return a;
    return bw_scale(a, longest / bw_sqrt(l2));
}

/// Unit vector along a, or the zero vector when a is zero.
static inline bw_vec bw_unit(bw_vec a) {
    double l = bw_length(a);
    return l > 0 ? bw_scale(a, 1 / l) : a;
}

#endif
