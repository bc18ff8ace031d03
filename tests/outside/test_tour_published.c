/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The shortest closed tour against published postman problems and against an exact search that knows
/// nothing of flows.
#include "core/tour/tour.h"
#include "harness.h"
#include <stdlib.h>

static _Alignas(16) char memory[256 * 1024];
static bw_tour_def def;
static bw_tour tour;

static void clear(int places) {
    memset(&def, 0, sizeof def);
    def.count = places;
    def.budget = BW_TOUR_BUDGET;
}

static void arc(int from, int to, int cost) {
    def.cost[from][to] = cost;
    def.times[from][to] = 1;
}

static bw_status find(void) {
    return bw_tour_find(&def, memory, sizeof memory, &tour);
}

/// H. Thimbleby, "The directed Chinese postman problem", Software: Practice and Experience 33, 2003: his
/// graph of four places and six arcs, 10 moves at unit cost.
static void thimbleby(void) {
    clear(4);
    static const int arcs[][2] = {{0, 1}, {0, 2}, {1, 2}, {1, 3}, {2, 3}, {3, 0}};
    for (int i = 0; i < 6; i++)
        arc(arcs[i][0], arcs[i][1], 1);
    CHECK_INT(find(), BW_OK);
    CHECK_INT(tour.required, 6);
    CHECK_INT(tour.length, 10);
    CHECK_INT(tour.bound, 10);
    CHECK_INT(tour.count, 10);
    CHECK_INT(tour.flows, 1);
}

/// Five places: min-cost flow, an exact search over (place, arcs covered) and an out-of-kilter solver
/// agree on 42 for a sum of 33.
static void five_places(void) {
    clear(5);
    static const int arcs[][3] = {{0, 1, 3}, {1, 2, 2}, {2, 0, 4}, {1, 3, 6}, {3, 4, 2},
                                  {4, 1, 1}, {2, 3, 5}, {4, 2, 3}, {0, 4, 7}};
    for (int i = 0; i < 9; i++)
        arc(arcs[i][0], arcs[i][1], arcs[i][2]);
    CHECK_INT(find(), BW_OK);
    CHECK_INT(tour.required, 33);
    CHECK_INT(tour.length, 42);
    CHECK_INT(tour.bound, 42);
}

/// Graphs that are Eulerian as they are: nothing is added. The complete digraph on four places; de Bruijn's
/// B(2,3) and B(2,4) (N. G. de Bruijn 1946), whose circuits are his sequences of 8 and 16.
static void eulerian(void) {
    clear(4);
    for (int a = 0; a < 4; a++) {
        for (int b = 0; b < 4; b++) {
            if (a != b) arc(a, b, 1);
        }
    }
    CHECK_INT(find(), BW_OK);
    CHECK_INT(tour.length, 12);
    for (int places = 4; places <= 8; places *= 2) {
        clear(places);
        for (int v = 0; v < places; v++) {
            arc(v, 2 * v % places, 1);
            arc(v, (2 * v + 1) % places, 1);
        }
        CHECK_INT(find(), BW_OK);
        CHECK_INT(tour.length, 2 * places);
        CHECK_INT(tour.bound, 2 * places);
        // Read as last bits, every word of the length comes once.
        unsigned seen = 0;
        for (int i = 0; i < tour.count; i++)
            seen |= 1u << (2 * tour.at[i] + tour.at[i + 1] % 2);
        CHECK_INT(seen, (1u << 2 * places) - 1);
    }
}

static void no_way_back(void) {
    clear(3);
    arc(0, 1, 1);
    arc(1, 2, 1);
    CHECK_INT(find(), BW_UNREACHABLE);
    CHECK_INT(tour.from, 1);
    CHECK_INT(tour.to, 0);
    arc(2, 1, 1);
    CHECK_INT(find(), BW_UNREACHABLE);
}

/// The exact answer by Dijkstra over (place, required moves still to make), the slow and obvious way.
enum { MOST = 10, PLACES = 7 };
static int64_t exact(void) {
    int from[MOST], to[MOST], count = 0;
    for (int a = 0; a < def.count; a++) {
        for (int b = 0; b < def.count; b++) {
            for (int k = 0; k < def.times[a][b]; k++) {
                from[count] = a;
                to[count++] = b;
            }
        }
    }
    static int64_t dist[1 << MOST][PLACES];
    static bool done[1 << MOST][PLACES];
    const int all = (1 << count) - 1;
    for (int m = 0; m <= all; m++) {
        for (int v = 0; v < def.count; v++) {
            dist[m][v] = INT64_MAX;
            done[m][v] = false;
        }
    }
    dist[0][from[0]] = 0;
    for (;;) {
        int bm = -1, bv = -1;
        for (int m = 0; m <= all; m++) {
            for (int v = 0; v < def.count; v++) {
                if (done[m][v] || dist[m][v] == INT64_MAX) continue;
                if (bm < 0 || dist[m][v] < dist[bm][bv]) {
                    bm = m;
                    bv = v;
                }
            }
        }
        if (bm < 0) return -1;
        if (bm == all && bv == from[0]) return dist[bm][bv];
        done[bm][bv] = true;
        for (int u = 0; u < def.count; u++) {
            const int cost = def.cost[bv][u];
            if (cost == 0) continue;
            int m = bm;
            for (int k = 0; k < count; k++) {
                if (m >> k & 1 || from[k] != bv || to[k] != u) continue;
                m |= 1 << k;
                break;
            }
            if (dist[bm][bv] + cost < dist[m][u]) dist[m][u] = dist[bm][bv] + cost;
        }
    }
}

/// The tour is a tour: closed, along moves there are, every required one often enough, length the sum.
static void check_tour(void) {
    int made[BW_TOUR_PLACES][BW_TOUR_PLACES] = {{0}};
    int64_t sum = 0;
    CHECK_INT(tour.at[tour.count], tour.at[0]);
    for (int i = 0; i < tour.count; i++) {
        const int a = tour.at[i], b = tour.at[i + 1];
        CHECK(def.cost[a][b] > 0);
        sum += def.cost[a][b];
        made[a][b]++;
    }
    CHECK_INT(sum, tour.length);
    CHECK(tour.length >= tour.bound);
    CHECK(tour.bound >= tour.required);
    for (int a = 0; a < def.count; a++) {
        for (int b = 0; b < def.count; b++)
            CHECK(made[a][b] >= def.times[a][b]);
    }
}

/// A random problem: some moves possible, a few required, perhaps in several pieces.
static void draw(unsigned long long *seed, int places, int required, int one_in) {
    clear(places);
    for (int a = 0; a < places; a++) {
        for (int b = 0; b < places; b++) {
            const unsigned there = (unsigned)(test_random(seed) % (unsigned)one_in);
            const int cost = 1 + (int)(test_random(seed) % 9);
            if (a != b && there == 0) def.cost[a][b] = cost;
        }
    }
    for (int k = 0; k < required; k++) {
        const int a = (int)(test_random(seed) % (unsigned)places);
        const int b = (int)(test_random(seed) % (unsigned)places);
        if (def.cost[a][b] > 0) def.times[a][b]++;
    }
}

static void agrees_with_the_exact_search(void) {
    unsigned long long seed = 5;
    int found = 0, rural = 0, stranded = 0;
    for (int n = 0; n < 1500; n++) {
        const int places = 2 + (int)(test_random(&seed) % (PLACES - 1));
        const int required = 1 + (int)(test_random(&seed) % 7);
        const int one_in = 1 + (int)(test_random(&seed) % 4);
        draw(&seed, places, required, one_in);
        const bw_status status = find();
        if (status == BW_OK && tour.count == 0) continue;
        const int64_t want = exact();
        if (want < 0) {
            CHECK_INT(status, BW_UNREACHABLE);
            stranded++;
            continue;
        }
        CHECK_INT(status, BW_OK);
        CHECK_INT(tour.length, want);
        CHECK_INT(tour.bound, want);
        check_tour();
        found++;
        rural += tour.pieces > 1;
    }
    CHECK(found > 300);
    CHECK(rural > 80);
    CHECK(stranded > 40);
}

/// Large ones, far past the exact search: always a tour, never below the bound, and in one piece proven.
static void large_ones_are_tours(void) {
    unsigned long long seed = 9;
    for (int n = 0; n < 150; n++) {
        const int places = 8 + (int)(test_random(&seed) % 17);
        const int required = 1 + (int)(test_random(&seed) % 120);
        const int one_in = 1 + (int)(test_random(&seed) % 2);
        draw(&seed, places, required, one_in);
        def.budget = 400;
        const bw_status status = find();
        if (status == BW_UNREACHABLE) continue;
        CHECK_INT(status, BW_OK);
        check_tour();
        if (tour.pieces == 1) CHECK_INT(tour.bound, tour.length);
        if (tour.pieces == 1) CHECK_INT(tour.flows, 1);
    }
}

int main(int argc, char **argv) {
    RUN(thimbleby);
    RUN(five_places);
    RUN(eulerian);
    RUN(no_way_back);
    RUN(agrees_with_the_exact_search);
    RUN(large_ones_are_tours);
    return test_report(argc, argv);
}
