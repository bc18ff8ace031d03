/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The break being logged: what is put in comes back, a tap on the chart is the place it was drawn at.
#include "core/maths.h"
#include "draw/ink.h"
#include "harness.h"
#include "scheme/fresh.h"
#include "web/log.h"
#include <stdlib.h>

static bw_logging sheet;

static void nothing_is_known_at_first(void) {
    bw_log_clear(&sheet);
    for (int f = BW_LOG_SECONDS; f <= BW_LOG_SHOT_Y; f++) {
        const double x = bw_log_figure(&sheet, (bw_log_field)f);
        CHECK(x != x);
    }
    CHECK(!sheet.entry.shot_known && sheet.entry.out_count == 0);
}

static void what_is_put_in_comes_back(void) {
    static const double values[] = {5, 4, BW_OUTCOME_SAVE, 4.2, 3, -2.5, 7};
    bw_log_clear(&sheet);
    for (int f = 0; f < BW_COUNT(values); f++)
        bw_log_set(&sheet, (bw_log_field)f, values[f]);
    for (int f = 0; f < BW_COUNT(values); f++)
        CHECK(bw_log_figure(&sheet, (bw_log_field)f) == values[f]);
    CHECK(sheet.entry.shot_known);
    bw_log_set(&sheet, BW_LOG_SHOT_X, __builtin_nan(""));
    CHECK(!sheet.entry.shot_known); // half a place is none
    bw_copy(sheet.entry.client, BW_CLIENT_SIZE, "x");
    CHECK(bw_entry_check(&sheet.entry, NULL) == BW_OK);
}

static void what_is_out_of_range_is_for_the_check_to_refuse(void) {
    static const double wild[] = {-1, 7, 1e300, -1e300};
    for (int f = BW_LOG_OFFENCE; f <= BW_LOG_OUTCOME; f++) {
        for (int i = 0; i < BW_COUNT(wild); i++) {
            if (f == BW_LOG_OUTCOME && i == 1) continue; // that one there is
            bw_log_clear(&sheet);
            bw_copy(sheet.entry.client, BW_CLIENT_SIZE, "x");
            bw_log_set(&sheet, (bw_log_field)f, wild[i]);
            CHECK(bw_entry_check(&sheet.entry, NULL) != BW_OK);
        }
    }
}

static void only_spots_and_numbers_are_named(void) {
    bw_log_clear(&sheet);
    CHECK(bw_log_out(&sheet, "TL") && bw_log_out(&sheet, "12"));
    CHECK(!bw_log_out(&sheet, "") && !bw_log_out(&sheet, "nobody") && !bw_log_out(&sheet, "07"));
    CHECK_INT(sheet.entry.out_count, 2);
    while (sheet.entry.out_count < BW_MAX_OUT)
        CHECK(bw_log_out(&sheet, "M"));
    CHECK(!bw_log_out(&sheet, "M"));
}

/// A tap comes back to within what it is rounded to, wherever it falls and however large the chart is.
static void a_tap_is_the_place_it_was_drawn_at(void) {
    static bw_scheme scheme;
    void *memory = malloc(BW_INK_PAGE_BYTES);
    bw_scheme_fresh(0, 0, &scheme);
    unsigned long long seed = 5;
    for (int i = 0; i < 200; i++) {
        const double width = 150 + (double)(test_random(&seed) % 500);
        bw_log_clear(&sheet);
        bw_log_draw(&sheet, &scheme, width, 400, memory, BW_INK_PAGE_BYTES);
        const bw_box *box = &sheet.chart.box;
        const double across = (double)(test_random(&seed) % 1000) / 1000;
        const double down = (double)(test_random(&seed) % 1000) / 1000;
        const bw_vec tap = {box->x + across * box->width, box->y + down * box->height};
        bw_log_shot(&sheet, tap);
        const bw_vec back = bw_view_point(&sheet.chart, sheet.entry.shot);
        CHECK(sheet.entry.shot_known);
        CHECK(bw_distance(tap, back) <= 0.071 * sheet.chart.scale + 1e-9);
    }
    bw_log_shot(&sheet, bw_v(-1e6, 1e6)); // beside the chart: its edge
    CHECK(sheet.entry.shot.x >= -BW_SHOT_ACROSS && sheet.entry.shot.y >= -BW_SHOT_BEHIND);
    free(memory);
}

int main(int argc, char **argv) {
    RUN(nothing_is_known_at_first);
    RUN(what_is_put_in_comes_back);
    RUN(what_is_out_of_range_is_for_the_check_to_refuse);
    RUN(only_spots_and_numbers_are_named);
    RUN(a_tap_is_the_place_it_was_drawn_at);
    return test_report(argc, argv);
}
