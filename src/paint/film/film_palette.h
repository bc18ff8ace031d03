/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A theme's colours and the steps between those that meet, as the palette of a GIF. Private to this
/// room.
#ifndef BW_PAINT_FILM_FILM_PALETTE_H
#define BW_PAINT_FILM_FILM_PALETTE_H

#include "draw/theme.h"
#include <stdint.h>

enum { BW_PALETTE = 255, BW_PALETTE_BITS = 5, BW_PALETTE_CELLS = 1 << (3 * BW_PALETTE_BITS) };

typedef struct bw_palette {
    int count;                         ///< at most BW_PALETTE: one entry stays free for "unchanged"
    uint32_t colour[BW_PALETTE + 1];   ///< 0xAARRGGBB; the last one is transparent
    uint8_t nearest[BW_PALETTE_CELLS]; ///< entry for a colour's upper bits, red first
} bw_palette;

void bw_palette_build(const bw_theme *theme, bw_palette *palette);

/// The entry nearest to 0x00RRGGBB, to within the cells' width.
uint8_t bw_palette_of(const bw_palette *palette, uint32_t colour);

#endif
