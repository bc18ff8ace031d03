/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Pocket cards and wall sheets: nothing on a cut or near it, legible, backs behind their fronts.
#include "harness.h"
#include "report/cards.h"
#include "report/wall.h"
#include "tests/report/pages.h"

enum { RANDOM_SCHEMES = 12 };

static const double quiet = 3 * 72 / 25.4;

static bw_scheme terns, scheme;
static bw_weak_list weak;
static double memory[BW_INK_PAGE_BYTES / sizeof(double)];

static bw_teach teach_of(const bw_scheme *of) {
    return (bw_teach){.scheme = of,
                      .weak = &weak,
                      .date = "2026-04-18",
                      .card_width = BW_CARD_WIDTH,
                      .card_height = BW_CARD_HEIGHT};
}

static bw_ink *card_page(const bw_teach *teach, int page, int pages) {
    bw_ink *ink = bw_ink_in(memory, sizeof memory);
    CHECK_INT(bw_cards_page(teach, page, pages, ink), BW_OK);
    return ink;
}

/// The lines of the cut marks: those of them that are upright tell x, the others y. Sorted as drawn.
static int cuts(const bw_ink *ink, bool upright, double *at) {
    const bw_ink_item *i = bw_ink_first(ink);
    while (i && !(i->kind == BW_INK_STROKE && i->role == BW_ROLE_LINE && i->size > 0 &&
                  i->numbers >= 6 * 8))
        i = bw_ink_next(ink, i);
    int count = 0;
    const double *n = i ? bw_ink_numbers(i) : NULL;
    for (int k = 0; i && k + 5 < i->numbers; k += 6) { // move x y, line x y
        const bool vertical = n[k + 1] == n[k + 4];
        if (vertical != upright) continue;
        const double place = upright ? n[k + 1] : n[k + 2];
        if (count == 0 || at[count - 1] != place) at[count++] = place;
    }
    return count;
}

/// A run or path of a card keeps the quiet edge: it lies inside one card with 3 mm to its edges.
static bool clear_of_cuts(bw_box box, const double *x, int xs, const double *y, int ys) {
    if (box.y + box.height > y[ys - 1] + 0.01 || box.y < y[0] - 0.01) return true; // foot, marks
    if (box.x + box.width < x[0] + 0.01 || box.x > x[xs - 1] - 0.01) return true;  // marks
    for (int c = 0; c + 1 < xs; c++) {
        for (int r = 0; r + 1 < ys; r++) {
            const bw_box inside = {x[c] + quiet, y[r] + quiet, x[c + 1] - x[c] - 2 * quiet,
                                   y[r + 1] - y[r] - 2 * quiet};
            if (within(box, inside, 0.02)) return true;
        }
    }
    return false;
}

static void check_cards(const bw_teach *teach) {
    const int pages = bw_cards_pages(teach);
    CHECK(pages >= 2 && pages % 2 == 0);
    for (int p = 1; p <= pages; p++) {
        const bw_ink *ink = card_page(teach, p, pages);
        double x[40], y[40];
        const int xs = cuts(ink, true, x), ys = cuts(ink, false, y);
        CHECK(xs >= 2 && ys >= 2);
        CHECK(page_inside(ink, 36));
        const page_rule rule = {.overlap = 0.5, .codes = true};
        CHECK_INT(page_collisions(ink, &rule), 0);
        int clips = 0;
        for (const bw_ink_item *i = bw_ink_first(ink); i; i = bw_ink_next(ink, i)) {
            clips += (i->kind == BW_INK_CLIP) - (i->kind == BW_INK_UNCLIP);
            const bool path = i->kind == BW_INK_FILL || i->kind == BW_INK_STROKE;
            const bool marks = i->kind == BW_INK_STROKE && i->role == BW_ROLE_LINE &&
                               i->numbers >= 6 * 8 && bw_ink_numbers(i)[1] == x[0];
            if (i->kind == BW_INK_TEXT) {
                CHECK(clear_of_cuts(text_box(i), x, xs, y, ys));
                CHECK(i->size >= 9 || (i->size >= 8 && i->style == BW_BOLD));
            }
            if (path && i->role != BW_ROLE_PAGE && clips == 0 && i->numbers && !marks)
                CHECK(clear_of_cuts(path_box(i), x, xs, y, ys));
        }
    }
}

static void demo_cards_keep_their_edges(void) {
    bw_teach teach = teach_of(&terns);
    CHECK_INT(bw_cards_on_sheet(&teach), 8);
    CHECK_INT(bw_cards_pages(&teach), 2 * 3); // 18 cards
    check_cards(&teach);
    teach.paper = BW_A4;
    check_cards(&teach);
    teach.card_width = BW_CARD_HEIGHT;
    teach.card_height = BW_CARD_WIDTH;
    check_cards(&teach);
    teach.large = true;
    check_cards(&teach);
}

static void any_scheme_keeps_its_edges(void) {
    unsigned long long state = 7;
    for (int i = 0; i < RANDOM_SCHEMES; i++) {
        random_scheme(&state, &scheme);
        bw_teach teach = teach_of(&scheme);
        teach.paper = (bw_paper)(i % 2);
        check_cards(&teach);
    }
}

/// Every landmark there can be: a list in columns, and no figure that runs into the next one's number.
static void columns_of_a_list_stand_apart(void) {
    scheme = terns;
    scheme.lesson_count = 0;
    for (int l = scheme.landmark_count; l < BW_MAX_LANDMARKS; l++) {
        scheme.landmarks[l] = scheme.landmarks[0];
        scheme.landmarks[l].twin = -1;
        scheme.landmarks[l].at = bw_v(0.7 * (l - 16), 13.2);
    }
    scheme.landmark_count = BW_MAX_LANDMARKS;
    const bw_teach teach = teach_of(&scheme);
    const bw_ink *ink = card_page(&teach, 1, bw_cards_pages(&teach));
    int numbers = 0;
    for (const bw_ink_item *i = bw_ink_first(ink); i; i = bw_ink_next(ink, i)) {
        if (i->kind != BW_INK_TEXT || i->text > 4) continue;
        for (const bw_ink_item *k = bw_ink_first(ink); k; k = bw_ink_next(ink, k)) {
            if (k->kind != BW_INK_TEXT || k->text > 4 || k == i) continue;
            const bw_box a = text_box(i), b = text_box(k);
            if (bw_ink_numbers(k)[1] != bw_ink_numbers(i)[1] || b.x < a.x) continue;
            CHECK(b.x - a.x - a.width > 3.5);
            numbers++;
        }
    }
    CHECK(numbers > 8 * BW_MAX_LANDMARKS);
}

static void cut_marks_stand_outside_every_card(void) {
    const bw_teach teach = teach_of(&terns);
    const bw_ink *ink = card_page(&teach, 1, bw_cards_pages(&teach));
    double x[40], y[40];
    const int xs = cuts(ink, true, x), ys = cuts(ink, false, y);
    CHECK_INT(xs, 3); // two columns
    CHECK_INT(ys, 5);
    CHECK_NEAR(x[1] - x[0], BW_CARD_WIDTH, 1e-9);
    CHECK_NEAR(y[1] - y[0], BW_CARD_HEIGHT, 1e-9);
}

/// Where a spot's code stands, as the k-th disc with it on the page.
static double code_x(const bw_ink *ink, const char *code) {
    for (const bw_ink_item *i = bw_ink_first(ink); i; i = bw_ink_next(ink, i)) {
        if (i->kind == BW_INK_TEXT && i->text == (int)strlen(code) &&
            memcmp(bw_ink_string(i), code, strlen(code)) == 0)
            return bw_ink_numbers(i)[0];
    }
    return -1;
}

/// Turned over the long edge, x becomes width - x: a back lies behind its own front's column.
static void backs_lie_behind_their_fronts(void) {
    static const char *const codes[] = {"BL", "BR"};
    const bw_teach teach = teach_of(&terns);
    const int pages = bw_cards_pages(&teach);
    for (int k = 0; k < 2; k++) {
        const bw_ink *ink = card_page(&teach, 1, pages);
        const double front = code_x(ink, codes[k]), width = ink->width;
        ink = card_page(&teach, 2, pages);
        const double back = code_x(ink, codes[k]);
        CHECK(front > 0 && back > 0);
        CHECK((front < width / 2) == (back > width / 2));
    }
}

static void too_small_a_card_is_none(void) {
    bw_teach teach = teach_of(&terns);
    teach.card_width = 100;
    CHECK_INT(bw_cards_on_sheet(&teach), 0);
    CHECK_INT(bw_cards_pages(&teach), 0);
    teach.card_width = 2000;
    CHECK_INT(bw_cards_on_sheet(&teach), 0);
    bw_ink *ink = bw_ink_in(memory, sizeof memory);
    CHECK_INT(bw_cards_page(&teach, 1, 0, ink), BW_NOT_FOUND);
}

static void check_wall(const bw_teach *teach, bool codes) {
    const page_rule rule = {36, BW_WALL_TYPE, BW_WALL_TYPE, 5, codes};
    const int pages = bw_wall_pages(teach);
    CHECK_INT(pages, teach->scheme->stage_count);
    for (int p = 1; p <= pages; p++) {
        bw_ink *ink = bw_ink_in(memory, sizeof memory);
        CHECK_INT(bw_wall_page(teach, p, pages, ink), BW_OK);
        check_sheet(ink, &rule);
        CHECK_NEAR(ink->width, teach->paper == BW_A4 ? 841.89 : 792, 0.01);
    }
}

static void wall_sheets_are_read_from_afar(void) {
    bw_teach teach = teach_of(&terns);
    check_wall(&teach, true);
    teach.paper = BW_A4;
    check_wall(&teach, true);
    unsigned long long state = 11;
    for (int i = 0; i < RANDOM_SCHEMES; i++) {
        random_scheme(&state, &scheme);
        teach.scheme = &scheme;
        check_wall(&teach, true);
    }
}

int main(int argc, char **argv) {
    if (load_terns(&terns)) {
        RUN(demo_cards_keep_their_edges);
        RUN(columns_of_a_list_stand_apart);
        RUN(cut_marks_stand_outside_every_card);
        RUN(backs_lie_behind_their_fronts);
        RUN(too_small_a_card_is_none);
        RUN(wall_sheets_are_read_from_afar);
    }
    RUN(any_scheme_keeps_its_edges);
    return test_report(argc, argv);
}
