/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "draw/curve_chart.h"

#include "core/text.h"
#include "draw/curve_frame.h"
#include "draw/metrics.h"
#include "draw/path.h"

static const double row = 12;   // one row of labels
static const double ladder = 6; // height of the time ladder
static const double below = 52; // seconds, ladder and its two rows of labels

int bw_curve_top(const bw_curve *curve) {
    double most = 0;
    for (int t = 0; t <= BW_MAX_SECONDS; t++) {
        most = bw_max(most, bw_max(curve->best[t], curve->typical[t]));
        most = bw_max(most, curve->settled[t]);
    }
    const int tens = (int)bw_floor(most * 10 + 0.999);
    return tens < 2 ? 20 : tens * 10;
}

static void draw_typical(bw_ink *ink, const bw_curve_frame *f, const bw_curve *c) {
    bw_ink_stroke(ink, BW_ROLE_DEFENDER, 2.2);
    bw_curve_trace(ink, f, c->typical);
    bw_ink_stroke(ink, BW_ROLE_DEFENDER, 0.9);
    bw_curve_errors(ink, f, c->typical, c->error);
    bw_ink_fill(ink, BW_ROLE_DEFENDER);
    for (int t = 1; t <= BW_MAX_SECONDS; t++)
        bw_path_circle(ink, bw_curve_spot(f, t, c->typical[t]), 2.8);
}

static void draw_best(bw_ink *ink, const bw_curve_frame *f, const bw_curve *c) {
    bw_ink_dashed(ink, BW_ROLE_ACCENT, 1.3, 5, 3);
    bw_curve_trace(ink, f, c->best);
    for (int t = 1; t <= BW_MAX_SECONDS; t++) {
        const bw_vec p = bw_curve_spot(f, t, c->best[t]);
        const double r = 3.4;
        for (int pass = 0; pass < 2; pass++) {
            if (pass == 0)
                bw_ink_fill(ink, BW_ROLE_PAGE);
            else
                bw_ink_stroke(ink, BW_ROLE_ACCENT, 1.1);
            bw_ink_move(ink, p.x, p.y - r);
            bw_ink_line(ink, p.x + r, p.y);
            bw_ink_line(ink, p.x, p.y + r);
            bw_ink_line(ink, p.x - r, p.y);
            bw_ink_shut(ink);
        }
    }
}

/// Under the typical line the chart is tinted as water is on a sea chart.
static void draw_lines(bw_ink *ink, const bw_curve_frame *f, const bw_curve *c) {
    bw_ink_fill(ink, BW_ROLE_BAND_3);
    bw_curve_trace(ink, f, c->typical);
    bw_ink_line(ink, bw_curve_across(f, BW_MAX_SECONDS), bw_curve_bottom(f));
    bw_ink_shut(ink);
    bw_ink_dashed(ink, BW_ROLE_SOFT_LINE, 1.6, 0, 3.4);
    bw_curve_trace(ink, f, c->settled);
    draw_typical(ink, f, c);
    draw_best(ink, f, c);
}

/// A name of a line at its end: bold with its last figure, and what it means.
typedef struct end_label {
    const char *name, *meaning;
    double worth, y;
} end_label;

static void draw_ends(bw_ink *ink, const bw_curve_frame *f, const bw_curve *c) {
    const double x = f->plot.x + f->plot.width + 9, height = 24;
    end_label ends[] = {{"best ", "perfect: a stress test", c->best[BW_MAX_SECONDS], 0},
                        {"typical ", "people, to compare", c->typical[BW_MAX_SECONDS], 0},
                        {"even ", "numbers even at once", c->settled[BW_MAX_SECONDS], 0}};
    // From the axis up, each label at least its height above the one below.
    double floor = bw_curve_bottom(f) - 13;
    for (int i = 2; i >= 0; i--) {
        ends[i].y = bw_min(bw_curve_spot(f, BW_MAX_SECONDS, ends[i].worth).y, floor);
        floor = ends[i].y - height;
    }
    // Then down again, for three high lines.
    double ceiling = f->plot.y;
    for (int i = 0; i < 3; i++) {
        ends[i].y = bw_max(ends[i].y, ceiling);
        ceiling = ends[i].y + height;
    }
    for (int i = 0; i < 3; i++) {
        char line[40];
        bw_text t = bw_text_in(line, sizeof line);
        bw_put(&t, ends[i].name);
        bw_put_fixed(&t, ends[i].worth * 100, 0);
        bw_ink_text(ink, BW_ROLE_TEXT, BW_BOLD, 10, BW_LEFT_ALIGN, x, ends[i].y + 2, line);
        bw_curve_words(ink, BW_REGULAR, BW_LEFT_ALIGN, x, ends[i].y + 13, ends[i].meaning);
    }
}

/// "first midfielder in, 3.9 s" on a beacon that stands where he arrives.
static void draw_flag(bw_ink *ink, const bw_curve_frame *f, const char *name, double seconds,
                      double y) {
    char words[BW_NAME_SIZE + 24];
    bw_text t = bw_text_in(words, sizeof words);
    bw_put(&t, name);
    bw_put(&t, " in, ");
    bw_put_fixed(&t, seconds, 1);
    bw_put(&t, " s");
    const double x = bw_curve_across(f, seconds), width = bw_width(words, BW_CURVE_SMALL);
    bw_ink_dashed(ink, BW_ROLE_LINE, 0.9, 1.5, 2.5);
    bw_path_segment(ink, bw_v(x, y - 8), bw_v(x, bw_curve_bottom(f)));
    bw_ink_fill(ink, BW_ROLE_LINE);
    const bool right = x + 12 + width < f->plot.x + f->plot.width + BW_CURVE_RIGHT;
    bw_path_head(ink, bw_v(right ? x + 8 : x - 8, y - 4.5), bw_v(right ? 1 : -1, 0), 8, 7);
    bw_curve_words(ink, BW_REGULAR, right ? BW_LEFT_ALIGN : BW_RIGHT_ALIGN, right ? x + 11 : x - 11,
                   y - 1, words);
}

static int flag_rows(const bw_curve *c) {
    int rows = 0;
    for (int i = 0; i < c->late_count; i++)
        rows += c->late_s[i] >= 0;
    return rows;
}

static void draw_flags(bw_ink *ink, const bw_curve_frame *f, const bw_curve *c,
                       const char *const *late) {
    int at = flag_rows(c);
    for (int i = 0; i < c->late_count; i++) {
        if (c->late_s[i] < 0) continue;
        draw_flag(ink, f, late[i], c->late_s[i], f->plot.y - row * at - 6);
        at--;
    }
}

static void draw_plateau(bw_ink *ink, const bw_curve_frame *f, const bw_curve *c) {
    if (c->even_s <= 0 || c->even_s + 1 > BW_MAX_SECONDS) return;
    const double at = c->even_s + 1;
    const bw_vec p = bw_curve_spot(f, at, bw_curve_between(c->typical, at));
    bw_ink_stroke(ink, BW_ROLE_LINE, 1.2);
    bw_path_circle(ink, p, 6.5);
    char words[32];
    bw_text t = bw_text_in(words, sizeof words);
    bw_put(&t, "plateau ");
    bw_put_fixed(&t, c->plateau * 100, 0);
    // Under the line, where the water is; over it when there is no room above the axis.
    const double width = bw_width(words, 10);
    const bool under = p.y + 26 < bw_curve_bottom(f);
    const double y = under ? p.y + 20 : p.y - 12;
    const double x = bw_min(p.x, f->plot.x + f->plot.width - width / 2 - 3);
    bw_ink_fill(ink, under ? BW_ROLE_BAND_3 : BW_ROLE_PAGE);
    bw_path_rect(ink, x - width / 2 - 2, y - 9, width + 4, 11);
    bw_ink_text(ink, BW_ROLE_TEXT, BW_BOLD, 10, BW_CENTRE_ALIGN, x, y, words);
}

/// One stretch of the time ladder with its words below.
typedef struct stretch {
    double from, to; ///< s
    bool hatched;
    char words[40];
} stretch;

static void hatch(bw_ink *ink, double x, double y, double width) {
    bw_ink_clip(ink, x, y, width, ladder);
    bw_ink_stroke(ink, BW_ROLE_WARN, 1);
    for (double at = x - ladder; at < x + width; at += 4)
        bw_path_segment(ink, bw_v(at, y + ladder), bw_v(at + ladder, y));
    bw_ink_unclip(ink);
}

static int list_stretches(const bw_curve *c, stretch *list) {
    bw_text t = bw_text_in(list[0].words, sizeof list[0].words);
    list[0].from = 0;
    list[0].to = c->bought_s;
    list[0].hatched = false;
    if (!c->ever_beaten) {
        bw_put(&t, "holds all 10 s");
        return 1;
    }
    bw_put(&t, "time bought ");
    bw_put_fixed(&t, c->bought_s, 1);
    bw_put(&t, " s");
    const bool never = c->even_s < 0;
    if (!never && c->missing_s <= 0) return 1;
    list[1].from = c->bought_s;
    list[1].to = never ? BW_MAX_SECONDS : c->bought_s + c->missing_s;
    list[1].hatched = true;
    t = bw_text_in(list[1].words, sizeof list[1].words);
    if (never) {
        bw_put(&t, "nobody comes to even it");
    } else {
        bw_put_fixed(&t, c->missing_s, 1);
        bw_put(&t, " s missing");
    }
    return 2;
}

static void draw_ladder(bw_ink *ink, const bw_curve_frame *f, const bw_curve *c) {
    stretch list[2];
    const int count = list_stretches(c, list);
    const double y = bw_curve_bottom(f) + 18;
    double taken = f->plot.x - 10;
    for (int i = 0; i < count; i++) {
        const double a = bw_curve_across(f, list[i].from), b = bw_curve_across(f, list[i].to);
        if (list[i].hatched) {
            hatch(ink, a, y, b - a);
        } else {
            bw_ink_fill(ink, BW_ROLE_LINE);
            bw_path_rect(ink, a, y, b - a, ladder);
        }
        const double width = bw_width(list[i].words, 10);
        const double middle = a + bw_max(0, b - a - width) / 2;
        const double last = f->plot.x + f->plot.width + BW_CURVE_RIGHT - width;
        const double x = bw_min(bw_max(middle, taken + 10), last);
        bw_ink_text(ink, BW_ROLE_TEXT, BW_BOLD, 10, BW_LEFT_ALIGN, x, y + ladder + 12,
                    list[i].words);
        taken = x + width;
    }
    bw_ink_stroke(ink, BW_ROLE_LINE, 0.75);
    bw_path_rect(ink, f->plot.x, y, f->plot.width, ladder);
}

void bw_draw_curve(bw_ink *ink, const bw_curve *curve, const char *const *late, bw_box box) {
    const double above = 16 + row * flag_rows(curve);
    const bw_curve_frame f = {.top = bw_curve_top(curve) / 100.0,
                              .plot = {box.x + BW_CURVE_LEFT, box.y + above,
                                       box.width - BW_CURVE_LEFT - BW_CURVE_RIGHT,
                                       box.height - above - below}};
    bw_curve_scale(ink, &f);
    draw_lines(ink, &f, curve);
    bw_curve_axes(ink, &f);
    draw_flags(ink, &f, curve, late);
    bw_curve_caption(ink, &f);
    draw_plateau(ink, &f, curve);
    draw_ladder(ink, &f, curve);
    draw_ends(ink, &f, curve);
}
