/* SPDX-License-Identifier: GPL-3.0-or-later */
/// team show: what the file holds, counted, and the roster.
#include "cli/out.h"
#include "cli/team_file.h"
#include "file/json_stream.h"
#include "report/team_json.h"
#include "team/breaks.h"
#include "team/games.h"
#include "team/quiz.h"
#include "team/revisions.h"
#include "team/settings.h"
#include "team/splits.h"
#include <stdlib.h>

/// Everything that is told of a team file.
typedef struct holdings {
    char name[BW_SETTING_SIZE];
    bool full_names;
    bw_player *players;
    int player_count;
    bw_game *games;
    int game_count;
    int splits, entries, quizzes, revisions;
} holdings;

static bw_status count_rest(bw_team *team, holdings *h, bw_error *error) {
    bw_timed_split *splits;
    bw_entry *entries;
    bw_quiz_result *quizzes;
    bw_revision *revisions;
    bw_status status = bw_team_splits(team, -1, &splits, &h->splits, error);
    free(splits);
    if (status != BW_OK) return status;
    status = bw_team_entries(team, NULL, &entries, &h->entries, error);
    free(entries);
    if (status != BW_OK) return status;
    status = bw_team_quizzes(team, -1, &quizzes, &h->quizzes, error);
    free(quizzes);
    if (status != BW_OK) return status;
    status = bw_team_revisions(team, &revisions, &h->revisions, error);
    free(revisions);
    return status;
}

static bw_status gather(bw_team *team, holdings *h, bw_error *error) {
    bw_status status = bw_team_setting(team, BW_SETTING_TEAM, h->name, sizeof h->name, error);
    if (status == BW_OK) status = bw_team_names(team, &h->full_names, error);
    if (status == BW_OK) status = bw_team_players(team, &h->players, &h->player_count, error);
    if (status == BW_OK) status = bw_team_games(team, &h->games, &h->game_count, error);
    return status == BW_OK ? count_rest(team, h, error) : status;
}

static void print_players(FILE *out, const holdings *h) {
    for (int i = 0; i < h->player_count; i++) {
        const bw_player *p = &h->players[i];
        const bool last = !h->full_names && p->spot_count == 0;
        fprintf(out, last ? "  %2d  %s" : "  %2d  %-6s", p->jersey, p->initials);
        if (h->full_names) fprintf(out, "  %-24s", p->name);
        for (int k = 0; k < p->spot_count; k++)
            fprintf(out, "%s%s%s", k > 0 ? ", " : "  ", p->spots[k].spot,
                    p->spots[k].fixed ? " (fixed)" : "");
        fputc('\n', out);
    }
}

static void put_count(FILE *out, int count, const char *one, bool last) {
    fprintf(out, "%d %s%s%s", count, one, count == 1 ? "" : "s", last ? "\n" : ", ");
}

static void print_text(FILE *out, const holdings *h) {
    fprintf(out, "%s\n", h->name[0] ? h->name : "A team without a name");
    fputs("  ", out);
    put_count(out, h->player_count, "player", false);
    put_count(out, h->splits, "sprint", false);
    put_count(out, h->game_count, "game", false);
    put_count(out, h->entries, "break", false);
    put_count(out, h->revisions, "scheme revision", false);
    put_count(out, h->quizzes, "quiz result", true);
    if (h->player_count > 0) fputs("\nRoster: jersey, initials, spots\n", out);
    print_players(out, h);
    if (h->game_count > 0) fputs("\nGames: number, day, opponent, field\n", out);
    for (int i = 0; i < h->game_count; i++)
        fprintf(out, "  %2lld  %s  %-28s  %s\n", (long long)h->games[i].id, h->games[i].date,
                h->games[i].opponent, h->games[i].field);
}

static void json_games(bw_json *json, const holdings *h) {
    bw_json_put_open(json, "games", '[');
    for (int i = 0; i < h->game_count; i++) {
        bw_json_open(json, '{');
        bw_json_put_number(json, "game", (double)h->games[i].id);
        bw_json_put_text(json, "date", h->games[i].date);
        bw_json_put_text(json, "opponent", h->games[i].opponent);
        bw_json_put_text(json, "field", h->games[i].field);
        bw_json_close(json, '}');
    }
    bw_json_close(json, ']');
}

static void print_json(FILE *out, const holdings *h) {
    const struct {
        const char *key;
        int count;
    } counts[] = {{"splits", h->splits},
                  {"breaks", h->entries},
                  {"revisions", h->revisions},
                  {"quiz_results", h->quizzes}};
    bw_json json = bw_json_to(out);
    bw_json_open(&json, '{');
    bw_json_put_text(&json, "team", h->name);
    bw_json_put_bool(&json, "full_names", h->full_names);
    for (int i = 0; i < BW_COUNT(counts); i++) {
        bw_json_key(&json, counts[i].key);
        bw_json_number(&json, counts[i].count);
    }
    bw_json_put_open(&json, "players", '[');
    for (int i = 0; i < h->player_count; i++)
        bw_json_player(&json, &h->players[i]);
    bw_json_close(&json, ']');
    json_games(&json, h);
    bw_json_close(&json, '}');
    bw_json_end(&json);
}

int bw_team_show(const bw_args *args) {
    holdings h = {0};
    bw_team *team;
    bw_error error;
    bw_out out;
    int code = bw_open_team(args, BW_TEAM_READ, &team);
    if (code != BW_EXIT_OK) return code;
    if (gather(team, &h, &error) != BW_OK) {
        code = bw_team_refusal(team, args->operands[0], &error);
    } else {
        bw_team_close(team);
        code = BW_EXIT_FILE;
        if (bw_out_open(args, &out)) {
            (bw_option_given(args, "json") ? print_json : print_text)(out.stream, &h);
            code = bw_out_close(&out, BW_EXIT_OK);
        }
    }
    free(h.players);
    free(h.games);
    return code;
}
