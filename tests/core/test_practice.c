/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The practice plan for every number of players and spots, many goals, times and laps: nobody in two
/// places, turns and feeds fair, time kept, and what does not fit said.
#include "core/practice.h"
#include "harness.h"

static bw_practice_def def;
static bw_practice plan;

/// Nobody twice in a round; every spot filled when there are players for it.
static void look_at_round(const bw_round *r) {
    int seen[BW_PRACTICE_PLAYERS] = {0}, filled = 0;
    for (int g = 0; g < plan.goals; g++) {
        for (int s = 0; s < def.spots; s++) {
            const int who = r->spot[g][s];
            if (who == BW_PRACTICE_NOBODY) continue;
            CHECK(who >= 0 && who < def.players);
            CHECK_INT(seen[who]++, 0);
            filled++;
        }
        for (int f = 0; f < r->feeder_count; f++) {
            const int who = r->feeder[g][f];
            CHECK(who >= 0 && who < def.players);
            CHECK_INT(seen[who]++, 0);
        }
    }
    const int places = plan.goals * def.spots;
    CHECK_INT(filled, places < def.players ? places : def.players);
}

/// A player's turns at each spot he ever has differ by one at most.
static void look_at_spots(void) {
    for (int i = 0; i < def.players; i++) {
        int had[BW_MAX_SPOTS] = {0}, least = 99, most = 0;
        for (int k = 0; k < plan.round_count; k++) {
            for (int g = 0; g < plan.goals; g++) {
                for (int s = 0; s < def.spots; s++)
                    had[s] += plan.rounds[k].spot[g][s] == i;
            }
        }
        for (int s = 0; s < def.spots; s++) {
            if (had[s] > 0 && had[s] < least) least = had[s];
            if (had[s] > most) most = had[s];
        }
        CHECK(most == 0 || most - least <= 1);
    }
}

static void look_at_time(void) {
    double at = 0, dry = 0;
    for (int k = 0; k < plan.round_count; k++) {
        const bw_round *r = &plan.rounds[k];
        if (r->drink) at += BW_PRACTICE_DRINK;
        if (r->drink) dry = 0;
        CHECK_NEAR(r->at_s, at, 1e-6);
        CHECK_SAME(r->lasts_s, def.lap_s[r->kind]);
        at += r->lasts_s + BW_PRACTICE_CHANGE;
        dry += r->lasts_s + BW_PRACTICE_CHANGE;
        CHECK(dry <= BW_PRACTICE_DRY || dry == r->lasts_s + BW_PRACTICE_CHANGE);
    }
    CHECK_NEAR(plan.used_s, at, 1e-6);
    CHECK(plan.used_s + plan.game_s <= def.minutes * 60 + 1e-6);
}

static void look_at_shares(void) {
    for (int kind = 0; kind < BW_ROUND_KINDS; kind++) {
        if (!plan.whole[kind]) continue;
        bool had[BW_PRACTICE_PLAYERS] = {false};
        for (int k = 0; k < plan.round_count; k++) {
            for (int g = 0; g < plan.goals && plan.rounds[k].kind == kind; g++) {
                for (int s = 0; s < def.spots; s++) {
                    if (plan.rounds[k].spot[g][s] >= 0) had[plan.rounds[k].spot[g][s]] = true;
                }
            }
        }
        for (int i = 0; i < def.players; i++)
            CHECK(had[i]);
    }
}

static void look(void) {
    CHECK_INT(bw_practice_plan(&def, &plan), BW_OK);
    int fed_least = 99, fed_most = 0;
    for (int k = 0; k < plan.round_count; k++)
        look_at_round(&plan.rounds[k]);
    for (int i = 0; i < def.players; i++) {
        if (plan.feeds[i] < fed_least) fed_least = plan.feeds[i];
        if (plan.feeds[i] > fed_most) fed_most = plan.feeds[i];
    }
    CHECK(plan.most - plan.fewest <= 1);
    CHECK(fed_most - fed_least <= 2);
    look_at_spots();
    look_at_time();
    look_at_shares();
    // Time that suffices for everything gives everything.
    const bool all = plan.whole[0] && plan.whole[1] && plan.whole[2];
    const double live = def.lap_s[BW_ROUND_FULL] * plan.cycle;
    if (def.minutes * 60 >= plan.need_s + 1 && live <= BW_PRACTICE_LIVE &&
        3 * plan.cycle <= BW_PRACTICE_ROUNDS)
        CHECK(all);
    if (all) CHECK(plan.fewest >= 3);
    // Nothing fits only when not even one round does.
    if (plan.round_count == 0) CHECK(def.minutes * 60 < def.lap_s[2] + 301 + BW_PRACTICE_CHANGE);
}

static void every_number_of_players(void) {
    static const double minutes[] = {1, 4, 10, 15, 20, 35, 60, 120};
    for (def.players = 4; def.players <= BW_PRACTICE_PLAYERS; def.players++) {
        for (def.spots = 3; def.spots <= BW_MAX_SPOTS; def.spots++) {
            for (def.goals = 1; def.goals <= BW_PRACTICE_GOALS; def.goals++) {
                for (int m = 0; m < 8; m++) {
                    def.minutes = minutes[m];
                    def.lap_s[0] = 280;
                    def.lap_s[1] = 160;
                    def.lap_s[2] = 85;
                    look();
                }
            }
        }
    }
}

static void random_laps(void) {
    unsigned long long seed = 21;
    for (int n = 0; n < 3000; n++) {
        def.players = 4 + (int)(test_random(&seed) % 37);
        def.spots = 1 + (int)(test_random(&seed) % 6);
        def.goals = 1 + (int)(test_random(&seed) % 4);
        def.minutes = test_uniform(&seed, 0.5, 130);
        def.lap_s[2] = test_uniform(&seed, 5, 300);
        def.lap_s[1] = def.lap_s[2] * test_uniform(&seed, 1, 3);
        def.lap_s[0] = def.lap_s[1] * test_uniform(&seed, 1, 3);
        look();
    }
}

/// More time is never fewer turns for the one who has fewest.
static void more_time_is_no_loss(void) {
    def = (bw_practice_def){.players = 17, .spots = 4, .goals = 2, .lap_s = {280, 160, 85}};
    int before = 0;
    for (int m = 2; m <= 90; m++) {
        def.minutes = m;
        CHECK_INT(bw_practice_plan(&def, &plan), BW_OK);
        // Trading many turns at one pace for one at each may cost some, never the first.
        if (before > 0) CHECK(plan.fewest > 0);
        before = plan.fewest;
    }
    CHECK(before >= 3);
}

static void a_second_goal_needs_two_more_who_move_the_ball(void) {
    def = (bw_practice_def){.minutes = 30, .lap_s = {280, 160, 85}};
    for (def.players = 4; def.players <= BW_PRACTICE_PLAYERS; def.players++) {
        for (def.spots = 3; def.spots <= BW_MAX_SPOTS; def.spots++) {
            const int units = def.players / (def.spots + 2);
            for (def.goals = 1; def.goals <= BW_PRACTICE_GOALS; def.goals++) {
                CHECK_INT(bw_practice_plan(&def, &plan), BW_OK);
                CHECK_INT(plan.goals, units < 1 ? 1 : units < def.goals ? units : def.goals);
                for (int r = 0; r < plan.round_count && plan.goals > 1; r++)
                    CHECK(plan.rounds[r].feeder_count >= 2);
            }
        }
    }
}

static void numbers_out_of_range(void) {
    const bw_practice_def good = {
        .players = 12, .spots = 4, .goals = 1, .minutes = 20, .lap_s = {280, 160, 85}};
    def = good;
    CHECK_INT(bw_practice_plan(&def, &plan), BW_OK);
    def.players = 3;
    CHECK_INT(bw_practice_plan(&def, &plan), BW_BAD_INPUT);
    def = good;
    def.players = 41;
    CHECK_INT(bw_practice_plan(&def, &plan), BW_BAD_INPUT);
    def = good;
    def.minutes = 0;
    CHECK_INT(bw_practice_plan(&def, &plan), BW_BAD_INPUT);
    def = good;
    def.goals = 0;
    CHECK_INT(bw_practice_plan(&def, &plan), BW_BAD_INPUT);
    def = good;
    def.lap_s[1] = 0;
    CHECK_INT(bw_practice_plan(&def, &plan), BW_BAD_INPUT);
}

int main(int argc, char **argv) {
    RUN(every_number_of_players);
    RUN(random_laps);
    RUN(more_time_is_no_loss);
    RUN(a_second_goal_needs_two_more_who_move_the_ball);
    RUN(numbers_out_of_range);
    return test_report(argc, argv);
}
