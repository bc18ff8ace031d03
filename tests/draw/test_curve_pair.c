/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Two curves on one chart: every line named once with its figure, no name over another, A and B told
/// apart by dash and by mark and not by colour alone.
#include "draw/curve_pair.h"
#include "harness.h"
#include "tests/draw/layout.h"
#include <string.h>

static _Alignas(16) char memory[BW_INK_PAGE_BYTES];
static const bw_box box = {10, 10, 400, 240};

static bw_curve level_at(double typical, double best) {
    bw_curve c = {0};
    for (int t = 1; t <= BW_MAX_SECONDS; t++) {
        c.typical[t] = bw_min(typical, 0.07 * t);
        c.best[t] = bw_min(best, 0.12 * t);
        c.error[t] = 0.01;
    }
    return c;
}

static bw_ink *draw(const bw_curve *a, const bw_curve *b) {
    bw_ink *ink = bw_ink_in(memory, sizeof memory);
    bw_ink_page(ink, 420, 260);
    bw_draw_curve_pair(ink, a, b, box);
    CHECK_INT(ink->status, BW_OK);
    CHECK_INT(ink->open, 0);
    return ink;
}

/// The height of the line that says these words; -1: not there once.
static double find(const bw_ink *ink, const char *words) {
    double y = -1;
    int count = 0;
    for (const bw_ink_item *item = bw_ink_first(ink); item; item = bw_ink_next(ink, item)) {
        if (item->kind != BW_INK_TEXT || (size_t)item->text != strlen(words) ||
            memcmp(bw_ink_string(item), words, strlen(words)) != 0)
            continue;
        y = bw_ink_numbers(item)[1];
        count++;
    }
    CHECK_INT(count, 1);
    return y;
}

static void names_are_there_and_apart(void) {
    static const double ends[][4] = {
        {0.3, 0.5, 0.3, 0.5}, {0.05, 0.06, 0.05, 0.06}, {0.6, 0.9, 0.2, 0.3}, {0, 0, 0, 0}};
    for (int i = 0; i < BW_COUNT(ends); i++) {
        const bw_curve a = level_at(ends[i][0], ends[i][1]), b = level_at(ends[i][2], ends[i][3]);
        const bw_ink *ink = draw(&a, &b);
        static const char *const names[] = {"A typical ", "A best ", "B typical ", "B best "};
        double y[4];
        for (int n = 0; n < 4; n++) {
            char words[40];
            snprintf(words, sizeof words, "%s%.0f", names[n], ends[i][n] * 100);
            y[n] = find(ink, words);
            CHECK(y[n] >= box.y && y[n] <= box.y + box.height);
            for (int k = 0; k < n; k++)
                CHECK(fabs(y[n] - y[k]) > 9);
        }
    }
}

/// Thick and thin lines, solid and dashed: two of each kind.
static void lines_differ_without_colour(void) {
    const bw_curve a = level_at(0.3, 0.5), b = level_at(0.2, 0.4);
    const bw_ink *ink = draw(&a, &b);
    int solid = 0, dashed = 0, thick_solid = 0, thick_dashed = 0;
    for (const bw_ink_item *item = bw_ink_first(ink); item; item = bw_ink_next(ink, item)) {
        if (item->kind != BW_INK_STROKE || item->numbers != 3 * (BW_MAX_SECONDS + 1)) continue;
        const bool dash = item->dash[1] > 0, thick = item->size > 2;
        solid += !dash;
        dashed += dash;
        thick_solid += thick && !dash;
        thick_dashed += thick && dash;
    }
    CHECK_INT(solid, 2);
    CHECK_INT(dashed, 2);
    CHECK_INT(thick_solid, 1);
    CHECK_INT(thick_dashed, 1);
}

int main(int argc, char **argv) {
    RUN(names_are_there_and_apart);
    RUN(lines_differ_without_colour);
    return test_report(argc, argv);
}
