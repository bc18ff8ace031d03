/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What the team file holds beside its breaks: games, revisions, players and their sprints.
#include "core/level.h"
#include "core/text.h"
#include "report/team_json.h"
#include "serve/route.h"
#include "serve/team_desk.h"
#include "serve/team_form.h"
#include "serve/team_odd.h"
#include "team/legs.h"
#include "team/revisions.h"
#include "team/settings.h"
#include <stdlib.h>

static bw_status put_games(bw_team *team, bw_json *json, bw_error *error) {
    bw_game *games;
    int count;
    const bw_status status = bw_team_games(team, &games, &count, error);
    bw_json_put_open(json, "games", '[');
    for (int i = 0; status == BW_OK && i < count; i++) {
        bw_json_open(json, '{');
        bw_json_put_number(json, "id", (double)games[i].id);
        bw_json_put_text(json, "date", games[i].date);
        bw_json_put_text(json, "opponent", games[i].opponent);
        bw_json_put_text(json, "field", games[i].field);
        bw_json_close(json, '}');
    }
    bw_json_close(json, ']');
    free(games);
    return status;
}

static bw_status put_revisions(bw_team *team, bw_json *json, bw_error *error) {
    bw_revision *list;
    int count;
    const bw_status status = bw_team_revisions(team, &list, &count, error);
    bw_json_put_open(json, "revisions", '[');
    for (int i = 0; status == BW_OK && i < count; i++) {
        bw_json_open(json, '{');
        bw_json_put_number(json, "id", (double)list[i].id);
        bw_json_put_text(json, "scheme", list[i].scheme);
        bw_json_put_text(json, "note", list[i].note);
        bw_json_close(json, '}');
    }
    bw_json_close(json, ']');
    free(list);
    return status;
}

static bw_status put_players(bw_team *team, bw_json *json, bw_error *error) {
    bw_player *list;
    int count;
    const bw_status status = bw_team_players(team, &list, &count, error);
    bw_json_put_open(json, "players", '[');
    for (int i = 0; status == BW_OK && i < count; i++)
        bw_json_player(json, &list[i]);
    bw_json_close(json, ']');
    free(list);
    return status;
}

static bw_status put_splits(bw_team *team, bw_json *json, bw_error *error) {
    bw_timed_split *list;
    int count;
    const bw_status status = bw_team_splits(team, -1, &list, &count, error);
    bw_json_put_open(json, "splits", '[');
    for (int i = 0; status == BW_OK && i < count; i++) {
        bw_json_open(json, '{');
        bw_json_put_number(json, "jersey", list[i].jersey);
        bw_json_put_text(json, "date", list[i].date);
        bw_json_put_number(json, "distance_m", list[i].distance);
        bw_json_put_number(json, "seconds", list[i].seconds);
        bw_json_put_text(json, "clock", list[i].clock);
        bw_json_close(json, '}');
    }
    bw_json_close(json, ']');
    free(list);
    return status;
}

static bw_status put_legs(bw_team *team, bw_units units, bw_json *json, bw_error *error) {
    bw_scheme *scheme = malloc(sizeof *scheme);
    if (!scheme) {
        *error = (bw_error){.status = BW_NO_ROOM, .message = BW_NO_MEMORY};
        return BW_NO_ROOM;
    }
    bw_timed_split *list;
    int count;
    bw_status status = bw_team_scheme(team, 0, scheme, NULL, error);
    const int level = status == BW_OK ? scheme->level : 0;
    free(scheme);
    status = bw_team_splits(team, -1, &list, &count, error);
    bw_json_put_open(json, "legs", '[');
    // Splits come by player.
    for (int i = 0, before = -1; status == BW_OK && i < count; before = list[i++].jersey) {
        if (list[i].jersey == before) continue;
        char line[320];
        bw_text t = bw_text_in(line, sizeof line);
        const bw_player_legs legs =
            bw_legs_of(list, count, list[i].jersey, bw_reaction(bw_level_at(level), 1));
        bw_say_legs(&legs, units, &t);
        bw_json_open(json, '{');
        bw_json_put_number(json, "jersey", list[i].jersey);
        bw_json_put_text(json, "words", line);
        bw_json_close(json, '}');
    }
    bw_json_close(json, ']');
    free(list);
    return status;
}

/// A table of what is taken: {"opponent":{"is":"text","most":47}, ...}.
static void put_table(const bw_form_table *table, bw_json *json) {
    static const char *const kinds[] = {
        [BW_MEMBER_TEXT] = "text",     [BW_MEMBER_WHOLE] = "number", [BW_MEMBER_ROW] = "number",
        [BW_MEMBER_NUMBER] = "number", [BW_MEMBER_FLAG] = "flag",    [BW_MEMBER_LIST] = "list",
        [BW_MEMBER_OBJECT] = "object", [BW_MEMBER_TOLD] = "told"};
    bw_json_key(json, table->name);
    bw_json_open(json, '{');
    for (int i = 0; i < table->count; i++) {
        const bw_form_member *m = &table->members[i];
        bw_json_key(json, m->key);
        bw_json_open(json, '{');
        bw_json_put_text(json, "is", kinds[m->kind]);
        if (m->of) bw_json_put_text(json, "of", m->of->name);
        if (m->kind == BW_MEMBER_WHOLE || m->kind == BW_MEMBER_ROW || m->kind == BW_MEMBER_NUMBER)
            bw_json_put_number(json, "least", m->low);
        if (m->high > 0) bw_json_put_number(json, "most", m->high);
        bw_json_close(json, '}');
    }
    bw_json_close(json, '}');
}

/// What the page may send, for it to be built from.
static void put_takes(bw_json *json) {
    bw_json_put_number(json, "at_once", BW_SENT_MAX);
    bw_json_put_open(json, "takes", '{');
    for (int i = 0; bw_team_form_at(i); i++)
        put_table(bw_team_form_at(i), json);
    bw_json_close(json, '}');
}

static bw_status put_all(bw_team *team, bw_units units, bw_json *json, bw_error *error) {
    char mark[BW_SECRET_SIZE], name[BW_SETTING_SIZE];
    bool names = false;
    bw_status status = bw_desk_mark(team, mark, error);
    if (status == BW_OK) status = bw_team_setting(team, BW_SETTING_TEAM, name, sizeof name, error);
    if (status == BW_OK) status = bw_team_names(team, &names, error);
    if (status != BW_OK) return status;
    bw_json_put_text(json, "mark", mark);
    bw_json_put_text(json, "name", name);
    bw_json_put_bool(json, "full_names", names);
    put_takes(json);
    status = put_games(team, json, error);
    if (status == BW_OK) status = put_revisions(team, json, error);
    if (status == BW_OK) status = put_players(team, json, error);
    if (status == BW_OK) status = put_splits(team, json, error);
    return status == BW_OK ? put_legs(team, units, json, error) : status;
}

bw_reply bw_on_team(bw_site *site, bw_ask *ask) {
    const char *unit = bw_target_value(&ask->target, "units");
    const bw_units units = unit && bw_same(unit, "m") ? BW_METRES : BW_YARDS;
    bw_reply answer;
    bw_reply_json out;
    bw_error error;
    bw_team *team = bw_desk_open(site, ask, BW_TEAM_WRITE, &answer);
    if (!team) return answer;
    if (!bw_reply_json_begin(&out)) {
        bw_team_close(team);
        return bw_reply_no_memory();
    }
    const bw_status status = put_all(team, units, &out.json, &error);
    bw_team_close(team);
    answer = bw_reply_json_end(&out, 200);
    if (status == BW_OK) return answer;
    free(answer.own.data);
    return bw_desk_refusal(&error);
}

bw_reply bw_on_game(bw_site *site, bw_ask *ask) {
    bw_reply answer;
    bw_error error;
    bw_game game;
    bw_status status = BW_OK;
    bw_team *team = bw_desk_take(site, ask, BW_TEAM_WRITE, bw_form_game, &game, &answer);
    if (!team) return answer;
    const bool odd = bw_odd_game_sent(team, ask, &game, &answer);
    if (!odd) status = bw_team_put_game(team, &game, &error);
    bw_team_close(team);
    if (odd) return answer;
    bw_reply_json out;
    if (status != BW_OK) return bw_desk_refusal(&error);
    if (!bw_reply_json_begin(&out)) return bw_reply_no_memory();
    bw_json_put_number(&out.json, "id", (double)game.id);
    return bw_reply_json_end(&out, 200);
}

bw_reply bw_on_player(bw_site *site, bw_ask *ask) {
    bw_reply answer;
    bw_error error;
    bw_player player;
    bw_status status = BW_OK;
    bw_team *team = bw_desk_take(site, ask, BW_TEAM_WRITE, bw_form_player, &player, &answer);
    if (!team) return answer;
    const bool odd = bw_odd_player_sent(team, ask, &player, &answer);
    if (!odd) status = bw_team_put_player(team, &player, &error);
    bw_team_close(team);
    if (odd) return answer;
    return status == BW_OK ? bw_reply_words(200, "Kept.") : bw_desk_refusal(&error);
}

bw_reply bw_on_split(bw_site *site, bw_ask *ask) {
    bw_reply answer;
    bw_error error;
    bw_timed_split split;
    int added = 0;
    bw_status status = BW_OK;
    bw_team *team = bw_desk_take(site, ask, BW_TEAM_WRITE, bw_form_split, &split, &answer);
    if (!team) return answer;
    const bool odd = bw_odd_split_sent(team, ask, &split, &answer);
    if (!odd) status = bw_team_add_splits(team, &split, 1, &added, &error);
    bw_team_close(team);
    if (odd) return answer;
    if (status != BW_OK) return bw_desk_refusal(&error);
    return bw_reply_words(200, added ? "Kept." : "That one was known already.");
}
