/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The picture book: every sheet legible, whole, marked, and the same on both papers.
#include "core/text.h"
#include "draw/book.h"
#include "harness.h"
#include "scheme/fresh.h"
#include "tests/draw/pages.h"

static bw_scheme terns, monster;
static double memory[BW_INK_PAGE_BYTES / sizeof(double)];
static double other_memory[BW_INK_PAGE_BYTES / sizeof(double)];

static bw_ink *page_of(const bw_scheme *scheme, int page, bw_paper paper, void *place) {
    bw_ink *ink = bw_ink_in(place, BW_INK_PAGE_BYTES);
    CHECK_INT(bw_book_page(scheme, page, paper, ink), BW_OK);
    CHECK_INT(ink->open, 0);
    return ink;
}

/// Everything inside 12.7 mm margins (line widths and the fill of the paper left out), type 9 pt and up.
static void check_page(const bw_ink *ink) {
    const bw_box safe = {36, 36, ink->width - 72, ink->height - 72};
    int clips = 0;
    for (const bw_ink_item *i = bw_ink_first(ink); i; i = bw_ink_next(ink, i)) {
        clips += (i->kind == BW_INK_CLIP) - (i->kind == BW_INK_UNCLIP);
        if (i->kind == BW_INK_TEXT) {
            CHECK(i->size >= 9);
            if (!within(text_box(i), safe, 0.01)) {
                fprintf(stderr, "outside: %.*s\n", (int)i->text, bw_ink_string(i));
                CHECK(false);
            }
        }
        const bool path = i->kind == BW_INK_FILL || i->kind == BW_INK_STROKE;
        if (path && i->numbers && i->role != BW_ROLE_PAGE && clips == 0)
            CHECK(within(path_box(i), safe, 0.01));
    }
}

/// No two runs of text on top of each other.
static int text_collisions(const bw_ink *ink) {
    static const bw_ink_item *runs[4096];
    int count = 0, collisions = 0;
    for (const bw_ink_item *i = bw_ink_first(ink); i; i = bw_ink_next(ink, i)) {
        if (i->kind == BW_INK_TEXT && count < 4096) runs[count++] = i;
    }
    for (int a = 0; a < count; a++) {
        for (int b = 0; b < a; b++) {
            if (shared_area(text_box(runs[a]), text_box(runs[b])) <= 0.5) continue;
            collisions++;
            fprintf(stderr, "collision: \"%.*s\" and \"%.*s\"\n", (int)runs[a]->text,
                    bw_ink_string(runs[a]), (int)runs[b]->text, bw_ink_string(runs[b]));
        }
    }
    return collisions;
}

static void demo_sheets_are_legible(void) {
    const int pages = bw_book_pages(&terns);
    CHECK(pages >= 2 && pages <= 25);
    for (int page = 1; page <= pages; page++) {
        const bw_ink *ink = page_of(&terns, page, BW_LETTER, memory);
        check_page(ink);
        CHECK_INT(text_collisions(ink), 0);
    }
}

static void every_sheet_has_its_foot(void) {
    const int pages = bw_book_pages(&terns);
    for (int page = 1; page <= pages; page++) {
        const bw_ink *ink = page_of(&terns, page, BW_A4, memory);
        char number[32];
        snprintf(number, sizeof number, "page %d of %d", page, pages);
        CHECK(has_text(ink, number, false));
        CHECK(has_text(ink, terns.name, true));
        CHECK(has_text(ink, "Left and right as the defender sees them.", false));
        CHECK(has_text(ink, "yards", false));
        CHECK(has_text(ink, "up-field", false));
        CHECK(has_text(ink, page == 1 ? "where the ball may be" : "goalkeeper", false));
    }
}

/// A4 and Letter carry the same block: every number of every item is off by one and the same shift.
static void both_papers_carry_the_same_picture(void) {
    const int pages = bw_book_pages(&terns);
    for (int page = 1; page <= pages; page++) {
        const bw_ink *one = page_of(&terns, page, BW_LETTER, memory);
        const bw_ink *two = page_of(&terns, page, BW_A4, other_memory);
        const double dx = (two->width - one->width) / 2, dy = (two->height - one->height) / 2;
        CHECK_INT(one->items, two->items);
        const bw_ink_item *a = bw_ink_first(one), *b = bw_ink_first(two);
        for (; a && b; a = bw_ink_next(one, a), b = bw_ink_next(two, b)) {
            CHECK_INT(a->kind, b->kind);
            CHECK_INT(a->numbers, b->numbers);
            const bool path = a->kind == BW_INK_FILL || a->kind == BW_INK_STROKE;
            if (a->numbers == 0 || (path && a->role == BW_ROLE_PAGE)) continue;
            const bw_box p = path ? path_box(a) : text_box(a), q = path ? path_box(b) : text_box(b);
            CHECK_NEAR(q.x - p.x, dx, 1e-6);
            CHECK_NEAR(q.y - p.y, dy, 1e-6);
            CHECK_NEAR(q.width, p.width, 1e-6);
        }
    }
}

static void every_landmark_has_its_chart(void) {
    for (int s = 0; s < terns.stage_count; s++) {
        const int first = bw_book_stage_page(&terns, s);
        int figures = 0;
        for (int page = first + 1; page <= first + (terns.landmark_count + 3) / 4; page++) {
            const bw_ink *ink = page_of(&terns, page, BW_LETTER, memory);
            for (const bw_ink_item *i = bw_ink_first(ink); i; i = bw_ink_next(ink, i)) {
                if (i->kind != BW_INK_OPEN || i->style != BW_TAG_FIGURE) continue;
                figures++;
                CHECK(i->text > 0); // alternative text
            }
        }
        CHECK_INT(figures, terns.landmark_count);
    }
    if (terns.lesson_count > 0) {
        const bw_ink *ink = page_of(&terns, bw_book_lesson_page(&terns, 0), BW_LETTER, memory);
        CHECK(has_text(ink, terns.lessons[0].name, false));
    }
}

static void wrong_pages_and_little_memory_are_reported(void) {
    bw_ink *ink = bw_ink_in(memory, sizeof memory);
    CHECK_INT(bw_book_page(&terns, 0, BW_A4, ink), BW_NOT_FOUND);
    CHECK_INT(bw_book_page(&terns, bw_book_pages(&terns) + 1, BW_A4, ink), BW_NOT_FOUND);
    CHECK_INT(bw_book_page(&terns, 5, BW_A4, ink), BW_OK);
    const int need = ink->need;
    bw_ink *small = bw_ink_in(other_memory, (size_t)need - 8);
    CHECK_INT(bw_book_page(&terns, 5, BW_A4, small), BW_NO_ROOM);
    CHECK_INT(small->need, need);
}

static void put_long(char *to, size_t room, const char *lead, int number) {
    bw_text t = bw_text_in(to, room);
    bw_put(&t, lead);
    bw_put_int(&t, number);
    while (!t.full) {
        bw_put(&t, " Wagga");
    }
}

/// As much of everything as a scheme can hold, with the longest words it can hold.
static void make_monster(void) {
    bw_scheme_fresh(0, 0, &monster);
    put_long(monster.name, sizeof monster.name, "WWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWW", 1);
    put_long(monster.team, sizeof monster.team, "Team", 1);
    put_long(monster.notes, sizeof monster.notes, "Notes", 1);
    monster.landmark_count = BW_MAX_LANDMARKS;
    for (int i = 0; i < BW_MAX_LANDMARKS; i++) {
        bw_landmark *l = &monster.landmarks[i];
        put_long(l->name, sizeof l->name, "Place", i);
        put_long(l->id, sizeof l->id, "W", i);
        l->at = bw_v(i % 5 * 8 - 16, i / 5 * 5.3 - 8);
        l->twin = -1;
    }
    for (int s = 0; s < monster.stage_count; s++) {
        bw_stage *stage = &monster.stages[s];
        put_long(stage->call, sizeof stage->call, "Call", s);
        for (int i = 0; i < stage->defenders; i++) {
            put_long(stage->spots[i].name, sizeof stage->spots[i].name, "Spot", i);
            put_long(stage->spots[i].call, sizeof stage->spots[i].call, "Shout", i);
            bw_copy(stage->spots[i].id, sizeof stage->spots[i].id, "WWW");
            stage->spots[i].id[2] = (char)('0' + i);
        }
    }
    monster.lesson_count = 1;
    bw_lesson *lesson = &monster.lessons[0];
    put_long(lesson->name, sizeof lesson->name, "Lesson", 1);
    lesson->defenders = monster.stages[0].defenders;
    lesson->stop_count = BW_MAX_STOPS;
    for (int i = 0; i < BW_MAX_STOPS; i++) {
        lesson->stops[i] = (bw_stop){.at_landmark = true, .landmark = i % BW_MAX_LANDMARKS};
        if (i % 3 == 0)
            put_long(lesson->stops[i].caption, sizeof lesson->stops[i].caption, "Words", i);
    }
}

static void the_fullest_scheme_stays_on_its_sheets(void) {
    make_monster();
    const int pages = bw_book_pages(&monster);
    CHECK_INT(pages, 2 + 4 * (1 + 6) + 10 + 1);
    for (int page = 1; page <= pages; page++) {
        check_page(page_of(&monster, page, BW_LETTER, memory));
    }
}

int main(int argc, char **argv) {
    if (load_terns(&terns)) {
        RUN(demo_sheets_are_legible);
        RUN(every_sheet_has_its_foot);
        RUN(both_papers_carry_the_same_picture);
        RUN(every_landmark_has_its_chart);
        RUN(wrong_pages_and_little_memory_are_reported);
    }
    RUN(the_fullest_scheme_stays_on_its_sheets);
    return test_report(argc, argv);
}
