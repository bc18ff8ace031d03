/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report/wall.h"
#include "report/catalogue.h"

#include "core/shape.h"
#include "draw/book_words.h"
#include "draw/chart.h"
#include "draw/key.h"
#include "draw/metrics.h"
#include "draw/path.h"
#include "draw/scene.h"
#include "trial/words.h"

enum { LINE = 4 * BW_NAME_SIZE };

/// Laid out as small as its labels' 9 pt allow, then enlarged.
static const double zoom = BW_WALL_TYPE / BW_TYPE_LABEL;

static const double row = 17; // of the list of calls

/// Discs smaller than on a sheet of paper, for the chart is narrower beside them.
static const bw_mark_size marks = {.radius = 8.5, .type = 10.5, .label = 9};

static bw_format format_of(const bw_teach *teach) {
    if (teach->paper == BW_A4) return bw_format_poster(297 * 72 / 25.4, 420 * 72 / 25.4, zoom);
    return bw_format_poster(11 * 72, 17 * 72, zoom);
}

int bw_wall_pages(const bw_teach *teach) {
    return teach->scheme->stage_count;
}

static double put_title(const bw_stage *stage, const bw_sheet *sheet) {
    const bw_box *b = &sheet->block;
    char words[LINE];
    bw_text t = bw_text_in(words, sizeof words);
    bw_say_stage(stage, &t);
    double y = b->y;
    if (stage->call[0]) {
        bw_heading(sheet->ink, BW_TAG_H1, BW_ROLE_TEXT, 30, b->x, y + 26, b->width, stage->call);
        y += 34;
    }
    bw_line_of(sheet->ink, BW_ROLE_TEXT, BW_BOLD, 14, b->x, y + 14, b->width, words);
    return y + 24;
}

static double put_chart(const bw_scheme *scheme, int stage_index, const bw_sheet *sheet, double y,
                        double tall) {
    const bw_box *b = &sheet->block;
    const bw_window window = bw_window_unit(scheme);
    const double wide =
        bw_min(b->width - 2 * BW_BORDER, bw_view_width(window, tall - 2 * BW_BORDER));
    const bw_view view = bw_view_fit(window, b->x + (b->width - wide) / 2, y + BW_BORDER, wide);
    bw_station homes[BW_MAX_SPOTS];
    bw_scene scene = bw_scene_homes(scheme, stage_index, homes);
    scene.beside = BW_BESIDE_NOTHING; // the words stand below the chart
    char figure[2 * BW_NAME_SIZE];
    bw_text t = bw_text_in(figure, sizeof figure);
    bw_put_plain_sentence(&t, bw_voice_of(scheme), &bw_s_figure_homes);
    bw_ink_begin(sheet->ink, BW_TAG_FIGURE, figure);
    bw_draw_scene(sheet->ink, &scene, &view, marks, false);
    bw_ink_end(sheet->ink);
    bw_sheet_scale(sheet, scheme->units, view.scale);
    return view.box.y + view.box.height + BW_BORDER;
}

/// Code, name and word of each spot.
static void put_calls(const bw_stage *stage, const bw_sheet *sheet, double y) {
    const bw_box *b = &sheet->block;
    double code = 0;
    for (int s = 0; s < stage->defenders; s++)
        code = bw_max(code, bw_width(stage->spots[s].id, 12));
    for (int s = 0; s < stage->defenders; s++, y += row) {
        const bw_spot *spot = &stage->spots[s];
        char words[LINE];
        bw_text t = bw_text_in(words, sizeof words);
        if (spot->call[0]) {
            bw_put(&t, "\xE2\x80\x9C");
            bw_put(&t, spot->call);
            bw_put(&t, "\xE2\x80\x9D");
        }
        const double x = b->x + code + 10, half = (b->x + b->width - x) / 2;
        bw_ink_text(sheet->ink, BW_ROLE_TEXT, BW_BOLD, 12, BW_LEFT_ALIGN, b->x, y + 12, spot->id);
        bw_line_of(sheet->ink, BW_ROLE_TEXT, BW_REGULAR, 12, x, y + 12, half - 8, spot->name);
        bw_line_of(sheet->ink, BW_ROLE_TEXT, BW_BOLD, 12, x + half, y + 12, half, words);
    }
}

bw_status bw_wall_page(const bw_teach *teach, int page, int pages, bw_ink *ink) {
    if (page < 1 || page > pages || page > teach->scheme->stage_count) return BW_NOT_FOUND;
    const bw_scheme *scheme = teach->scheme;
    const bw_stage *stage = &scheme->stages[page - 1];
    const bw_format format = format_of(teach);
    char name[3 * BW_NAME_SIZE];
    bw_text t = bw_text_in(name, sizeof name);
    bw_say_owner(scheme, &t);
    const bw_foot foot = {.name = name,
                          .keys = BW_KEY_DEFENDER | BW_KEY_KEEPER,
                          .charts = true,
                          .date = teach->date,
                          .page = page,
                          .pages = pages};
    const bw_sheet sheet = bw_sheet_open(ink, &format, &foot);
    const double list = BW_MAX_SPOTS * row; // all charts of one size
    const double y = put_title(stage, &sheet);
    const double chart =
        put_chart(scheme, page - 1, &sheet, y, sheet.block.y + sheet.block.height - y - list - 10);
    put_calls(stage, &sheet, chart + 8);
    bw_sheet_close(&sheet, &format);
    return (bw_status)ink->status;
}
