/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "team/forget.h"
#include "core/entry.h"
#include "team/roster.h"
#include "team/sql.h"
#include <stdio.h>
#include <string.h>
#include <strings.h>

/// secure_delete zeroes what is deleted, VACUUM leaves out free pages, and the log, which still has old
/// pages, is cut to nothing. Another reader can hold the log: then its traces stay, and that is said.
bw_status bw_team_scrub(bw_team *team, bw_error *error) {
    bw_status status = bw_sql_run(team, "VACUUM", error);
    int64_t held = 0;
    if (status == BW_OK)
        status = bw_sql_number(team, "PRAGMA wal_checkpoint(TRUNCATE)", 0, &held, error);
    if (status == BW_OK && held != 0)
        status = bw_team_fail(error, BW_FILE,
                              "it is deleted, but another program has the file open, so traces are "
                              "left in it; close that program and run team scrub");
    return status;
}

/// Runs one statement with one whole number and counts the rows it changed.
static bw_status change(bw_team *team, const char *sql, int64_t value, int *rows, bw_error *error) {
    bw_sql q = bw_sql_of(team, sql);
    bw_sql_int(&q, value);
    if (bw_sql_again(&q)) *rows = sqlite3_changes(team->db);
    return bw_sql_end(&q, error);
}

/// Without the name, whatever its case (of ASCII letters). True when it was there.
static bool strike(char *note, const char *name) {
    const size_t length = strlen(name);
    bool struck = false;
    for (char *at = note; *at;) {
        if (strncasecmp(at, name, length) != 0) {
            at++;
            continue;
        }
        memmove(at, at + length, strlen(at + length) + 1);
        struck = true;
    }
    return struck;
}

/// The two tables with notes.
typedef struct notes {
    const char *read, *write;
} notes;

static bw_status strike_in(bw_team *team, const notes *table, const char *name, int *struck,
                           bw_error *error) {
    bw_sql q = bw_sql_of(team, table->read);
    bw_sql put = bw_sql_of(team, table->write);
    while (bw_sql_row(&q)) {
        char note[BW_NOTE_SIZE];
        bw_sql_text_at(&q, 1, note, sizeof note);
        if (!strike(note, name)) continue;
        bw_sql_text(&put, note);
        bw_sql_int(&put, bw_sql_int_at(&q, 0));
        bw_sql_again(&put);
        ++*struck;
    }
    const bw_status read = bw_sql_end(&q, error);
    const bw_status written = bw_sql_end(&put, error);
    return read != BW_OK ? read : written;
}

static bw_status strike_name(bw_team *team, const char *name, int *struck, bw_error *error) {
    static const notes tables[] = {
        {"SELECT id, note FROM entry", "UPDATE entry SET note = ? WHERE id = ?"},
        {"SELECT id, note FROM revision", "UPDATE revision SET note = ? WHERE id = ?"}};
    bw_status status = BW_OK;
    for (int i = 0; name[0] && status == BW_OK && i < BW_COUNT(tables); i++)
        status = strike_in(team, &tables[i], name, struck, error);
    return status;
}

static bool part_of_word(char c) {
    return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c & 0x80);
}

/// Whether a note says this, and not as part of a longer word or number.
static bool says(const char *note, const char *text) {
    const size_t length = strlen(text);
    for (const char *at = note; length > 0 && (at = strstr(at, text)); at++) {
        const bool begins = at == note || !part_of_word(at[-1]) || text[0] == '#';
        if (begins && (!part_of_word(at[length]) || !part_of_word(text[length - 1]))) return true;
    }
    return false;
}

static bw_status count_left(bw_team *team, const bw_player *player, int *left, bw_error *error) {
    char sign[16];
    snprintf(sign, sizeof sign, "#%d", player->jersey);
    bw_sql q = bw_sql_of(team, "SELECT note FROM entry UNION ALL SELECT note FROM revision");
    while (bw_sql_row(&q)) {
        char note[BW_NOTE_SIZE];
        bw_sql_text_at(&q, 0, note, sizeof note);
        *left += says(note, sign) || says(note, player->initials);
    }
    return bw_sql_end(&q, error);
}

static bw_status drop_marks(bw_team *team, int jersey, int *marks, bw_error *error) {
    char who[16];
    snprintf(who, sizeof who, "%d", jersey);
    bw_sql q = bw_sql_of(team, "DELETE FROM entry_out WHERE who = ?");
    bw_sql_text(&q, who);
    if (bw_sql_again(&q)) *marks = sqlite3_changes(team->db);
    return bw_sql_end(&q, error);
}

static bw_status forget(bw_team *team, int jersey, bw_forgotten *what, bw_error *error) {
    bw_player player;
    int rows;
    bw_status status = bw_team_player(team, jersey, &player, error);
    if (status == BW_OK)
        status = change(team,
                        "DELETE FROM split WHERE player ="
                        " (SELECT id FROM player WHERE jersey = ?)",
                        jersey, &what->splits, error);
    if (status == BW_OK)
        status = change(team,
                        "DELETE FROM quiz WHERE player ="
                        " (SELECT id FROM player WHERE jersey = ?)",
                        jersey, &what->quizzes, error);
    if (status == BW_OK) // his spots go with the row
        status = change(team, "DELETE FROM player WHERE jersey = ?", jersey, &rows, error);
    if (status == BW_OK) status = drop_marks(team, jersey, &what->marks, error);
    if (status == BW_OK) status = strike_name(team, player.name, &what->notes, error);
    return status == BW_OK ? count_left(team, &player, &what->left, error) : status;
}

bw_status bw_team_forget(bw_team *team, int jersey, bw_forgotten *what, bw_error *error) {
    *what = (bw_forgotten){0};
    bw_status status = bw_team_begin(team, error);
    if (status != BW_OK) return status;
    status = bw_team_end(team, forget(team, jersey, what, error), error);
    return status == BW_OK ? bw_team_scrub(team, error) : status;
}
