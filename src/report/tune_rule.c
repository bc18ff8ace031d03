/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The third sheet: what each number of the rule costs when it is turned.
#include "core/maths.h"
#include "draw/path.h"
#include "report/pages_part.h"
#include "report/tune_part.h"

enum { LINE = 600 };

static const double gutter = 30, plot_height = 84, block_height = 146;

typedef struct plot {
    double x, y, width, low, high; ///< page box; costs at its foot and head
} plot;

static bw_vec point(const plot *p, int i, double cost) {
    return bw_v(p->x + p->width * i / (BW_SENSE_SIDE - 1),
                p->y + plot_height * (p->high - cost) / (p->high - p->low));
}

static plot fit_plot(const bw_sense *sense, const bw_sense_scale *s, double x, double y,
                     double width) {
    plot p = {x, y, width, -sense->flat, sense->flat};
    for (int i = 0; i < BW_SENSE_SIDE; i++) {
        if (!s->there[i]) continue;
        p.low = bw_min(p.low, s->cost[i]);
        p.high = bw_max(p.high, s->cost[i]);
    }
    const double air = 0.15 * (p.high - p.low) + 1e-6;
    p.low -= air;
    p.high += air;
    return p;
}

static void put_line(bw_ink *ink, const plot *p, const bw_sense_scale *s) {
    bw_ink_stroke(ink, BW_ROLE_LINE, 1.5);
    bool down = false;
    for (int i = 0; i < BW_SENSE_SIDE; i++) {
        if (!s->there[i]) continue;
        const bw_vec at = point(p, i, s->cost[i]);
        if (down)
            bw_ink_line(ink, at.x, at.y);
        else
            bw_ink_move(ink, at.x, at.y);
        down = true;
    }
    bw_ink_fill(ink, BW_ROLE_LINE);
    for (int i = 0; i < BW_SENSE_SIDE; i++) {
        if (s->there[i])
            bw_path_circle(ink, point(p, i, s->cost[i]), i == BW_SENSE_STEPS ? 4 : 2.2);
    }
}

static void put_figures(const bw_tune_report *r, bw_ink *ink, const plot *p,
                        const bw_sense_scale *s) {
    const bool length = bw_knob_is_length(&s->knob);
    const double unit = length ? bw_unit_length(r->def->scheme->units) : 1;
    char line[24];
    for (int i = 0; i < BW_SENSE_SIDE; i++) {
        if (!s->there[i]) continue;
        bw_text t = bw_text_in(line, sizeof line);
        bw_put_fixed(&t, s->at[i] / unit, length ? 1 : 2);
        const double x = point(p, i, 0).x;
        bw_ink_text(ink, BW_ROLE_TEXT, i == BW_SENSE_STEPS ? BW_BOLD : BW_REGULAR, BW_TYPE_LABEL,
                    BW_CENTRE_ALIGN, x, p->y + plot_height + 12, line);
        t = bw_text_in(line, sizeof line);
        if (s->cost[i] >= 0.0005) bw_put(&t, "+");
        bw_put_fixed(&t, 100 * s->cost[i], 1);
        if (i != BW_SENSE_STEPS)
            bw_ink_text(ink, BW_ROLE_SOFT_TEXT, BW_REGULAR, BW_TYPE_LABEL, BW_CENTRE_ALIGN, x,
                        p->y + plot_height + 24, line);
    }
}

static void put_scale(const bw_tune_report *r, const bw_sheet *sheet, const bw_sense_scale *s,
                      double x, double y, double width) {
    bw_ink *ink = sheet->ink;
    char name[BW_NAME_SIZE + 32];
    bw_text t = bw_text_in(name, sizeof name);
    bw_knob_name(&r->def->scheme->stages[r->def->stage], &s->knob, &t);
    if (bw_knob_is_length(&s->knob)) {
        bw_put(&t, ", ");
        bw_put(&t, bw_unit_long(r->def->scheme->units));
    }
    bw_heading(ink, BW_TAG_H2, BW_ROLE_TEXT, 11, x, y + 10, width, name);
    const plot p = fit_plot(r->sense, s, x + 14, y + 24, width - 28);
    bw_ink_begin(ink, BW_TAG_FIGURE, name);
    const double top = point(&p, 0, r->sense->flat).y, foot = point(&p, 0, -r->sense->flat).y;
    bw_ink_fill(ink, BW_ROLE_BAND_1);
    bw_path_rect(ink, x, top, width, foot - top);
    bw_ink_stroke(ink, BW_ROLE_SOFT_LINE, 0.75);
    bw_path_segment(ink, bw_v(x, point(&p, 0, 0).y), bw_v(x + width, point(&p, 0, 0).y));
    put_line(ink, &p, s);
    put_figures(r, ink, &p, s);
    bw_ink_end(ink);
}

void bw_tune_page_rule(const bw_tune_report *r, bw_sheet *sheet) {
    const bw_box *b = &sheet->block;
    char line[LINE];
    bw_put_estimate_heading(sheet, "The rule's numbers, turned one at a time");
    bw_text t = bw_text_in(line, sizeof line);
    bw_put(&t, "Along each line the number's value; above it goals in 100 training breaks more (+) "
               "or fewer "
               "(-) than with the suggested value, the large dot. The tinted band, ");
    bw_put_fixed(&t, 100 * r->sense->flat, 1);
    bw_put(&t, " either way, is chance.");
    double y = b->y + 24;
    y += 10 + bw_paragraph(sheet->ink, BW_ROLE_TEXT, BW_REGULAR, BW_TYPE_TEXT, BW_LEADING, b->x, y,
                           b->width, line);
    const double width = (b->width - gutter) / 2;
    for (int i = 0; i < r->sense->scale_count; i++)
        put_scale(r, sheet, &r->sense->scales[i], b->x + (i % 2) * (width + gutter),
                  y + i / 2 * block_height, width);
}
