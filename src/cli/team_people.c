/* SPDX-License-Identifier: GPL-3.0-or-later */
/// team player, split, game, import, export: who plays, how fast, and when.
#include "cli/care.h"
#include "cli/out.h"
#include "cli/say.h"
#include "cli/team_file.h"
#include "core/text.h"
#include "file/json_stream.h"
#include "report/team_json.h"
#include "team/games.h"
#include "team/roster.h"
#include "team/splits.h"
#include <string.h>

/// The spot in his list, put at its end when it is new. NULL when there is no room or it is too long.
static bw_player_spot *spot_of(bw_player *p, const char *code) {
    for (int i = 0; i < p->spot_count; i++) {
        if (strcmp(p->spots[i].spot, code) == 0) return &p->spots[i];
    }
    if (p->spot_count == BW_MAX_PLAYER_SPOTS) return NULL;
    bw_player_spot *spot = &p->spots[p->spot_count++];
    spot->fixed = false;
    return bw_copy(spot->spot, sizeof spot->spot, code) ? spot : NULL;
}

/// "TL,M" or "TL M".
static bool take_spots(const bw_args *args, const char *option, bool fixed, bw_player *p) {
    for (const char *at = bw_option_text(args, option); *at;) {
        const size_t length = strcspn(at, ", ");
        char code[16];
        bw_text text = bw_text_in(code, sizeof code);
        bw_put_n(&text, at, length);
        at += length + strspn(at + length, ", ");
        if (length == 0) continue;
        bw_player_spot *spot = spot_of(p, code);
        if (!spot) {
            bw_usage(args->verb, "--%s is at most 8 spot codes such as TL,M, not \"%s\".", option,
                     bw_option_text(args, option));
            return false;
        }
        spot->fixed = spot->fixed || fixed;
    }
    return true;
}

static bool take_text(const bw_args *args, const char *option, char *to, size_t room) {
    const char *text = bw_option_text(args, option);
    if (!text || bw_copy(to, room, text)) return true;
    bw_usage(args->verb, "--%s is at most %d bytes long.", option, (int)room - 1);
    return false;
}

static bool take_changes(const bw_args *args, bw_player *p) {
    if (!take_text(args, "initials", p->initials, sizeof p->initials) ||
        !take_text(args, "name", p->name, sizeof p->name))
        return false;
    if (bw_option_given(args, "spots")) {
        p->spot_count = 0;
        if (!take_spots(args, "spots", false, p)) return false;
    }
    if (!bw_option_given(args, "fixed")) return true;
    for (int i = 0; i < p->spot_count; i++)
        p->spots[i].fixed = false;
    return take_spots(args, "fixed", true, p);
}

static void text_player(FILE *out, const bw_player *p) {
    fprintf(out, "%d", p->jersey);
    if (p->initials[0]) fprintf(out, " %s", p->initials);
    if (p->name[0]) fprintf(out, " (%s)", p->name);
    for (int i = 0; i < p->spot_count; i++)
        fprintf(out, "%s%s%s", i > 0 ? ", " : ": ", p->spots[i].spot,
                p->spots[i].fixed ? " (fixed)" : "");
    fputc('\n', out);
}

static int print_player(const bw_args *args, const bw_player *p) {
    bw_out out;
    if (!bw_out_open(args, &out)) return BW_EXIT_FILE;
    if (bw_option_given(args, "json")) {
        bw_json json = bw_json_to(out.stream);
        bw_json_player(&json, p);
        bw_json_end(&json);
    } else {
        text_player(out.stream, p);
    }
    return bw_out_close(&out, BW_EXIT_OK);
}

/// What the file knows; NULL after saying why not.
static bw_known *load_known(const bw_args *args, bw_team *team) {
    bw_known *known;
    bw_error error;
    if (bw_known_load(team, bw_now(), &known, &error) != BW_OK)
        bw_say_refusal(args->operands[0], &error);
    return known;
}

/// Whether something odd that was not odd in him before stops the change (said).
static bool player_stops(const bw_args *args, bw_team *team, const bw_player *before,
                         const bw_player *p) {
    bw_odd odd, old;
    bw_known *known = load_known(args, team);
    if (!known) return true;
    const bool is = bw_odd_player(known, p, &odd);
    const bool was = bw_odd_player(known, before, &old) && strcmp(old.message, odd.message) == 0;
    bw_known_drop(known);
    return is && !was && !bw_keep_odd(args, &odd);
}

/// Puts the player with p->jersey in, or changes him; *p is he as he is then.
static int change_player(const bw_args *args, bw_team *team, bw_player *p) {
    bw_error error;
    bw_player before = {.jersey = p->jersey};
    bw_status status = bw_team_player(team, before.jersey, &before, &error);
    *p = before;
    if (status == BW_NOT_FOUND) status = BW_OK;
    if (status == BW_OK && !take_changes(args, p)) return BW_EXIT_USAGE;
    if (status == BW_OK) status = bw_team_put_player(team, p, &error);
    if (status != BW_OK) return bw_say_refusal(args->operands[0], &error);
    return player_stops(args, team, &before, p) ? BW_EXIT_WRONG : BW_EXIT_OK;
}

int bw_team_edit_player(const bw_args *args) {
    int jersey;
    bw_team *team;
    bw_error error;
    if (!bw_operand_int(args, 1, "the jersey number", 0, BW_MAX_JERSEY, &jersey))
        return BW_EXIT_USAGE;
    const bool change = bw_option_given(args, "initials") || bw_option_given(args, "name") ||
                        bw_option_given(args, "spots") || bw_option_given(args, "fixed");
    int code = bw_open_team(args, change ? BW_TEAM_WRITE : BW_TEAM_READ, &team);
    if (code != BW_EXIT_OK) return code;
    bw_player p;
    if (!change) {
        const bw_status status = bw_team_player(team, jersey, &p, &error);
        if (status != BW_OK) return bw_team_refusal(team, args->operands[0], &error);
        bw_team_close(team);
        return print_player(args, &p);
    }
    p.jersey = jersey;
    if (bw_team_begin(team, &error) != BW_OK)
        return bw_team_refusal(team, args->operands[0], &error);
    code = change_player(args, team, &p);
    const bw_status status = bw_team_end(team, code == BW_EXIT_OK ? BW_OK : BW_BAD_INPUT, &error);
    if (code == BW_EXIT_OK && status != BW_OK) code = bw_say_refusal(args->operands[0], &error);
    bw_team_close(team);
    return code == BW_EXIT_OK ? print_player(args, &p) : code;
}

/// "20=3.1" in the people's unit.
static bool take_split(const bw_args *args, int operand, bw_timed_split *s) {
    const char *text = args->operands[operand], *at = text;
    if (bw_scan_decimal(&at, &s->distance) && *at++ == '=' && bw_scan_decimal(&at, &s->seconds) &&
        *at == '\0') {
        s->distance *= bw_unit_length(bw_team_units(args));
        return true;
    }
    bw_usage(args->verb, "a sprint is DISTANCE=SECONDS such as 20=3.1, not \"%s\".", text);
    return false;
}

static bool splits_stop(const bw_args *args, bw_team *team, const bw_timed_split *splits,
                        int count) {
    bw_odd odd;
    bool stop = false;
    bw_known *known = load_known(args, team);
    if (!known) return true;
    for (int i = 0; i < count && !stop; i++)
        stop = bw_odd_split(known, &splits[i], &odd) && !bw_keep_odd(args, &odd);
    bw_known_drop(known);
    return stop;
}

int bw_team_edit_splits(const bw_args *args) {
    bw_timed_split splits[BW_MAX_OPERANDS];
    int jersey, added;
    if (!bw_operand_int(args, 1, "the jersey number", 0, BW_MAX_JERSEY, &jersey))
        return BW_EXIT_USAGE;
    const int count = args->operand_count - 2;
    for (int i = 0; i < count; i++) {
        splits[i] = (bw_timed_split){.jersey = jersey};
        if (!bw_option_date(args, splits[i].date, sizeof splits[i].date) ||
            !take_split(args, i + 2, &splits[i]))
            return BW_EXIT_USAGE;
        bw_copy(splits[i].clock, sizeof splits[i].clock, bw_option_text(args, "clock"));
    }
    bw_team *team;
    bw_error error;
    const int code = bw_open_team(args, BW_TEAM_WRITE, &team);
    if (code != BW_EXIT_OK) return code;
    if (splits_stop(args, team, splits, count)) {
        bw_team_close(team);
        return BW_EXIT_WRONG;
    }
    if (bw_team_add_splits(team, splits, count, &added, &error) != BW_OK)
        return bw_team_refusal(team, args->operands[0], &error);
    bw_team_close(team);
    bw_say("%d sprint%s of number %d kept, %d known already.", added, added == 1 ? "" : "s", jersey,
           count - added);
    const bw_fact facts[] = {{"added", added, NULL}, {"known", count - added, NULL}};
    return bw_tell_facts(args, facts, BW_COUNT(facts));
}

static bool game_stops(const bw_args *args, bw_team *team, const bw_game *game) {
    bw_odd odd;
    bw_known *known = load_known(args, team);
    if (!known) return true;
    const bool is = bw_odd_game(known, game, &odd);
    bw_known_drop(known);
    return is && !bw_keep_odd(args, &odd);
}

int bw_team_edit_game(const bw_args *args) {
    bw_game game = {0};
    bw_team *team;
    bw_error error;
    if (!bw_copy(game.date, sizeof game.date, args->operands[1]) || !bw_date_good(game.date))
        return bw_usage(args->verb, "a day is written like 2026-04-11, not \"%s\".",
                        args->operands[1]);
    if (!bw_copy(game.opponent, sizeof game.opponent, args->operands[2]))
        return bw_usage(args->verb, "an opponent is at most %d bytes long.", BW_NAME_SIZE - 1);
    if (!take_text(args, "field", game.field, sizeof game.field)) return BW_EXIT_USAGE;
    const int code = bw_open_team(args, BW_TEAM_WRITE, &team);
    if (code != BW_EXIT_OK) return code;
    if (game_stops(args, team, &game)) {
        bw_team_close(team);
        return BW_EXIT_WRONG;
    }
    if (bw_team_put_game(team, &game, &error) != BW_OK)
        return bw_team_refusal(team, args->operands[0], &error);
    bw_team_close(team);
    bw_say("Game %lld %s: %s, against %s.", (long long)game.id,
           game.fresh ? "is new" : "was known already", game.date, game.opponent);
    bw_out out;
    if (!bw_out_open(args, &out)) return BW_EXIT_FILE;
    fprintf(out.stream, bw_option_given(args, "json") ? "{\"game\":%lld}\n" : "%lld\n",
            (long long)game.id);
    return bw_out_close(&out, BW_EXIT_OK);
}

/// --sheet, which both need. -1 after saying so.
static int sheet_of(const bw_args *args) {
    const char *id = bw_option_text(args, "sheet");
    if (!id) {
        bw_usage(args->verb, "say which sheet: --sheet roster, splits or breaks.");
        return -1;
    }
    int sheet = 0;
    while (strcmp(bw_sheet_id(sheet), id) != 0)
        sheet++;
    return sheet;
}

int bw_team_import_sheet(const bw_args *args) {
    bw_team *team;
    const int sheet = sheet_of(args);
    if (sheet < 0) return BW_EXIT_USAGE;
    const int code = bw_open_team(args, BW_TEAM_WRITE, &team);
    if (code != BW_EXIT_OK) return code;
    return bw_import_sheet(args, team, (bw_csv_sheet)sheet, args->operands[1]);
}

int bw_team_export_sheet(const bw_args *args) {
    const int sheet = sheet_of(args);
    return sheet < 0 ? BW_EXIT_USAGE : bw_export_sheet(args, (bw_csv_sheet)sheet);
}
