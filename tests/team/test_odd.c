/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What is hardly meant: each row of the table is whole and finds its own, what good coaches enter passes, and
/// what an old file holds is read as before.
#define _XOPEN_SOURCE 700
#include "core/scheme.h"
#include "core/sprint.h"
#include "scheme/fresh.h"
#include "team/odd.h"
#include "team/opponent.h"
#include "team/revisions.h"

#include "harness.h"
#include "tests/team/scratch.h"

static bw_error error;
static bw_known *known;
static bw_odd odd;

/// Noon of 2026-11-29.
static const int64_t now = 1795953600;

/// A file with the starting scheme, numbers 7 and 12, and one game.
static void prepare(void) {
    static bw_scheme scheme;
    bw_team *team = open_fresh("odd.team");
    const bw_player men[] = {{.jersey = 7}, {.jersey = 12}};
    bw_game game = {.date = "2026-04-11", .opponent = "Gullhaven Petrels"};
    bw_scheme_fresh(0, 3, &scheme);
    int64_t revision;
    CHECK_INT(bw_team_save_scheme(team, &scheme, now, "", &revision, NULL, &error), BW_OK);
    CHECK_INT(bw_team_put_player(team, &men[0], &error), BW_OK);
    CHECK_INT(bw_team_put_player(team, &men[1], &error), BW_OK);
    CHECK_INT(bw_team_put_game(team, &game, &error), BW_OK);
    CHECK(game.fresh);
    CHECK_INT(bw_team_put_game(team, &game, &error), BW_OK);
    CHECK(!game.fresh);
    CHECK_INT(bw_known_load(team, now, &known, &error), BW_OK);
    bw_team_close(team);
}

static void the_table_is_whole(void) {
    CHECK(bw_odd_rule_of(BW_ODD_NOTHING) == NULL && bw_odd_rule_of(BW_ODD_COUNT) == NULL);
    for (int k = BW_ODD_NOTHING + 1; k < BW_ODD_COUNT; k++) {
        const bw_odd_rule *rule = bw_odd_rule_of((bw_odd_kind)k);
        CHECK(rule->id && rule->column && rule->sentence && rule->source);
        CHECK(strstr(rule->sentence, "{value}") != NULL);
        CHECK((rule->limit > 0) == (rule->unit[0] != '\0'));
        for (int i = BW_ODD_NOTHING + 1; i < k; i++)
            CHECK(strcmp(rule->id, bw_odd_rule_of((bw_odd_kind)i)->id) != 0);
    }
}

static int split(double distance, double seconds, const char *clock, const char *date) {
    bw_timed_split s = {.jersey = 12, .distance = distance, .seconds = seconds};
    bw_copy(s.clock, sizeof s.clock, clock);
    bw_copy(s.date, sizeof s.date, date);
    CHECK_INT(bw_odd_split(known, &s, &odd), odd.kind != BW_ODD_NOTHING);
    return odd.kind;
}

static void sprints(void) {
    static const char day[] = "2026-03-02";
    CHECK_INT(split(18.288, 0.9, "signal", day), BW_ODD_SPRINT_FAST);
    CHECK_TEXT(odd.message,
               "20.0 yd (18.3 m) in 0.90 s is faster than anybody has run; the fastest "
               "man timed took 2.58 s from his first step");
    CHECK_INT(split(18.288, 3.1, "signal", day), BW_ODD_NOTHING);
    CHECK_INT(split(18.288, 31, "signal", day), BW_ODD_SPRINT_SLOW);
    CHECK_INT(split(1, 0.7, "move", day), BW_ODD_NOTHING);
    CHECK_INT(split(18.288, 3.1, "signal", "2036-03-02"), BW_ODD_SPRINT_AHEAD);
    CHECK_INT(split(18.288, 3.1, "signal", "2026-11-30"), BW_ODD_NOTHING);
    CHECK_INT(split(18.288, 3.1, "signal", "2026-12-01"), BW_ODD_SPRINT_AHEAD);
    // The world's best themselves, by every way of starting the clock (reaction 0.146 s taken off).
    static const double berlin[] = {1.88, 2.88, 3.78, 4.64, 5.47, 6.29, 7.10, 7.92, 8.74, 9.58};
    for (int i = 0; i < 10; i++) {
        CHECK_INT(split(10 * (i + 1), berlin[i], "signal", day), BW_ODD_NOTHING);
        CHECK_INT(split(10 * (i + 1), berlin[i] - 0.146, "move", day), BW_ODD_NOTHING);
        CHECK_INT(split(10 * (i + 1), berlin[i] - 0.146 - 0.4, "gate", day), BW_ODD_NOTHING);
        CHECK_INT(split(10 * (i + 1), berlin[i] - 0.7, "signal", day), BW_ODD_SPRINT_FAST);
    }
    // Anybody from a slow child to a professional.
    for (double vmax = 4.5; vmax < 10.5; vmax += 0.5) {
        for (double yd = 5; yd <= 40; yd += 5) {
            const double d = 0.9144 * yd, t = bw_sprint_time((bw_legs){vmax, 1.2}, d);
            CHECK_INT(split(d, t, "move", day), BW_ODD_NOTHING);
            CHECK_INT(split(d, t + 0.25, "signal", day), BW_ODD_NOTHING);
        }
    }
}

static int against(const char *opponent, const char *date) {
    bw_game g = {.id = 0};
    bw_copy(g.opponent, sizeof g.opponent, opponent);
    bw_copy(g.date, sizeof g.date, date);
    CHECK_INT(bw_odd_game(known, &g, &odd), odd.kind != BW_ODD_NOTHING);
    return odd.kind;
}

static void games(void) {
    CHECK_INT(against("Gullhaven Petrels", "2026-04-11"), BW_ODD_NOTHING);
    CHECK_INT(against("Gullhaven Petrels", "2026-05-11"), BW_ODD_NOTHING);
    CHECK_INT(against("Windle Quay Rovers", "2026-05-11"), BW_ODD_NOTHING);
    CHECK_INT(against("Gulhaven Petrels", "2026-04-11"), BW_ODD_OPPONENT);
    CHECK_TEXT(odd.message, "\"Gulhaven Petrels\" is no opponent so far, but \"Gullhaven Petrels\" "
                            "(game 1, 2026-04-11) is");
    CHECK_INT(against("Windle Quay Rovers", "2027-05-11"), BW_ODD_NOTHING); // next year's schedule
    CHECK_INT(against("Windle Quay Rovers", "2036-05-11"), BW_ODD_GAME_AHEAD);
    static const char *const near[][2] = {
        {"Gullhaven Petrels", "gullhaven  petrels"}, {"Gullhaven Petrels", "Gullhaven"},
        {"Gullhaven Petrels", "Gulhaven"},           {"Gullhaven Petrels", "Petrels"},
        {"Gullhaven Petrels", "Gullhaven Petrles"},  {"St. Brae", "St Brae"}};
    static const char *const apart[][2] = {{"Gullhaven Petrels", "Windle Quay Rovers"},
                                           {"Port Merrow Terns", "Port Merrow Gulls"},
                                           {"A", "B"},
                                           {"East", "West"},
                                           {"", "A"}};
    for (int i = 0; i < 6; i++)
        CHECK(bw_opponents_apart(near[i][0], near[i][1]) >= 0 &&
              bw_opponents_apart(near[i][1], near[i][0]) >= 0);
    for (int i = 0; i < 5; i++)
        CHECK(bw_opponents_apart(apart[i][0], apart[i][1]) < 0 &&
              bw_opponents_apart(apart[i][1], apart[i][0]) < 0);
}

/// An old file may hold a slip of its own, and a later one.
static void the_nearest_opponent_is_named(void) {
    const bw_game slip = {.id = 2, .date = "2026-04-12", .opponent = "Gulhaven Petrels"};
    CHECK_INT(bw_known_add_game(known, &slip), BW_OK);
    CHECK_INT(against("Gullhaven Petrel", "2026-05-02"), BW_ODD_OPPONENT);
    CHECK(strstr(odd.message, "\"Gullhaven Petrels\" (game 1, 2026-04-11)") != NULL);
}

static void spots(void) {
    bw_player p = {.jersey = 12, .spot_count = 2, .spots = {{"TL", false}, {"ZZ", false}}};
    CHECK(bw_odd_player(known, &p, &odd));
    CHECK_INT(odd.kind, BW_ODD_SPOT);
    CHECK(strstr(odd.message, "no scheme in the file has a spot \"ZZ\"") != NULL);
    bw_copy(p.spots[1].spot, sizeof p.spots[1].spot, "G");
    CHECK(!bw_odd_player(known, &p, &odd)); // the goalkeeper
}

static int entry(const bw_entry *e, const bw_game *game) {
    CHECK_INT(bw_odd_entry(known, e, game, &odd), odd.kind != BW_ODD_NOTHING);
    return odd.kind;
}

static void breaks(void) {
    bw_entry e = bw_entry_default();
    CHECK_INT(entry(&e, NULL), BW_ODD_NOTHING);
    e.out_count = 1;
    bw_copy(e.out[0], BW_ID_SIZE, "ZZ");
    CHECK_INT(entry(&e, NULL), BW_ODD_SPOT);
    bw_copy(e.out[0], BW_ID_SIZE, "88");
    CHECK_INT(entry(&e, NULL), BW_ODD_JERSEY);
    CHECK_TEXT(odd.message, "nobody on the roster wears number 88");
    bw_copy(e.out[0], BW_ID_SIZE, "12");
    e.shot_known = true;
    e.shot = bw_v(40 * 0.9144, 9 * 0.9144);
    CHECK_INT(entry(&e, NULL), BW_ODD_SHOT);
    CHECK_TEXT(odd.message,
               "a shot from 40.0 yd right was taken off the field; the sideline is at 30.0 yd");
    e.shot = bw_v(0, -20);
    CHECK_INT(entry(&e, NULL), BW_ODD_SHOT);
    e.shot = bw_v(0, 60);
    CHECK_INT(entry(&e, NULL), BW_ODD_SHOT);
    e.shot = bw_v(-27.5, 30);
    CHECK_INT(entry(&e, NULL), BW_ODD_NOTHING);
    e.stage = 6;
    CHECK_INT(entry(&e, NULL), BW_ODD_STAGE);
    CHECK_TEXT(odd.message, "the stage for 6 defenders was called with 4 in, on a 6v4");
    e.stage = 5; // called as the fifth man comes
    CHECK_INT(entry(&e, NULL), BW_ODD_NOTHING);
    const bw_game tomorrow = {.date = "2026-11-30"}, spring = {.date = "2027-03-01"};
    CHECK_INT(entry(&e, &tomorrow), BW_ODD_NOTHING);
    CHECK_INT(entry(&e, &spring), BW_ODD_BREAK_AHEAD);
}

/// A team without roster or scheme names whom it likes.
static void an_empty_file_knows_nothing(void) {
    bw_known *none;
    bw_team *team = open_fresh("none.team");
    CHECK_INT(bw_known_load(team, 0, &none, &error), BW_OK);
    bw_team_close(team);
    bw_entry e = bw_entry_default();
    e.out_count = 2;
    bw_copy(e.out[0], BW_ID_SIZE, "ZZ");
    bw_copy(e.out[1], BW_ID_SIZE, "88");
    const bw_game later = {.date = "2999-01-01", .opponent = "A"};
    CHECK(!bw_odd_entry(none, &e, &later, &odd));
    CHECK(!bw_odd_game(none, &later, &odd));
    bw_known_drop(none);
}

int main(int argc, char **argv) {
    scratch_begin();
    prepare();
    RUN(the_table_is_whole);
    RUN(sprints);
    RUN(games);
    RUN(the_nearest_opponent_is_named);
    RUN(spots);
    RUN(breaks);
    RUN(an_empty_file_knows_nothing);
    bw_known_drop(known);
    scratch_end();
    return test_report(argc, argv);
}
