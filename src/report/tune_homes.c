/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The second sheet: soundings round each home, what standing there costs, with the flat water tinted.
#include "draw/chart.h"
#include "draw/marks.h"
#include "draw/path.h"
#include "report/pages_part.h"
#include "report/tune_part.h"

enum { LINE = 600 };

static const double gutter = 24;

/// The map's own window: its grid and half a step more on every side.
static bw_window window_of(const bw_sense *sense, const bw_sense_map *map) {
    const double reach = (BW_SENSE_STEPS + 0.6) * sense->step;
    return (bw_window){map->home.x - reach, map->home.x + reach, map->home.y - reach,
                       map->home.y + reach};
}

static bw_vec place_of(const bw_sense *sense, const bw_sense_map *map, int out, int across) {
    const bw_vec by =
        bw_v((across - BW_SENSE_STEPS) * sense->step, (out - BW_SENSE_STEPS) * sense->step);
    return bw_add(map->home, by);
}

static bool is_flat(const bw_sense *sense, const bw_sense_map *map, int out, int across) {
    if (out < 0 || out >= BW_SENSE_SIDE || across < 0 || across >= BW_SENSE_SIDE) return false;
    return map->there[out][across] && map->cost[out][across] <= sense->flat;
}

/// Tint under every flat place, and a line round them all: an edge stands where a neighbour is not.
static void put_flat(bw_ink *ink, const bw_sense *sense, const bw_sense_map *map,
                     const bw_view *view) {
    static const int ways[4][2] = {{1, 0}, {-1, 0}, {0, 1}, {0, -1}};
    const double half = sense->step * view->scale / 2;
    for (int pass = 0; pass < 2; pass++) {
        if (pass == 0)
            bw_ink_fill(ink, BW_ROLE_BAND_1);
        else
            bw_ink_stroke(ink, BW_ROLE_CONTOUR, 1);
        for (int out = 0; out < BW_SENSE_SIDE; out++) {
            for (int across = 0; across < BW_SENSE_SIDE; across++) {
                if (!is_flat(sense, map, out, across)) continue;
                const bw_vec p = bw_view_point(view, place_of(sense, map, out, across));
                if (pass == 0) bw_path_rect(ink, p.x - half, p.y - half, 2 * half, 2 * half);
                for (int w = 0; pass == 1 && w < 4; w++) {
                    if (is_flat(sense, map, out + ways[w][0], across + ways[w][1])) continue;
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

static void put_soundings(bw_ink *ink, const bw_sense *sense, const bw_sense_map *map,
                          const bw_view *view) {
    for (int out = 0; out < BW_SENSE_SIDE; out++) {
        for (int across = 0; across < BW_SENSE_SIDE; across++) {
            if (!map->there[out][across]) continue;
            if (out == BW_SENSE_STEPS && across == BW_SENSE_STEPS) continue;
            char line[16];
            bw_text t = bw_text_in(line, sizeof line);
            const double cost = 100 * map->cost[out][across];
            if (cost >= 0.05) bw_put(&t, "+");
            bw_put_fixed(&t, cost, 1);
            const bw_vec p = bw_view_point(view, place_of(sense, map, out, across));
            bw_ink_text(ink, BW_ROLE_TEXT, is_flat(sense, map, out, across) ? BW_BOLD : BW_REGULAR,
                        BW_TYPE_LABEL, BW_CENTRE_ALIGN, p.x, p.y + 3, line);
        }
    }
}

/// Returns its points per metre.
static double put_map(const bw_tune_report *r, const bw_sheet *sheet, const bw_sense_map *map,
                      double x, double y, double width) {
    const bw_scheme *scheme = &r->tuned->scheme;
    const bw_stage *stage = &scheme->stages[r->def->stage];
    char name[2 * BW_NAME_SIZE + 16];
    bw_text t = bw_text_in(name, sizeof name);
    bw_put(&t, stage->spots[map->spot].name);
    if (map->twin >= 0 && map->twin != map->spot) {
        bw_put(&t, "; ");
        bw_put(&t, stage->spots[map->twin].name);
        bw_put(&t, " as his image");
    }
    bw_heading(sheet->ink, BW_TAG_H2, BW_ROLE_TEXT, 11, x, y + 10, width, name);
    const bw_view view = bw_view_fit(window_of(r->sense, map), x + 8, y + 20, width - 16);
    bw_ink_begin(sheet->ink, BW_TAG_FIGURE, name);
    bw_draw_paper(sheet->ink, &view);
    bw_ink_clip(sheet->ink, view.box.x, view.box.y, view.box.width, view.box.height);
    put_flat(sheet->ink, r->sense, map, &view);
    bw_ink_unclip(sheet->ink);
    bw_draw_field(sheet->ink, bw_field_at(scheme->field), scheme->units, &view);
    put_soundings(sheet->ink, r->sense, map, &view);
    bw_mark_defender(sheet->ink, bw_marks_small(), bw_view_point(&view, map->home),
                     stage->spots[map->spot].id, BW_NO_DUTY);
    bw_draw_border(sheet->ink, scheme->units, &view, false);
    bw_ink_end(sheet->ink);
    return view.scale;
}

void bw_tune_page_homes(const bw_tune_report *r, bw_sheet *sheet) {
    const bw_box *b = &sheet->block;
    char line[LINE];
    bw_put_estimate(sheet);
    bw_heading(sheet->ink, BW_TAG_H1, BW_ROLE_TEXT, BW_TYPE_HEAD, b->x, b->y + 16, b->width - 90,
               "Where a yard matters");
    bw_text t = bw_text_in(line, sizeof line);
    bw_put(&t, "Around each suggested home, one ");
    bw_put(&t, r->def->scheme->units == BW_YARDS ? "yard" : "metre");
    bw_put(
        &t,
        " apart: goals in 100 training breaks more (+) or fewer (-) when he stands there and all "
        "else stays. Tinted and outlined is flat water: up to +");
    bw_put_fixed(&t, 100 * r->sense->flat, 1);
    bw_put(&t, " is chance, so anywhere in there is as good.");
    double y = b->y + 24;
    y += 8 + bw_paragraph(sheet->ink, BW_ROLE_TEXT, BW_REGULAR, BW_TYPE_TEXT, BW_LEADING, b->x, y,
                          b->width, line);
    const int rows = (r->sense->map_count + 1) / 2;
    const double high = (b->y + b->height - y) / (rows < 1 ? 1 : rows);
    const double half = (b->width - gutter) / 2, width = high - 34 < half ? high - 34 : half;
    double scale = 0;
    for (int i = 0; i < r->sense->map_count; i++) {
        const double x = b->x + (i % 2) * (half + gutter) + (half - width) / 2;
        scale = put_map(r, sheet, &r->sense->maps[i], x, y + i / 2 * (width + 30), width);
    }
    if (scale > 0) bw_sheet_scale(sheet, r->def->scheme->units, scale);
}
