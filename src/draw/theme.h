/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Roles to colours. Opaque colours only, so that contrast can be computed and a 1-bit printer does
/// what the eye expects.
#ifndef BW_DRAW_THEME_H
#define BW_DRAW_THEME_H

#include "draw/role.h"
#include <stdbool.h>
#include <stdint.h>

typedef enum bw_theme_id {
    BW_THEME_CHART, ///< ink blue on warm paper: the house look
    BW_THEME_SUN,   ///< black on white, heavier lines, for a screen in daylight
    BW_THEME_DARK,  ///< for a dim room
    BW_THEME_MONO,  ///< black and white only, no grey
    BW_THEME_COUNT
} bw_theme_id;

typedef struct bw_theme {
    const char *id;                 ///< "chart", "sun", "dark", "mono"
    uint32_t colour[BW_ROLE_COUNT]; ///< 0xRRGGBB
    double weight;                  ///< every stroke's width is multiplied by this
    bool crisp;                     ///< no anti-aliasing: two colours stay two
} bw_theme;

const bw_theme *bw_theme_at(bw_theme_id id);

/// The theme with this id, or NULL.
const bw_theme *bw_theme_find(const char *id);

/// Contrast of two colours, 1 to 21, unrounded: (L1 + 0.05) / (L2 + 0.05) with relative luminance by
/// WCAG 2.2. Text asks 4.5, marks 3.
double bw_contrast(uint32_t a, uint32_t b);

#endif
