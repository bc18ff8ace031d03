/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli/team_roster.h"
#include "cli/say.h"
#include "cli/team_file.h"
#include "core/level.h"
#include "file/document.h"
#include "team/revisions.h"
#include <stdlib.h>
#include <string.h>

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
    if (!s) return bw_say_no_memory();
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

/// Whether he can play a place with these codes; a place without codes is anybody's who plays at all.
static bool can(const bw_player *p, char codes[BW_MAX_SPOTS + 1][BW_ID_SIZE], bool *fixed) {
    *fixed = false;
    if (!codes[0][0]) return p->spot_count > 0;
    for (int c = 0; codes[c][0]; c++) {
        for (int k = 0; k < p->spot_count; k++) {
            if (strcmp(p->spots[k].spot, codes[c]) != 0) continue;
            // A late man takes one of several spots: being fixed to one of them does not fix him here.
            *fixed = p->spots[k].fixed && !codes[1][0];
            return true;
        }
    }
    return false;
}

int bw_squad_candidates(const bw_squad *s, int stage, bw_candidate *men, int *man) {
    char name[BW_LINEUP_PLACES][BW_NAME_SIZE];
    const int places = bw_who_places(&s->scheme, stage, name);
    const int spots = s->scheme.stages[stage].defenders;
    int count = 0;
    for (int i = 0; i < s->count && count < BW_LINEUP_MEN; i++) {
        bw_candidate *c = &men[count];
        *c = (bw_candidate){.jersey = s->men[i].player.jersey};
        if (s->men[i].legs.fit.verdict == BW_SPRINT_FITTED) c->legs = s->men[i].legs.fit.legs;
        bool any = false;
        for (int p = 0; p < places; p++) {
            char codes[BW_MAX_SPOTS + 1][BW_ID_SIZE];
            bw_who_codes(&s->scheme, stage, p, codes);
            c->may[p] = can(&s->men[i].player, codes, &c->fixed[p]);
            if (p >= spots) c->fixed[p] = false;
            any |= c->may[p];
        }
        if (any) man[count++] = i;
    }
    return count;
}

/// Chooses the men and takes their legs.
static int take_legs(const bw_squad *s, int stage, const char *path, bw_legs legs[BW_MAX_SPOTS]) {
    bw_candidate men[BW_LINEUP_MEN];
    int man[BW_LINEUP_MEN], unfilled;
    bw_who who;
    const int count = bw_squad_candidates(s, stage, men, man);
    const bw_status status =
        bw_who_choose(&s->scheme, stage, men, count, BW_WHO_MARGIN, BW_UNWATCHED, &who, &unfilled);
    if (status != BW_OK) {
        bw_say_error(
            "no line-up for this stage can be made from %s; `breakwater team lineup %s` tells why.",
            path, path);
        return status == BW_NO_ROOM ? BW_EXIT_LIMIT : BW_EXIT_WRONG;
    }
    char line[256];
    bw_text t = bw_text_in(line, sizeof line);
    for (int p = 0; p < who.place_count && p < BW_MAX_SPOTS; p++) {
        legs[p] = men[who.place[p].man].legs;
        bw_put(&t, p > 0 ? ", #" : "#");
        bw_put_int(&t, men[who.place[p].man].jersey);
    }
    bw_say("With the legs of %s, in the order of the spots and the late men.", line);
    return BW_EXIT_OK;
}

int bw_load_squad_legs(const bw_args *args, const bw_scheme *scheme, int stage,
                       bw_legs legs[BW_MAX_SPOTS]) {
    const char *path = bw_option_text(args, "team");
    if (!path) return BW_EXIT_OK;
    bw_squad *s = calloc(1, sizeof *s);
    if (!s) return bw_say_no_memory();
    s->scheme = *scheme;
    s->has_scheme = true;
    bw_team *team;
    bw_error error = {0};
    bw_status status = bw_team_open(path, BW_TEAM_READ, &team, &error);
    if (status == BW_OK) status = load_men(team, s, &error);
    int code = status == BW_OK ? BW_EXIT_OK : bw_team_refusal(team, path, &error);
    if (code == BW_EXIT_OK) {
        bw_team_close(team);
        code = take_legs(s, stage, path, legs);
    }
    bw_squad_drop(s);
    return code;
}
