/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Runs, passes, carries and shots by their lines alone, in both habits.
#include "draw/key.h"
#include "draw/marks.h"
#include "harness.h"

static double memory[20000];

/// What a line looks like without its colour: how many strokes, dashed or not, curved or not.
typedef struct pattern {
    int strokes, dashed, curves;
} pattern;

static pattern of(const bw_ink *ink) {
    pattern p = {0};
    for (const bw_ink_item *item = bw_ink_first(ink); item; item = bw_ink_next(ink, item)) {
        if (item->kind != BW_INK_STROKE) continue;
        p.dashed += item->dash[1] > 0;
        const double *n = bw_ink_numbers(item);
        static const int skip[] = {3, 3, 7, 1};
        for (int i = 0; i < item->numbers; i += skip[(int)n[i]]) {
            p.strokes += n[i] == BW_MOVE;
            p.curves |= n[i] == BW_CURVE;
        }
    }
    return p;
}

static pattern route(bw_lines lines, bw_route_kind kind) {
    bw_ink *ink = bw_ink_in(memory, sizeof memory);
    ink->lines = lines;
    bw_ink_page(ink, 300, 100);
    CHECK_INT(ink->lines, lines); // a new page keeps it
    bw_mark_route(ink, kind, bw_v(10, 10), bw_v(200, 60), 0, 0, false);
    CHECK_INT(ink->status, BW_OK);
    return of(ink);
}

static bool same(pattern a, pattern b) {
    return a.strokes == b.strokes && a.dashed == b.dashed && a.curves == b.curves;
}

static void four_lines_are_told_apart_in_both_habits(void) {
    for (int lines = BW_RUN_SOLID; lines <= BW_PASS_SOLID; lines++) {
        for (int a = BW_ROUTE_RUN; a <= BW_ROUTE_SHOT; a++) {
            for (int b = BW_ROUTE_RUN; b < a; b++)
                CHECK(!same(route((bw_lines)lines, (bw_route_kind)a),
                            route((bw_lines)lines, (bw_route_kind)b)));
        }
    }
}

static void the_habit_swaps_run_and_pass_and_nothing_else(void) {
    CHECK(same(route(BW_RUN_SOLID, BW_ROUTE_RUN), route(BW_PASS_SOLID, BW_ROUTE_PASS)));
    CHECK(same(route(BW_RUN_SOLID, BW_ROUTE_PASS), route(BW_PASS_SOLID, BW_ROUTE_RUN)));
    CHECK(same(route(BW_RUN_SOLID, BW_ROUTE_CARRY), route(BW_PASS_SOLID, BW_ROUTE_CARRY)));
    CHECK(same(route(BW_RUN_SOLID, BW_ROUTE_SHOT), route(BW_PASS_SOLID, BW_ROUTE_SHOT)));
    CHECK_INT(route(BW_RUN_SOLID, BW_ROUTE_RUN).dashed, 0);
    CHECK_INT(route(BW_RUN_SOLID, BW_ROUTE_PASS).dashed, 1);
}

/// The key shows the lines as the page has them.
static void the_key_follows_the_habit(void) {
    for (int lines = BW_RUN_SOLID; lines <= BW_PASS_SOLID; lines++) {
        bw_ink *ink = bw_ink_in(memory, sizeof memory);
        ink->lines = lines;
        bw_draw_key(ink, BW_KEY_PASS, 10, 10);
        CHECK_INT(of(ink).dashed, lines == BW_RUN_SOLID);
    }
}

int main(int argc, char **argv) {
    RUN(four_lines_are_told_apart_in_both_habits);
    RUN(the_habit_swaps_run_and_pass_and_nothing_else);
    RUN(the_key_follows_the_habit);
    return test_report(argc, argv);
}
