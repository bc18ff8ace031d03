/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The themes as one table, and the contrast formula that tests hold them to.
#include "draw/theme.h"

#include "core/base.h"
#include "core/maths.h"
#include "core/text.h"

const char *bw_role_name(bw_role role) {
    static const char *const names[] = {
#define BW_X(id, name) name,
        BW_ROLE_MAP(BW_X)
#undef BW_X
    };
    BW_ASSERT((unsigned)role < (unsigned)BW_ROLE_COUNT);
    return names[role];
}

static const bw_theme themes[BW_THEME_COUNT] = {
    {.id = "chart",
     .weight = 1,
     .crisp = false,
     .colour = {[BW_ROLE_PAGE] = 0xFFFFFF,     [BW_ROLE_PAPER] = 0xFCF9F0,
                [BW_ROLE_LAND] = 0xF1E4C3,     [BW_ROLE_BAND_1] = 0xF0F4F2,
                [BW_ROLE_BAND_2] = 0xE1ECF0,   [BW_ROLE_BAND_3] = 0xCFE2EB,
                [BW_ROLE_BAND_4] = 0xBBD6E5,   [BW_ROLE_BAND_5] = 0xAED0E3,
                [BW_ROLE_CONTOUR] = 0x27507A,  [BW_ROLE_GRID] = 0xDCD6C4,
                [BW_ROLE_LINE] = 0x1D3A5C,     [BW_ROLE_SOFT_LINE] = 0x4A6887,
                [BW_ROLE_TEXT] = 0x13263D,     [BW_ROLE_SOFT_TEXT] = 0x3D5070,
                [BW_ROLE_DEFENDER] = 0x17375E, [BW_ROLE_DEFENDER_TEXT] = 0xFFFFFF,
                [BW_ROLE_ATTACKER] = 0x8A3A00, [BW_ROLE_BALL] = 0xB93C08,
                [BW_ROLE_ACCENT] = 0xA8480B,   [BW_ROLE_WARN] = 0x9C2B00}},
    {.id = "sun",
     .weight = 1.6,
     .crisp = false,
     .colour = {[BW_ROLE_PAGE] = 0xFFFFFF,
                [BW_ROLE_PAPER] = 0xFFFFFF,
                [BW_ROLE_LAND] = 0xFFFFFF,
                [BW_ROLE_BAND_1] = 0xFFFFFF,
                [BW_ROLE_BAND_2] = 0xFFFFFF,
                [BW_ROLE_BAND_3] = 0xFFFFFF,
                [BW_ROLE_BAND_4] = 0xFFFFFF,
                [BW_ROLE_BAND_5] = 0xFFFFFF,
                [BW_ROLE_GRID] = 0xFFFFFF,
                [BW_ROLE_DEFENDER_TEXT] = 0xFFFFFF}},
    {.id = "dark",
     .weight = 1.1,
     .crisp = false,
     .colour = {[BW_ROLE_PAGE] = 0x0C141F,     [BW_ROLE_PAPER] = 0x0F1B2A,
                [BW_ROLE_LAND] = 0x2A2A20,     [BW_ROLE_BAND_1] = 0x12222F,
                [BW_ROLE_BAND_2] = 0x162A3A,   [BW_ROLE_BAND_3] = 0x1A3346,
                [BW_ROLE_BAND_4] = 0x1F3D53,   [BW_ROLE_BAND_5] = 0x244761,
                [BW_ROLE_CONTOUR] = 0x8FB6D6,  [BW_ROLE_GRID] = 0x24364A,
                [BW_ROLE_LINE] = 0xB9CEE4,     [BW_ROLE_SOFT_LINE] = 0x8AA3BE,
                [BW_ROLE_TEXT] = 0xEDF3FA,     [BW_ROLE_SOFT_TEXT] = 0xB4C4D6,
                [BW_ROLE_DEFENDER] = 0xD7E6F5, [BW_ROLE_DEFENDER_TEXT] = 0x0C141F,
                [BW_ROLE_ATTACKER] = 0xF2B57C, [BW_ROLE_BALL] = 0xFF9A5C,
                [BW_ROLE_ACCENT] = 0xFFB27A,   [BW_ROLE_WARN] = 0xFFA08A}},
    {.id = "mono",
     .weight = 1,
     .crisp = true,
     .colour = {[BW_ROLE_PAGE] = 0xFFFFFF,
                [BW_ROLE_PAPER] = 0xFFFFFF,
                [BW_ROLE_LAND] = 0xFFFFFF,
                [BW_ROLE_BAND_1] = 0xFFFFFF,
                [BW_ROLE_BAND_2] = 0xFFFFFF,
                [BW_ROLE_BAND_3] = 0xFFFFFF,
                [BW_ROLE_BAND_4] = 0xFFFFFF,
                [BW_ROLE_BAND_5] = 0xFFFFFF,
                [BW_ROLE_GRID] = 0xFFFFFF,
                [BW_ROLE_DEFENDER_TEXT] = 0xFFFFFF}},
};

const bw_theme *bw_theme_at(bw_theme_id id) {
    BW_ASSERT((unsigned)id < (unsigned)BW_THEME_COUNT);
    return &themes[id];
}

const bw_theme *bw_theme_find(const char *id) {
    for (int i = 0; i < BW_THEME_COUNT; i++) {
        if (bw_same(themes[i].id, id)) return &themes[i];
    }
    return NULL;
}

static double luminance(uint32_t colour) {
    static const double share[] = {0.2126, 0.7152, 0.0722};
    double sum = 0;
    for (int i = 0; i < 3; i++) {
        const double c = (double)(colour >> (16 - 8 * i) & 0xFF) / 255;
        sum += share[i] * (c <= 0.04045 ? c / 12.92 : bw_exp(2.4 * bw_log((c + 0.055) / 1.055)));
    }
    return sum;
}

double bw_contrast(uint32_t a, uint32_t b) {
    const double la = luminance(a), lb = luminance(b);
    return (bw_max(la, lb) + 0.05) / (bw_min(la, lb) + 0.05);
}
