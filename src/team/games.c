/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "team/games.h"
#include "team/sql.h"
#include <stdlib.h>

static const char *fault(const bw_game *g) {
    if (!bw_date_good(g->date)) return "a day is written like 2026-04-11";
    if (g->opponent[0] == '\0') return "a game has an opponent";
    if (!bw_text_plain(g->opponent) || !bw_text_plain(g->field))
        return "opponent and field are each one line of UTF-8 text";
    if (bw_text_hidden(g->opponent) || bw_text_hidden(g->field))
        return "opponent and field hold no invisible characters that turn or hide letters; type "
               "them anew";
    return NULL;
}

/// The game of this day against this opponent, or 0. Asked first, for an insert that meets it would use up a
/// number.
static bw_status find(bw_team *team, bw_game *g, bw_error *error) {
    bw_sql q = bw_sql_of(team, "SELECT id FROM game WHERE date = ? AND opponent = ?");
    bw_sql_text(&q, g->date);
    bw_sql_text(&q, g->opponent);
    g->id = bw_sql_row(&q) ? bw_sql_int_at(&q, 0) : 0;
    return bw_sql_end(&q, error);
}

static bw_status set_field(bw_team *team, const bw_game *g, bw_error *error) {
    bw_sql q = bw_sql_of(team, "UPDATE game SET field = ? WHERE id = ?");
    bw_sql_text(&q, g->field);
    bw_sql_int(&q, g->id);
    bw_sql_again(&q);
    return bw_sql_end(&q, error);
}

static bw_status put(bw_team *team, bw_game *g, bw_error *error) {
    const bw_status found = find(team, g, error);
    if (found != BW_OK) return found;
    g->fresh = g->id == 0;
    if (!g->fresh) return g->field[0] ? set_field(team, g, error) : BW_OK;
    bw_sql q = bw_sql_of(team, "INSERT INTO game (date, opponent, field) VALUES (?, ?, ?)");
    bw_sql_text(&q, g->date);
    bw_sql_text(&q, g->opponent);
    bw_sql_text(&q, g->field);
    if (bw_sql_again(&q)) g->id = sqlite3_last_insert_rowid(team->db);
    return bw_sql_end(&q, error);
}

bw_status bw_team_put_game(bw_team *team, bw_game *game, bw_error *error) {
    const char *found = fault(game);
    if (found) return bw_team_fail(error, BW_BAD_INPUT, "%s", found);
    bw_status status = bw_team_begin(team, error);
    if (status != BW_OK) return status;
    status = put(team, game, error);
    return bw_team_end(team, status, error);
}

static bw_status select(bw_team *team, int64_t id, bw_game **list, int *count, bw_error *error) {
    *list = NULL;
    *count = 0;
    bw_sql q = bw_sql_of(team, "SELECT id, date, opponent, field FROM game"
                               " WHERE ?1 = 0 OR id = ?1 ORDER BY date, id");
    bw_sql_int(&q, id);
    while (bw_sql_row(&q) && bw_sql_grow(&q, (void **)list, *count, sizeof **list)) {
        bw_game *g = &(*list)[(*count)++];
        g->id = bw_sql_int_at(&q, 0);
        bw_sql_text_at(&q, 1, g->date, sizeof g->date);
        bw_sql_text_at(&q, 2, g->opponent, sizeof g->opponent);
        bw_sql_text_at(&q, 3, g->field, sizeof g->field);
    }
    return bw_sql_end_list(&q, (void **)list, count, error);
}

bw_status bw_team_games(bw_team *team, bw_game **list, int *count, bw_error *error) {
    return select(team, 0, list, count, error);
}

bw_status bw_team_game(bw_team *team, int64_t id, bw_game *game, bw_error *error) {
    bw_game *list;
    int count;
    const bw_status status = select(team, id == 0 ? -1 : id, &list, &count, error);
    if (status != BW_OK) return status;
    if (count > 0) *game = list[0];
    free(list);
    return count > 0 ? BW_OK
                     : bw_team_fail(error, BW_NOT_FOUND, "there is no game %lld in the team file",
                                    (long long)id);
}
