/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Orientation and in-circle tests whose sign is always right. Landmarks typed on a half-yard grid
/// are full of collinear triples and co-circular quadruples, so ties are the common case here.
/// Method: floating-point filter, then exact expansion arithmetic. Source: J. R. Shewchuk, "Adaptive
/// precision floating-point arithmetic and fast robust geometric predicates", Discrete Comput.
/// Geom. 18, 1997.
#ifndef BW_CORE_PREDICATES_H
#define BW_CORE_PREDICATES_H

#include "core/vec.h"

/// +1 when a, b, c turn left (counter-clockwise), -1 when right, 0 when exactly collinear.
int bw_orient(bw_vec a, bw_vec b, bw_vec c);

/// For a, b, c counter-clockwise: +1 when d is inside their circle, -1 outside, 0 exactly on it.
int bw_in_circle(bw_vec a, bw_vec b, bw_vec c, bw_vec d);

#endif
