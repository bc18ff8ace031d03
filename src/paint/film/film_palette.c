/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "paint/film/film_palette.h"

#include "core/base.h"

/// Steps of anti-aliasing between two colours that meet.
enum { STEPS = 6 };

static int distance2(uint32_t a, uint32_t b) {
    int sum = 0;
    for (int shift = 0; shift < 24; shift += 8) {
        const int d = (int)(a >> shift & 255) - (int)(b >> shift & 255);
        sum += d * d;
    }
    return sum;
}

/// Adds a colour unless one very near is there.
static void add(bw_palette *palette, uint32_t colour) {
    enum { SAME = 12 }; // squared distance the eye does not see
    for (int i = 0; i < palette->count; i++) {
        if (distance2(palette->colour[i], colour) < SAME) return;
    }
    if (palette->count < BW_PALETTE) palette->colour[palette->count++] = 0xFF000000u | colour;
}

static uint32_t blend(uint32_t a, uint32_t b, int step) {
    uint32_t out = 0;
    for (int shift = 0; shift < 24; shift += 8) {
        const int from = (int)(a >> shift & 255), to = (int)(b >> shift & 255);
        out |= (uint32_t)(from + (to - from) * step / STEPS) << shift;
    }
    return out;
}

static uint32_t cell_of(uint32_t colour) {
    return (colour >> 19 & 31) << 10 | (colour >> 11 & 31) << 5 | (colour >> 3 & 31);
}

uint8_t bw_palette_of(const bw_palette *palette, uint32_t colour) {
    return palette->nearest[cell_of(colour)];
}

void bw_palette_build(const bw_theme *theme, bw_palette *palette) {
    // What marks and words stand on; text on a disc is the last pair.
    static const bw_role grounds[] = {BW_ROLE_PAPER, BW_ROLE_PAGE, BW_ROLE_LAND, BW_ROLE_DEFENDER};
    static const bw_role marks[] = {BW_ROLE_TEXT,      BW_ROLE_DEFENDER,  BW_ROLE_BALL,
                                    BW_ROLE_ACCENT,    BW_ROLE_LINE,      BW_ROLE_ATTACKER,
                                    BW_ROLE_SOFT_LINE, BW_ROLE_SOFT_TEXT, BW_ROLE_GRID};
    palette->count = 0;
    for (int role = 0; role < BW_ROLE_COUNT; role++)
        add(palette, theme->colour[role]);
    for (int step = 1; step < STEPS; step++)
        add(palette,
            blend(theme->colour[BW_ROLE_DEFENDER], theme->colour[BW_ROLE_DEFENDER_TEXT], step));
    for (int g = 0; g < BW_COUNT(grounds); g++) {
        for (int m = 0; m < BW_COUNT(marks); m++) {
            for (int step = 1; step < STEPS; step++)
                add(palette, blend(theme->colour[grounds[g]], theme->colour[marks[m]], step));
        }
    }
    for (int i = palette->count; i < BW_PALETTE; i++)
        palette->colour[i] = 0xFF000000u;
    palette->colour[BW_PALETTE] = 0; // libav finds it for what has not changed
    for (uint32_t cell = 0; cell < BW_PALETTE_CELLS; cell++) {
        const uint32_t colour = (cell >> 10) << 19 | (cell >> 5 & 31) << 11 | (cell & 31) << 3 |
                                0x040404; // the cell's middle
        int best = 0;
        for (int i = 1; i < palette->count; i++) {
            if (distance2(palette->colour[i], colour) < distance2(palette->colour[best], colour))
                best = i;
        }
        palette->nearest[cell] = (uint8_t)best;
    }
    // A colour of the palette is itself, the theme's own before the steps between them.
    for (int i = palette->count - 1; i >= 0; i--)
        palette->nearest[cell_of(palette->colour[i])] = (uint8_t)i;
}
