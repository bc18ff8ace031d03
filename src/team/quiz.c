/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "team/quiz.h"
#include "core/text.h"
#include "team/roster.h"
#include "team/sql.h"

static bw_status add(bw_team *team, const bw_quiz_result *r, bool *is_new, bw_error *error) {
    bw_player player;
    const bw_status status = bw_team_player(team, r->jersey, &player, error);
    if (status != BW_OK) return status;
    bw_sql q = bw_sql_of(team, "INSERT INTO quiz (player, time, code)"
                               " SELECT id, ?, ? FROM player WHERE jersey = ?"
                               " ON CONFLICT DO NOTHING");
    bw_sql_int(&q, r->time);
    bw_sql_text(&q, r->code);
    bw_sql_int(&q, r->jersey);
    if (bw_sql_again(&q)) *is_new = sqlite3_changes(team->db) > 0;
    return bw_sql_end(&q, error);
}

bw_status bw_team_add_quiz(bw_team *team, const bw_quiz_result *result, bool *fresh,
                           bw_error *error) {
    bool is_new = false;
    if (result->code[0] == '\0' || !bw_text_plain(result->code) || result->time < 0)
        return bw_team_fail(error, BW_BAD_INPUT, "a result code is one line of letters and digits");
    bw_status status = bw_team_begin(team, error);
    if (status != BW_OK) return status;
    status = add(team, result, &is_new, error);
    status = bw_team_end(team, status, error);
    if (fresh) *fresh = status == BW_OK && is_new;
    return status;
}

bw_status bw_team_quizzes(bw_team *team, int jersey, bw_quiz_result **list, int *count,
                          bw_error *error) {
    *list = NULL;
    *count = 0;
    bw_sql q = bw_sql_of(team, "SELECT jersey, time, code FROM quiz"
                               " JOIN player ON player.id = quiz.player"
                               " WHERE ?1 < 0 OR jersey = ?1 ORDER BY quiz.id");
    bw_sql_int(&q, jersey);
    while (bw_sql_row(&q) && bw_sql_grow(&q, (void **)list, *count, sizeof **list)) {
        bw_quiz_result *r = &(*list)[(*count)++];
        r->jersey = (int)bw_sql_int_at(&q, 0);
        r->time = bw_sql_int_at(&q, 1);
        bw_sql_text_at(&q, 2, r->code, sizeof r->code);
    }
    return bw_sql_end_list(&q, (void **)list, count, error);
}
