/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The second sheet: soundings round each home, what standing there costs, with the flat water tinted.
#include "draw/soundings.h"
#include "report/catalogue.h"
#include "report/pages_part.h"
#include "report/tune_part.h"
#include <string.h>

enum { LINE = 600 };

static const double gutter = 24;

/// The map as draw knows it.
static bw_soundings soundings_of(const bw_sense *sense, const bw_sense_map *map) {
    _Static_assert((int)BW_SENSE_SIDE == (int)BW_SOUNDINGS_SIDE,
                   "a map and its picture are as large");
    bw_soundings s = {.home = map->home, .step = sense->step, .flat = sense->flat};
    memcpy(s.cost, map->cost, sizeof s.cost);
    memcpy(s.there, map->there, sizeof s.there);
    return s;
}

/// Returns its points per metre.
static double put_map(const bw_tune_report *r, const bw_sheet *sheet, const bw_sense_map *map,
                      double x, double y, double width) {
    const bw_scheme *scheme = &r->tuned->scheme;
    const bw_stage *stage = &scheme->stages[r->def->stage];
    char name[2 * BW_NAME_SIZE + 16];
    bw_text t = bw_text_in(name, sizeof name);
    if (map->twin >= 0 && map->twin != map->spot)
        bw_put_sentence(&t, bw_voice_of(scheme), &bw_s_tune_image,
                        bw_as_word("spot", stage->spots[map->spot].name),
                        bw_as_word("twin", stage->spots[map->twin].name));
    else
        bw_put(&t, stage->spots[map->spot].name);
    bw_heading(sheet->ink, BW_TAG_H2, BW_ROLE_TEXT, 11, x, y + 10, width, name);
    const bw_soundings soundings = soundings_of(r->sense, map);
    const bw_view view = bw_view_fit(bw_soundings_window(&soundings), x + 8, y + 20, width - 16);
    bw_ink_begin(sheet->ink, BW_TAG_FIGURE, name);
    bw_draw_soundings(sheet->ink, &soundings, bw_field_at(scheme->field), scheme->units,
                      stage->spots[map->spot].id, &view);
    bw_ink_end(sheet->ink);
    return view.scale;
}

void bw_tune_page_homes(const bw_tune_report *r, bw_sheet *sheet) {
    const bw_box *b = &sheet->block;
    char line[LINE];
    bw_put_estimate_heading(sheet, "Where a yard matters");
    bw_text t = bw_text_in(line, sizeof line);
    const bw_scheme *scheme = r->def->scheme;
    bw_put_sentence(
        &t, bw_voice_of(scheme), &bw_s_tune_homes,
        bw_as_part("unit", scheme->units == BW_YARDS ? &bw_s_unit_yard : &bw_s_unit_metre),
        bw_as_number("flat", 100 * r->sense->flat, 1));
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
