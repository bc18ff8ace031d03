/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The chart of worth over time: its words are large enough, inside and clear of each other for any
/// curve, and it says what the curve says.
#include "draw/curve_chart.h"
#include "harness.h"
#include "tests/draw/layout.h"
#include <string.h>

static _Alignas(16) char memory[BW_INK_PAGE_BYTES];
static const char *const late[BW_MAX_LATE] = {"first midfielder", "second midfielder",
                                              "third midfielder", "fourth midfielder"};
static const bw_box box = {36, 60, 523, 260};

static bw_ink *draw(const bw_curve *curve) {
    bw_ink *ink = bw_ink_in(memory, sizeof memory);
    bw_ink_page(ink, 612, 792);
    bw_draw_curve(ink, curve, late, box);
    CHECK_INT(ink->status, BW_OK);
    CHECK_INT(ink->open, 0);
    return ink;
}

/// True when some text run holds these words.
static bool says(const bw_ink *ink, const char *words) {
    const size_t length = strlen(words);
    for (const bw_ink_item *item = bw_ink_first(ink); item; item = bw_ink_next(ink, item)) {
        if (item->kind != BW_INK_TEXT) continue;
        for (int i = 0; i + (int)length <= item->text; i++) {
            if (memcmp(bw_ink_string(item) + i, words, length) == 0) return true;
        }
    }
    return false;
}

static bw_curve usual(void) {
    bw_curve c = {.late_count = 2,
                  .late_s = {3.9, 6.1},
                  .even_s = 6.1,
                  .plateau = 0.318,
                  .bought_s = 1.7,
                  .ever_beaten = true,
                  .missing_s = 4.4,
                  .answer_s = 4};
    for (int t = 1; t <= BW_MAX_SECONDS; t++) {
        c.best[t] = bw_min(0.54, 0.12 * t);
        c.typical[t] = bw_min(0.33, 0.07 * t);
        c.settled[t] = 0.006 * t;
        c.error[t] = 0.006;
    }
    return c;
}

static void says_what_the_curve_says(void) {
    const bw_curve c = usual();
    const bw_ink *ink = draw(&c);
    static const char *const words[] = {"best 54",
                                        "typical 33",
                                        "even 6",
                                        "plateau 32",
                                        "time bought 1.7 s",
                                        "4.4 s missing",
                                        "first midfielder in, 3.9 s",
                                        "second midfielder in, 6.1 s",
                                        "goals in 100"};
    for (int i = 0; i < BW_COUNT(words); i++) {
        if (!says(ink, words[i])) fprintf(stderr, "missing: %s\n", words[i]);
        CHECK(says(ink, words[i]));
    }
}

static void holding_all_the_time_is_said(void) {
    bw_curve c = usual();
    c.ever_beaten = false;
    c.bought_s = BW_MAX_SECONDS;
    c.missing_s = 0;
    const bw_ink *ink = draw(&c);
    CHECK(says(ink, "holds all 10 s"));
    CHECK(!says(ink, "missing"));
}

static void nobody_coming_is_said(void) {
    bw_curve c = usual();
    c.late_count = 0;
    c.even_s = -1;
    c.missing_s = 0;
    const bw_ink *ink = draw(&c);
    CHECK(says(ink, "nobody comes"));
    CHECK(!says(ink, "plateau"));
    CHECK(!says(ink, " in, "));
}

static void a_man_past_ten_seconds_has_no_flag(void) {
    bw_curve c = usual();
    c.late_s[1] = -1;
    c.even_s = -1;
    const bw_ink *ink = draw(&c);
    CHECK(says(ink, "first midfielder in"));
    CHECK(!says(ink, "second midfielder in"));
}

static void the_scale_is_whole_tens(void) {
    bw_curve c = usual();
    CHECK_INT(bw_curve_top(&c), 60);
    memset(c.best, 0, sizeof c.best);
    CHECK_INT(bw_curve_top(&c), 40);
    memset(&c, 0, sizeof c);
    CHECK_INT(bw_curve_top(&c), 20);
    c.best[BW_MAX_SECONDS] = 0.2;
    CHECK_INT(bw_curve_top(&c), 20);
    c.best[BW_MAX_SECONDS] = 1;
    CHECK_INT(bw_curve_top(&c), 100);
}

static void random_curve(unsigned long long *seed, bw_curve *c) {
    memset(c, 0, sizeof *c);
    const double high = test_uniform(seed, 0.02, 1), share = test_uniform(seed, 0, 1);
    for (int t = 1; t <= BW_MAX_SECONDS; t++) {
        c->best[t] = c->best[t - 1] + test_uniform(seed, 0, 1) * (high - c->best[t - 1]);
        c->typical[t] = bw_max(c->typical[t - 1], share * c->best[t]);
        c->settled[t] = c->typical[t] * test_uniform(seed, 0, 1);
        if (c->settled[t] < c->settled[t - 1]) c->settled[t] = c->settled[t - 1];
        c->error[t] = 0.01;
    }
    c->late_count = (int)test_uniform(seed, 0, 4.999);
    double at = 0;
    for (int i = 0; i < c->late_count; i++) {
        at += test_uniform(seed, 0, 4);
        c->late_s[i] = at > BW_MAX_SECONDS ? -1 : at;
    }
    c->even_s = at > BW_MAX_SECONDS ? -1 : at;
    c->ever_beaten = test_uniform(seed, 0, 1) < 0.8;
    c->bought_s = c->ever_beaten ? test_uniform(seed, 0, 10) : BW_MAX_SECONDS;
    c->missing_s = c->even_s > c->bought_s ? c->even_s - c->bought_s : 0;
    c->plateau = c->typical[BW_MAX_SECONDS];
    c->answer_s = 4;
}

static void words_are_readable_for_any_curve(void) {
    unsigned long long seed = 7;
    for (int round = 0; round < 3000; round++) {
        bw_curve c;
        random_curve(&seed, &c);
        const layout l = layout_of(draw(&c), box);
        CHECK(l.texts > 20);
        CHECK(l.smallest >= 9);
        CHECK_INT(l.outside, 0);
        CHECK_INT(l.over, 0);
        if (l.outside || l.over) {
            fprintf(stderr, "round %d: %s\n", round, l.where);
            if (round > 20) return;
        }
    }
}

int main(int argc, char **argv) {
    RUN(says_what_the_curve_says);
    RUN(holding_all_the_time_is_said);
    RUN(nobody_coming_is_said);
    RUN(a_man_past_ten_seconds_has_no_flag);
    RUN(the_scale_is_whole_tens);
    RUN(words_are_readable_for_any_curve);
    return test_report(argc, argv);
}
