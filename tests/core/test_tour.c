/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The shortest closed tour's own promises: the same tour for places moved along, no straight way back
/// where there is another, an honest bound when the budget runs out. Optimality: tests/outside.
#include "core/tour/tour.h"
#include "harness.h"

static _Alignas(16) char memory[256 * 1024];
static bw_tour_def def;
static bw_tour tour;

static void clear(int places) {
    memset(&def, 0, sizeof def);
    def.count = places;
    def.budget = BW_TOUR_BUDGET;
}

static void both_ways(int a, int b) {
    def.cost[a][b] = def.cost[b][a] = 1;
    def.times[a][b] = def.times[b][a] = 1;
}

static void nothing_required_is_no_tour(void) {
    clear(3);
    def.cost[0][1] = 4;
    CHECK_INT(bw_tour_find(&def, memory, sizeof memory, &tour), BW_OK);
    CHECK_INT(tour.count, 0);
    CHECK_INT(tour.length, 0);
    CHECK_INT(bw_tour_find(&def, memory, bw_tour_size() - 1, &tour), BW_NO_ROOM);
}

static void it_begins_where_asked(void) {
    clear(5);
    for (int v = 1; v < 5; v++)
        both_ways(v, v % 4 + 1);
    for (def.start = 0; def.start < 5; def.start++) {
        CHECK_INT(bw_tour_find(&def, memory, sizeof memory, &tour), BW_OK);
        CHECK_INT(tour.at[0], def.start == 0 ? 1 : def.start);
        CHECK_INT(tour.count, 8);
    }
}

/// Round a ring in both directions, the ball never goes straight back but where the two rounds meet.
static void it_does_not_go_straight_back(void) {
    clear(9);
    for (int v = 0; v < 9; v++)
        both_ways(v, (v + 1) % 9);
    CHECK_INT(bw_tour_find(&def, memory, sizeof memory, &tour), BW_OK);
    int back = 0;
    for (int i = 1; i < tour.count; i++)
        back += tour.at[i + 1] == tour.at[i - 1];
    CHECK(back <= 1);
}

/// Many pieces and next to no budget: a tour if there is one yet, never a false proof.
static void a_small_budget_is_told(void) {
    clear(24);
    for (int a = 0; a < 24; a++) {
        for (int b = 0; b < 24; b++) {
            if (a != b) def.cost[a][b] = 10 + (a * 7 + b * 5) % 11;
        }
    }
    for (int v = 0; v < 24; v += 2) {
        def.cost[v][v + 1] = def.cost[v + 1][v] = 1;
        def.times[v][v + 1] = def.times[v + 1][v] = 1;
    }
    def.budget = 3;
    CHECK_INT(bw_tour_find(&def, memory, sizeof memory, &tour), BW_LIMIT);
    CHECK_INT(tour.pieces, 12);
    def.budget = 60;
    CHECK_INT(bw_tour_find(&def, memory, sizeof memory, &tour), BW_OK);
    const int64_t bound = tour.bound, length = tour.length;
    CHECK(bound < length);
    CHECK(bound >= tour.required);
    def.budget = 4000;
    CHECK_INT(bw_tour_find(&def, memory, sizeof memory, &tour), BW_OK);
    CHECK(tour.length <= length);
    CHECK(tour.length >= bound);
}

/// More required, or a move more dear, never makes the tour shorter.
static void more_is_never_shorter(void) {
    unsigned long long seed = 2;
    for (int n = 0; n < 200; n++) {
        clear(7);
        for (int a = 0; a < 7; a++) {
            for (int b = 0; b < 7; b++) {
                if (a == b) continue;
                def.cost[a][b] = 1 + (int)(test_random(&seed) % 20);
                def.times[a][b] = (uint8_t)(test_random(&seed) % 3 / 2);
            }
        }
        def.times[0][1] = 1;
        CHECK_INT(bw_tour_find(&def, memory, sizeof memory, &tour), BW_OK);
        CHECK_INT(tour.bound, tour.length);
        const int64_t was = tour.length;
        const int a = (int)(test_random(&seed) % 7),
                  b = (a + 1 + (int)(test_random(&seed) % 6)) % 7;
        if (n % 2)
            def.times[a][b]++;
        else
            def.cost[a][b] += 3;
        CHECK_INT(bw_tour_find(&def, memory, sizeof memory, &tour), BW_OK);
        CHECK(tour.length >= was);
    }
}

int main(int argc, char **argv) {
    RUN(nothing_required_is_no_tour);
    RUN(it_begins_where_asked);
    RUN(it_does_not_go_straight_back);
    RUN(a_small_budget_is_told);
    RUN(more_is_never_shorter);
    return test_report(argc, argv);
}
