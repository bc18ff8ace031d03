/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Two trials side by side: a difference is called one only when it is larger than its doubt, and turning
/// A and B round says the same the other way.
#include "harness.h"
#include "trial/compare.h"
#include "trial/words.h"

static bw_trial a, b;
static char room[512];

static void fill(bw_trial *trial, double typical, double error, double even) {
    static const bw_scheme scheme;
    static const bw_ground ground = {.scheme = &scheme};
    *trial = (bw_trial){.begun = {.ground = &ground}};
    trial->curve.answer_s = 4;
    trial->curve.even_s = even;
    for (int t = 1; t <= BW_MAX_SECONDS; t++) {
        trial->curve.typical[t] = typical * t / BW_MAX_SECONDS;
        trial->curve.error[t] = error;
        trial->curve.best[t] = 2 * typical * t / BW_MAX_SECONDS;
    }
}

static const char *say(void (*words)(const bw_trial *, const bw_trial *, bw_text *),
                       const bw_trial *one, const bw_trial *two) {
    bw_text out = bw_text_in(room, sizeof room);
    words(one, two, &out);
    return room;
}

static void a_clear_difference_is_said(void) {
    fill(&a, 0.7, 0.01, 5);
    fill(&b, 0.5, 0.01, 5);
    CHECK_TEXT(say(bw_say_compare, &a, &b),
               "Within 4 s typical play, the forecast, scores in about 28 of 100 against A and 20 "
               "against B. B gives up 8 fewer, give or take 3 by chance in the simulation: more "
               "than chance.");
    CHECK(strstr(say(bw_say_compare, &b, &a), "A gives up 8 fewer, give or take 3") != NULL);
    CHECK(strstr(say(bw_say_compare_plateau, &a, &b), "42 of 100 against A and 30 against B") !=
          NULL);
    CHECK(strstr(say(bw_say_compare_best, &a, &b), "56 against A and 40 against B") != NULL);
}

static void noise_is_called_noise(void) {
    fill(&a, 0.55, 0.02, 5);
    fill(&b, 0.5, 0.02, 5);
    CHECK(strstr(say(bw_say_compare, &a, &b),
                 "within the noise of the simulation (give or take 6): this test does not tell "
                 "them apart.") != NULL);
    CHECK(strstr(say(bw_say_compare, &a, &a), "does not tell them apart") != NULL);
}

/// Doubt and gap for many pairs: symmetric, never less than either error's own, clear exactly beyond.
static void turning_round_changes_the_sign_alone(void) {
    for (int i = 0; i < 50; i++) {
        fill(&a, 0.01 * i, 0.001 * (i % 7), i % 3 == 0 ? -1 : 0.2 * i);
        fill(&b, 0.3, 0.004, 4);
        for (double s = 0; s <= 10; s += 0.7) {
            const bw_gap one = bw_gap_at(&a, &b, s), two = bw_gap_at(&b, &a, s);
            CHECK_SAME(one.doubt, two.doubt);
            CHECK_SAME(one.a, two.b);
            CHECK(one.clear == two.clear);
            CHECK(one.clear == (fabs(one.a - one.b) > one.doubt));
        }
        const bw_gap flat = bw_gap_plateau(&a, &b), turned = bw_gap_plateau(&b, &a);
        CHECK_SAME(flat.a, turned.b);
        CHECK_SAME(flat.doubt, turned.doubt);
        CHECK(flat.doubt >= 2 * 0.004);
    }
}

int main(int argc, char **argv) {
    RUN(a_clear_difference_is_said);
    RUN(noise_is_called_noise);
    RUN(turning_round_changes_the_sign_alone);
    return test_report(argc, argv);
}
