/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The key: every mark of a sheet with its meaning, in one strip.
#ifndef BW_DRAW_KEY_H
#define BW_DRAW_KEY_H

#include "draw/ink.h"
#include "draw/marks.h"

/// What a key can explain; one bit each.
typedef enum bw_key_entry {
    BW_KEY_DEFENDER = 1 << 0,
    BW_KEY_KEEPER = 1 << 1,
    BW_KEY_ATTACKER = 1 << 2,
    BW_KEY_BALL = 1 << 3,
    BW_KEY_DUTY_BALL = 1 << 4, ///< the duties, in the order of bw_duty
    BW_KEY_DUTY_ADJACENT = 1 << 5,
    BW_KEY_DUTY_CREASE = 1 << 6,
    BW_KEY_DUTY_BACKSIDE = 1 << 7,
    BW_KEY_DUTY_HOLD = 1 << 8,
    BW_KEY_DUTY_MAN = 1 << 9,
    BW_KEY_FROM_HOME = 1 << 10, ///< ghost and faint run
    BW_KEY_RUN = 1 << 11,       ///< ghost and run
    BW_KEY_PASS = 1 << 12,
    BW_KEY_CARRY = 1 << 13,
    BW_KEY_SHOT = 1 << 14,
    BW_KEY_PLACE = 1 << 15,  ///< a named ball place
    BW_KEY_TETHER = 1 << 16, ///< the board's line from a man to his place
    BW_KEY_PIN = 1 << 17,    ///< the board's flag on a man pinned by hand
    BW_KEY_YOU = 1 << 18,    ///< on a player's own charts
    BW_KEY_MATE = 1 << 19,
    BW_KEY_SUGGESTED = 1 << 20, ///< the board's run to a ghost: where a man might stand
    BW_KEY_COUNT = 21
} bw_key_entry;

/// The six duties together.
#define BW_KEY_DUTIES 0x3F0u

/// Draws the entries of `keys` in one row from (x, y), y its middle. Returns its width in points, 0 when
/// there is none. With ink NULL only measures.
double bw_draw_key(bw_ink *ink, uint32_t keys, double x, double y);

/// Of a key in rows, points: the height of one, and where each begins.
#define BW_KEY_ROW 20.0
#define BW_KEY_INDENT 2.0

/// The same in as many rows as `width` asks for, from the top left corner (x, y) down. Returns the height.
double bw_draw_key_rows(bw_ink *ink, uint32_t keys, double x, double y, double width);

#endif
