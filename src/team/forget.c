/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "team/forget.h"
#include "team/scrub.h"
#include "team/sql.h"
#include <stdio.h>
#include <stdlib.h>

/// Runs one statement with one whole number and counts the rows it changed.
static bw_status change(bw_team *team, const char *sql, int64_t value, int *rows, bw_error *error) {
    bw_sql q = bw_sql_of(team, sql);
    bw_sql_int(&q, value);
    if (bw_sql_again(&q)) *rows = sqlite3_changes(team->db);
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

/// His places, as they were chosen.
static bw_status strike(bw_team *team, int jersey, const bw_forget_how *how, bw_forgotten *what,
                        bw_error *error) {
    bw_places places;
    bw_status status = bw_team_places(team, jersey, how->name, &places, error);
    if (status == BW_OK && how->strike && (how->seen != places.seen || how->count != places.count))
        status = bw_team_fail(error, BW_BAD_INPUT,
                              "it has changed since its places were listed, so nobody is "
                              "forgotten; look at the list again");
    bool *chosen = calloc((size_t)places.count + 1, sizeof *chosen);
    if (status == BW_OK && !chosen) status = bw_team_fail(error, BW_NO_ROOM, BW_NO_MEMORY);
    for (int i = 0; chosen && status == BW_OK && i < places.count; i++) {
        chosen[i] = how->strike ? how->strike[i] : places.list[i].sure;
        what->left += !chosen[i];
    }
    if (status == BW_OK)
        status = bw_team_strike(team, jersey, how->name, &places, chosen, &what->texts, error);
    free(chosen);
    bw_places_drop(&places);
    return status;
}

static bw_status forget(bw_team *team, int jersey, const bw_forget_how *how, bw_forgotten *what,
                        bw_error *error) {
    int rows;
    bw_status status = strike(team, jersey, how, what, error);
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
    return status == BW_OK ? drop_marks(team, jersey, &what->marks, error) : status;
}

bw_status bw_team_forget(bw_team *team, int jersey, const bw_forget_how *how, bw_forgotten *what,
                         bw_error *error) {
    static const bw_forget_how sure_ones = {0};
    *what = (bw_forgotten){0};
    bw_status status = bw_team_begin(team, error);
    if (status != BW_OK) return status;
    status = forget(team, jersey, how ? how : &sure_ones, what, error);
    status = bw_team_end(team, status, error);
    return status == BW_OK ? bw_team_scrub(team, error) : status;
}
