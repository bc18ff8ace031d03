/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Entries as a table: width of the mark, the words, and how to draw the mark.
#include "draw/key.h"

#include "draw/metrics.h"
#include "draw/path.h"

static const bw_mark_size size = {.radius = 5, .type = 9, .label = 9};
static const double mark_gap = 4;   // between a mark and its words
static const double entry_gap = 12; // between entries

static const struct {
    double wide; // of the mark
    const char *words;
} entries[BW_KEY_COUNT] = {
    {14, "defender"},
    {13, "goalkeeper"},
    {14, "attacker"},
    {10, "ball"},
    {21, "on the ball"},
    {15, "adjacent"},
    {16, "crease"},
    {15, "backside"},
    {15, "holds"},
    {17, "has a man"},
    {32, "from home"},
    {34, "run"},
    {30, "pass"},
    {34, "carry"},
    {30, "shot"},
    {6, "where the ball may be"},
    {32, "late for the place"},
    {9, "pinned by hand"},
    {14, "you"},
    {8, "team-mate"},
    {34, "suggested home"},
};

static void put_mark(bw_ink *ink, int entry, double x, double y) {
    const double wide = entries[entry].wide;
    const bw_vec middle = bw_v(x + wide / 2, y);
    const bw_vec left = bw_v(x, y), right = bw_v(x + wide, y);
    const bw_mark_size ring = {.radius = 7, .type = 9, .label = 9};
    const bw_mark_size ghost = {.radius = 6.5, .type = 9, .label = 9};
    switch (1 << entry) {
    case BW_KEY_MATE: bw_mark_mate(ink, middle); break;
    case BW_KEY_DEFENDER:
    case BW_KEY_YOU:
        bw_ink_fill(ink, BW_ROLE_DEFENDER);
        bw_path_circle(ink, middle, 6.5);
        break;
    case BW_KEY_KEEPER: bw_mark_keeper(ink, (bw_mark_size){.radius = 8, .type = 9}, middle); break;
    case BW_KEY_ATTACKER: bw_mark_attacker(ink, ring, middle, 1); break;
    case BW_KEY_BALL: bw_mark_ball(ink, middle); break;
    case BW_KEY_FROM_HOME:
    case BW_KEY_RUN:
        bw_mark_ghost(ink, ghost, bw_v(x + 4, y));
        bw_mark_route(ink, BW_ROUTE_RUN, bw_v(x + 4, y), right, 5, 0,
                      1 << entry == BW_KEY_FROM_HOME);
        break;
    case BW_KEY_SUGGESTED:
        bw_mark_ghost(ink, (bw_mark_size){.radius = 9.5}, bw_v(right.x - 6, y));
        bw_mark_route(ink, BW_ROUTE_RUN, left, bw_v(right.x - 6, y), 0, 0, false);
        break;
    case BW_KEY_PASS: bw_mark_route(ink, BW_ROUTE_PASS, left, right, 0, 0, false); break;
    case BW_KEY_CARRY: bw_mark_route(ink, BW_ROUTE_CARRY, left, right, 0, 0, false); break;
    case BW_KEY_SHOT: bw_mark_route(ink, BW_ROUTE_SHOT, left, right, 0, 0, false); break;
    case BW_KEY_PLACE:
        bw_ink_fill(ink, BW_ROLE_BALL);
        bw_path_circle(ink, middle, 2.2);
        break;
    case BW_KEY_TETHER: bw_mark_tether(ink, ghost, left, bw_v(right.x - 5, y), 0.8); break;
    case BW_KEY_PIN: bw_mark_flag(ink, bw_v(x + 1, y + 6), 6); break;
    default:
        bw_mark_duty(ink, middle, 0, size.radius, (bw_duty)(entry - 4));
        bw_ink_fill(ink, BW_ROLE_DEFENDER);
        bw_path_circle(ink, middle, size.radius);
    }
}

double bw_draw_key(bw_ink *ink, uint32_t keys, double x, double y) {
    double at = 0;
    for (int entry = 0; entry < BW_KEY_COUNT; entry++) {
        if (!(keys & 1u << entry)) continue;
        const double words = x + at + entries[entry].wide + mark_gap;
        if (ink) {
            put_mark(ink, entry, x + at, y);
            bw_ink_text(ink, BW_ROLE_TEXT, BW_REGULAR, 9, BW_LEFT_ALIGN, words,
                        y + 9 * BW_CAP_HEIGHT / 2, entries[entry].words);
        }
        at = words - x + bw_width(entries[entry].words, 9) + entry_gap;
    }
    return at > 0 ? at - entry_gap : 0;
}

double bw_draw_key_rows(bw_ink *ink, uint32_t keys, double x, double y, double width) {
    const double gap = 14;
    double at = BW_KEY_INDENT, tall = BW_KEY_ROW;
    for (int entry = 0; entry < BW_KEY_COUNT; entry++) {
        const uint32_t one = keys & 1u << entry;
        if (!one) continue;
        const double wide = bw_draw_key(NULL, one, 0, 0);
        if (at > BW_KEY_INDENT && at + wide > width) {
            at = BW_KEY_INDENT;
            tall += BW_KEY_ROW;
        }
        if (ink) bw_draw_key(ink, one, x + at, y + tall - BW_KEY_ROW / 2);
        at += wide + gap;
    }
    return tall;
}
