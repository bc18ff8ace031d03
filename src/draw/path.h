/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Whole shapes appended to the path being built: between bw_ink_fill or bw_ink_stroke and the next
/// item. Page points. Curves are within 0.03 % of the radius (the usual four-cubic circle).
#ifndef BW_DRAW_PATH_H
#define BW_DRAW_PATH_H

#include "draw/ink.h"

void bw_path_segment(bw_ink *ink, bw_vec a, bw_vec b);
void bw_path_rect(bw_ink *ink, double x, double y, double width, double height);
void bw_path_circle(bw_ink *ink, bw_vec centre, double radius);

/// Part of a circle from angle `from` to angle `to`, radians counter-clockwise as seen on the page,
/// 0 to the right; |to - from| <= 2 pi. Begins with a move.
void bw_path_arc(bw_ink *ink, bw_vec centre, double radius, double from, double to);

/// A circle pulled apart sideways: two half circles whose centres are 2 `half` apart. With `half` 0 it
/// is a circle.
void bw_path_capsule(bw_ink *ink, bw_vec centre, double half, double radius);

/// An arrow's head: a slim triangle with its tip at `tip`, pointing along `along` (any length but 0).
void bw_path_head(bw_ink *ink, bw_vec tip, bw_vec along, double length, double width);

/// A wave from a to b that begins and ends flat: the mark of a carry. `length` of one wave and
/// `height` either side; an odd or even whole number of half waves is fitted in.
void bw_path_wave(bw_ink *ink, bw_vec a, bw_vec b, double length, double height);

#endif
