/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "draw/soundings.h"
#include "core/text.h"
#include "draw/chart.h"
#include "draw/path.h"
#include "draw/sheet.h"

/// Past the last place, in steps.
static const double margin = 0.6;

bw_window bw_soundings_window(const bw_soundings *s) {
    const double reach = (BW_SOUNDINGS_STEPS + margin) * s->step;
    return (bw_window){s->home.x - reach, s->home.x + reach, s->home.y - reach, s->home.y + reach};
}

static bw_vec place_of(const bw_soundings *s, int out, int across) {
    return bw_add(s->home, bw_v((across - BW_SOUNDINGS_STEPS) * s->step,
                                (out - BW_SOUNDINGS_STEPS) * s->step));
}

static bool is_flat(const bw_soundings *s, int out, int across) {
    if (out < 0 || out >= BW_SOUNDINGS_SIDE || across < 0 || across >= BW_SOUNDINGS_SIDE)
        return false;
    return s->there[out][across] && s->cost[out][across] <= s->flat;
}

/// Tint under every flat place, and a line round them all: an edge stands where a neighbour is not.
static void put_flat(bw_ink *ink, const bw_soundings *s, const bw_view *view) {
    static const int ways[4][2] = {{1, 0}, {-1, 0}, {0, 1}, {0, -1}};
    const double half = s->step * view->scale / 2;
    for (int pass = 0; pass < 2; pass++) {
        if (pass == 0)
            bw_ink_fill(ink, BW_ROLE_BAND_1);
        else
            bw_ink_stroke(ink, BW_ROLE_CONTOUR, 1);
        for (int out = 0; out < BW_SOUNDINGS_SIDE; out++) {
            for (int across = 0; across < BW_SOUNDINGS_SIDE; across++) {
                if (!is_flat(s, out, across)) continue;
                const bw_vec p = bw_view_point(view, place_of(s, out, across));
                if (pass == 0) bw_path_rect(ink, p.x - half, p.y - half, 2 * half, 2 * half);
                for (int w = 0; pass == 1 && w < 4; w++) {
                    if (is_flat(s, out + ways[w][0], across + ways[w][1])) continue;
                    // Up-field is up on the page.
                    const double dx = half * ways[w][1], dy = -half * ways[w][0];
                    bw_path_segment(
                        ink, bw_v(p.x + dx - (dx == 0 ? half : 0), p.y + dy - (dy == 0 ? half : 0)),
                        bw_v(p.x + dx + (dx == 0 ? half : 0), p.y + dy + (dy == 0 ? half : 0)));
                }
            }
        }
    }
}

static void put_figures(bw_ink *ink, const bw_soundings *s, const bw_view *view) {
    for (int out = 0; out < BW_SOUNDINGS_SIDE; out++) {
        for (int across = 0; across < BW_SOUNDINGS_SIDE; across++) {
            if (!s->there[out][across]) continue;
            if (out == BW_SOUNDINGS_STEPS && across == BW_SOUNDINGS_STEPS) continue;
            char line[16];
            bw_text t = bw_text_in(line, sizeof line);
            const double cost = 100 * s->cost[out][across];
            if (cost >= 0.05) bw_put(&t, "+");
            bw_put_fixed(&t, cost, 1);
            const bw_vec p = bw_view_point(view, place_of(s, out, across));
            bw_ink_text(ink, BW_ROLE_TEXT, is_flat(s, out, across) ? BW_BOLD : BW_REGULAR,
                        BW_TYPE_LABEL, BW_CENTRE_ALIGN, p.x, p.y + 3, line);
        }
    }
}

void bw_draw_soundings(bw_ink *ink, const bw_soundings *s, const bw_field *field, bw_units units,
                       const char *code, const bw_view *view) {
    bw_draw_paper(ink, view);
    bw_ink_clip(ink, view->box.x, view->box.y, view->box.width, view->box.height);
    put_flat(ink, s, view);
    bw_ink_unclip(ink);
    bw_draw_field(ink, field, units, view);
    put_figures(ink, s, view);
    bw_mark_defender(ink, bw_marks_small(), bw_view_point(view, s->home), code, BW_NO_DUTY);
    bw_draw_border(ink, units, view, false);
}
