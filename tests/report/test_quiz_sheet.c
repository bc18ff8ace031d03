/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The quiz on paper: it asks before it tells, asks nothing twice, and puts the weakest first.
#include "harness.h"
#include "report/quiz_ask.h"
#include "report/quiz_sheet.h"
#include "tests/report/pages.h"

enum { RANDOM_SCHEMES = 12, SEEDS = 50 };

static const page_rule normal = {
    .margin = 36, .text = 12, .label = 9, .overlap = 0.5, .codes = true};
static const page_rule large = {
    .margin = 36, .text = 16, .label = 12, .overlap = 0.9, .codes = true};

static bw_scheme terns, scheme;
static bw_weak_list weak;
static double memory[BW_INK_PAGE_BYTES / sizeof(double)];

static bw_teach teach_of(const bw_scheme *of) {
    made_up_weak(of, &weak);
    return (bw_teach){.scheme = of, .weak = &weak, .date = "2026-04-18", .seed = 1};
}

static bw_ink *page_of(const bw_teach *teach, int page, int pages) {
    bw_ink *ink = bw_ink_in(memory, sizeof memory);
    CHECK_INT(bw_quiz_page(teach, page, pages, ink), BW_OK);
    return ink;
}

static void check_all(const bw_teach *teach) {
    const int pages = bw_quiz_pages(teach);
    for (int p = 1; p <= pages; p++)
        check_sheet(page_of(teach, p, pages), teach->large ? &large : &normal);
}

static void pages_keep_the_rules(void) {
    bw_teach teach = teach_of(&terns);
    check_all(&teach);
    teach.paper = BW_A4;
    teach.large = true;
    check_all(&teach);
    unsigned long long state = 5;
    for (int i = 0; i < RANDOM_SCHEMES; i++) {
        random_scheme(&state, &scheme);
        teach = teach_of(&scheme);
        teach.seed = (uint64_t)i;
        teach.large = i % 3 == 0;
        check_all(&teach);
    }
}

static void no_question_comes_twice(void) {
    bw_teach teach = teach_of(&terns);
    for (int seed = 0; seed < SEEDS; seed++) {
        bw_question list[BW_QUIZ_QUESTIONS];
        teach.seed = (uint64_t)seed;
        const int count = bw_quiz_ask(&teach, list);
        CHECK_INT(count, BW_QUIZ_QUESTIONS);
        for (int a = 0; a < count; a++) {
            CHECK((list[a].ask == BW_QUIZ_WHERE) == (a < BW_QUIZ_PLACES));
            for (int b = 0; b < a; b++)
                CHECK(memcmp(&list[a], &list[b], sizeof list[a]) != 0);
        }
    }
}

static void the_weakest_come_first_and_the_seed_draws_the_rest(void) {
    bw_teach teach = teach_of(&terns);
    bw_question one[BW_QUIZ_QUESTIONS], two[BW_QUIZ_QUESTIONS], again[BW_QUIZ_QUESTIONS];
    bw_quiz_ask(&teach, one);
    bw_quiz_ask(&teach, again);
    CHECK(memcmp(one, again, sizeof one) == 0);
    CHECK_INT(one[0].stage, weak.weak[0].stage);
    CHECK_INT(one[0].landmark, weak.weak[0].to_at);
    CHECK_INT(one[0].spot, weak.weak[0].man[0].spot);
    teach.seed = 2;
    bw_quiz_ask(&teach, two);
    CHECK(memcmp(one, two, 3 * sizeof one[0]) == 0);
    CHECK(memcmp(one, two, sizeof one) != 0);
}

static void a_players_quiz_is_about_him(void) {
    bw_teach teach = teach_of(&terns);
    bw_question list[BW_QUIZ_QUESTIONS];
    teach.spot = "M";
    const int count = bw_quiz_ask(&teach, list);
    CHECK(count > 5);
    for (int i = 0; i < count; i++) {
        const bw_stage *stage = &terns.stages[list[i].stage];
        CHECK_INT(stage->defenders, 5);
        if (list[i].ask != BW_QUIZ_STAGE) CHECK_TEXT(stage->spots[list[i].spot].id, "M");
    }
}

/// The pages with questions show no one's place; the key begins on a page of its own.
static void it_asks_before_it_tells(void) {
    const bw_teach teach = teach_of(&terns);
    const int pages = bw_quiz_pages(&teach);
    int key = 0;
    for (int p = 1; p <= pages; p++) {
        const bw_ink *ink = page_of(&teach, p, pages);
        if (has_text(ink, "Key to the quiz", false)) key = p;
        CHECK_INT(has_text(ink, "you", false), key > 0);
        if (key) continue;
        for (const bw_ink_item *i = bw_ink_first(ink); i; i = bw_ink_next(ink, i))
            CHECK(i->kind != BW_INK_FILL || i->role != BW_ROLE_DEFENDER);
    }
    CHECK(key > 1);
    CHECK(has_text(page_of(&teach, 1, pages), "Where?", true));
}

int main(int argc, char **argv) {
    if (load_terns(&terns)) {
        RUN(pages_keep_the_rules);
        RUN(no_question_comes_twice);
        RUN(the_weakest_come_first_and_the_seed_draws_the_rest);
        RUN(a_players_quiz_is_about_him);
        RUN(it_asks_before_it_tells);
    }
    return test_report(argc, argv);
}
