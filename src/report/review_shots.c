/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The second sheet: where shots came from, and who was named out of place.
#include "core/maths.h"
#include "draw/chart.h"
#include "draw/path.h"
#include "report/pages_part.h"
#include "report/review_part.h"

enum { LINE = 600, MOST_SHOTS = 600 }; ///< more marks than that are one blot

/// The window that shows nearly every shot: thirty yards across, from behind the goal to 25 yards out.
static bw_window window(void) {
    const double yd = BW_METRES_PER_YARD;
    return (bw_window){-17 * yd, 17 * yd, -8 * yd, 22 * yd};
}

static bool inside(const bw_window *w, bw_vec p) {
    return p.x >= w->left && p.x <= w->right && p.y >= w->bottom && p.y <= w->top;
}

/// A goal is a filled dot, a save an open ring, a shot wide a small cross.
static void put_shot(bw_ink *ink, bw_vec p, bw_outcome outcome) {
    const double reach = 3.2;
    if (outcome == BW_OUTCOME_GOAL) {
        bw_ink_fill(ink, BW_ROLE_LINE);
        bw_path_circle(ink, p, 3.6);
    } else if (outcome == BW_OUTCOME_SAVE) {
        bw_ink_stroke(ink, BW_ROLE_LINE, 1.2);
        bw_path_circle(ink, p, 3.4);
    } else {
        bw_ink_stroke(ink, BW_ROLE_LINE, 1.2);
        bw_path_segment(ink, bw_v(p.x - reach, p.y - reach), bw_v(p.x + reach, p.y + reach));
        bw_path_segment(ink, bw_v(p.x - reach, p.y + reach), bw_v(p.x + reach, p.y - reach));
    }
}

/// Shots that are on no chart, by why.
typedef struct left_out {
    int outside, unknown, older;
} left_out;

static left_out count_left(const bw_review *r, const bw_window *seen) {
    left_out left = {0};
    int there = 0;
    for (int i = 0; i < r->entry_count; i++) {
        const bw_entry *e = &r->entries[i];
        if (!bw_outcome_shot(e->outcome)) continue;
        if (!e->shot_known)
            left.unknown++;
        else if (!inside(seen, e->shot))
            left.outside++;
        else
            there++;
    }
    left.older = there > MOST_SHOTS ? there - MOST_SHOTS : 0;
    return left;
}

static double put_legend(const bw_sheet *sheet, double x, double y, const left_out *left) {
    static const char *const words[] = {"goal", "shot saved", "shot wide"};
    for (int i = 0; i < 3; i++) {
        put_shot(sheet->ink, bw_v(x + 4, y - 3.5), (bw_outcome)(BW_OUTCOME_GOAL + i));
        bw_put_cell(sheet->ink, BW_REGULAR, BW_LEFT_ALIGN, x + 12, y, words[i]);
        x += 82;
    }
    char line[LINE];
    bw_text t = bw_text_in(line, sizeof line);
    if (left->unknown > 0) {
        bw_put(&t, "place not noted: ");
        bw_put_int(&t, left->unknown);
        bw_put(&t, " shots. ");
    }
    if (left->outside > 0) {
        bw_put(&t, "outside the chart: ");
        bw_put_int(&t, left->outside);
    }
    bw_put_cell(sheet->ink, BW_REGULAR, BW_LEFT_ALIGN, x, y, line);
    if (left->older == 0) return y + 12;
    t = bw_text_in(line, sizeof line);
    bw_put(&t, "The newest ");
    bw_put_int(&t, MOST_SHOTS);
    bw_put(&t, " are drawn, ");
    bw_put_int(&t, left->older);
    bw_put(&t, " older ones are only counted.");
    bw_put_cell(sheet->ink, BW_REGULAR, BW_LEFT_ALIGN, sheet->block.x + 40, y + 12, line);
    return y + 24;
}

static double put_chart(const bw_review *r, const bw_sheet *sheet, double y) {
    const bw_box *b = &sheet->block;
    const bw_window seen = window();
    const bw_view view =
        bw_view_fit(seen, b->x + 40, y, bw_min(b->width - 80, bw_view_width(seen, 330)));
    const left_out left = count_left(r, &seen);
    int skip = left.older;
    bw_ink_begin(sheet->ink, BW_TAG_FIGURE, "Where shots came from.");
    bw_draw_paper(sheet->ink, &view);
    bw_draw_field(sheet->ink, r->field, r->units, &view);
    for (int i = 0; i < r->entry_count; i++) {
        const bw_entry *e = &r->entries[i];
        if (!bw_outcome_shot(e->outcome) || !e->shot_known || !inside(&seen, e->shot)) continue;
        if (skip-- > 0) continue;
        put_shot(sheet->ink, bw_view_point(&view, e->shot), e->outcome);
    }
    bw_draw_border(sheet->ink, r->units, &view, true);
    bw_ink_end(sheet->ink);
    bw_sheet_scale(sheet, r->units, view.scale);
    return put_legend(sheet, view.box.x, view.box.y + view.box.height + 28, &left);
}

static double put_places(const bw_review *r, const bw_sheet *sheet, double y) {
    bw_plot_row rows[BW_SEASON_PLACES];
    for (int i = 0; i < r->season->place_count; i++)
        rows[i] =
            (bw_plot_row){.label = r->season->places[i].label, .seen = r->season->places[i].goals};
    if (r->season->place_count == 0) return y;
    return bw_put_rates(sheet, y, "goals in 100 shots", rows, r->season->place_count);
}

static void put_named(const bw_review *r, const bw_sheet *sheet, double y) {
    const bw_season *s = r->season;
    const bw_box *b = &sheet->block;
    char line[LINE];
    bw_text t = bw_text_in(line, sizeof line);
    bw_heading(sheet->ink, BW_TAG_H2, BW_ROLE_TEXT, BW_TYPE_SUBHEAD, b->x, y + 14, b->width,
               "Who was noted as out of place");
    bw_put(&t, "In ");
    bw_put_int(&t, s->named_breaks.hits);
    bw_put(&t, " of ");
    bw_put_int(&t, s->named_breaks.cases);
    bw_put(&t, " breaks somebody was: ");
    for (int i = 0; i < s->named_count; i++) {
        if (i > 0) bw_put(&t, ", ");
        const bool jersey = s->named[i].who[0] >= '0' && s->named[i].who[0] <= '9';
        bw_put(&t, jersey ? "#" : "");
        bw_put(&t, s->named[i].who);
        bw_put(&t, " (");
        bw_put_int(&t, s->named[i].times);
        bw_put(&t, ")");
    }
    bw_put(&t, s->named_count == 0
                   ? "nobody."
                   : ". A count of notes, not of mistakes: whoever has the hardest job is "
                     "named most.");
    bw_paragraph(sheet->ink, BW_ROLE_TEXT, BW_REGULAR, BW_TYPE_TEXT, BW_LEADING, b->x, y + 20,
                 b->width, line);
}

void bw_review_page_shots(const bw_review *r, bw_sheet *sheet) {
    const bw_box *b = &sheet->block;
    bw_heading(sheet->ink, BW_TAG_H1, BW_ROLE_TEXT, BW_TYPE_HEAD, b->x, b->y + 16, b->width,
               "Where shots came from");
    double y = put_chart(r, sheet, b->y + 30);
    y = put_places(r, sheet, y + 4);
    put_named(r, sheet, y);
}
