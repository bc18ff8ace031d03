/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The marks of people, ball and paths. Nothing here is told by colour alone: a defender is a filled
/// disc with his spot's code, his duty the pattern round it; an attacker an open ring with a number;
/// the goalkeeper a square; runs, passes, carries and shots differ in their line.
#ifndef BW_DRAW_MARKS_H
#define BW_DRAW_MARKS_H

#include "core/scheme.h"
#include "draw/ink.h"

/// Sizes of one chart's marks, points.
typedef struct bw_mark_size {
    double radius; ///< of a disc
    double type;   ///< of the code on it, bold
    double label;  ///< of the words beside marks
} bw_mark_size;

bw_mark_size bw_marks_small(void); ///< charts three to a page: codes 9.5 pt, labels 9 pt
bw_mark_size bw_marks_large(void); ///< one chart to a page: codes 12 pt, labels 10 pt

/// No duty: a disc without an edge pattern.
enum { BW_NO_DUTY = -1 };

/// The disc at a page point. `duty` is a bw_duty or BW_NO_DUTY. A long code widens the disc to a
/// capsule; the code is never made smaller.
void bw_mark_defender(bw_ink *ink, bw_mark_size size, bw_vec at, const char *code, int duty);

/// The edge pattern of a duty alone, round a disc of half-width `half` more than the radius.
void bw_mark_duty(bw_ink *ink, bw_vec at, double half, double radius, bw_duty duty);

/// Where somebody was: a hollow dashed ring, second rank.
void bw_mark_ghost(bw_ink *ink, bw_mark_size size, bw_vec at);

/// A small flag on a pole `height` tall, its foot at `at`: pinned by hand.
void bw_mark_flag(bw_ink *ink, bw_vec at, double height);

/// A team-mate on a player's own chart: a small open ring.
void bw_mark_mate(bw_ink *ink, bw_vec at);

void bw_mark_attacker(bw_ink *ink, bw_mark_size size, bw_vec at, int number);
/// His square, `bw_keeper_half` points from its middle to a side.
void bw_mark_keeper(bw_ink *ink, bw_mark_size size, bw_vec at);
double bw_keeper_half(bw_mark_size size);
void bw_mark_ball(bw_ink *ink, bw_vec at);

/// Radius of the ball's mark, ring and halo included.
#define BW_BALL_REACH 4.8

/// Half the width and half the height of a defender's mark with its edge pattern.
bw_vec bw_mark_reach(bw_mark_size size, const char *code, int duty);

typedef enum bw_route_kind {
    BW_ROUTE_RUN,
    BW_ROUTE_PASS,
    BW_ROUTE_CARRY,
    BW_ROUTE_SHOT
} bw_route_kind;

/// Begins the line of a run or a pass, solid or dashed by the ink's habit; a path follows.
void bw_mark_line(bw_ink *ink, bw_route_kind route, bw_role role, double width);

/// The path from a to b with its arrow's head: run and pass solid and dashed (or the other way round,
/// by the ink's habit), carry waved, shot a double line. It leaves `gap_a` and `gap_b` points free at its ends; too short a path is left out.
/// `soft` draws it in the second rank.
void bw_mark_route(bw_ink *ink, bw_route_kind route, bw_vec a, bw_vec b, double gap_a, double gap_b,
                   bool soft);

/// The tether of a man who is `late` seconds from his place: a line from him to a ring there, thinner
/// the later he is, like a rope that is stretched.
void bw_mark_tether(bw_ink *ink, bw_mark_size size, bw_vec from, bw_vec to, double late);

/// A small order number in a ring, half-way between a and b.
void bw_mark_order(bw_ink *ink, bw_vec a, bw_vec b, int number);

/// Radius of an order number's ring.
#define BW_ORDER_REACH 6.4

#endif
