/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Asking and marking: which cards come, what an answer gets, what a code carries.
#include "core/quiz_code.h"
#include "core/recall.h"
#include "core/tolerance.h"
#include "harness.h"
#include "scheme/fresh.h"

static unsigned long long seed = 31;
static bw_scheme scheme, mirrored;
static bw_tolerances model, other;

static void weak_cards_come_first_and_more_often(void) {
    bw_card cards[40];
    for (int i = 0; i < 40; i++)
        cards[i] = bw_card_new(i % 10 == 3 ? 1 - i / 100.0 : 0);
    int out[8];
    CHECK_INT(bw_recall_pick(cards, 40, 100, 5, 8, out), 8);
    for (int i = 0; i < 4; i++)
        CHECK_INT(out[i], 3 + 10 * i);
    // A season of eight questions a day, all answered well.
    long long weak = 0, usual = 0;
    for (int day = 100; day < 160; day++) {
        const int n = bw_recall_pick(cards, 40, day, (uint64_t)day, 8, out);
        for (int i = 0; i < n; i++) {
            if (cards[out[i]].answers == 0 || cards[out[i]].due <= day)
                bw_card_answer(&cards[out[i]], 4, day);
        }
    }
    for (int i = 0; i < 40; i++)
        *(i % 10 == 3 ? &weak : &usual) += cards[i].answers;
    CHECK(weak * 36 > usual * 4 + 36);
}

static void picks_each_card_once(void) {
    for (int round = 0; round < 200; round++) {
        bw_card cards[30];
        const int count = (int)(test_random(&seed) % 31);
        for (int i = 0; i < count; i++) {
            const double weakness = test_uniform(&seed, 0, 1);
            cards[i] = bw_card_new(weakness);
            if (test_random(&seed) % 2) bw_card_answer(&cards[i], 4, (int)(test_random(&seed) % 9));
        }
        int out[12], again[12];
        const int n = bw_recall_pick(cards, count, 5, 7, 12, out);
        CHECK_INT(n, count < 12 ? count : 12);
        bool late = false; // once a card not yet due comes, no due one follows
        for (int i = 0; i < n; i++) {
            const bool due = cards[out[i]].answers == 0 || cards[out[i]].due <= 5;
            CHECK(!(late && due));
            late = late || !due;
            for (int k = 0; k < i; k++)
                CHECK(out[i] != out[k]);
        }
        CHECK_INT(bw_recall_pick(cards, count, 5, 7, 12, again), n);
        for (int i = 0; i < n; i++)
            CHECK_INT(again[i], out[i]);
    }
}

static bw_where_asked two_men(void) {
    return (bw_where_asked){.count = 2,
                            .spot = 0,
                            .station = {{.at = {-4, 3}}, {.at = {4, 3}}},
                            .home = {{-3, 8}, {3, 8}},
                            .tolerance = {2, 2},
                            .finger = 0.5};
}

static void marks_fall_smoothly(void) {
    CHECK_SAME(bw_recall_marks(0, 2), 1);
    CHECK_SAME(bw_recall_marks(2, 2), 1);
    CHECK_NEAR(bw_recall_marks(3, 2), 0.5, 1e-12);
    CHECK_SAME(bw_recall_marks(4, 2), 0);
    double last = 1;
    for (double d = 0; d < 6; d += 0.01) {
        const double now = bw_recall_marks(d, 2);
        CHECK(now <= last && last - now < 0.01);
        last = now;
    }
}

static void known_taps(void) {
    bw_where_asked asked = two_men();
    bw_mark_given given = bw_recall_score(&asked, bw_v(-4, 1.5));
    CHECK_INT(given.verdict, BW_VERDICT_RIGHT);
    CHECK_SAME(given.error.y, -1.5);
    given = bw_recall_score(&asked, bw_v(-4, 0));
    CHECK_INT(given.verdict, BW_VERDICT_NEAR);
    CHECK_NEAR(given.marks, 0.5, 1e-12);
    CHECK_INT(bw_recall_score(&asked, bw_v(0, 12)).verdict, BW_VERDICT_OFF);
    // A finger is wider than the model's own tolerance on a small screen.
    asked.finger = 3;
    CHECK_INT(bw_recall_score(&asked, bw_v(-4, 0)).verdict, BW_VERDICT_RIGHT);
    CHECK_SAME(bw_recall_score(&asked, bw_v(-4, 0)).tolerance, 3);
}

static void a_swap_is_right_where_nobody_runs_farther(void) {
    bw_where_asked asked = two_men();
    CHECK_INT(bw_recall_score(&asked, bw_v(4, 3)).verdict, BW_VERDICT_OFF); // they would cross
    asked.home[0] = asked.home[1] = bw_v(0, 8);
    const bw_mark_given given = bw_recall_score(&asked, bw_v(4.5, 3));
    CHECK_INT(given.verdict, BW_VERDICT_SWAP);
    CHECK_INT(given.mate, 1);
    CHECK_SAME(given.marks, 1);
    CHECK_SAME(given.error.x, 0.5);
    CHECK(!bw_recall_may_swap(&asked, 0, 0));
}

/// Whatever is asked: a place itself has all marks, and no answer has more than one.
static void marks_are_marks(void) {
    for (int round = 0; round < 2000; round++) {
        bw_where_asked asked = {.count = 1 + round % 6, .spot = round % (1 + round % 6)};
        for (int s = 0; s < asked.count; s++) {
            asked.station[s].at.x = test_uniform(&seed, -12, 12);
            asked.station[s].at.y = test_uniform(&seed, -5, 15);
            asked.home[s].x = test_uniform(&seed, -12, 12);
            asked.home[s].y = test_uniform(&seed, 0, 12);
            asked.tolerance[s] = test_uniform(&seed, 0.9, 4);
        }
        CHECK_INT(bw_recall_score(&asked, asked.station[asked.spot].at).verdict, BW_VERDICT_RIGHT);
        bw_vec tap = {.x = test_uniform(&seed, -15, 15)};
        tap.y = test_uniform(&seed, -8, 18);
        const bw_mark_given given = bw_recall_score(&asked, tap);
        CHECK(given.marks >= 0 && given.marks <= 1);
        CHECK_NEAR(given.distance, bw_length(given.error), 1e-12);
        CHECK((given.verdict == BW_VERDICT_OFF) == (given.marks == 0));
        CHECK((given.mate >= 0) == (given.verdict == BW_VERDICT_SWAP));
    }
}

static void bias_and_spread(void) {
    bw_tally tally = {0};
    CHECK_SAME(bw_tally_spread(&tally), 0);
    bw_tally_add(&tally, bw_v(1, -2));
    bw_tally_add(&tally, bw_v(-1, -2));
    CHECK_SAME(bw_tally_bias(&tally).x, 0);
    CHECK_SAME(bw_tally_bias(&tally).y, -2);
    CHECK_NEAR(bw_tally_spread(&tally), 1, 1e-12);
}

/// Within its bounds everywhere; the danger at it has not risen past the share where it is inside them;
/// the mirrored scheme's is the same.
static void tolerance_is_the_models(void) {
    bw_scheme_fresh(0, 3, &scheme);
    bw_scheme_mirror(&scheme, &mirrored);
    bw_tolerances_build(&scheme, &model);
    bw_tolerances_build(&mirrored, &other);
    int inside = 0, all = 0;
    for (int stage = 0; stage < scheme.stage_count; stage++) {
        for (int l = 0; l < scheme.landmark_count; l++) {
            const bw_vec ball = scheme.landmarks[l].at;
            bw_station station[BW_MAX_SPOTS];
            bw_where(&model.plan[stage], ball, NULL, 0, station);
            for (int s = 0; s < model.plan[stage].spots; s++) {
                bw_vec toward = {.x = test_uniform(&seed, -1, 1)};
                toward.y = test_uniform(&seed, -1, 1);
                const double r = bw_tolerance(&model, stage, ball, s, toward);
                CHECK(r >= BW_TOLERANCE_LEAST && r <= BW_TOLERANCE_MOST);
                CHECK_SAME(bw_tolerance(&other, stage, bw_mirror(ball), s, bw_mirror(toward)), r);
                const bw_vec there = bw_add(station[s].at, bw_scale(bw_unit(toward), r));
                const double now = bw_shape_danger(&model, stage, ball, s, station[s].at);
                const double off = bw_shape_danger(&model, stage, ball, s, there);
                if (r > BW_TOLERANCE_LEAST) CHECK(off <= now * (1 + BW_TOLERANCE_RISE) + 1e-12);
                inside += r > BW_TOLERANCE_LEAST && r < BW_TOLERANCE_MOST;
                all++;
            }
        }
    }
    CHECK(inside * 5 > all); // it does come from the model
}

static bw_quiz_said some_result(void) {
    bw_quiz_said said = {.document = (uint32_t)test_random(&seed)};
    static const char letters[] = "09AZazMm";
    const int length = 1 + (int)(test_random(&seed) % 3);
    for (int i = 0; i < length; i++)
        said.spot[i] = letters[test_random(&seed) % 8];
    said.day = (int)(test_random(&seed) % 65536);
    said.asked = (int)(test_random(&seed) % 128);
    said.right = (int)(test_random(&seed) % (unsigned)(said.asked + 1));
    said.tries = (int)(test_random(&seed) % (unsigned)(said.asked + 1));
    said.bias.x = ((int)(test_random(&seed) % 511) - 255) / 10.0;
    said.bias.y = ((int)(test_random(&seed) % 511) - 255) / 10.0;
    said.spread = (int)(test_random(&seed) % 256) / 10.0;
    return said;
}

static void a_code_carries_it(void) {
    for (int round = 0; round < 3000; round++) {
        const bw_quiz_said said = some_result();
        char code[BW_QUIZ_CODE_BYTES];
        bw_text out = bw_text_in(code, sizeof code);
        bw_quiz_said got;
        CHECK(bw_quiz_write(&said, &out));
        CHECK(!out.full && out.used == BW_QUIZ_CODE_BYTES - 1);
        CHECK_INT(bw_quiz_read(code, out.used, &got, NULL), BW_OK);
        CHECK_INT(got.document, said.document);
        CHECK_TEXT(got.spot, said.spot);
        CHECK_INT(got.day, said.day);
        CHECK_INT(got.asked, said.asked);
        CHECK_INT(got.right, said.right);
        CHECK_INT(got.tries, said.tries);
        CHECK_SAME(got.bias.x, said.bias.x);
        CHECK_SAME(got.bias.y, said.bias.y);
        CHECK_SAME(got.spread, said.spread);
        // As a player types it, and with one letter wrong.
        char typed[BW_QUIZ_CODE_MOST];
        bw_text t = bw_text_in(typed, sizeof typed);
        for (size_t i = 0; i < out.used; i++) {
            const char c = code[i];
            if (c == '-')
                bw_put_char(&t, ' ');
            else if (c == '0')
                bw_put_char(&t, 'o');
            else if (c == '1')
                bw_put_char(&t, 'l');
            else
                bw_put_char(&t, c >= 'A' ? (char)(c - 'A' + 'a') : c);
        }
        CHECK_INT(bw_quiz_read(typed, t.used, &got, NULL), BW_OK);
        size_t at = test_random(&seed) % out.used;
        if (code[at] == '-') at++;
        code[at] = code[at] == '7' ? 'Q' : '7';
        char words[120];
        bw_text why = bw_text_in(words, sizeof words);
        CHECK_INT(bw_quiz_read(code, out.used, &got, &why), BW_BAD_INPUT);
        CHECK(why.used > 0);
    }
}

static void what_does_not_fit_is_refused(void) {
    char code[BW_QUIZ_CODE_BYTES];
    bw_text out = bw_text_in(code, sizeof code);
    bw_quiz_said said = {.spot = "LL", .asked = 8, .right = 5, .tries = 6};
    said.right = 9;
    CHECK(!bw_quiz_write(&said, &out));
    said.right = 5;
    said.spot[0] = '-';
    CHECK(!bw_quiz_write(&said, &out));
    said.spot[0] = 'L';
    said.day = 65536;
    CHECK(!bw_quiz_write(&said, &out));
    CHECK_INT(out.used, 0);
    CHECK_INT(bw_quiz_read("", 0, &said, NULL), BW_BAD_INPUT);
    CHECK_INT(bw_quiz_read("0000-0000", 9, &said, NULL), BW_BAD_INPUT);
}

int main(int argc, char **argv) {
    RUN(weak_cards_come_first_and_more_often);
    RUN(picks_each_card_once);
    RUN(marks_fall_smoothly);
    RUN(known_taps);
    RUN(a_swap_is_right_where_nobody_runs_farther);
    RUN(marks_are_marks);
    RUN(bias_and_spread);
    RUN(tolerance_is_the_models);
    RUN(a_code_carries_it);
    RUN(what_does_not_fit_is_refused);
    return test_report(argc, argv);
}
