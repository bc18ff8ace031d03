/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "team/known.h"
#include "core/scheme.h"
#include "team/revisions.h"
#include "team/sql.h"
#include <stdlib.h>

enum { DAY = 86400 };

/// The day this part was written: a clock that stands before it is wrong.
static const char made[] = "2026-11-01";

static bool has_spot(const bw_known *k, const char *code) {
    for (int i = 0; i < k->spot_count; i++) {
        if (bw_same(k->spot[i], code)) return true;
    }
    return false;
}

static void add_spots(bw_known *k, const bw_scheme *scheme) {
    for (int t = 0; t < scheme->stage_count; t++) {
        for (int s = 0; s < scheme->stages[t].defenders; s++) {
            const char *code = scheme->stages[t].spots[s].id;
            if (k->spot_count < BW_KNOWN_SPOTS && !has_spot(k, code))
                bw_copy(k->spot[k->spot_count++], BW_ID_SIZE, code);
        }
    }
}

/// Newest first, so that its spots are named first.
static bw_status read_schemes(bw_team *team, bw_known *k, bw_error *error) {
    bw_revision *list;
    int count;
    bw_status status = bw_team_revisions(team, &list, &count, error);
    if (status != BW_OK) return status;
    bw_scheme *scheme = calloc(1, sizeof *scheme);
    if (!scheme) {
        free(list);
        return bw_team_fail(error, BW_NO_ROOM, BW_NO_MEMORY);
    }
    for (int i = count - 1; i >= 0 && status == BW_OK; i--) {
        status = bw_team_scheme(team, list[i].id, scheme, NULL, error);
        if (status == BW_BAD_INPUT) { // a damaged one is told of where it is used
            status = BW_OK;
            continue;
        }
        if (status != BW_OK) break;
        if (!k->field) k->field = bw_field_at(scheme->field);
        add_spots(k, scheme);
    }
    free(scheme);
    free(list);
    return status;
}

static bw_status read_roster(bw_team *team, bw_known *k, bw_error *error) {
    bw_player *list;
    const bw_status status = bw_team_players(team, &list, &k->player_count, error);
    for (int i = 0; status == BW_OK && i < k->player_count; i++)
        k->jersey[list[i].jersey] = true;
    free(list);
    return status;
}

bw_status bw_known_load(bw_team *team, int64_t now, bw_known **known, bw_error *error) {
    bw_known *k = *known = calloc(1, sizeof *k);
    if (!k) return bw_team_fail(error, BW_NO_ROOM, BW_NO_MEMORY);
    k->today = now / DAY < bw_date_days(made) ? 0 : now / DAY;
    bw_status status = bw_team_games(team, &k->games, &k->game_count, error);
    if (status == BW_OK) status = read_roster(team, k, error);
    if (status == BW_OK) status = read_schemes(team, k, error);
    if (status == BW_OK) return BW_OK;
    bw_known_drop(k);
    *known = NULL;
    return status;
}

void bw_known_drop(bw_known *known) {
    if (!known) return;
    free(known->games);
    free(known);
}

bw_status bw_known_add_game(bw_known *known, const bw_game *game) {
    bw_game *more = realloc(known->games, ((size_t)known->game_count + 1) * sizeof *more);
    if (!more) return BW_NO_ROOM;
    known->games = more;
    known->games[known->game_count++] = *game;
    return BW_OK;
}
