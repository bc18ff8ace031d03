/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Rates on one scale: what was seen filled, with its interval; what a model says hollow.
#include "core/maths.h"
#include "draw/path.h"
#include "report/pages_part.h"
#include "report/review_part.h"

static const double count_width = 58, row_height = 15.5, scale_height = 24;

/// Room for the labels: less on a narrow page.
static double label_width(const bw_sheet *sheet) {
    return bw_min(186, 0.36 * sheet->block.width);
}

typedef struct axis {
    double x, width;
} axis;

static axis axis_of(const bw_sheet *sheet) {
    const double left = sheet->block.x + label_width(sheet) + count_width;
    return (axis){left, sheet->block.x + sheet->block.width - left - 8};
}

static double at(const axis *a, double rate) {
    return a->x + a->width * rate;
}

static void put_scale(const bw_sheet *sheet, const axis *a, double y, double foot,
                      const char *what) {
    bw_ink *ink = sheet->ink;
    bw_ink_begin(ink, BW_TAG_ARTIFACT, "");
    bw_ink_stroke(ink, BW_ROLE_GRID, 0.75);
    for (int tick = 0; tick <= 100; tick += 20)
        bw_path_segment(ink, bw_v(at(a, tick / 100.0), y), bw_v(at(a, tick / 100.0), foot));
    bw_ink_end(ink);
    for (int tick = 0; tick <= 100; tick += 20) {
        char line[8];
        bw_text t = bw_text_in(line, sizeof line);
        bw_put_int(&t, tick);
        bw_ink_text(ink, BW_ROLE_SOFT_TEXT, BW_REGULAR, BW_TYPE_LABEL, BW_CENTRE_ALIGN,
                    at(a, tick / 100.0), foot + 10, line);
    }
    bw_ink_text(ink, BW_ROLE_SOFT_TEXT, BW_REGULAR, BW_TYPE_LABEL, BW_RIGHT_ALIGN, a->x - 10,
                foot + 10, what);
}

static void put_dot(bw_ink *ink, double x, double y, bool filled) {
    if (filled)
        bw_ink_fill(ink, BW_ROLE_LINE);
    else
        bw_ink_fill(ink, BW_ROLE_PAGE);
    bw_path_circle(ink, bw_v(x, y), 3.4);
    if (filled) return;
    bw_ink_stroke(ink, BW_ROLE_LINE, 1.2);
    bw_path_circle(ink, bw_v(x, y), 3.4);
}

static void put_line(bw_ink *ink, const axis *a, bw_interval i, double y, double width,
                     bool dashed) {
    if (dashed)
        bw_ink_dashed(ink, BW_ROLE_SOFT_LINE, width, 2, 2);
    else
        bw_ink_stroke(ink, BW_ROLE_LINE, width);
    bw_path_segment(ink, bw_v(at(a, i.low), y), bw_v(at(a, i.high), y));
}

static void put_row(const bw_sheet *sheet, const axis *a, const bw_plot_row *row, double y) {
    bw_ink *ink = sheet->ink;
    char line[40];
    bw_line_of(ink, BW_ROLE_TEXT, BW_REGULAR, BW_TYPE_SMALL, sheet->block.x, y + 3.5,
               label_width(sheet) - 6, row->label);
    bw_text t = bw_text_in(line, sizeof line);
    bw_put_int(&t, row->seen.hits);
    bw_put(&t, " of ");
    bw_put_int(&t, row->seen.cases);
    bw_put_cell(ink, BW_BOLD, BW_RIGHT_ALIGN, a->x - 10, y + 3.5, line);
    if (row->leaning.high > row->leaning.low) put_line(ink, a, row->leaning, y + 3, 1, true);
    if (bw_may_say(row->seen.cases) == BW_SAY_COUNTS) {
        if (row->leaning.high <= row->leaning.low)
            bw_ink_text(ink, BW_ROLE_SOFT_TEXT, BW_REGULAR, BW_TYPE_LABEL, BW_LEFT_ALIGN, a->x + 4,
                        y + 3, "too few to say");
    } else {
        put_line(ink, a, bw_rate_interval(row->seen), y,
                 bw_may_say(row->seen.cases) == BW_SAY_ROUGH ? 1 : 2, false);
        put_dot(ink, at(a, bw_rate(row->seen)), y, true);
    }
    if (row->forecast > 0) put_dot(ink, at(a, row->expected / row->forecast), y, false);
}

double bw_rates_height(int count) {
    return count * row_height + scale_height;
}

double bw_put_rates(const bw_sheet *sheet, double y, const char *what, const bw_plot_row *rows,
                    int count) {
    const axis a = axis_of(sheet);
    const double foot = y + count * row_height;
    put_scale(sheet, &a, y, foot, what);
    for (int i = 0; i < count; i++)
        put_row(sheet, &a, &rows[i], y + (i + 0.5) * row_height);
    return foot + scale_height;
}
