/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Counting a season: everything once, in the right group, whatever the order; and never a bare rate.
#include "harness.h"
#include "trial/season.h"
#include <stdlib.h>

#define YD BW_METRES_PER_YARD

enum { MANY = 400 };

static bw_entry random_entry(unsigned long long *state) {
    bw_entry e = bw_entry_default();
    e.offence = 4 + (int)(test_random(state) % 3);
    e.defence = e.offence - 1 - (int)(test_random(state) % 2);
    e.outcome = (bw_outcome)(test_random(state) % BW_OUTCOME_COUNT);
    e.game = (int64_t)(test_random(state) % 4);
    e.revision = (int64_t)(test_random(state) % 3);
    e.stage = test_random(state) % 3 == 0 ? 0 : e.defence;
    if (test_random(state) % 2) e.seconds = test_uniform(state, 1, 12);
    e.shot_known = bw_outcome_shot(e.outcome) && test_random(state) % 4 != 0;
    e.shot.x = test_uniform(state, -14, 14);
    e.shot.y = test_uniform(state, -4, 18);
    if (test_random(state) % 3 == 0) {
        e.out_count = 1;
        bw_copy(e.out[0], sizeof e.out[0], test_random(state) % 2 ? "TL" : "12");
    }
    return e;
}

static const bw_season_name games[] = {{1, "one"}, {2, "two"}, {3, "three"}};
static const bw_season_name revisions[] = {{1, "first"}, {2, "second"}};

static bw_season_log log_of(const bw_entry *entries, int count, const double *forecast) {
    return (bw_season_log){.entries = entries,
                           .count = count,
                           .forecast = forecast,
                           .games = games,
                           .game_count = 3,
                           .revisions = revisions,
                           .revision_count = 2};
}

static int sum(const bw_group *list, int count) {
    int breaks = 0;
    for (int i = 0; i < count; i++)
        breaks += list[i].breaks;
    return breaks;
}

static void everything_is_counted_once(void) {
    static bw_entry entries[MANY];
    static bw_season s;
    unsigned long long state = 1;
    int goals = 0, shots = 0, in_game = 0, with_revision = 0;
    for (int i = 0; i < MANY; i++) {
        entries[i] = random_entry(&state);
        goals += entries[i].outcome == BW_OUTCOME_GOAL;
        shots += bw_outcome_shot(entries[i].outcome);
        in_game += entries[i].game > 0;
        with_revision += entries[i].revision > 0;
    }
    const bw_season_log log = log_of(entries, MANY, NULL);
    bw_season_count(&log, &s);
    CHECK_INT(s.all.breaks, MANY);
    CHECK_INT(s.all.goals.hits, goals);
    CHECK_INT(s.all.on_shot.cases, shots);
    CHECK_INT(s.all.on_shot.hits, goals);
    CHECK_INT(sum(s.numbers, s.number_count), MANY);
    CHECK_INT(sum(s.stages, s.stage_count), MANY);
    CHECK_INT(sum(s.games, s.game_count), in_game);
    CHECK_INT(sum(s.revisions, s.revision_count), with_revision);
    CHECK_INT(sum(s.places, s.place_count), shots);
    int outcomes = 0;
    for (int o = 0; o < BW_OUTCOME_COUNT; o++)
        outcomes += s.all.outcome[o];
    CHECK_INT(outcomes, MANY);
    CHECK_INT(s.forecast_breaks, 0);
    CHECK_INT(s.named_count, 2);
    CHECK_INT(s.named[0].times + s.named[1].times, s.named_breaks.hits);
    CHECK(s.named[0].times >= s.named[1].times);
    for (int i = 1; i < s.number_count; i++)
        CHECK(s.numbers[i - 1].key < s.numbers[i].key);
}

static void order_does_not_matter(void) {
    static bw_entry entries[MANY], turned[MANY];
    static bw_season a, b;
    unsigned long long state = 2;
    for (int i = 0; i < MANY; i++)
        turned[MANY - 1 - i] = entries[i] = random_entry(&state);
    const bw_season_log one = log_of(entries, MANY, NULL), other = log_of(turned, MANY, NULL);
    bw_season_count(&one, &a);
    bw_season_count(&other, &b);
    for (int i = 0; i < a.number_count; i++) {
        CHECK_TEXT(a.numbers[i].label, b.numbers[i].label);
        CHECK_INT(a.numbers[i].goals.hits, b.numbers[i].goals.hits);
        CHECK_NEAR(a.numbers[i].seconds, b.numbers[i].seconds, 1e-9);
    }
    for (int i = 0; i < 3; i++)
        CHECK_INT(a.games[i].shots.hits, b.games[i].shots.hits);
}

static void forecasts_stand_beside(void) {
    static bw_entry entries[MANY];
    static double forecast[MANY];
    static bw_season s;
    unsigned long long state = 3;
    double expected = 0;
    int known = 0;
    for (int i = 0; i < MANY; i++) {
        entries[i] = random_entry(&state);
        forecast[i] = i % 3 == 0 ? -1 : test_uniform(&state, 0, 1);
        if (forecast[i] < 0) continue;
        expected += forecast[i];
        known++;
    }
    const bw_season_log log = log_of(entries, MANY, forecast);
    bw_season_count(&log, &s);
    CHECK_NEAR(s.all.expected, expected, 1e-9);
    CHECK_INT(s.all.forecast_breaks, known);
    CHECK_NEAR(s.calibration.expected, expected, 1e-9);
    CHECK_INT(s.calibration.cases, known);
}

static void shots_by_distance(void) {
    bw_entry e = bw_entry_default();
    CHECK_INT(bw_shot_place_of(&e), BW_SHOT_UNKNOWN);
    e.shot_known = true;
    static const struct {
        double x, y;
        bw_shot_place place;
    } shots[] = {{0, 4.9, BW_SHOT_NEAR},
                 {0, 5.1, BW_SHOT_MIDDLE},
                 {-8, 8, BW_SHOT_FAR},
                 {0, 16, BW_SHOT_LONG},
                 {3, -0.1, BW_SHOT_BACK}};
    for (int i = 0; i < BW_COUNT(shots); i++) {
        e.shot = bw_v(shots[i].x * YD, shots[i].y * YD);
        CHECK_INT(bw_shot_place_of(&e), shots[i].place);
    }
}

static void said(bw_count count, const char *want) {
    char line[200];
    bw_text t = bw_text_in(line, sizeof line);
    bw_say_count(count, "breaks", &t);
    CHECK_TEXT(line, want);
}

/// Interval by Wilson; 7 of 23 is 16 to 51 in 100.
static void no_rate_without_its_count(void) {
    said((bw_count){0, 0}, "no breaks");
    said((bw_count){2, 6}, "2 of 6, too few to say");
    said((bw_count){0, 6}, "none in 6, too few to say");
    said((bw_count){7, 23}, "7 of 23, roughly 30 in 100 (likely 16 to 51)");
    said((bw_count){30, 100}, "30 of 100, about 30 in 100 (likely 22 to 40)");
    said((bw_count){0, 15}, "none in 15; could still be up to 20 in 100");
    for (int n = 0; n < BW_RATE_COUNTS; n++) {
        char line[200];
        bw_text t = bw_text_in(line, sizeof line);
        bw_say_count((bw_count){n / 2, n}, "breaks", &t);
        CHECK(strstr(line, "in 100") == NULL);
    }
}

static void a_difference_says_when_it_is_chance(void) {
    char line[600];
    bw_text t = bw_text_in(line, sizeof line);
    bw_say_difference((bw_count){10, 62}, (bw_count){18, 59}, &t);
    CHECK(strstr(line, "Too few to say whether") != NULL);
    CHECK(strstr(line, "14 fewer") != NULL);
    t = bw_text_in(line, sizeof line);
    bw_say_difference((bw_count){5, 100}, (bw_count){40, 100}, &t);
    CHECK(strstr(line, "more than chance") != NULL);
    t = bw_text_in(line, sizeof line);
    bw_say_difference((bw_count){1, 5}, (bw_count){40, 100}, &t);
    CHECK(strstr(line, "at least ten") != NULL && strstr(line, "in 100") == NULL);
}

static void a_man_beaten_for_a_goal_is_told_from_one_beaten_for_a_shot(void) {
    static const bw_outcome outcomes[] = {BW_OUTCOME_GOAL, BW_OUTCOME_SAVE, BW_OUTCOME_FORCED,
                                          BW_OUTCOME_GOAL};
    bw_entry entries[BW_COUNT(outcomes) + 1];
    static bw_season s;
    for (int i = 0; i <= BW_COUNT(outcomes); i++) {
        entries[i] = bw_entry_default();
        entries[i].outcome = i ? outcomes[i - 1] : BW_OUTCOME_GOAL;
        entries[i].out_count = 1;
        bw_copy(entries[i].out[0], sizeof entries[i].out[0], i ? "TL" : "12");
    }
    const bw_season_log log = log_of(entries, BW_COUNT(outcomes) + 1, NULL);
    bw_season_count(&log, &s);
    CHECK_INT(s.named_count, 2);
    CHECK_TEXT(s.named[0].who, "TL"); // who was out most often comes first
    CHECK_INT(s.named[0].times, 4);
    CHECK_INT(s.named[0].goals, 2);
    CHECK_INT(s.named[1].goals, 1);
}

/// More games, revisions and men than there is room for: the newest stay, nothing runs over.
static void too_many_of_everything(void) {
    enum { GAMES = BW_SEASON_GAMES + 15, BREAKS = GAMES * 2 };
    static bw_season_name many[GAMES];
    static bw_entry entries[BREAKS];
    static bw_season s;
    for (int i = 0; i < GAMES; i++)
        many[i].id = i + 1;
    for (int i = 0; i < BREAKS; i++) {
        entries[i] = bw_entry_default();
        entries[i].game = entries[i].revision = 1 + i / 2;
        entries[i].offence = 3 + i % 4;
        entries[i].defence = 2 + i % 3;
        entries[i].out_count = 1;
        bw_text t = bw_text_in(entries[i].out[0], sizeof entries[i].out[0]);
        bw_put_int(&t, i % 90);
    }
    const bw_season_log log = {.entries = entries,
                               .count = BREAKS,
                               .games = many,
                               .game_count = GAMES,
                               .revisions = many,
                               .revision_count = GAMES};
    bw_season_count(&log, &s);
    CHECK_INT(s.game_count, BW_SEASON_GAMES);
    CHECK_INT(s.games[0].key, 16);
    CHECK_INT(s.revision_count, BW_SEASON_REVISIONS);
    CHECK_INT(s.named_count, BW_SEASON_MEN);
    CHECK_INT(s.all.breaks, BREAKS);
}

int main(int argc, char **argv) {
    RUN(everything_is_counted_once);
    RUN(order_does_not_matter);
    RUN(forecasts_stand_beside);
    RUN(shots_by_distance);
    RUN(a_man_beaten_for_a_goal_is_told_from_one_beaten_for_a_shot);
    RUN(no_rate_without_its_count);
    RUN(a_difference_says_when_it_is_chance);
    RUN(too_many_of_everything);
    return test_report(argc, argv);
}
