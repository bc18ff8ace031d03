/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The packet: every page legible and whole for any scheme, everyone's own page there, and said to him.
#include "harness.h"
#include "report/packet.h"
#include "tests/report/pages.h"

enum { RANDOM_SCHEMES = 12 };

static const page_rule normal = {.margin = 36, .text = 12, .label = 9, .overlap = 0.5};
static const page_rule large = {.margin = 36, .text = 16, .label = 12, .overlap = 0.9};

static bw_scheme terns, scheme;
static bw_weak_list weak;
static double memory[BW_INK_PAGE_BYTES / sizeof(double)];

static bw_teach teach_of(const bw_scheme *of) {
    made_up_weak(of, &weak);
    return (bw_teach){.scheme = of, .weak = &weak, .date = "2026-04-18"};
}

static bw_ink *page_of(const bw_teach *teach, int page, int pages) {
    bw_ink *ink = bw_ink_in(memory, sizeof memory);
    CHECK_INT(bw_packet_page(teach, page, pages, ink), BW_OK);
    return ink;
}

static void check_all(const bw_teach *teach, bool codes) {
    page_rule rule = teach->large ? large : normal;
    rule.codes = codes;
    const int pages = bw_packet_pages(teach);
    CHECK(pages > 5);
    for (int p = 1; p <= pages; p++)
        check_sheet(page_of(teach, p, pages), &rule);
}

static void demo_pages_keep_the_rules(void) {
    bw_teach teach = teach_of(&terns);
    check_all(&teach, false);
    teach.paper = BW_A4;
    check_all(&teach, false);
    teach.large = true;
    check_all(&teach, false);
}

static void any_scheme_keeps_the_rules(void) {
    unsigned long long state = 20260418;
    for (int i = 0; i < RANDOM_SCHEMES; i++) {
        random_scheme(&state, &scheme);
        bw_teach teach = teach_of(&scheme);
        teach.paper = (bw_paper)(i % 2);
        teach.large = i % 3 == 0;
        check_all(&teach, true);
    }
}

/// Pages with these words.
static int pages_with(const bw_teach *teach, const char *words) {
    const int pages = bw_packet_pages(teach);
    int count = 0;
    for (int p = 1; p <= pages; p++)
        count += has_text(page_of(teach, p, pages), words, true);
    return count;
}

static void everyone_has_his_page(void) {
    const bw_teach teach = teach_of(&terns);
    int spots = 0;
    for (int s = 0; s < terns.stage_count; s++)
        spots += terns.stages[s].defenders;
    CHECK_INT(pages_with(&teach, "You are "), spots);
    CHECK_INT(pages_with(&teach, "You are low left. 2-2, four in"), 1);
    const int pages = bw_packet_pages(&teach);
    CHECK_INT(pages_with(&teach, "2026-04-18"), pages);
    CHECK_INT(pages_with(&teach, terns.name), pages);
    CHECK_INT(pages_with(&teach, "Left and right as the defender sees them."), pages);
    CHECK_INT(pages_with(&teach, "up-field"), pages);
    CHECK_INT(pages_with(&teach, "model estimate"), 2);
    CHECK_INT(pages_with(&teach, "Cautions"), 1);
}

/// Pages differ by what a scheme has, not by how deep the field's chart is: nobody gets a page with one
/// picture left over.
static void every_field_takes_as_many_pages(void) {
    int most = 0, least = 1000;
    for (int field = 0; field < bw_field_count(); field++) {
        for (int paper = 0; paper < BW_PAPER_COUNT; paper++) {
            bw_scheme_fresh(field, 0, &scheme);
            scheme.units = paper == BW_A4 ? BW_METRES : BW_YARDS;
            bw_teach teach = teach_of(&scheme);
            teach.paper = (bw_paper)paper;
            const int pages = bw_packet_pages(&teach);
            if (pages > most) most = pages;
            if (pages < least) least = pages;
        }
    }
    CHECK_INT(most, least);
}

static void a_players_copy_is_his_alone(void) {
    bw_teach teach = teach_of(&terns);
    teach.spot = "M"; // in the five only
    CHECK_INT(pages_with(&teach, "You are "), 1);
    CHECK_INT(pages_with(&teach, "You are middle"), 1);
    CHECK(bw_packet_pages(&teach) <= 4);
    teach.spot = "LL"; // in four, five and six
    CHECK_INT(pages_with(&teach, "You are low left"), 3);
    CHECK_INT(pages_with(&teach, "You are "), 3);
}

static void nothing_weak_is_no_page(void) {
    bw_teach teach = teach_of(&terns);
    const int pages = bw_packet_pages(&teach);
    weak.count = 0;
    CHECK_INT(bw_packet_pages(&teach), pages - 2);
    CHECK_INT(pages_with(&teach, "model estimate"), 0);
}

static void wrong_pages_and_little_memory_are_reported(void) {
    const bw_teach teach = teach_of(&terns);
    const int pages = bw_packet_pages(&teach);
    bw_ink *ink = bw_ink_in(memory, sizeof memory);
    CHECK_INT(bw_packet_page(&teach, 0, pages, ink), BW_NOT_FOUND);
    CHECK_INT(bw_packet_page(&teach, pages + 1, pages, ink), BW_NOT_FOUND);
    bw_ink *small = bw_ink_in(memory, 4096);
    CHECK_INT(bw_packet_page(&teach, 2, pages, small), BW_NO_ROOM);
    CHECK(small->need > 4096);
}

int main(int argc, char **argv) {
    if (load_terns(&terns)) {
        RUN(demo_pages_keep_the_rules);
        RUN(everyone_has_his_page);
        RUN(every_field_takes_as_many_pages);
        RUN(a_players_copy_is_his_alone);
        RUN(nothing_weak_is_no_page);
        RUN(wrong_pages_and_little_memory_are_reported);
    }
    RUN(any_scheme_keeps_the_rules);
    return test_report(argc, argv);
}
