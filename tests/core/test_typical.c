/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The forecast, the curve and the what-if: properties that hold whatever the numbers are.
#include "breaks.h"
#include "core/choice.h"
#include "harness.h"

static bw_break b;

static void begin(int offence, int defence, const char *set, const char *start) {
    const bw_break_def def = breaks_def(offence, defence, set, start);
    CHECK_INT(bw_break_begin(&breaks_ground, &def, &b, NULL), BW_OK);
}

static void shares_sum_to_one(void) {
    static bw_choice_work work;
    static bw_choice choice;
    for (int set = 0; set < bw_attack_set_count(); set++) {
        begin(6, 4, bw_attack_set_at(set)->id, "wl");
        for (int ahead = 0; ahead < 2; ahead++) {
            bw_choose(&b, &b.start, ahead, &work, &choice);
            double sum = 0;
            for (int i = 0; i < choice.count; i++) {
                CHECK(choice.share[i] >= 0 && choice.chance[i] >= 0 && choice.chance[i] <= 1);
                CHECK(choice.rate[i] <= choice.chance[i] + 1e-12);
                sum += choice.share[i];
            }
            CHECK_NEAR(sum, 1, 1e-12);
        }
    }
}

/// The better of two plies of one kind is the likelier, and more sharpness makes the best likelier.
static void the_better_is_likelier(void) {
    static bw_choice_work work;
    static bw_choice dull, sharp;
    static bw_ground ground;
    bw_level level = *breaks_ground.level;
    begin(6, 4, "2-2-2", "top");
    bw_choose(&b, &b.start, 1, &work, &dull);
    for (int i = 1; i < dull.count; i++) {
        const bool same = dull.plies[i].kind == BW_CARRY && dull.plies[i - 1].kind == BW_CARRY;
        if (same && dull.rate[i] > dull.rate[i - 1]) CHECK(dull.share[i] > dull.share[i - 1]);
    }
    level.sharpness *= 4;
    bw_ground_build(&breaks_scheme, &level, &ground, NULL);
    b.ground = &ground;
    bw_choose(&b, &b.start, 0, &work, &sharp);
    b.ground = &breaks_ground;
    bw_choose(&b, &b.start, 0, &work, &dull);
    int best = 0;
    for (int i = 1; i < dull.count; i++)
        best = dull.rate[i] > dull.rate[best] ? i : best;
    CHECK(sharp.share[best] > dull.share[best]);
}

static void a_seed_is_an_answer(void) {
    begin(6, 4, "1-4-1", "top");
    const bw_forecast a = breaks_typical(&b, 12, 3), again = breaks_typical(&b, 12, 3);
    const bw_forecast other = breaks_typical(&b, 12, 4);
    for (int t = 0; t <= BW_MAX_SECONDS; t++) {
        CHECK_SAME(a.worth[t], again.worth[t]);
        CHECK(a.worth[t] >= (t > 0 ? a.worth[t - 1] : 0));
        CHECK(a.error[t] >= 0);
    }
    CHECK_SAME(a.worth[0], 0);
    CHECK_INT(a.played, again.played);
    CHECK(a.worth[10] != other.worth[10]);
    CHECK_NEAR(a.worth[10], other.worth[10], 5 * (a.error[10] + other.error[10]));
    CHECK(a.shots >= a.worth[10]);
    CHECK(a.shots + a.lost <= 1 + 1e-9);
    for (int i = 1; i < a.use_count; i++)
        CHECK(a.use[i].share <= a.use[i - 1].share);
}

/// The stated error is the spread of the mean between seeds, or above it.
static void the_error_is_honest(void) {
    begin(6, 4, "2-2-2", "wl");
    double sum = 0, square = 0, stated = 0;
    enum { SEEDS = 24 };
    for (int seed = 1; seed <= SEEDS; seed++) {
        const bw_forecast f = breaks_typical(&b, 8, (uint64_t)seed);
        sum += f.worth[6];
        square += f.worth[6] * f.worth[6];
        stated += f.error[6] / SEEDS;
    }
    const double spread = sqrt(square / SEEDS - sum / SEEDS * (sum / SEEDS));
    CHECK(spread < 1.5 * stated);
    CHECK(stated < 4 * spread);
}

/// People do not beat perfect play: T 4, and depth enough for it.
static void typical_is_below_best(void) {
    for (int set = 0; set < bw_attack_set_count(); set++) {
        begin(6, 4, bw_attack_set_at(set)->id, "top");
        CHECK(breaks_typical(&b, 12, 1).worth[4] < breaks_best(&b, 3, 4, true, true).worth);
    }
}

static void the_curve_hangs_together(void) {
    bw_break_def def = breaks_def(6, 4, "2-2-2", "top");
    def.late_count = 2;
    def.late[0] = 18;
    def.late[1] = 27;
    CHECK_INT(bw_break_begin(&breaks_ground, &def, &b, NULL), BW_OK);
    bw_curve_def how = bw_curve_default();
    how.search.depth = 2;
    how.typical.rollouts = 12;
    static bw_curve c;
    CHECK_INT(bw_curve_run(&b, &how, 4, breaks_memory, bw_curve_size() - 1, &c), BW_NO_ROOM);
    CHECK_INT(bw_curve_run(&b, &how, 4, breaks_memory, bw_curve_size(), &c), BW_OK);
    for (int t = 1; t <= BW_MAX_SECONDS; t++) {
        CHECK(c.best[t] >= c.best[t - 1]);
        CHECK(c.typical[t] >= c.typical[t - 1]);
        // From the top down or one by one: the same worth.
        CHECK_SAME(c.best[t], breaks_best(&b, 2, t, true, true).worth);
    }
    CHECK_SAME(c.answer.worth, c.best[4]);
    CHECK(c.late_s[0] < c.late_s[1]);
    CHECK_SAME(c.even_s, c.late_s[1]);
    CHECK(c.plateau <= c.typical[10] && c.plateau >= c.typical[(int)c.even_s]);
    CHECK(c.bought_s > 0 && c.bought_s <= 10);
    CHECK(c.missing_s >= 0);
}

static void what_if_ranks(void) {
    begin(6, 4, "spread", "x");
    const bw_forecast f = breaks_typical(&b, 12, 1);
    static bw_whatif w;
    CHECK_INT(bw_whatif_run(&b, &f, breaks_memory, 10, &w), BW_NO_ROOM);
    CHECK_INT(bw_whatif_run(&b, &f, breaks_memory, bw_whatif_size(), &w), BW_OK);
    CHECK(w.count >= 1);
    for (int i = 0; i < w.count; i++) {
        const bw_rotation *r = &w.weak[i];
        CHECK(r->drop > 0);
        CHECK_NEAR(r->cost, r->use * r->chance * (r->moving - r->set), 1e-12);
        if (i > 0) CHECK(r->cost <= w.weak[i - 1].cost);
        CHECK_INT(r->behind_count, 4);
        for (int k = 1; k < r->behind_count; k++)
            CHECK(r->behind[k].seconds <= r->behind[k - 1].seconds);
    }
}

int main(int argc, char **argv) {
    breaks_ready("high-school");
    RUN(shares_sum_to_one);
    RUN(the_better_is_likelier);
    RUN(a_seed_is_an_answer);
    RUN(the_error_is_honest);
    RUN(typical_is_below_best);
    RUN(the_curve_hangs_together);
    RUN(what_if_ranks);
    return test_report(argc, argv);
}
