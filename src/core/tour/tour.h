/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The shortest closed tour that makes every required move at least so many times: what a practice
/// script is made of. Required moves that hang together (and can be got back from) are the directed
/// Chinese postman's problem: min-cost flow and an Euler circuit, exact. In several pieces they are
/// the directed rural postman's, which is hard in general: branch and bound on the same flow, exact
/// unless the budget runs out; the bound then tells how far off it may be.
/// Sources: J. Edmonds, E. L. Johnson, "Matching, Euler tours and the Chinese postman", Math. Program. 5,
/// 1973; H. A. Eiselt, M. Gendreau, G. Laporte, "Arc routing problems", Oper. Res. 43, 1995, parts I
/// and II; C. Hierholzer 1873 for the circuit.
///
/// Cost, n places, m moves possible, r required: one flow is at most r augmentations by Bellman-Ford, so
/// O(r n m) at worst and some 10 microseconds in practice; the circuit is O(tour x n). A problem in
/// one piece is one flow.
#ifndef BW_CORE_TOUR_TOUR_H
#define BW_CORE_TOUR_TOUR_H

#include "core/tour/tour_def.h"

/// Bytes of workspace.
size_t bw_tour_size(void);

/// Finds it. BW_UNREACHABLE: some required move cannot be got back from, and from/to tell where the ball
/// is stranded. BW_LIMIT: the tour has more than BW_TOUR_MOVES moves, or the budget was spent before
/// any tour was found. BW_NO_ROOM: too little memory.
bw_status bw_tour_find(const bw_tour_def *def, void *memory, size_t size, bw_tour *tour);

#endif
