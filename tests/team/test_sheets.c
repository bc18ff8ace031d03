/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Sheets in and out of a team file: a round trip changes nothing, a second import adds nothing, and one
/// bad row keeps all others out.
#define _XOPEN_SOURCE 700
#include "team/breaks.h"
#include "team/export.h"
#include "team/games.h"
#include "team/import.h"
#include "team/roster.h"
#include "team/settings.h"
#include "team/splits.h"

#include "harness.h"
#include "tests/team/random_entry.h"
#include "tests/team/scratch.h"

static bw_import done;
static bw_error error;

static bw_import_how how;

static bw_status import(bw_team *team, bw_csv_sheet sheet, const char *text) {
    return bw_team_import(team, sheet, text, strlen(text), how, &done, &error);
}

static char *export_to_text(bw_team *team, bw_csv_sheet sheet, bw_units units) {
    char *bytes = NULL;
    size_t length = 0;
    FILE *out = open_memstream(&bytes, &length);
    CHECK_INT(bw_team_export(team, sheet, units, out, &error), BW_OK);
    fclose(out);
    return bytes;
}

static const char roster[] = "jersey,initials,spots,fixed\r\n"
                             "3,A.B.,TL TR,TL\r\n"
                             "12,,,\r\n"
                             "40,\"'=Q\",M,\r\n";

static void a_roster_goes_round(void) {
    bw_team *team = open_fresh("roster.team");
    CHECK_INT(import(team, BW_SHEET_ROSTER, roster), BW_OK);
    CHECK(done.rows == 3 && done.added == 3 && done.fault_count == 0);
    bw_player p;
    CHECK_INT(bw_team_player(team, 40, &p, &error), BW_OK);
    CHECK_TEXT(p.initials, "=Q");
    CHECK_INT(bw_team_player(team, 3, &p, &error), BW_OK);
    CHECK(p.spot_count == 2 && p.spots[0].fixed && !p.spots[1].fixed);
    char *text = export_to_text(team, BW_SHEET_ROSTER, BW_YARDS);
    CHECK(strstr(text, "40,'=Q,M,\r\n") != NULL);
    CHECK_INT(import(team, BW_SHEET_ROSTER, text), BW_OK);
    char *again = export_to_text(team, BW_SHEET_ROSTER, BW_YARDS);
    CHECK_TEXT(again, text);
    CHECK(strstr(text, "name") == NULL);
    free(text);
    free(again);
    // Columns that are not there change nothing.
    CHECK_INT(import(team, BW_SHEET_ROSTER, "jersey\n3\n"), BW_OK);
    CHECK_INT(import(team, BW_SHEET_ROSTER, "jersey,spots\n3,TR LL TL\n"), BW_OK);
    CHECK_INT(bw_team_player(team, 3, &p, &error), BW_OK);
    CHECK_TEXT(p.initials, "A.B.");
    CHECK(p.spot_count == 3 && p.spots[2].fixed && !p.spots[0].fixed);
    CHECK_INT(import(team, BW_SHEET_ROSTER, "jersey,fixed\n3,LL\n"), BW_OK);
    CHECK_INT(bw_team_player(team, 3, &p, &error), BW_OK);
    CHECK(p.spot_count == 3 && p.spots[1].fixed && !p.spots[2].fixed);
    CHECK_INT(bw_team_allow_names(team, true, &error), BW_OK);
    text = export_to_text(team, BW_SHEET_ROSTER, BW_YARDS);
    CHECK(strncmp(text, "jersey,initials,spots,fixed,name\r\n", 34) == 0);
    free(text);
    bw_team_close(team);
}

static void splits_go_round_in_both_units(void) {
    bw_team *team = open_fresh("rounds.team");
    CHECK_INT(import(team, BW_SHEET_ROSTER, roster), BW_OK);
    CHECK_INT(import(team, BW_SHEET_SPLITS,
                     "jersey,date,distance_yd,distance_m,seconds,clock\n"
                     "3,2026-03-02,20,,3.1,gate\n3,2026-03-02,,20,3.33,gate\n"
                     "12,2026-03-02,,5,1.4,signal\n3,2026-03-02,,18.288,3.1,gate\n"),
              BW_OK);
    CHECK(done.rows == 4 && done.added == 3 && done.known == 1); // 20 yd are 18.288 m
    for (int m = 0; m < 2; m++) {
        char *text = export_to_text(team, BW_SHEET_SPLITS, m ? BW_METRES : BW_YARDS);
        CHECK_INT(import(team, BW_SHEET_SPLITS, text), BW_OK);
        CHECK(done.added == 0 && done.known == 3);
        free(text);
    }
    bw_team_close(team);
}

static void breaks_go_round(void) {
    enum { MANY = 300 };
    static bw_entry sent[MANY];
    bw_team *team = open_fresh("out.team"), *other = open_fresh("in.team");
    unsigned long long seed = 31;
    bw_game game = {.date = "2026-04-11", .opponent = "Gullhaven \"B\", away", .field = "=home"};
    int added, count;
    CHECK_INT(bw_team_put_game(team, &game, &error), BW_OK);
    for (int i = 0; i < MANY; i++) {
        sent[i] = random_entry(&seed, i);
        sent[i].game = i % 3 ? game.id : 0;
    }
    CHECK_INT(bw_team_add_entries(team, sent, MANY, NULL, &added, &error), BW_OK);
    char *text = export_to_text(team, BW_SHEET_BREAKS, BW_METRES);
    CHECK_INT(import(team, BW_SHEET_BREAKS, text), BW_OK);
    CHECK(done.added == 0 && done.known == MANY);
    how.keep_odd = true; // stages at random
    CHECK_INT(import(other, BW_SHEET_BREAKS, text), BW_OK);
    how.keep_odd = false;
    CHECK(done.added == MANY && done.known == 0);
    CHECK(done.note_count == BW_MAX_FAULTS && done.notes_left > 0);
    bw_entry *list;
    CHECK_INT(bw_team_entries(other, NULL, &list, &count, &error), BW_OK);
    CHECK_INT(count, MANY);
    for (int i = 0; i < count; i++) {
        // Four decimals of a metre go out.
        CHECK_NEAR(list[i].shot.x, sent[i].shot.x, 5.1e-5);
        CHECK_NEAR(list[i].shot.y, sent[i].shot.y, 5.1e-5);
        list[i].shot = sent[i].shot;
        CHECK(bw_entry_same(&list[i], &sent[i]));
    }
    free(list);
    bw_game *games;
    CHECK_INT(bw_team_games(other, &games, &count, &error), BW_OK);
    CHECK(count == 1 && strcmp(games[0].opponent, game.opponent) == 0 &&
          strcmp(games[0].field, "=home") == 0);
    free(games);
    char *again = export_to_text(other, BW_SHEET_BREAKS, BW_METRES);
    CHECK_TEXT(again, text);
    free(again);
    free(text);
    bw_team_close(team);
    bw_team_close(other);
}

static void rows_without_ids_are_the_same_breaks_twice(void) {
    static const char sheet[] = "offence,defence,outcome\n6,4,goal\n6,4,goal\n5,4,save\n";
    bw_team *team = open_fresh("ids.team");
    CHECK_INT(import(team, BW_SHEET_BREAKS, sheet), BW_OK);
    CHECK_INT(done.added, 3);
    CHECK_INT(import(team, BW_SHEET_BREAKS, sheet), BW_OK);
    CHECK(done.added == 0 && done.known == 3);
    bw_team_close(team);
}

/// The one fault of a sheet: its place and words of its sentence; and nothing came in.
static void faulty(bw_team *team, bw_csv_sheet sheet, const char *text, int line, int column,
                   const char *words) {
    CHECK_INT(import(team, sheet, text), BW_BAD_INPUT);
    CHECK_TEXT(error.message, "nothing was imported");
    CHECK_INT(done.fault_count, 1);
    CHECK_INT(done.faults[0].line, line);
    CHECK_INT(done.faults[0].column, column);
    CHECK(strstr(done.faults[0].message, words) != NULL);
    if (!strstr(done.faults[0].message, words))
        fprintf(stderr, "said \"%s\"\n", done.faults[0].message);
}

static void what_changes_is_told(void) {
    bw_team *team = open_fresh("changes.team");
    CHECK_INT(import(team, BW_SHEET_ROSTER, roster), BW_OK);
    CHECK(done.added == 3 && done.changed == 0 && done.known == 0);
    CHECK_INT(
        import(team, BW_SHEET_ROSTER, "jersey,initials,spots,fixed\n3,A.C.,TL M,\n12,,,\n8,,,\n"),
        BW_OK);
    CHECK(done.added == 1 && done.changed == 1 && done.known == 1);
    CHECK_INT(done.note_count, 1);
    CHECK_INT(done.notes[0].line, 2);
    CHECK_TEXT(done.notes[0].message,
               "number 3 changes: initials from A.B. to A.C., spots from TL (fixed) TR to TL M");
    CHECK_INT(import(team, BW_SHEET_BREAKS, "id,offence,defence,outcome\nx,6,4,goal\n"), BW_OK);
    CHECK_INT(import(team, BW_SHEET_BREAKS, "id,offence,defence,outcome\nx,6,4,save\n"), BW_OK);
    CHECK(done.known == 1 && done.note_count == 1);
    CHECK(strstr(done.notes[0].message, "break 1 is in the log and says something else") != NULL);
    CHECK_INT(import(team, BW_SHEET_BREAKS, "id,offence,defence,outcome\nx,6,4,goal\n"), BW_OK);
    CHECK(done.known == 1 && done.note_count == 0);
    bw_team_close(team);
}

/// What European spreadsheets write: semicolons, and commas in numbers. Tabs too.
static void semicolons_and_tabs_are_read(void) {
    bw_team *team = open_fresh("semicolons.team");
    CHECK_INT(import(team, BW_SHEET_ROSTER, "jersey;initials;spots\r\n3;\"A;B\";TL,TR\r\n12;;\r\n"),
              BW_OK);
    bw_player p;
    CHECK_INT(bw_team_player(team, 3, &p, &error), BW_OK);
    CHECK_TEXT(p.initials, "A;B");
    CHECK_INT(p.spot_count, 2);
    CHECK_INT(
        import(
            team, BW_SHEET_SPLITS,
            "\xef\xbb\xbfjersey;date;distance_m;seconds;clock;\n3;2026-03-02;18,288;3,15;gate;\n"),
        BW_OK);
    CHECK_INT(import(team, BW_SHEET_SPLITS,
                     "jersey\tdate\tdistance_m\tseconds\tclock\n3\t2026-03-02\t18.288\t3.15\tgate\n"
                     "12\t2026-03-02\t18.288\t3.15\tgate\n"),
              BW_OK);
    CHECK(done.added == 1 && done.known == 1);
    char *text = export_to_text(team, BW_SHEET_ROSTER, BW_YARDS);
    CHECK(strstr(text, "3,\"A;B\",TL TR,") != NULL);
    CHECK_INT(import(team, BW_SHEET_ROSTER, text), BW_OK);
    CHECK_INT(done.known, 2);
    free(text);
    faulty(team, BW_SHEET_SPLITS,
           "jersey,date,distance_m,seconds,clock\n3,2026-03-02,20,\"3,1\",gate\n", 2, 17,
           "a number such as 3.1, not \"3,1\"");
    faulty(team, BW_SHEET_SPLITS,
           "jersey;date;distance_m;seconds;clock\n3;2026-03-02;20;3,1,4;gate\n", 2, 17,
           "a number such as 3,1, not");
    bw_team_close(team);
}

/// Nothing that stands in a sheet is lost without a word.
static void nothing_is_lost_in_silence(void) {
    bw_team *team = open_fresh("lost.team");
    faulty(team, BW_SHEET_ROSTER, "jersey,initials\n3,AB,TL\n", 2, 6, "\"TL\" stands in no column");
    faulty(team, BW_SHEET_ROSTER, "jersey,initials,,\n3,AB,TL\n", 2, 6, "names 2");
    CHECK_INT(import(team, BW_SHEET_ROSTER, "jersey,initials\n3,AB,,\n"), BW_OK);
    faulty(team, BW_SHEET_BREAKS, "offence,defence,outcome,seconds\n6,4,goal,-3\n", 2, 10,
           "a break lasts from 0 to 120 seconds, not \"-3\"");
    faulty(team, BW_SHEET_BREAKS, "offence,defence,outcome,seconds\n6,4,goal,121\n", 2, 10,
           "from 0 to 120 seconds");
    bw_team_close(team);
}

static void hidden_characters_are_refused(void) {
    bw_team *team = open_fresh("hidden.team");
    faulty(team, BW_SHEET_ROSTER,
           "jersey,initials\n3,A\xe2\x80\xae"
           "B\n",
           2, 1, "no invisible characters");
    faulty(team, BW_SHEET_BREAKS,
           "offence,defence,outcome,date,opponent\n6,4,goal,2026-04-11,G\xe2\x80\x8bulls\n", 2, 21,
           "no invisible characters");
    CHECK_INT(bw_team_set(team, "team",
                          "T\xe2\x81\xa6"
                          "erns",
                          &error),
              BW_BAD_INPUT);
    bw_team_close(team);
}

/// Odd rows are refused at their cell, or kept and noted; what is in the file is not asked about again.
static void odd_rows_are_refused_or_noted(void) {
    static const char sprints[] =
        "jersey,date,distance_yd,seconds,clock\n3,2026-03-02,20,0.9,signal\n";
    static const char ahead[] =
        "jersey,date,distance_yd,seconds,clock\n3,2036-03-02,20,3.1,signal\n";
    static const char stage[] = "offence,defence,outcome,stage\n6,4,goal,6\n";
    static const char near[] =
        "offence,defence,outcome,date,opponent\n6,4,goal,2026-04-11,Gullhaven Petrels\n"
        "6,4,goal,2026-04-12,Gulhaven Petrels\n";
    bw_team *team = open_fresh("odd-rows.team");
    CHECK_INT(import(team, BW_SHEET_ROSTER, roster), BW_OK);
    how.now = 1795000000; // November 2026
    faulty(team, BW_SHEET_SPLITS, sprints, 2, 17, "faster than anybody has run");
    faulty(team, BW_SHEET_SPLITS, ahead, 2, 3, "has not been run yet");
    faulty(team, BW_SHEET_BREAKS, stage, 2, 10, "the stage for 6 defenders was called with 4 in");
    faulty(team, BW_SHEET_BREAKS, near, 3, 21, "--keep-odd");
    how.keep_odd = true;
    CHECK_INT(import(team, BW_SHEET_SPLITS, sprints), BW_OK);
    CHECK(done.added == 1 && done.note_count == 1);
    CHECK_INT(import(team, BW_SHEET_BREAKS, near), BW_OK);
    CHECK(done.added == 2 && done.note_count == 1);
    how.keep_odd = false;
    CHECK_INT(import(team, BW_SHEET_SPLITS, sprints), BW_OK);
    CHECK_INT(import(team, BW_SHEET_BREAKS, near), BW_OK);
    CHECK(done.known == 2 && done.note_count == 0);
    how.now = 1000; // a clock that was never set knows of no day ahead
    CHECK_INT(import(team, BW_SHEET_SPLITS, ahead), BW_OK);
    how.now = 0;
    bw_team_close(team);
}

static void faults_are_told_one_by_one(void) {
    bw_team *team = open_fresh("faults.team");
    faulty(team, BW_SHEET_ROSTER, "jersey,spot\n1,TL\n", 1, 8, "there is no column \"spot\"");
    faulty(team, BW_SHEET_ROSTER, "initials\nAB\n", 1, 1, "the column \"jersey\" is missing");
    faulty(team, BW_SHEET_ROSTER, "jersey,jersey\n1,1\n", 1, 8, "there twice");
    faulty(team, BW_SHEET_ROSTER, "jersey\n1\n1000\n", 3, 1, "whole number from 0 to 999");
    faulty(team, BW_SHEET_ROSTER, "jersey\n1\n2\n1\n", 4, 1, "1 is there twice");
    faulty(team, BW_SHEET_ROSTER, "jersey,initials\n,AB\n", 2, 1, "is empty");
    faulty(team, BW_SHEET_ROSTER, "jersey,spots\n7,TLLL\n", 2, 3, "codes of 1 to 3");
    faulty(team, BW_SHEET_ROSTER, "jersey,name\n7,Ann Other\n", 2, 3, "full names are not kept");
    faulty(team, BW_SHEET_ROSTER, "jersey,initials\n7,\"a\n", 3, 1, "not closed");
    faulty(team, BW_SHEET_SPLITS, "jersey,date,distance_m,seconds,clock\n7,2026-03-02,20,3,gate\n",
           2, 1, "nobody on the roster wears number 7");
    bw_player seven = {.jersey = 7};
    CHECK_INT(bw_team_put_player(team, &seven, &error), BW_OK);
    faulty(team, BW_SHEET_SPLITS, "jersey,date,distance_m,seconds,clock\n7,3/2/26,20,3,gate\n", 2,
           3, "written like 2026-03-02");
    faulty(team, BW_SHEET_SPLITS, "jersey,date,distance_m,seconds,clock\n7,2026-03-02,20,3,go\n", 2,
           19, "move, signal or gate");
    faulty(team, BW_SHEET_SPLITS, "jersey,date,seconds,clock\n7,2026-03-02,3,gate\n", 2, 1,
           "a distance is missing");
    faulty(team, BW_SHEET_BREAKS, "offence,defence,outcome\n6,4,goall\n", 2, 5, "not \"goall\"");
    faulty(team, BW_SHEET_BREAKS, "offence,defence,outcome,passes\n6,4,goal,4.5\n", 2, 10,
           "whole number from 0 to 50");
    faulty(team, BW_SHEET_BREAKS, "offence,defence,outcome,shot_x_m\n6,4,goal,4\n", 2, 10,
           "both x and y");
    faulty(team, BW_SHEET_BREAKS, "offence,defence,outcome,date\n6,4,goal,2026-04-11\n", 2, 1,
           "opponent");
    faulty(team, BW_SHEET_BREAKS, "offence,defence,outcome,revision\n6,4,goal,3\n", 2, 10,
           "no such scheme revision");
    faulty(team, BW_SHEET_BREAKS, "offence,defence,outcome\n4,5,goal\n", 2, 5, "the defenders are");
    CHECK_INT(import(team, BW_SHEET_BREAKS, ""), BW_BAD_INPUT);
    CHECK(strstr(error.message, "the file is empty") != NULL);
    bw_entry *list;
    int count;
    CHECK_INT(bw_team_entries(team, NULL, &list, &count, &error), BW_OK);
    CHECK_INT(count, 0);
    free(list);
    bw_team_close(team);
}

static void one_bad_row_keeps_all_out(void) {
    bw_team *team = open_fresh("all.team");
    char *text = malloc(100000);
    char *at = text + sprintf(text, "offence,defence,outcome,opponent,date\n");
    for (int i = 0; i < 60; i++)
        at += sprintf(at, "6,4,%s,Gullhaven,2026-04-11\n", i % 2 ? "goal" : "gaol");
    CHECK_INT(import(team, BW_SHEET_BREAKS, text), BW_BAD_INPUT);
    CHECK_INT(done.fault_count, BW_MAX_FAULTS);
    CHECK_INT(done.faults[3].line, 8);
    bw_entry *list;
    bw_game *games;
    int count;
    CHECK_INT(bw_team_entries(team, NULL, &list, &count, &error), BW_OK);
    CHECK_INT(count, 0);
    free(list);
    CHECK_INT(bw_team_games(team, &games, &count, &error), BW_OK);
    CHECK_INT(count, 0);
    free(games);
    free(text);
    bw_team_close(team);
}

/// A season of ten thousand breaks and a club of two hundred players is no trouble.
static void much_is_kept(void) {
    enum { MANY = 10000 };
    bw_team *team = open_fresh("much.team");
    bw_entry *sent = malloc(MANY * sizeof *sent), *list;
    unsigned long long seed = 2;
    int added, count;
    CHECK_INT(bw_team_begin(team, &error), BW_OK);
    for (int j = 0; j < 200; j++) {
        bw_player p = {.jersey = j};
        CHECK_INT(bw_team_put_player(team, &p, &error), BW_OK);
    }
    CHECK_INT(bw_team_end(team, BW_OK, &error), BW_OK);
    for (int i = 0; i < MANY; i++)
        sent[i] = random_entry(&seed, i);
    CHECK_INT(bw_team_add_entries(team, sent, MANY, NULL, &added, &error), BW_OK);
    CHECK_INT(added, MANY);
    char *text = export_to_text(team, BW_SHEET_BREAKS, BW_YARDS);
    CHECK_INT(import(team, BW_SHEET_BREAKS, text), BW_OK);
    CHECK_INT(done.known, MANY);
    CHECK_INT(bw_team_entries(team, NULL, &list, &count, &error), BW_OK);
    CHECK_INT(count, MANY);
    CHECK_INT(bw_team_verify(team, &error), BW_OK);
    free(list);
    free(sent);
    free(text);
    bw_team_close(team);
}

int main(int argc, char **argv) {
    scratch_begin();
    RUN(a_roster_goes_round);
    RUN(splits_go_round_in_both_units);
    RUN(breaks_go_round);
    RUN(rows_without_ids_are_the_same_breaks_twice);
    RUN(what_changes_is_told);
    RUN(semicolons_and_tabs_are_read);
    RUN(nothing_is_lost_in_silence);
    RUN(hidden_characters_are_refused);
    RUN(odd_rows_are_refused_or_noted);
    RUN(faults_are_told_one_by_one);
    RUN(one_bad_row_keeps_all_out);
    RUN(much_is_kept);
    scratch_end();
    return test_report(argc, argv);
}
