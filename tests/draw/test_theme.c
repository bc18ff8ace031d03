/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Themes: enough contrast everywhere it is needed, one ramp for danger, two colours in mono.
#include "draw/theme.h"
#include "harness.h"

#include "core/base.h"

/// WCAG 2.2, success criterion 1.4.3: black on white is 21:1, #767676 on white 4.54:1, #777777 4.48:1.
static void contrast_is_the_published_one(void) {
    CHECK_NEAR(bw_contrast(0x000000, 0xFFFFFF), 21, 1e-12);
    CHECK_NEAR(bw_contrast(0x767676, 0xFFFFFF), 4.54, 0.005);
    CHECK_NEAR(bw_contrast(0xFFFFFF, 0x777777), 4.48, 0.005);
    CHECK_SAME(bw_contrast(0x123456, 0x123456), 1);
    CHECK_SAME(bw_contrast(0x123456, 0xABCDEF), bw_contrast(0xABCDEF, 0x123456));
}

static void check_pair(const bw_theme *theme, bw_role ink, bw_role ground, double least) {
    const double got = bw_contrast(theme->colour[ink], theme->colour[ground]);
    if (!(got >= least))
        fprintf(stderr, "%s: %s on %s is %.3f\n", theme->id, bw_role_name(ink),
                bw_role_name(ground), got);
    CHECK(got >= least);
}

/// WCAG 2.2, 1.4.3 and 1.4.11: text 4.5, marks 3, not rounded. The sun theme: 7 and more.
static void text_and_marks_stand_out(void) {
    static const bw_role grounds[] = {BW_ROLE_PAGE,   BW_ROLE_PAPER,  BW_ROLE_LAND,
                                      BW_ROLE_BAND_1, BW_ROLE_BAND_2, BW_ROLE_BAND_3,
                                      BW_ROLE_BAND_4, BW_ROLE_BAND_5};
    static const bw_role words[] = {BW_ROLE_TEXT, BW_ROLE_SOFT_TEXT, BW_ROLE_CONTOUR};
    static const bw_role marks[] = {BW_ROLE_LINE, BW_ROLE_SOFT_LINE, BW_ROLE_DEFENDER,
                                    BW_ROLE_BALL, BW_ROLE_ATTACKER,  BW_ROLE_ACCENT,
                                    BW_ROLE_WARN, BW_ROLE_CONTOUR};
    for (int t = 0; t < BW_THEME_COUNT; t++) {
        const bw_theme *theme = bw_theme_at((bw_theme_id)t);
        const double more = t == BW_THEME_SUN ? 7 : 0;
        for (int g = 0; g < BW_COUNT(grounds); g++) {
            for (int i = 0; i < BW_COUNT(words); i++) {
                check_pair(theme, words[i], grounds[g], more > 4.5 ? more : 4.5);
            }
            for (int i = 0; i < BW_COUNT(marks); i++) {
                check_pair(theme, marks[i], grounds[g], more > 3 ? more : 3);
            }
        }
        check_pair(theme, BW_ROLE_DEFENDER_TEXT, BW_ROLE_DEFENDER, 4.5);
        check_pair(theme, BW_ROLE_ATTACKER, BW_ROLE_PAPER, 4.5); // numbers on open rings
        check_pair(theme, BW_ROLE_BALL, BW_ROLE_PAPER, 4.5);     // order numbers
    }
}

/// Light is safe and dark is dangerous (in the dark theme the other way round), step by step.
static void danger_is_one_ramp(void) {
    static const bw_theme_id ids[] = {BW_THEME_CHART, BW_THEME_DARK};
    for (int t = 0; t < BW_COUNT(ids); t++) {
        const bw_theme *theme = bw_theme_at(ids[t]);
        double last = bw_contrast(theme->colour[BW_ROLE_BAND_1], 0x000000);
        for (int band = BW_ROLE_BAND_2; band <= BW_ROLE_BAND_5; band++) {
            const double light = bw_contrast(theme->colour[band], 0x000000);
            CHECK(ids[t] == BW_THEME_CHART ? light < last : light > last);
            last = light;
        }
    }
}

static void mono_is_black_and_white(void) {
    const bw_theme *mono = bw_theme_find("mono"), *sun = bw_theme_find("sun");
    for (int r = 0; r < BW_ROLE_COUNT; r++) {
        CHECK(mono->colour[r] == 0x000000 || mono->colour[r] == 0xFFFFFF);
        CHECK(sun->colour[r] == 0x000000 || sun->colour[r] == 0xFFFFFF);
    }
    CHECK(mono->crisp);
    CHECK(sun->weight > 1);
    CHECK(bw_theme_find("chart") == bw_theme_at(BW_THEME_CHART));
    CHECK(bw_theme_find("neon") == NULL);
}

int main(int argc, char **argv) {
    RUN(contrast_is_the_published_one);
    RUN(text_and_marks_stand_out);
    RUN(danger_is_one_ramp);
    RUN(mono_is_black_and_white);
    return test_report(argc, argv);
}
