/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli/log_list.h"
#include "cli/out.h"
#include "cli/say.h"
#include "cli/team_file.h"
#include "cli/term.h"
#include "file/json_stream.h"
#include "report/team_json.h"
#include "team/breaks.h"
#include "trial/season.h"
#include <limits.h>
#include <stdlib.h>
#include <string.h>

/// "2026-04-11, against Gullhaven Petrels (game 3)"; the day of the clock for a break without a game.
static void print_game(FILE *out, const bw_entry *e, const bw_game *game) {
    char time[32];
    bw_text t = bw_text_in(time, sizeof time);
    if (game && game->id) {
        fprintf(out, "%s, against %s (game %lld)\n", game->date, game->opponent,
                (long long)game->id);
        return;
    }
    if (e->time > 0) bw_put_time(&t, e->time);
    fprintf(out, "%.10s%sno game\n", time, time[0] ? ", " : "");
}

/// "   17  6v4  shot saved, 7 s, 3 passes, shot from 4.0 yd left, 9.0 yd out, out of place: TL  (note)".
static void print_entry(FILE *out, const bw_entry *e, bw_units units) {
    char line[512];
    bw_text t = bw_text_in(line, sizeof line);
    bw_say_entry(e, units, &t);
    fprintf(out, "%5lld  %dv%d  %s", (long long)e->order, e->offence, e->defence, line);
    if (e->note[0]) fprintf(out, "  (%s)", e->note);
    fputc('\n', out);
}

int bw_print_entry(const bw_args *args, const bw_entry *entry, const bw_game *game,
                   const char *done) {
    bw_out out;
    if (!bw_out_open(args, &out)) return BW_EXIT_FILE;
    if (bw_option_given(args, "json")) {
        bw_json json = bw_json_to(out.stream);
        bw_json_entry(&json, entry, game, bw_team_units(args));
        bw_json_end(&json);
    } else {
        print_game(out.stream, entry, game);
        print_entry(out.stream, entry, bw_team_units(args));
    }
    if (bw_out_close(&out, BW_EXIT_OK) == BW_EXIT_OK) return BW_EXIT_OK;
    bw_say("Break %lld is %s; only the line that tells of it could not be written, so here it is:",
           (long long)entry->order, done);
    FILE *talk = bw_term_open(stderr);
    if (!talk) return BW_EXIT_OK;
    print_game(talk, entry, game);
    print_entry(talk, entry, bw_team_units(args));
    bw_term_close(talk);
    return BW_EXIT_OK; // a script that tried again would count it twice
}

/// Breaks with the games they belong to.
typedef struct listing {
    bw_entry *entries;
    int count;
    bw_game *games;
    int game_count;
} listing;

static const bw_game *game_of(const listing *l, const bw_entry *e) {
    for (int i = 0; i < l->game_count; i++) {
        if (l->games[i].id == e->game) return &l->games[i];
    }
    return NULL;
}

/// Whether a line of game and day stands before entry i.
static bool begins(const listing *l, int first, int i) {
    enum { DAY = 86400 };
    const bw_entry *e = &l->entries[i], *before = e - 1;
    if (i == first || e->game != before->game) return true;
    return e->game == 0 && e->time / DAY != before->time / DAY;
}

static int print_list(const bw_args *args, const listing *l, int first) {
    const bw_units units = bw_team_units(args);
    bw_out out;
    if (!bw_out_open(args, &out)) return BW_EXIT_FILE;
    if (!bw_option_given(args, "json")) {
        for (int i = first; i < l->count; i++) {
            const bw_entry *e = &l->entries[i];
            if (begins(l, first, i)) print_game(out.stream, e, game_of(l, e));
            print_entry(out.stream, e, units);
        }
        return bw_out_close(&out, BW_EXIT_OK);
    }
    bw_json json = bw_json_to(out.stream);
    bw_json_open(&json, '{');
    bw_json_put_open(&json, "breaks", '[');
    for (int i = first; i < l->count; i++)
        bw_json_entry(&json, &l->entries[i], game_of(l, &l->entries[i]), units);
    bw_json_close(&json, ']');
    bw_json_close(&json, '}');
    bw_json_end(&json);
    return bw_out_close(&out, BW_EXIT_OK);
}

int bw_log_list(const bw_args *args) {
    int game = 0, last = 0;
    bw_team *team;
    bw_error error;
    listing l = {0};
    if (!bw_option_int(args, "game", 1, INT_MAX, &game) ||
        !bw_option_int(args, "last", 1, 999999, &last))
        return BW_EXIT_USAGE;
    int code = bw_open_team(args, BW_TEAM_READ, &team);
    if (code != BW_EXIT_OK) return code;
    const bw_entry_filter filter = {.game = game};
    bw_status status = bw_team_games(team, &l.games, &l.game_count, &error);
    if (status == BW_OK) status = bw_team_entries(team, &filter, &l.entries, &l.count, &error);
    if (status == BW_OK) {
        bw_team_close(team);
        code = print_list(args, &l, last > 0 && last < l.count ? l.count - last : 0);
        if (l.count == 0) bw_say("There is no break in the log yet.");
    } else {
        code = bw_team_refusal(team, args->operands[0], &error);
    }
    free(l.entries);
    free(l.games);
    return code;
}
