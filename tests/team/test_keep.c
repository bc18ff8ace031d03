/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Backup, restore, and forgetting: a copy is whole and never over another file unasked, and of a forgotten
/// player not a byte is left.
#define _XOPEN_SOURCE 700
#include "team/backup.h"
#include "team/breaks.h"
#include "team/forget.h"
#include "team/games.h"
#include "team/quiz.h"
#include "team/roster.h"
#include "team/scrub.h"
#include "team/settings.h"
#include "team/splits.h"
#include "team/sql.h"

#include "harness.h"
#include "tests/team/random_entry.h"
#include "tests/team/scratch.h"

static int entry_count(const char *path) {
    bw_error error;
    bw_team *team;
    bw_entry *list;
    int count = -1;
    if (bw_team_open(path, BW_TEAM_READ, &team, &error) != BW_OK) return -1;
    if (bw_team_verify(team, &error) != BW_OK) return -1;
    CHECK_INT(bw_team_entries(team, NULL, &list, &count, &error), BW_OK);
    free(list);
    bw_team_close(team);
    return count;
}

static void add_some(bw_team *team, int from, int to) {
    unsigned long long seed = 77;
    bw_error error;
    int added;
    for (int i = from; i < to; i++) {
        bw_entry e = random_entry(&seed, i);
        CHECK_INT(bw_team_add_entries(team, &e, 1, NULL, &added, &error), BW_OK);
    }
}

static void copies_are_whole(void) {
    bw_error error;
    bw_team *team = open_fresh("origin.team");
    const char *copy = scratch_path("copy.team"), *origin = scratch_path("origin.team");
    add_some(team, 0, 40);
    CHECK_INT(bw_team_backup(team, copy, false, &error), BW_OK); // while it is open for writing
    add_some(team, 40, 60);
    CHECK_INT(entry_count(copy), 40);
    CHECK_INT(entry_count(origin), 60);
    CHECK_INT(bw_team_backup(team, copy, false, &error), BW_FILE);
    CHECK(strstr(error.message, "there already") != NULL);
    CHECK_INT(bw_team_backup(team, origin, true, &error), BW_FILE);
    CHECK_TEXT(error.message, "both are the same file");
    CHECK_INT(entry_count(copy), 40);
    CHECK_INT(bw_team_backup(team, copy, true, &error), BW_OK);
    CHECK_INT(entry_count(copy), 60);
    CHECK_INT(bw_team_backup(team, scratch_path("no/such/copy"), true, &error), BW_FILE);
    bw_team_close(team);
    CHECK_INT(scratch_count(), 2);
}

static void restoring_asks_first(void) {
    bw_error error;
    bw_team *team = open_fresh("today.team"), *other;
    const char *today = scratch_path("today.team"), *copy = scratch_path("yesterday.team");
    add_some(team, 0, 10);
    CHECK_INT(bw_team_backup(team, copy, false, &error), BW_OK);
    add_some(team, 10, 30);
    CHECK_INT(bw_team_restore(copy, today, false, &error), BW_FILE);
    CHECK_INT(entry_count(today), 30);
    CHECK_INT(bw_team_restore(copy, today, true, &error), BW_OK);
    CHECK_INT(entry_count(today), 10);
    // A program that had it open sees the change, and writes on.
    CHECK_INT(bw_team_open(today, BW_TEAM_READ, &other, &error), BW_OK);
    add_some(team, 10, 12);
    bw_team_close(team);
    bw_team_close(other);
    CHECK_INT(entry_count(today), 12);
    const char *elsewhere = scratch_path("elsewhere.team");
    CHECK_INT(bw_team_restore(copy, elsewhere, false, &error), BW_OK);
    CHECK_INT(entry_count(elsewhere), 10);

    // Over a file too damaged to open, and never from one.
    FILE *out = fopen(elsewhere, "r+b");
    CHECK(out && fwrite("damage damage", 1, 13, out) == 13 && fclose(out) == 0);
    CHECK_INT(bw_team_restore(elsewhere, today, true, &error), BW_BAD_INPUT);
    CHECK(strstr(error.message, "the backup: ") == error.message);
    CHECK_INT(entry_count(today), 12);
    CHECK_INT(bw_team_restore(copy, elsewhere, true, &error), BW_OK);
    CHECK_INT(entry_count(elsewhere), 10);
}

/// Whether the bytes stand anywhere in the folder.
static bool anywhere(const char *bytes) {
    DIR *listing = opendir(scratch_folder);
    bool found = false;
    for (const struct dirent *entry; listing && (entry = readdir(listing));) {
        static char text[4 << 20];
        FILE *in = entry->d_name[0] == '.' ? NULL : fopen(scratch_path(entry->d_name), "rb");
        if (!in) continue;
        const size_t length = fread(text, 1, sizeof text, in), wanted = strlen(bytes);
        fclose(in);
        for (size_t i = 0; i + wanted <= length && !found; i++)
            found = memcmp(text + i, bytes, wanted) == 0;
    }
    closedir(listing);
    return found;
}

static void put_player(bw_team *team, int jersey, const char *initials, const char *name) {
    bw_error error;
    bw_player p = {.jersey = jersey, .spot_count = 1, .spots = {{"TL", true}}};
    bw_copy(p.initials, sizeof p.initials, initials);
    bw_copy(p.name, sizeof p.name, name);
    CHECK_INT(bw_team_put_player(team, &p, &error), BW_OK);
}

static void put_his_things(bw_team *team, int jersey, const char *code, double seconds) {
    bw_error error;
    bw_quiz_result r = {.jersey = jersey};
    bw_copy(r.code, sizeof r.code, code);
    CHECK_INT(bw_team_add_quiz(team, &r, NULL, &error), BW_OK);
    bw_timed_split s = {jersey, "2026-03-02", 20, seconds, "move"};
    CHECK_INT(bw_team_add_splits(team, &s, 1, NULL, &error), BW_OK);
}

static void a_forgotten_player_is_gone(void) {
    scratch_files(1);
    bw_error error;
    bw_team *team = open_fresh("forget.team");
    CHECK_INT(bw_team_allow_names(team, true, &error), BW_OK);
    put_player(team, 61, "QZX", "Quillon Zebediah Xavier");
    put_player(team, 6, "ABC", "Abel Bright Cole");
    put_his_things(team, 61, "ZEBCODE-61-WXYZ", 3.14159265358979);
    put_his_things(team, 6, "ABCCODE", 3.5);
    unsigned long long seed = 4;
    bw_entry e[4];
    int added, count;
    for (int i = 0; i < 4; i++) {
        e[i] = random_entry(&seed, i);
        e[i].out_count = 1;
        bw_copy(e[i].out[0], BW_ID_SIZE, i < 2 ? "61" : i == 2 ? "6" : "TL");
        e[i].note[0] = '\0';
    }
    bw_copy(e[0].note, BW_NOTE_SIZE, "late: QUILLON zebediah Xavier, again");
    bw_copy(e[3].note, BW_NOTE_SIZE, "#61 slow, #612 is nobody");
    bw_copy(e[1].note, BW_NOTE_SIZE, "who? (ABC)");
    bw_copy(e[2].note, BW_NOTE_SIZE, "ABCD and xABC are others");
    CHECK_INT(bw_team_add_entries(team, e, 4, NULL, &added, &error), BW_OK);
    // A name that was changed leaves nothing in the file either.
    put_player(team, 61, "QZX", "Quillon Zebediah Xavierson");
    put_player(team, 61, "QZX", "Quillon Zebediah Xavier");
    CHECK(anywhere("Zebediah") && anywhere("QZX") && anywhere("ZEBCODE"));

    bw_forgotten what;
    CHECK_INT(bw_team_forget(team, 61, NULL, &what, &error), BW_OK);
    CHECK(what.splits == 1 && what.quizzes == 1 && what.marks == 2);
    CHECK(what.texts == 1 && what.left == 1);
    // While the file is still open, and once it is closed.
    for (int closed = 0; closed < 2; closed++) {
        CHECK(!anywhere("Zebediah") && !anywhere("zebediah") && !anywhere("QZX"));
        CHECK(!anywhere("ZEBCODE") && !anywhere("\x40\x09\x21\xfb\x54\x44\x2d")); // his split
        CHECK(anywhere("Abel Bright Cole") && anywhere("ABCCODE"));
        if (!closed) bw_team_close(team);
    }
    CHECK_INT(bw_team_open(scratch_path("forget.team"), BW_TEAM_WRITE, &team, &error), BW_OK);
    bw_entry *list;
    CHECK_INT(bw_team_entries(team, NULL, &list, &count, &error), BW_OK);
    CHECK(count == 4 && list[0].out_count == 0 && list[1].out_count == 0);
    CHECK(count == 4 && list[2].out_count == 1 && list[3].out_count == 1);
    CHECK_TEXT(count == 4 ? list[0].note : "", "late: _, again");
    free(list);
    bw_player gone;
    CHECK_INT(bw_team_player(team, 61, &gone, &error), BW_NOT_FOUND);
    CHECK_INT(bw_team_forget(team, 61, NULL, &what, &error), BW_NOT_FOUND);
    CHECK_INT(bw_team_player(team, 6, &gone, &error), BW_OK);

    // Turning full names off is forgetting them.
    CHECK_INT(bw_team_allow_names(team, false, &error), BW_OK);
    CHECK(!anywhere("Abel Bright"));
    CHECK_INT(bw_team_forget(team, 6, NULL, &what, &error), BW_OK);
    CHECK(what.texts == 0 && what.left == 1 && what.marks == 1);
    bw_team_close(team);
}

static void traces_held_by_another_are_said(void) {
    bw_error error;
    bw_team *team = open_fresh("held.team"), *reader;
    put_player(team, 5, "HLD", "");
    CHECK_INT(bw_team_open(scratch_path("held.team"), BW_TEAM_READ, &reader, &error), BW_OK);
    CHECK_INT(bw_sql_run(reader, "BEGIN; SELECT * FROM player", &error), BW_OK);
    sqlite3_busy_timeout(team->db, 10);
    bw_forgotten what;
    CHECK_INT(bw_team_forget(team, 5, NULL, &what, &error), BW_FILE);
    CHECK(strstr(error.message, "close that program") != NULL);
    bw_team_close(reader);
    CHECK_INT(bw_team_scrub(team, &error), BW_OK);
    CHECK(!anywhere("HLD"));
    bw_team_close(team);
}

int main(int argc, char **argv) {
    scratch_begin();
    RUN(copies_are_whole);
    RUN(restoring_asks_first);
    RUN(a_forgotten_player_is_gone);
    RUN(traces_held_by_another_are_said);
    scratch_end();
    return test_report(argc, argv);
}
