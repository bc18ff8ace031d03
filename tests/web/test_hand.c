/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The hand-out's program: cards, questions, marks, progress put back, and what nonsense does to it.
#include "draw/hand_chart.h"
#include "harness.h"
#include "scheme/fresh.h"
#include "web/hand.h"
#include "web/hand_page.h"
#include "web/hand_say.h"

static bw_hand hand;
static unsigned long long seed = 5;

/// The starting scheme, taken as a page would have it taken.
static void open_fresh(void) {
    static bw_scheme fresh;
    bw_scheme_fresh(0, 3, &fresh);
    hand.scheme = fresh;
    hand.chart = bw_hand_view(&hand.scheme);
    bw_tolerances_build(&hand.scheme, &hand.model);
    hand.open = true;
    for (int s = 0; s < BW_MAX_STAGES; s++)
        hand.spot[s] = -1;
    hand.count = hand.asked = 0;
}

static int asks_of(bw_ask_kind kind) {
    int n = 0;
    for (int i = 0; i < hand.count; i++)
        n += hand.ask[i].kind == kind;
    return n;
}

/// A place for every landmark of every stage with a spot; every card has a name of its own.
static void makes_cards(void) {
    open_fresh();
    CHECK_INT(bw_hand_quiz(&hand, 20000, 1), 0);
    for (int s = 0; s < hand.scheme.stage_count; s++)
        bw_hand_pick(&hand, s, 0);
    CHECK_INT(asks_of(BW_ASK_WHERE), hand.scheme.stage_count * hand.scheme.landmark_count);
    CHECK(asks_of(BW_ASK_DUTY) > 0);
    CHECK(hand.count <= BW_MAX_CARDS);
    for (int i = 0; i < hand.count; i++) {
        char name[64];
        bw_copy(name, sizeof name, bw_hand_key(&hand, i));
        for (int k = 0; k < i; k++)
            CHECK(!bw_same(name, bw_hand_key(&hand, k)));
    }
    bw_hand_pick(&hand, 0, -1);
    CHECK_INT(asks_of(BW_ASK_WHERE), (hand.scheme.stage_count - 1) * hand.scheme.landmark_count);
}

/// Every question of a quiz answered where he belongs, or with the right word, is right.
static void what_is_right_is_right(void) {
    open_fresh();
    for (int s = 0; s < hand.scheme.stage_count; s++)
        bw_hand_pick(&hand, s, 1);
    for (int day = 20000; day < 20060; day++) {
        const int n = bw_hand_quiz(&hand, day, (uint64_t)day);
        CHECK_INT(n, BW_HAND_QUESTIONS);
        for (int i = 0; i < n; i++) {
            bw_hand_show(&hand, i);
            const bw_hand_ask *ask = bw_hand_asked(&hand);
            if (ask->kind == BW_ASK_WHERE) {
                bw_station here[BW_MAX_SPOTS];
                bw_hand_stations(&hand, ask->stage, hand.scheme.landmarks[ask->landmark].at, here);
                CHECK_INT(bw_hand_answer_place(&hand, here[ask->spot].at, 1).verdict,
                          BW_VERDICT_RIGHT);
            } else {
                CHECK(hand.option_right >= 0 && hand.option_count >= 2);
                CHECK(bw_hand_answer_option(&hand, hand.option_right));
            }
        }
        CHECK_INT(hand.right, n);
        CHECK_NEAR(bw_length(bw_tally_bias(&hand.tally)), 0, 1e-12);
    }
}

/// A known step beside each place is the bias, whatever was asked.
static void the_bias_is_the_step(void) {
    open_fresh();
    bw_hand_pick(&hand, 1, 2);
    const bw_vec step = {0.4,
                         -0.6}; // less than any tolerance, so that no team-mate's place is meant
    for (int day = 1; day < 30; day++) {
        const int n = bw_hand_quiz(&hand, day, 3);
        int places = 0;
        for (int i = 0; i < n; i++) {
            bw_hand_show(&hand, i);
            const bw_hand_ask *ask = bw_hand_asked(&hand);
            if (ask->kind != BW_ASK_WHERE) continue;
            bw_station here[BW_MAX_SPOTS];
            bw_hand_stations(&hand, ask->stage, hand.scheme.landmarks[ask->landmark].at, here);
            bw_hand_answer_place(&hand, bw_add(here[ask->spot].at, step), 0);
            places++;
        }
        CHECK_INT(hand.tally.tries, places);
        if (places == 0) continue;
        CHECK_NEAR(bw_tally_bias(&hand.tally).x, step.x, 1e-9);
        CHECK_NEAR(bw_tally_bias(&hand.tally).y, step.y, 1e-9);
        CHECK_NEAR(bw_tally_spread(&hand.tally), 0, 1e-6);
    }
}

/// The weakest rotation is asked first.
static void weak_first(void) {
    open_fresh();
    bw_hand_weak(&hand, 1, 4, 2, 1);
    bw_hand_pick(&hand, 1, 2);
    bw_hand_quiz(&hand, 20000, 9);
    bw_hand_show(&hand, 0);
    CHECK_INT(bw_hand_asked(&hand)->landmark, 4);
    CHECK_INT(bw_hand_asked(&hand)->kind, BW_ASK_WHERE);
    hand.weakness[1][4][2] = 0;
}

/// What was kept goes back as it was; nonsense is left out.
static void progress_comes_back(void) {
    open_fresh();
    bw_hand_pick(&hand, 1, 0);
    bw_hand_put_card(&hand, 3, 2.36, 2, 6, 20006, 4);
    CHECK_INT(hand.card[3].due, 20006);
    CHECK_SAME(hand.card[3].ease, 2.36);
    bw_hand_put_card(&hand, 3, 0.0 / 1, 2, 6, 1, 4);
    bw_hand_put_card(&hand, 3, 2.5, -1, 6, 1, 4);
    bw_hand_put_card(&hand, 3, 2.5, 9, 6, 1, 4);
    bw_hand_put_card(&hand, 3, 2.5, 2, 99999, 1, 4);
    CHECK_INT(hand.card[3].due, 20006);
}

/// The page's functions, on the page's own hand-out, asked for anything before and after a document.
static void nonsense_does_nothing(void) {
    for (int round = 0; round < 400; round++) {
        const int a = (int)(test_random(&seed) % 40) - 10, b = (int)(test_random(&seed) % 40) - 10;
        const int c = (int)(test_random(&seed) % 40) - 10;
        bw_hand_page_pick(a, b);
        bw_hand_page_weak(a, b, c, 0.5);
        bw_hand_page_put_card(a, 2.5, b, c, a, b);
        bw_hand_page_rotate(a, b, c);
        bw_hand_page_frame(c);
        bw_hand_page_lateness(a);
        bw_hand_page_card(a);
        bw_hand_page_quiz(a, b);
        bw_hand_page_ask(a);
        bw_hand_page_answer_place(a * 20, b * 20, c);
        bw_hand_page_answer_option(a);
        bw_hand_page_result(1);
        bw_hand_page_point(a, b);
    }
    CHECK_INT(bw_hand_page_about(), 0);
    CHECK_INT(bw_hand_page_cards(), 0);
}

/// Everything the page is told is closed and has no raw quote: looked at by counting.
static void answers_are_whole(void) {
    static char memory[BW_HAND_OUTPUT];
    open_fresh();
    bw_hand_pick(&hand, 2, 1);
    bw_text out = bw_text_in(memory, sizeof memory);
    bw_hand_say_about(&hand, &out);
    CHECK(!out.full && out.used > 200);
    CHECK(memory[0] == '{' && memory[out.used - 1] == '}');
    bw_hand_quiz(&hand, 1, 1);
    for (int i = 0; i < hand.asked; i++) {
        out = bw_text_in(memory, sizeof memory);
        bw_hand_show(&hand, i);
        bw_hand_say_question(&hand, &out);
        int depth = 0, quotes = 0;
        for (size_t k = 0; k < out.used; k++) {
            depth += memory[k] == '{' || memory[k] == '[';
            depth -= memory[k] == '}' || memory[k] == ']';
            quotes += memory[k] == '"';
        }
        CHECK_INT(depth, 0);
        CHECK_INT(quotes % 2, 0);
    }
    bw_hand_rotation(&hand, 2, 0, 1);
    out = bw_text_in(memory, sizeof memory);
    bw_hand_say_lateness(&hand, 1, &out);
    CHECK(out.used > 40);
}

int main(int argc, char **argv) {
    RUN(makes_cards);
    RUN(what_is_right_is_right);
    RUN(the_bias_is_the_step);
    RUN(weak_first);
    RUN(progress_comes_back);
    RUN(nonsense_does_nothing);
    RUN(answers_are_whole);
    return test_report(argc, argv);
}
