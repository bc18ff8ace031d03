/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The cautions on paper: a framed block in two columns, and one paragraph of few words.
#include "core/base.h"
#include "draw/metrics.h"
#include "draw/path.h"
#include "draw/sheet.h"
#include "report/cautions.h"

static const double gutter = 18, pad = 8, after = 4, head = 22;

static double leading_of(double type) {
    return type * 1.27;
}

/// One caution in a column: topic and source in a line, then the words. Returns its height.
static double put_one(bw_ink *ink, const bw_caution *c, double x, double y, double width,
                      double type) {
    const double leading = leading_of(type);
    if (ink) {
        bw_ink_text(ink, BW_ROLE_TEXT, BW_BOLD, type, BW_LEFT_ALIGN, x, y + type, c->topic);
        bw_ink_text(ink, BW_ROLE_SOFT_TEXT, BW_REGULAR, BW_TYPE_LABEL, BW_RIGHT_ALIGN, x + width,
                    y + type, c->source);
    }
    return leading + after +
           bw_paragraph(ink, BW_ROLE_TEXT, BW_REGULAR, type, leading, x, y + leading, width,
                        c->text);
}

/// Where the second column begins: the split that leaves the taller column lowest.
static int split_of(const double *high, double *tallest) {
    double all = 0, left = 0;
    for (int i = 0; i < BW_CAUTIONS; i++)
        all += high[i];
    int best = 0;
    *tallest = all;
    for (int i = 0; i < BW_CAUTIONS; i++) {
        left += high[i];
        const double taller = bw_max(left, all - left);
        if (taller >= *tallest) continue;
        *tallest = taller;
        best = i + 1;
    }
    return best;
}

/// What stands under the columns: whose word goes first, and who the publishers are.
static double put_last(bw_ink *ink, double x, double y, double width, double type) {
    const double high = bw_paragraph(ink, BW_ROLE_TEXT, BW_BOLD, type, leading_of(type), x, y,
                                     width, bw_cautions_defer());
    return high + bw_paragraph(ink, BW_ROLE_SOFT_TEXT, BW_REGULAR, BW_TYPE_LABEL,
                               leading_of(BW_TYPE_LABEL), x, y + high, width,
                               bw_cautions_publishers());
}

double bw_put_cautions(bw_ink *ink, const bw_scheme *scheme, double x, double y, double width,
                       double type) {
    const double inside = width - 2 * pad, column = (inside - gutter) / 2;
    double high[BW_CAUTIONS], tallest;
    for (int i = 0; i < BW_CAUTIONS; i++) {
        const bw_caution c = bw_caution_for(scheme, i);
        high[i] = put_one(NULL, &c, 0, 0, column, type);
    }
    const int split = split_of(high, &tallest);
    const double height = pad + head + tallest + put_last(NULL, 0, 0, inside, type) + pad;
    if (!ink) return height;
    bw_ink_begin(ink, BW_TAG_ARTIFACT, "");
    bw_ink_stroke(ink, BW_ROLE_LINE, 1);
    bw_path_rect(ink, x, y, width, height);
    bw_ink_end(ink);
    bw_heading(ink, BW_TAG_H2, BW_ROLE_TEXT, BW_TYPE_SUBHEAD, x + pad, y + pad + 11, inside,
               "Cautions");
    const double top = y + pad + head;
    double at = top;
    for (int i = 0; i < BW_CAUTIONS; i++) {
        if (i == split) at = top;
        const bw_caution c = bw_caution_for(scheme, i);
        at += put_one(ink, &c, x + pad + (i < split ? 0 : column + gutter), at, column, type);
    }
    put_last(ink, x + pad, top + tallest, inside, type);
    return height;
}

double bw_put_cautions_brief(bw_ink *ink, const bw_scheme *scheme, double x, double y,
                             double width) {
    char line[1024];
    bw_text t = bw_text_in(line, sizeof line);
    bw_put(&t, "Cautions: ");
    for (int i = 0; i < BW_CAUTIONS; i++) {
        bw_put(&t, bw_caution_for(scheme, i).brief);
        bw_put(&t, i + 1 < BW_CAUTIONS ? "; " : ". ");
    }
    bw_put(&t, "Your governing body's rules and licensed medical staff come first.");
    return bw_paragraph(ink, BW_ROLE_TEXT, BW_REGULAR, BW_TYPE_SMALL, BW_LEADING_SMALL, x, y, width,
                        line);
}
