/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli/team_roster.h"
#include "cli/say.h"
#include "cli/team_file.h"
#include "core/level.h"
#include "file/document.h"
#include "team/revisions.h"
#include <stdlib.h>

/// Reaction to a whistle or gun before the first step, s: the level's, with one thing to do.
static double reaction_of(const bw_squad *s) {
    return bw_reaction(bw_level_at(s->has_scheme ? s->scheme.level : 0), 1);
}

static int load_scheme(const bw_args *args, bw_team *team, bw_squad *s) {
    bw_error error;
    s->units = bw_team_units(args);
    if (args->operand_count > 1) {
        bw_source source;
        const bw_status status = bw_document_load(args->operands[1], &s->scheme, &source, &error);
        if (status != BW_OK) {
            bw_team_close(team);
            return bw_say_refusal(args->operands[1], &error);
        }
        bw_source_drop(&source);
        s->has_scheme = true;
        return BW_EXIT_OK;
    }
    const bw_status status = bw_team_scheme(team, 0, &s->scheme, NULL, &error);
    s->has_scheme = status == BW_OK;
    return status == BW_OK || status == BW_NOT_FOUND
               ? BW_EXIT_OK
               : bw_team_refusal(team, args->operands[0], &error);
}

static bw_status load_men(bw_team *team, bw_squad *s, bw_error *error) {
    bw_player *players;
    bw_timed_split *splits;
    int split_count;
    bw_status status = bw_team_players(team, &players, &s->count, error);
    if (status != BW_OK) return status;
    status = bw_team_splits(team, -1, &splits, &split_count, error);
    if (status == BW_OK) {
        s->men = calloc((size_t)s->count + 1, sizeof *s->men);
        if (!s->men) status = BW_NO_ROOM;
        for (int i = 0; s->men && i < s->count; i++) {
            s->men[i].player = players[i];
            s->men[i].legs = bw_legs_of(splits, split_count, players[i].jersey, reaction_of(s));
        }
        free(splits);
    }
    free(players);
    return status;
}

int bw_load_squad(const bw_args *args, bw_squad **squad) {
    bw_squad *s = *squad = calloc(1, sizeof *s);
    if (!s) {
        bw_say_error("there is not enough memory for the squad.");
        return BW_EXIT_LIMIT;
    }
    bw_team *team;
    bw_error error = {0};
    int code = bw_open_team(args, BW_TEAM_READ, &team);
    if (code == BW_EXIT_OK) code = load_scheme(args, team, s);
    if (code == BW_EXIT_OK) {
        const bw_status status = load_men(team, s, &error);
        if (status == BW_OK)
            bw_team_close(team);
        else
            code = bw_team_refusal(team, args->operands[0], &error);
    }
    if (code == BW_EXIT_OK) return code;
    bw_squad_drop(s);
    *squad = NULL;
    return code;
}

void bw_squad_drop(bw_squad *squad) {
    if (!squad) return;
    free(squad->men);
    free(squad);
}
