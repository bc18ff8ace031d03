/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The report on paper and on the terminal: every word large enough, on the sheet, and clear of the
/// others, on both papers, for breaks of all kinds; the strip's moments follow the answer.
#include "draw/sequence.h"
#include "harness.h"
#include "report/battery.h"
#include "report/column.h"
#include "report/pages.h"
#include "report/strip.h"
#include "scheme/fresh.h"
#include "tests/draw/layout.h"
#include "trial/standard.h"
#include <string.h>

enum { BREAKS = 9, STANDARD = 12 };

static bw_scheme scheme;
static bw_ground ground;
static bw_trial trials[BREAKS + STANDARD];
static _Alignas(16) char memory[BW_INK_PAGE_BYTES];

static void add(int i, int offence, int defence, const char *set, const char *start, int late) {
    bw_trial *t = &trials[i];
    t->def = bw_standard_def(&scheme, offence, defence, set, start);
    if (late < t->def.late_count) t->def.late_count = late;
    t->effort = bw_effort_default();
    t->effort.seconds = 2 + i % 4;
    t->effort.curve.search.depth = i < BREAKS ? 2 + i % 2 : 1;
    t->effort.curve.typical.rollouts = 1;
    t->effort.with_weak = i == 0 || i == 6;
}

static void run_all(void) {
    static const char *const sets[] = {"2-2-2", "1-4-1", "2-3-1", "3-3", "1-3-2", "spread"};
    static const char *const starts[] = {"top", "x", "wr"};
    for (int i = 0; i < 6; i++)
        add(i, 6, 4 + i % 2, sets[i], starts[i % 3], i % 3);
    add(6, 4, 3, "2-2-2", "top", 1);
    add(7, 6, 6, "3-3", "top", 0);
    add(8, 5, 4, "1-4-1", "x", 0);
    for (int i = 0; i < STANDARD; i++)
        add(BREAKS + i, 4, 3, sets[i % 6], starts[i / 6], 1);
    bw_battery battery = {.ground = &ground, .trials = trials, .count = BREAKS + STANDARD};
    CHECK_INT(bw_battery_run(&battery), BW_OK);
    for (int i = 0; i < BREAKS + STANDARD; i++) {
        CHECK_INT(trials[i].status, BW_OK);
        if (trials[i].status != BW_OK) fprintf(stderr, "break %d: %s\n", i, trials[i].why);
    }
}

static bw_report report_of(int i) {
    return (bw_report){.ground = &ground,
                       .headline = &trials[i],
                       .standard = i % 2 ? NULL : &trials[BREAKS],
                       .standard_count = i % 2 ? 0 : STANDARD};
}

/// The part of the paper printers reach: 12.7 mm margins.
static bw_box printable(const bw_ink *ink) {
    return (bw_box){36, 36, ink->width - 72, ink->height - 72};
}

/// Words on the chart of the answer may stand on its border's figures' line; words over one another
/// are counted but for discs that really meet on the field.
static void look(const bw_ink *ink, const char *what, int i, bool people) {
    const layout l = layout_of(ink, printable(ink));
    CHECK_INT(ink->status, BW_OK);
    CHECK_INT(ink->open, 0);
    CHECK(l.texts > 10);
    CHECK(l.smallest >= 9);
    CHECK_INT(l.outside, 0);
    if (!people) CHECK_INT(l.over, 0);
    if (l.outside || (!people && l.over)) fprintf(stderr, "%s of break %d: %s\n", what, i, l.where);
}

static void every_sheet_can_be_read(void) {
    bw_ink *ink = bw_ink_in(memory, sizeof memory);
    for (int i = 0; i < BREAKS; i++) {
        const bw_report r = report_of(i);
        CHECK_INT(bw_report_pages(&r), i % 2 ? 2 : 3);
        for (int page = 1; page <= bw_report_pages(&r); page++) {
            for (int paper = 0; paper < BW_PAPER_COUNT; paper++) {
                CHECK_INT(bw_report_page(&r, page, (bw_paper)paper, ink), BW_OK);
                look(ink, "sheet", i, page == 2);
            }
        }
        CHECK_INT(bw_report_page(&r, 0, BW_LETTER, ink), BW_NOT_FOUND);
        CHECK_INT(bw_report_page(&r, bw_report_pages(&r) + 1, BW_LETTER, ink), BW_NOT_FOUND);
    }
}

/// The lowest baseline of running text on the answer's sheet stays above the key.
static void the_answer_leaves_room_for_the_key(void) {
    bw_ink *ink = bw_ink_in(memory, sizeof memory);
    for (int i = 0; i < BREAKS; i++) {
        const bw_report r = report_of(i);
        bw_report_page(&r, 2, BW_LETTER, ink);
        double key = 0, lowest = 0;
        for (const bw_ink_item *item = bw_ink_first(ink); item; item = bw_ink_next(ink, item)) {
            if (item->kind != BW_INK_TEXT) continue;
            const double y = bw_ink_numbers(item)[1];
            const bool word =
                item->text == 10 && memcmp(bw_ink_string(item), "goalkeeper", 10) == 0;
            if (word) key = y;
        }
        for (const bw_ink_item *item = bw_ink_first(ink); item; item = bw_ink_next(ink, item)) {
            if (item->kind != BW_INK_TEXT || item->text < 20) continue;
            const double y = bw_ink_numbers(item)[1];
            if (y < key + 20) lowest = bw_max(lowest, y);
        }
        CHECK(key > 0);
        CHECK(lowest < key - 8);
    }
}

static void a_page_without_room_says_how_much(void) {
    bw_ink *ink = bw_ink_in(memory, 4096);
    const bw_report r = report_of(0);
    CHECK_INT(bw_report_page(&r, 1, BW_LETTER, ink), BW_NO_ROOM);
    CHECK(ink->need > 4096);
    CHECK(ink->need < BW_INK_PAGE_BYTES);
}

static void the_strip_follows_the_answer(void) {
    static bw_strip strip;
    bw_ink *ink = bw_ink_in(memory, sizeof memory);
    for (int i = 0; i < BREAKS; i++) {
        const bw_answer *a = &trials[i].curve.answer;
        const bw_status built = bw_strip_build(&trials[i], &strip);
        CHECK_INT(built, a->count ? BW_OK : BW_NOT_FOUND);
        if (built != BW_OK) continue;
        CHECK_INT(strip.moments[0], 0);
        CHECK_INT(strip.moments[strip.moment_count - 1], strip.frame_count - 1);
        int ends = 0;
        for (int m = 1; m < strip.moment_count; m++) {
            CHECK(strip.moments[m] > strip.moments[m - 1]);
            const double at = strip.frames[strip.moments[m]].at_s;
            CHECK(at - strip.frames[strip.moments[m - 1]].at_s < 1.26);
            for (int p = 0; p < a->count; p++)
                ends += bw_abs(at - a->plies[p].end_s) < 0.011;
        }
        CHECK_INT(ends, a->count);
        for (int page = 1; page <= bw_strip_pages(&strip); page++) {
            CHECK_INT(bw_strip_page(&strip, page, BW_A4, ink), BW_OK);
            look(ink, "strip", i, true);
        }
        CHECK_INT(bw_strip_page(&strip, bw_strip_pages(&strip) + 1, BW_A4, ink), BW_NOT_FOUND);
    }
}

/// Late men with the longest names: the words below a picture stay off the row below.
static void long_words_stay_off_the_next_row(void) {
    static bw_strip strip;
    static bw_late kept[BW_MAX_LATE];
    bw_ink *ink = bw_ink_in(memory, sizeof memory);
    memcpy(kept, scheme.late, sizeof kept);
    for (int m = 0; m < scheme.late_count; m++) {
        bw_text t = bw_text_in(scheme.late[m].role, sizeof scheme.late[m].role);
        while (!t.full)
            bw_put(&t, "deputy ");
    }
    for (int i = 0; i < BREAKS; i++) {
        if (bw_strip_build(&trials[i], &strip) != BW_OK) continue;
        for (int paper = 0; paper < BW_PAPER_COUNT; paper++) {
            CHECK_INT(bw_strip_page(&strip, 1, (bw_paper)paper, ink), BW_OK);
            double foot = 0, head = 0; // of the first picture's words, of the second row
            for (const bw_ink_item *r = bw_ink_first(ink); r; r = bw_ink_next(ink, r)) {
                if (r->kind != BW_INK_TEXT) continue;
                const double *at = bw_ink_numbers(r);
                const bool moment = r->size == 11 && r->style == BW_BOLD;
                if (moment && head == 0 && foot > 0) head = at[1];
                if (r->size == BW_TYPE_SMALL && head == 0) foot = bw_max(foot, at[1]);
            }
            if (strip.moment_count > 2) CHECK(head - foot > 10);
        }
    }
    memcpy(scheme.late, kept, sizeof kept);
}

static void the_window_shows_everyone_who_plays(void) {
    static bw_strip strip;
    for (int i = 0; i < BREAKS; i++) {
        if (bw_strip_build(&trials[i], &strip) != BW_OK) continue;
        const bw_sequence sequence = {&trials[i].begun, &trials[i].curve.answer, strip.frames,
                                      strip.frame_count};
        const bw_window w = bw_window_sequence(&sequence);
        CHECK_SAME(w.left, -w.right);
        for (int f = 0; f < strip.frame_count; f++) {
            for (int a = 0; a < trials[i].begun.attackers; a++) {
                const bw_vec p = strip.frames[f].attackers[a];
                CHECK(p.x > w.left && p.x < w.right && p.y > w.bottom && p.y < w.top);
            }
        }
    }
}

static void the_text_fits_a_terminal(void) {
    static char room[BW_REPORT_BYTES];
    for (int i = 0; i < BREAKS; i++) {
        const bw_report r = report_of(i);
        bw_text t = bw_text_in(room, sizeof room);
        bw_report_text(&r, &t);
        CHECK(!t.full);
        CHECK(strchr(room, '%') == NULL);
        for (char *line = room; *line;) {
            char *end = strchr(line, '\n');
            CHECK(end != NULL);
            if (!end) break;
            *end = '\0';
            CHECK(bw_columns(line) <= 80);
            if (bw_columns(line) > 80) fprintf(stderr, "wide: %s\n", line);
            CHECK(line == end || end[-1] != ' ');
            line = end + 1;
        }
    }
}

static void words_are_wrapped_by_characters(void) {
    char room[64];
    bw_text t = bw_text_in(room, sizeof room);
    bw_put_wrapped(&t, "\xC3\xA9t\xC3\xA9 one  two", 0, 2, 7);
    CHECK_TEXT(room, "\xC3\xA9t\xC3\xA9 one\n  two\n");
    t = bw_text_in(room, sizeof room);
    bw_put_left(&t, "\xC3\xA9", 3);
    bw_put_right(&t, 2.25, 1, 5);
    CHECK_TEXT(room, "\xC3\xA9    2.3");
    t = bw_text_in(room, sizeof room);
    bw_put_left(&t, "\xC3\xA9t\xC3\xA9s", 3);
    CHECK_TEXT(room, "\xC3\xA9t ");
}

int main(int argc, char **argv) {
    bw_scheme_fresh(0, 3, &scheme);
    bw_ground_build(&scheme, NULL, &ground, NULL);
    RUN(run_all);
    RUN(every_sheet_can_be_read);
    RUN(the_answer_leaves_room_for_the_key);
    RUN(a_page_without_room_says_how_much);
    RUN(the_strip_follows_the_answer);
    RUN(long_words_stay_off_the_next_row);
    RUN(the_window_shows_everyone_who_plays);
    RUN(the_text_fits_a_terminal);
    RUN(words_are_wrapped_by_characters);
    return test_report(argc, argv);
}
