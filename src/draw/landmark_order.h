/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The order in which paper shows a scheme's landmarks.
#ifndef BW_DRAW_LANDMARK_ORDER_H
#define BW_DRAW_LANDMARK_ORDER_H

#include "core/scheme.h"

/// A left and a right place side by side, those on the centre line paired among themselves, the odd one
/// last. Fills order[] with every landmark's index once and returns how many.
int bw_landmark_order(const bw_scheme *scheme, int order[2 * BW_MAX_LANDMARKS]);

#endif
