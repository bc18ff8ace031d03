/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The functions the page calls, handed numbers that no page should: whatever it is, nothing trips, and
/// the board can still be drawn with everyone on the field.
#include "core/field.h"
#include "harness.h"
#include "scheme/fresh.h"
#include "web/page.h"
#include "web/tester_page.h"
#include <stdlib.h>

static const double odd[] = {1e308, -1e308, 1e155, 1e17, -1e9, 0, 1e-308};

static bw_board *open_board(void) {
    static bw_scheme scheme;
    bw_board *board = bw_page_board();
    bw_scheme_fresh(0, 3, &scheme);
    bw_board_reset(board);
    board->scheme = scheme;
    board->open = true;
    board->ball = scheme.landmarks[0].at;
    bw_board_show(board, 1);
    bw_page_attack(0, 6);
    bw_page_draw(600, 700);
    return board;
}

static bool finite_place(bw_vec at) {
    return at.x - at.x == 0 && at.y - at.y == 0;
}

/// After any call: men run, words are said and the chart is drawn.
static void still_works(bw_board *board) {
    const bw_field *field = bw_field_at(board->scheme.field);
    bw_page_run(0.05);
    bw_page_say();
    bw_page_draw(600, 700);
    CHECK(bw_field_contains(field, board->ball));
    for (int s = 0; s < board->plan.spots; s++)
        CHECK(finite_place(board->shown[s].at));
    bw_page_settle();
}

static void call(bw_board *board, int which, double a, double b) {
    const int men = BW_BOARD_MEN, attackers = BW_BOARD_MEN + board->plan.spots;
    switch (which) {
    case 0: bw_page_drag(0, a, b); break;
    case 1: bw_page_put(0, a, b); break;
    case 2: bw_page_nudge(0, a, b); break;
    case 3: bw_page_put(men, a, b); break;
    case 4: bw_page_nudge(men + 1, a, b); break;
    case 5: bw_page_drag(attackers, a, b); break;
    case 6: bw_page_run(a); break;
    case 7: bw_page_draw(a, b); break;
    case 8: bw_page_draw_part(a, b, 1); break;
    case 9: bw_page_key(a); break;
    case 10: bw_page_turn(0, a); break;
    case 11: bw_page_suggest(0, a, b); break;
    case 12:
        bw_page_sound_begin(a, b, b, a);
        bw_page_sound(0, 0, a);
        bw_page_soundings(0, 300);
        break;
    case 13: bw_page_zoom(a, b, a); break;
    case 14:
        bw_page_zoom(2, 300, 300);
        bw_page_pan(a, b);
        break;
    case 15: bw_page_lesson_at(a); break;
    case 16:
        bw_page_log_draw(a, b);
        bw_page_log_shot(a, b);
        break;
    case 17:
        bw_page_log_draw(300, 400);
        bw_page_log_shot(a, b);
        bw_page_log_say();
        bw_page_log_refused();
        break;
    case 18:
        for (int field = -1; field < 16; field++)
            bw_page_log_set(field, a);
        bw_page_log_say();
        bw_page_log_refused();
        bw_page_log_clear();
        break;
    case 19: bw_page_test_draw_curve(a, b); break;
    case 20: bw_page_test_draw_film(a, b, b); break;
    case 21: bw_page_test_draw_key(a); break;
    case 22:
        bw_page_test_moment(a);
        bw_page_test_lateness(a);
        break;
    case 23: bw_page_test_late_from(0, a); break;
    case 24:
        bw_page_lesson_new();
        bw_page_lesson_add(1);
        bw_page_lesson_pause(0, a);
        bw_page_lesson_at(b);
        bw_page_lesson_say();
        break;
    default: break;
    }
}

/// Once with each number in either place, and with the next one beside it.
static void numbers_beyond_reason_do_no_harm(void) {
    for (int which = 0; which <= 24; which++) {
        for (int i = 0; i < BW_COUNT(odd); i++) {
            if (getenv("TRACE")) fprintf(stderr, "%d %g\n", which, odd[i]);
            for (int k = 0; k < 3; k++) {
                const double beside = k == 0 ? odd[i] : k == 1 ? 1 : odd[(i + 1) % BW_COUNT(odd)];
                bw_board *board = open_board();
                call(board, which, odd[i], beside);
                still_works(board);
                call(board, which, beside, odd[i]);
                still_works(board);
            }
        }
    }
}

int main(int argc, char **argv) {
    RUN(numbers_beyond_reason_do_no_harm);
    return test_report(argc, argv);
}
