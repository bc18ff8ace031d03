/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What a colour means. The ink list carries roles; a theme (theme.h) turns them into colours.
#ifndef BW_DRAW_ROLE_H
#define BW_DRAW_ROLE_H

/// Identifier and the name used in traces and in the style sheet.
#define BW_ROLE_MAP(X)                                                                             \
    X(PAGE, "page")     /* the sheet itself */                                                     \
    X(PAPER, "paper")   /* the chart inside its border */                                          \
    X(LAND, "land")     /* the crease: no one but the goalkeeper stands there */                   \
    X(BAND_1, "band-1") /* danger, least */                                                        \
    X(BAND_2, "band-2")                                                                            \
    X(BAND_3, "band-3")                                                                            \
    X(BAND_4, "band-4")                                                                            \
    X(BAND_5, "band-5")       /* danger, most */                                                   \
    X(CONTOUR, "contour")     /* lines of equal danger and their figures */                        \
    X(GRID, "grid")           /* graticule: decoration, carries no meaning alone */                \
    X(LINE, "line")           /* field lines, border */                                            \
    X(SOFT_LINE, "soft-line") /* second-rank lines: homes, runs from home, rules */                \
    X(TEXT, "text")                                                                                \
    X(SOFT_TEXT, "soft-text")                                                                      \
    X(DEFENDER, "defender")                                                                        \
    X(DEFENDER_TEXT, "defender-text") /* on a defender's disc */                                   \
    X(ATTACKER, "attacker")                                                                        \
    X(BALL, "ball")                                                                                \
    X(ACCENT, "accent")                                                                            \
    X(WARN, "warn")

typedef enum bw_role {
#define BW_X(id, name) BW_ROLE_##id,
    BW_ROLE_MAP(BW_X)
#undef BW_X
        BW_ROLE_COUNT
} bw_role;

/// "paper", "line", ...
const char *bw_role_name(bw_role role);

#endif
