/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "team/splits.h"
#include "core/sprint.h"
#include "team/roster.h"
#include "team/sql.h"
#include <math.h>

bool bw_split_clock_good(const char *clock) {
    int c = 0;
    while (c < BW_CLOCK_COUNT && !bw_same(bw_clock_id((bw_clock)c), clock))
        c++;
    return c < BW_CLOCK_COUNT;
}

static const char *fault(const bw_timed_split *s) {
    if (!bw_date_good(s->date)) return "a day is written like 2026-03-02";
    if (!(s->distance >= 1 && s->distance <= 200)) return "a distance is from 1 to 200 m";
    if (!(s->seconds >= 0.3 && s->seconds <= 60)) return "a time is from 0.3 to 60 s";
    if (!bw_split_clock_good(s->clock)) return "a clock starts by move, signal or gate";
    return NULL;
}

static bw_status check(bw_team *team, const bw_timed_split *s, bw_error *error) {
    const char *found = fault(s);
    if (found) return bw_team_fail(error, BW_BAD_INPUT, "%s", found);
    bw_player player;
    return bw_team_player(team, s->jersey, &player, error);
}

/// Millimetres and milliseconds: finer than any stopwatch, and a split that went out in yards and came
/// back is the same split.
static double to_thousandths(double x) {
    return floor(x * 1000 + 0.5) / 1000;
}

static bw_status add(bw_team *team, const bw_timed_split *s, int *added, bw_error *error) {
    bw_status status = check(team, s, error);
    if (status != BW_OK) return status;
    bw_sql q = bw_sql_of(team, "INSERT INTO split (player, date, distance, seconds, clock)"
                               " SELECT id, ?, ?, ?, ? FROM player WHERE jersey = ?"
                               " ON CONFLICT DO NOTHING");
    bw_sql_text(&q, s->date);
    bw_sql_real(&q, to_thousandths(s->distance));
    bw_sql_real(&q, to_thousandths(s->seconds));
    bw_sql_text(&q, s->clock);
    bw_sql_int(&q, s->jersey);
    if (bw_sql_again(&q)) *added += sqlite3_changes(team->db);
    return bw_sql_end(&q, error);
}

bw_status bw_team_add_splits(bw_team *team, const bw_timed_split *splits, int count, int *added,
                             bw_error *error) {
    int fresh = 0;
    bw_status status = bw_team_begin(team, error);
    if (status != BW_OK) return status;
    for (int i = 0; status == BW_OK && i < count; i++)
        status = add(team, &splits[i], &fresh, error);
    status = bw_team_end(team, status, error);
    if (added) *added = status == BW_OK ? fresh : 0;
    return status;
}

bw_status bw_team_splits(bw_team *team, int jersey, bw_timed_split **list, int *count,
                         bw_error *error) {
    *list = NULL;
    *count = 0;
    bw_sql q =
        bw_sql_of(team, "SELECT jersey, date, distance, seconds, clock FROM split"
                        " JOIN player ON player.id = split.player WHERE ?1 < 0 OR jersey = ?1"
                        " ORDER BY jersey, date, distance, seconds, split.id");
    bw_sql_int(&q, jersey);
    while (bw_sql_row(&q) && bw_sql_grow(&q, (void **)list, *count, sizeof **list)) {
        bw_timed_split *s = &(*list)[(*count)++];
        s->jersey = (int)bw_sql_int_at(&q, 0);
        bw_sql_text_at(&q, 1, s->date, sizeof s->date);
        s->distance = bw_sql_real_at(&q, 2, 0);
        s->seconds = bw_sql_real_at(&q, 3, 0);
        bw_sql_text_at(&q, 4, s->clock, sizeof s->clock);
    }
    return bw_sql_end_list(&q, (void **)list, count, error);
}
