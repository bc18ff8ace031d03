/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What is put into a team file comes out again the same; what is sent twice is there once; what cannot be
/// true is refused and nothing of its company is kept.
#define _XOPEN_SOURCE 700
#include "file/document.h"
#include "scheme/fresh.h"
#include "scheme_text.h"
#include "team/breaks.h"
#include "team/games.h"
#include "team/quiz.h"
#include "team/revisions.h"
#include "team/roster.h"
#include "team/settings.h"
#include "team/splits.h"

#include "harness.h"
#include "tests/team/random_entry.h"
#include "tests/team/scratch.h"

static const char hostile[] = "Robert'); DROP TABLE entry;-- \"x\" %s ?1 $a :b [c] `d` \\ =1+1";

static void dates_and_times(void) {
    CHECK(bw_date_good("2024-02-29") && bw_date_good("1970-01-01") && bw_date_good("9999-12-31"));
    CHECK(!bw_date_good("2023-02-29") && !bw_date_good("2100-02-29") && bw_date_good("2000-02-29"));
    CHECK(!bw_date_good("") && !bw_date_good("2024-1-01") && !bw_date_good("2024-13-01") &&
          !bw_date_good("2024-00-10") && !bw_date_good("2024-01-00") &&
          !bw_date_good("2024-01-01 ") && !bw_date_good("1969-12-31"));
    unsigned long long seed = 3;
    for (int i = 0; i < 20000; i++) {
        char text[32];
        bw_text out = bw_text_in(text, sizeof text);
        const int64_t when = (int64_t)(test_random(&seed) % 253402300800ull);
        bw_put_time(&out, when);
        int64_t read = -1;
        CHECK(bw_time_read(text, &read) && read == when);
        text[10] = '\0';
        CHECK(bw_date_good(text));
    }
    int64_t when;
    CHECK(bw_time_read("2026-04-11T18:05Z", &when) && when == 1775930700);
    CHECK(!bw_time_read("2026-04-11", &when) && !bw_time_read("2026-04-11T24:00Z", &when) &&
          !bw_time_read("2026-04-11T18:05", &when) && !bw_time_read("2026-04-11T18:05:60Z", &when));
}

static void today_is_the_day_the_build_is_of(void) {
    static const struct {
        const char *second, *day;
    } fixed[] = {{"0", "1970-01-01"},
                 {"1776470400", "2026-04-18"},
                 {"1776556799", "2026-04-18"},
                 {"253402300799", "9999-12-31"},
                 {"253402300800", ""}};
    char day[BW_DATE_SIZE];
    setenv("TZ", "Pacific/Auckland", 1); // where it is the next day already
    for (int i = 0; i < BW_COUNT(fixed); i++) {
        setenv("SOURCE_DATE_EPOCH", fixed[i].second, 1);
        bw_today(day);
        CHECK_TEXT(day, fixed[i].day);
    }
    setenv("SOURCE_DATE_EPOCH", "yesterday", 1);
    bw_today(day);
    CHECK(bw_date_days(day) >= bw_date_days("2026-01-01"));
    unsetenv("SOURCE_DATE_EPOCH");
    bw_today(day);
    CHECK(bw_date_good(day));
    unsetenv("TZ");
}

static void players_come_back(void) {
    bw_error error;
    bw_team *team = open_fresh("players.team");
    bw_player p = {.jersey = 12, .initials = "A.B.", .spot_count = 2};
    bw_copy(p.spots[0].spot, 4, "TL");
    bw_copy(p.spots[1].spot, 4, "M");
    p.spots[1].fixed = true;
    CHECK_INT(bw_team_put_player(team, &p, &error), BW_OK);
    bw_player q;
    CHECK_INT(bw_team_player(team, 12, &q, &error), BW_OK);
    CHECK_TEXT(q.initials, "A.B.");
    CHECK_INT(q.spot_count, 2);
    CHECK_TEXT(q.spots[0].spot, "TL");
    CHECK(!q.spots[0].fixed && q.spots[1].fixed);
    CHECK_INT(bw_team_player(team, 13, &q, &error), BW_NOT_FOUND);
    CHECK_INT(bw_team_player(team, -1, &q, &error), BW_NOT_FOUND);

    bw_copy(p.name, sizeof p.name, hostile);
    CHECK_INT(bw_team_put_player(team, &p, &error), BW_BAD_INPUT);
    CHECK(strstr(error.message, "full names") != NULL);
    CHECK_INT(bw_team_allow_names(team, true, &error), BW_OK);
    CHECK_INT(bw_team_put_player(team, &p, &error), BW_OK);
    CHECK_INT(bw_team_player(team, 12, &q, &error), BW_OK);
    CHECK_TEXT(q.name, hostile);
    CHECK_INT(bw_team_allow_names(team, false, &error), BW_OK);
    CHECK_INT(bw_team_player(team, 12, &q, &error), BW_OK);
    CHECK_TEXT(q.name, "");
    CHECK_TEXT(q.initials, "A.B.");

    p.name[0] = '\0';
    bw_copy(p.initials, sizeof p.initials, "\xc3\x89.\xc3\x89.-\xc3\x89. \xc3\x89.");
    CHECK_INT(bw_team_put_player(team, &p, &error), BW_OK);
    bw_copy(p.initials, sizeof p.initials, "Quill");
    CHECK_INT(bw_team_put_player(team, &p, &error), BW_BAD_INPUT);
    bw_copy(p.initials, sizeof p.initials, "A.B.");
    CHECK_INT(bw_team_put_player(team, &p, &error), BW_OK);
    p.jersey = 1000;
    CHECK_INT(bw_team_put_player(team, &p, &error), BW_BAD_INPUT);
    p.jersey = 3;
    bw_copy(p.spots[1].spot, 4, "TL");
    CHECK_INT(bw_team_put_player(team, &p, &error), BW_BAD_INPUT);
    bw_copy(p.spots[1].spot, 4, "12");
    CHECK_INT(bw_team_put_player(team, &p, &error), BW_BAD_INPUT);
    p.spot_count = 0;
    CHECK_INT(bw_team_put_player(team, &p, &error), BW_OK);
    bw_player *list;
    int count;
    CHECK_INT(bw_team_players(team, &list, &count, &error), BW_OK);
    CHECK_INT(count, 2);
    CHECK(count == 2 && list[0].jersey == 3 && list[1].jersey == 12 && list[1].spot_count == 2);
    free(list);
    bw_team_close(team);
}

static void splits_and_quizzes_are_kept_once(void) {
    bw_error error;
    bw_team *team = open_fresh("splits.team");
    bw_player p = {.jersey = 7};
    CHECK_INT(bw_team_put_player(team, &p, &error), BW_OK);
    bw_timed_split two[2] = {{7, "2026-03-02", 18.288, 3.1, "gate"},
                             {7, "2026-03-02", 9.144, 1.9, "gate"}};
    int added = -1, count;
    CHECK_INT(bw_team_add_splits(team, two, 2, &added, &error), BW_OK);
    CHECK_INT(added, 2);
    CHECK_INT(bw_team_add_splits(team, two, 2, &added, &error), BW_OK);
    CHECK_INT(added, 0);
    two[0].seconds = 4;
    two[1].jersey = 8;
    CHECK_INT(bw_team_add_splits(team, two, 2, &added, &error), BW_NOT_FOUND);
    bw_timed_split *list;
    CHECK_INT(bw_team_splits(team, 7, &list, &count, &error), BW_OK);
    CHECK_INT(count, 2);
    CHECK_SAME(count == 2 ? list[0].distance : 0, 9.144);
    free(list);
    two[0].distance = NAN;
    CHECK_INT(bw_team_add_splits(team, two, 1, NULL, &error), BW_BAD_INPUT);

    bw_quiz_result r = {.jersey = 7, .time = 5, .code = "K7QX-22"};
    bool fresh;
    CHECK_INT(bw_team_add_quiz(team, &r, &fresh, &error), BW_OK);
    CHECK(fresh);
    CHECK_INT(bw_team_add_quiz(team, &r, &fresh, &error), BW_OK);
    CHECK(!fresh);
    r.jersey = 9;
    CHECK_INT(bw_team_add_quiz(team, &r, &fresh, &error), BW_NOT_FOUND);
    bw_quiz_result *results;
    CHECK_INT(bw_team_quizzes(team, -1, &results, &count, &error), BW_OK);
    CHECK(count == 1 && strcmp(results[0].code, "K7QX-22") == 0 && results[0].time == 5);
    free(results);
    bw_team_close(team);
}

static void games_and_settings(void) {
    bw_error error;
    bw_team *team = open_fresh("games.team");
    bw_game g = {.date = "2026-04-11"}, h;
    CHECK_INT(bw_team_put_game(team, &g, &error), BW_BAD_INPUT);
    bw_copy(g.opponent, sizeof g.opponent, "Gullhaven Petrels");
    CHECK_INT(bw_team_put_game(team, &g, &error), BW_OK);
    h = g;
    bw_copy(h.field, sizeof h.field, "home");
    CHECK_INT(bw_team_put_game(team, &h, &error), BW_OK);
    CHECK_INT(h.id, g.id);
    CHECK_INT(bw_team_put_game(team, &g, &error), BW_OK); // an empty field does not unsay it
    CHECK_INT(bw_team_game(team, g.id, &h, &error), BW_OK);
    CHECK_TEXT(h.field, "home");
    bw_game next = {.date = "2026-04-12", .opponent = "Gullhaven Petrels"};
    CHECK_INT(bw_team_put_game(team, &next, &error), BW_OK);
    CHECK_INT(next.id, g.id + 1); // finding one uses up no number
    CHECK_INT(bw_team_game(team, 99, &h, &error), BW_NOT_FOUND);
    CHECK_INT(bw_team_game(team, 0, &h, &error), BW_NOT_FOUND);

    char value[BW_SETTING_SIZE];
    CHECK_INT(bw_team_set(team, BW_SETTING_TEAM, "Port Merrow Terns", &error), BW_OK);
    CHECK_INT(bw_team_setting(team, BW_SETTING_TEAM, value, sizeof value, &error), BW_OK);
    CHECK_TEXT(value, "Port Merrow Terns");
    CHECK_INT(bw_team_set(team, BW_SETTING_TEAM, "", &error), BW_OK);
    CHECK_INT(bw_team_setting(team, BW_SETTING_TEAM, value, sizeof value, &error), BW_OK);
    CHECK_TEXT(value, "");
    CHECK_INT(bw_team_set(team, "Team!", "x", &error), BW_BAD_INPUT);
    CHECK_INT(bw_team_set(team, "team", "a\nb", &error), BW_BAD_INPUT);
    bw_team_close(team);
}

static void entries_come_back(void) {
    enum { MANY = 500 };
    static bw_entry sent[MANY];
    static bool fresh[MANY];
    bw_error error;
    bw_team *team = open_fresh("entries.team");
    unsigned long long seed = 11;
    int added, count;
    for (int i = 0; i < MANY; i++)
        sent[i] = random_entry(&seed, i);
    bw_copy(sent[0].note, sizeof sent[0].note, hostile);
    CHECK_INT(bw_team_add_entries(team, sent, MANY, fresh, &added, &error), BW_OK);
    CHECK_INT(added, MANY);
    bw_entry *list;
    CHECK_INT(bw_team_entries(team, NULL, &list, &count, &error), BW_OK);
    CHECK_INT(count, MANY);
    for (int i = 0; i < count; i++) {
        CHECK(fresh[i] && list[i].order == sent[i].order && list[i].order == i + 1);
        CHECK(bw_entry_same(&list[i], &sent[i]));
    }
    free(list);
    // Sent again, with one more among them.
    const bw_entry more = random_entry(&seed, MANY);
    sent[7] = more;
    CHECK_INT(bw_team_add_entries(team, sent, MANY, fresh, &added, &error), BW_OK);
    CHECK_INT(added, 1);
    CHECK(fresh[7] && !fresh[6] && sent[6].order == 7 && sent[7].order == MANY + 1);
    bw_team_close(team);
}

static void bad_company_keeps_nothing(void) {
    bw_error error;
    bw_team *team = open_fresh("company.team");
    unsigned long long seed = 5;
    bw_entry three[3];
    int added, count;
    for (int i = 0; i < 3; i++)
        three[i] = random_entry(&seed, i);
    three[2].passes = 99;
    CHECK_INT(bw_team_add_entries(team, three, 3, NULL, &added, &error), BW_BAD_INPUT);
    CHECK_TEXT(error.message, "a break has from 0 to 50 passes");
    three[2].passes = 9;
    three[2].game = 77;
    CHECK_INT(bw_team_add_entries(team, three, 3, NULL, &added, &error), BW_NOT_FOUND);
    bw_entry *list;
    CHECK_INT(bw_team_entries(team, NULL, &list, &count, &error), BW_OK);
    CHECK_INT(count, 0);
    free(list);
    bw_team_close(team);
}

static void entries_are_changed_and_removed(void) {
    bw_error error;
    bw_team *team = open_fresh("change.team");
    unsigned long long seed = 8;
    bw_entry two[2] = {random_entry(&seed, 0), random_entry(&seed, 1)}, e;
    int added;
    bool fresh[2];
    CHECK_INT(bw_team_entry(team, 0, &e, &error), BW_NOT_FOUND);
    CHECK_INT(bw_team_add_entries(team, two, 2, NULL, &added, &error), BW_OK);
    CHECK_INT(bw_team_entry(team, 0, &e, &error), BW_OK);
    CHECK_INT(e.order, 2);
    bw_entry changed = random_entry(&seed, 1);
    changed.order = 2;
    CHECK_INT(bw_team_change_entry(team, &changed, &error), BW_OK);
    CHECK_INT(bw_team_entry(team, 2, &e, &error), BW_OK);
    CHECK(bw_entry_same(&e, &changed) && !bw_entry_same(&e, &two[1]));
    changed.order = 3;
    CHECK_INT(bw_team_change_entry(team, &changed, &error), BW_NOT_FOUND);
    changed.order = 1;
    changed.revision = 4;
    CHECK_INT(bw_team_change_entry(team, &changed, &error), BW_NOT_FOUND);

    CHECK_INT(bw_team_remove_entry(team, 2, &error), BW_OK);
    CHECK_INT(bw_team_remove_entry(team, 2, &error), BW_NOT_FOUND);
    CHECK_INT(bw_team_entry(team, 0, &e, &error), BW_OK);
    CHECK_INT(e.order, 1);
    CHECK_INT(bw_team_add_entries(team, two, 2, fresh, &added, &error), BW_OK);
    CHECK(added == 0 && !fresh[0] && !fresh[1] && two[1].order == 0); // it stays removed
    bw_entry third = random_entry(&seed, 2);
    CHECK_INT(bw_team_add_entries(team, &third, 1, NULL, &added, &error), BW_OK);
    CHECK_INT(third.order, 3); // no number is given twice
    bw_team_close(team);
}

static void a_clock_going_backwards_harms_nothing(void) {
    bw_error error;
    bw_team *team = open_fresh("clock.team");
    unsigned long long seed = 21;
    int added, count;
    for (int i = 0; i < 20; i++) {
        bw_entry e = random_entry(&seed, i);
        e.time = 1000 - i * 40;
        CHECK_INT(bw_team_add_entries(team, &e, 1, NULL, &added, &error), BW_OK);
        CHECK_INT(e.order, i + 1);
    }
    bw_entry *list;
    CHECK_INT(bw_team_entries(team, NULL, &list, &count, &error), BW_OK);
    for (int i = 1; i < count; i++)
        CHECK(list[i].order > list[i - 1].order && list[i].time < list[i - 1].time);
    free(list);
    bw_team_close(team);
}

static void schemes_keep_every_revision(void) {
    static bw_scheme scheme, back;
    static char first[BW_DOCUMENT_BYTES];
    bw_error error;
    bw_team *team = open_fresh("schemes.team");
    int64_t one, two, again;
    bool fresh;
    CHECK_INT(bw_team_scheme(team, 0, &back, NULL, &error), BW_NOT_FOUND);
    bw_scheme_fresh(0, 3, &scheme);
    CHECK_INT(bw_team_save_scheme(team, &scheme, 50, "as it was", &one, &fresh, &error), BW_OK);
    CHECK(fresh);
    strcpy(first, text_of_scheme(&scheme));
    CHECK_INT(bw_team_save_scheme(team, &scheme, 60, "", &again, &fresh, &error), BW_OK);
    CHECK(!fresh && again == one);
    scheme.stages[0].rule.shift = 0.5;
    CHECK_INT(bw_team_save_scheme(team, &scheme, 40, hostile, &two, &fresh, &error), BW_OK);
    CHECK(fresh && two > one);
    bw_revision about;
    CHECK_INT(bw_team_scheme(team, one, &back, &about, &error), BW_OK);
    CHECK_TEXT(text_of_scheme(&back), first);
    CHECK_TEXT(about.note, "as it was");
    CHECK_INT(about.time, 50);
    CHECK_INT(bw_team_scheme(team, 0, &back, &about, &error), BW_OK);
    CHECK_INT(about.id, two);
    CHECK_TEXT(about.note, hostile);
    CHECK_SAME(back.stages[0].rule.shift, 0.5);
    CHECK_INT(bw_team_scheme(team, 9, &back, NULL, &error), BW_NOT_FOUND);
    bw_revision *list;
    int count;
    CHECK_INT(bw_team_revisions(team, &list, &count, &error), BW_OK);
    CHECK(count == 2 && list[0].id == one && strcmp(list[0].scheme, scheme.name) == 0);
    free(list);
    bw_team_close(team);
}

int main(int argc, char **argv) {
    scratch_begin();
    RUN(dates_and_times);
    RUN(today_is_the_day_the_build_is_of);
    RUN(players_come_back);
    RUN(splits_and_quizzes_are_kept_once);
    RUN(games_and_settings);
    RUN(entries_come_back);
    RUN(bad_company_keeps_nothing);
    RUN(entries_are_changed_and_removed);
    RUN(a_clock_going_backwards_harms_nothing);
    RUN(schemes_keep_every_revision);
    scratch_end();
    return test_report(argc, argv);
}
