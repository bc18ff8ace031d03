/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Worth upward, seconds to the right.
#include "draw/curve_frame.h"

#include "core/text.h"
#include "draw/metrics.h"
#include "draw/path.h"

double bw_curve_across(const bw_curve_frame *f, double seconds) {
    return f->plot.x + f->plot.width * bw_clamp(seconds, 0, BW_MAX_SECONDS) / BW_MAX_SECONDS;
}

double bw_curve_bottom(const bw_curve_frame *f) {
    return f->plot.y + f->plot.height;
}

bw_vec bw_curve_spot(const bw_curve_frame *f, double seconds, double worth) {
    return bw_v(bw_curve_across(f, seconds),
                bw_curve_bottom(f) - f->plot.height * bw_clamp(worth / f->top, 0, 1));
}

double bw_curve_between(const double *worth, double seconds) {
    const double s = bw_clamp(seconds, 0, BW_MAX_SECONDS);
    int i = (int)s;
    if (i >= BW_MAX_SECONDS) i = BW_MAX_SECONDS - 1;
    return worth[i] + (worth[i + 1] - worth[i]) * (s - i);
}

void bw_curve_words(bw_ink *ink, bw_weight weight, bw_align align, double x, double y,
                    const char *text) {
    bw_ink_text(ink, BW_ROLE_TEXT, weight, BW_CURVE_SMALL, align, x, y, text);
}

void bw_curve_scale(bw_ink *ink, const bw_curve_frame *f) {
    const bw_box *p = &f->plot;
    char digits[16];
    bw_ink_stroke(ink, BW_ROLE_GRID, 0.5);
    for (int g = 10; g < f->top * 100 + 0.5; g += 10) {
        const double y = bw_curve_spot(f, 0, g / 100.0).y;
        bw_path_segment(ink, bw_v(p->x, y), bw_v(p->x + p->width, y));
    }
    const int step = f->top > 0.65 ? 20 : 10;
    for (int g = 0; g < f->top * 100 + 0.5; g += step) {
        bw_text t = bw_text_in(digits, sizeof digits);
        bw_put_int(&t, g);
        bw_curve_words(ink, BW_REGULAR, BW_RIGHT_ALIGN, p->x - 5,
                       bw_curve_spot(f, 0, g / 100.0).y + BW_CURVE_SMALL * BW_CAP_HEIGHT / 2,
                       digits);
    }
    for (int s = 0; s <= BW_MAX_SECONDS; s++) {
        bw_text t = bw_text_in(digits, sizeof digits);
        bw_put_int(&t, s);
        bw_curve_words(ink, BW_REGULAR, BW_CENTRE_ALIGN, bw_curve_across(f, s),
                       bw_curve_bottom(f) + 12, digits);
    }
    bw_curve_words(ink, BW_REGULAR, BW_LEFT_ALIGN, p->x + p->width + 9, bw_curve_bottom(f) + 12,
                   "seconds");
}

/// On a patch, for a beacon may stand behind it.
void bw_curve_caption(bw_ink *ink, const bw_curve_frame *f) {
    static const char words[] = "goals in 100 such breaks";
    const double x = f->plot.x - BW_CURVE_LEFT, y = f->plot.y - 6;
    bw_ink_fill(ink, BW_ROLE_PAGE);
    bw_path_rect(ink, x, y - 8, bw_width(words, BW_CURVE_SMALL) + 2, 10);
    bw_curve_words(ink, BW_REGULAR, BW_LEFT_ALIGN, x, y, words);
}

void bw_curve_axes(bw_ink *ink, const bw_curve_frame *f) {
    bw_ink_stroke(ink, BW_ROLE_LINE, 1);
    bw_ink_move(ink, f->plot.x, f->plot.y);
    bw_ink_line(ink, f->plot.x, bw_curve_bottom(f));
    bw_ink_line(ink, f->plot.x + f->plot.width, bw_curve_bottom(f));
    for (int s = 1; s <= BW_MAX_SECONDS; s++)
        bw_path_segment(ink, bw_v(bw_curve_across(f, s), bw_curve_bottom(f)),
                        bw_v(bw_curve_across(f, s), bw_curve_bottom(f) - 3));
}

void bw_curve_trace(bw_ink *ink, const bw_curve_frame *f, const double *worth) {
    for (int t = 0; t <= BW_MAX_SECONDS; t++) {
        const bw_vec p = bw_curve_spot(f, t, worth[t]);
        if (t == 0)
            bw_ink_move(ink, p.x, p.y);
        else
            bw_ink_line(ink, p.x, p.y);
    }
}

void bw_curve_errors(bw_ink *ink, const bw_curve_frame *f, const double *worth,
                     const double *error) {
    for (int t = 1; t <= BW_MAX_SECONDS; t++)
        bw_path_segment(ink, bw_curve_spot(f, t, worth[t] - 2 * error[t]),
                        bw_curve_spot(f, t, worth[t] + 2 * error[t]));
}
