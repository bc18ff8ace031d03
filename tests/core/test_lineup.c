/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Line-ups against brute force, against the small matching and against published optima.
#include "core/lineup.h"
#include "core/match.h"
#include "harness.h"

static void none_fixed(bw_lineup *l) {
    for (int p = 0; p < BW_LINEUP_PLACES; p++)
        l->fixed[p] = -1;
}

typedef struct brute {
    const bw_lineup *l;
    double worst, sum;
    bool found;
    bw_lineup_aim aim;
} brute;

static void try_all(brute *b, int place, unsigned used, double worst, double sum) {
    if (place == b->l->places) {
        const bool better = !b->found || (b->aim == BW_LINEUP_SUM ? sum < b->sum
                                          : worst != b->worst     ? worst < b->worst
                                                                  : sum < b->sum);
        if (better) *b = (brute){b->l, worst, sum, true, b->aim};
        return;
    }
    for (int man = 0; man < b->l->men; man++) {
        if (used >> man & 1) continue;
        if (b->l->fixed[place] >= 0 && b->l->fixed[place] != man) continue;
        const double c = b->l->cost[man][place];
        if (c >= BW_LINEUP_NEVER) continue;
        try_all(b, place + 1, used | 1u << man, c > worst ? c : worst, sum + c);
    }
}

static void same_as_brute_force(void) {
    unsigned long long state = 9;
    for (int n = 0; n < 400; n++) {
        bw_lineup l = {.places = 1 + (int)(test_random(&state) % 4)};
        l.men = l.places + (int)(test_random(&state) % 4);
        none_fixed(&l);
        for (int m = 0; m < l.men; m++) {
            for (int p = 0; p < l.places; p++) {
                l.cost[m][p] = (double)(int)(test_random(&state) % 21) - 10;
                if (test_random(&state) % 8 == 0) l.cost[m][p] = BW_LINEUP_NEVER;
            }
        }
        if (n % 3 == 0) l.fixed[0] = (int)(test_random(&state) % (unsigned)l.men);
        for (int aim = BW_LINEUP_SUM; aim <= BW_LINEUP_WORST; aim++) {
            brute b = {&l, 0, 0, false, (bw_lineup_aim)aim};
            try_all(&b, 0, 0, -BW_LINEUP_NEVER, 0);
            bw_lineup_choice best;
            const bw_status status = bw_lineup_best(&l, (bw_lineup_aim)aim, &best);
            CHECK_INT(status, b.found ? BW_OK : BW_NOT_FOUND);
            if (status != BW_OK) continue;
            if (aim == BW_LINEUP_WORST) CHECK_NEAR(best.worst, b.worst, 1e-12);
            CHECK_NEAR(best.sum, b.sum, 1e-9);
            double sum = 0;
            for (int p = 0; p < l.places; p++) {
                sum += l.cost[best.man[p]][p];
                if (l.fixed[p] >= 0) CHECK_INT(best.man[p], l.fixed[p]);
                for (int q = 0; q < p; q++)
                    CHECK(best.man[p] != best.man[q]);
            }
            CHECK_NEAR(sum, best.sum, 1e-9);
        }
    }
}

/// Square problems small enough for core/match, which searches in another way.
static void same_as_matching(void) {
    unsigned long long state = 10;
    for (int n = 0; n < 300; n++) {
        const int size = 2 + n % 5;
        bw_lineup l = {.men = size, .places = size};
        double cost[BW_MATCH_MAX][BW_MATCH_MAX] = {{0}};
        none_fixed(&l);
        for (int m = 0; m < size; m++) {
            for (int p = 0; p < size; p++)
                l.cost[m][p] = cost[m][p] = test_uniform(&state, 0, 10);
        }
        bw_lineup_choice best;
        CHECK_INT(bw_lineup_best(&l, BW_LINEUP_WORST, &best), BW_OK);
        const bw_matching m = bw_match(cost, size, size);
        CHECK_SAME(best.worst, m.worst);
        CHECK_NEAR(best.sum, m.sum, 1e-12);
        CHECK_INT(bw_lineup_best(&l, BW_LINEUP_SUM, &best), BW_OK);
        CHECK_NEAR(best.sum, bw_match_sum(cost, size, size).sum, 1e-12);
    }
}

/// H. W. Kuhn, Naval Res. Logist. Q. 2, 1955 (matrix from memory): 27 at most; and a whole roster: each
/// of 40 players better at one place than the one before.
static void known_optima(void) {
    static const double rating[4][4] = {{8, 7, 9, 9}, {5, 2, 7, 8}, {6, 1, 4, 9}, {2, 3, 2, 6}};
    bw_lineup l = {.men = 4, .places = 4};
    none_fixed(&l);
    for (int m = 0; m < 4; m++) {
        for (int p = 0; p < 4; p++)
            l.cost[m][p] = -rating[m][p];
    }
    bw_lineup_choice best;
    CHECK_INT(bw_lineup_best(&l, BW_LINEUP_SUM, &best), BW_OK);
    CHECK_SAME(best.sum, -27);

    bw_lineup roster = {.men = 40, .places = 9};
    none_fixed(&roster);
    for (int m = 0; m < 40; m++) {
        for (int p = 0; p < 9; p++)
            roster.cost[m][p] = 100 - m + 0.01 * p;
    }
    CHECK_INT(bw_lineup_best(&roster, BW_LINEUP_WORST, &best), BW_OK);
    CHECK_NEAR(best.sum, 9 * 61 + 36 + 0.36, 1e-9);
}

static void giving_a_man_up_never_helps(void) {
    unsigned long long state = 12;
    for (int n = 0; n < 100; n++) {
        bw_lineup l = {.men = 7, .places = 4};
        none_fixed(&l);
        for (int m = 0; m < 7; m++) {
            for (int p = 0; p < 4; p++)
                l.cost[m][p] = test_uniform(&state, 0, 5);
        }
        bw_lineup_choice best, without;
        CHECK_INT(bw_lineup_best(&l, BW_LINEUP_SUM, &best), BW_OK);
        for (int p = 0; p < 4; p++) {
            CHECK_INT(bw_lineup_without(&l, BW_LINEUP_SUM, best.man[p], p, &without), BW_OK);
            CHECK(without.sum >= best.sum);
            CHECK(without.man[p] != best.man[p]);
        }
        l.fixed[1] = 3;
        CHECK_INT(bw_lineup_without(&l, BW_LINEUP_SUM, 3, 1, &without), BW_BAD_INPUT);
    }
}

static void nonsense_is_refused(void) {
    bw_lineup l = {.men = 3, .places = 4};
    none_fixed(&l);
    bw_lineup_choice best;
    CHECK_INT(bw_lineup_best(&l, BW_LINEUP_SUM, &best), BW_BAD_INPUT);
    l.men = 5;
    l.fixed[0] = l.fixed[1] = 2;
    CHECK_INT(bw_lineup_best(&l, BW_LINEUP_SUM, &best), BW_BAD_INPUT);
    l.fixed[1] = 5;
    CHECK_INT(bw_lineup_best(&l, BW_LINEUP_SUM, &best), BW_BAD_INPUT);
}

int main(int argc, char **argv) {
    RUN(same_as_brute_force);
    RUN(same_as_matching);
    RUN(known_optima);
    RUN(giving_a_man_up_never_helps);
    RUN(nonsense_is_refused);
    return test_report(argc, argv);
}
