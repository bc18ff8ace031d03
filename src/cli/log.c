/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The verb `log`: breaks put in, listed, put right and taken back.
#include "cli/action.h"
#include "cli/log_entry.h"
#include "cli/log_list.h"
#include "cli/say.h"
#include "cli/team_file.h"
#include "core/text.h"
#include "team/breaks.h"
#include "team/revisions.h"
#include <stdlib.h>
#include <string.h>

static int newest_revision(bw_team *team, int64_t *revision, bw_error *error) {
    bw_revision *list;
    int count;
    const bw_status status = bw_team_revisions(team, &list, &count, error);
    if (status == BW_OK && count > 0) *revision = list[count - 1].id;
    free(list);
    return status;
}

static bool take_id(const bw_args *args, bw_entry *e) {
    const char *id = bw_option_text(args, "id");
    if (!id) {
        if (bw_make_client(e)) return true;
        bw_say_error("this machine gives no random numbers; name the break with --id.");
        return false;
    }
    if (bw_copy(e->client, sizeof e->client, id)) return true;
    bw_usage(args->verb, "--id is at most %d letters and digits.", BW_CLIENT_SIZE - 1);
    return false;
}

/// Game, revision and the break in one change.
static int store_new(const bw_args *args, bw_team *team, bw_entry *e, int *added) {
    bw_error error;
    const char *path = args->operands[0];
    if (bw_team_begin(team, &error) != BW_OK) return bw_say_refusal(path, &error);
    int code = bw_load_game(args, team, &e->game);
    bw_status status = code == BW_EXIT_OK ? BW_OK : BW_BAD_INPUT;
    if (status == BW_OK && !bw_option_given(args, "revision"))
        status = newest_revision(team, &e->revision, &error);
    if (status == BW_OK) status = bw_team_add_entries(team, e, 1, NULL, added, &error);
    status = bw_team_end(team, status, &error);
    if (code != BW_EXIT_OK || status == BW_OK) return code;
    return bw_say_refusal(path, &error);
}

static int add(const bw_args *args) {
    bw_entry e = bw_entry_default();
    bw_team *team;
    int added;
    // A break of a game that is named may be put in long after it.
    if (!bw_option_given(args, "game") && !bw_option_given(args, "date")) e.time = bw_now();
    if (!take_id(args, &e)) return BW_EXIT_USAGE;
    if (!bw_load_entry(args, 1, false, &e)) return BW_EXIT_USAGE;
    int code = bw_open_team(args, BW_TEAM_WRITE, &team);
    if (code != BW_EXIT_OK) return code;
    code = store_new(args, team, &e, &added);
    bw_team_close(team);
    if (code != BW_EXIT_OK) return code;
    if (added == 0 && e.order > 0)
        bw_say("This break is number %lld already; nothing was changed.", (long long)e.order);
    else if (added == 0)
        bw_say("This break was removed before; it stays removed.");
    return added == 0 ? BW_EXIT_OK : bw_print_entry(args, &e);
}

static int store_changed(const bw_args *args, bw_team *team, bw_entry *e) {
    bw_error error;
    int64_t game;
    bw_status status = bw_team_entry(team, e->order, e, &error);
    if (status != BW_OK) return bw_say_refusal(args->operands[0], &error);
    if (!bw_load_entry(args, 2, true, e)) return BW_EXIT_USAGE;
    const int code = bw_load_game(args, team, &game);
    if (code != BW_EXIT_OK) return code;
    if (game > 0) e->game = game;
    status = bw_team_change_entry(team, e, &error);
    return status == BW_OK ? BW_EXIT_OK : bw_say_refusal(args->operands[0], &error);
}

static int edit(const bw_args *args) {
    int number;
    bw_team *team;
    bw_error error;
    if (!bw_operand_int(args, 1, "the break's number", 1, 999999, &number)) return BW_EXIT_USAGE;
    int code = bw_open_team(args, BW_TEAM_WRITE, &team);
    if (code != BW_EXIT_OK) return code;
    bw_entry e = {.order = number};
    if (bw_team_begin(team, &error) != BW_OK)
        return bw_team_refusal(team, args->operands[0], &error);
    code = store_changed(args, team, &e);
    const bw_status status = bw_team_end(team, code == BW_EXIT_OK ? BW_OK : BW_BAD_INPUT, &error);
    if (code == BW_EXIT_OK && status != BW_OK) code = bw_say_refusal(args->operands[0], &error);
    bw_team_close(team);
    return code == BW_EXIT_OK ? bw_print_entry(args, &e) : code;
}

/// Removes break `number`, or the newest when it is 0, and prints it so that it can be put in again.
static int take_back(const bw_args *args, int number) {
    bw_team *team;
    bw_error error;
    bw_entry e;
    const int code = bw_open_team(args, BW_TEAM_WRITE, &team);
    if (code != BW_EXIT_OK) return code;
    bw_status status = bw_team_entry(team, number, &e, &error);
    if (status == BW_OK) status = bw_team_remove_entry(team, e.order, &error);
    if (status != BW_OK) return bw_team_refusal(team, args->operands[0], &error);
    bw_team_close(team);
    bw_say("Removed break %lld.", (long long)e.order);
    return bw_print_entry(args, &e);
}

static int undo(const bw_args *args) {
    return take_back(args, 0);
}

static int drop(const bw_args *args) {
    int number;
    if (!bw_operand_int(args, 1, "the break's number", 1, 999999, &number)) return BW_EXIT_USAGE;
    return take_back(args, number);
}

static int import(const bw_args *args) {
    bw_team *team;
    const int code = bw_open_team(args, BW_TEAM_WRITE, &team);
    if (code != BW_EXIT_OK) return code;
    return bw_import_sheet(args, team, BW_SHEET_BREAKS, args->operands[1]);
}

static int export(const bw_args *args) {
    return bw_export_sheet(args, BW_SHEET_BREAKS);
}

static const bw_option options[] = {
    {.name = "seconds", .value = "N", .help = "How long it lasted, from the start to the outcome"},
    {.name = "passes", .value = "N", .help = "Passes the offence completed"},
    {.name = "shot",
     .value = "X,Y",
     .help = "Where the shot was taken, such as 4,9; \"\" takes it out"},
    {.name = "out",
     .value = "LIST",
     .help = "Who was out of place: spot codes or jersey numbers, such as \"TL,12\""},
    {.name = "stage", .value = "N", .help = "Defenders of the stage that was called, 3 to 6"},
    {.name = "revision",
     .value = "N",
     .help = "Scheme revision that was played; the newest in the file when not given, 0 for none"},
    {.name = "game", .value = "N", .help = "Number of the game in the team file"},
    {.name = "against", .value = "OPPONENT", .help = "Opponent of the game, instead of its number"},
    {.name = "date", .value = "DAY", .help = "Day of that game; today when not given"},
    {.name = "time",
     .value = "TIME",
     .help =
         "When, in UTC, such as 2026-04-11T18:05Z; now when neither it nor a game or day is given"},
    {.name = "note", .value = "TEXT", .help = "One line"},
    {.name = "id",
     .value = "ID",
     .help = "Its own id: the same id is the same break, however often it is sent"},
    {.name = "last", .value = "N", .help = "Only the last N breaks"},
};

#define TELLING "seconds passes shot out stage revision game against date time note"

static const bw_action actions[] = {
    {"add", "NvN OUTCOME", 3, 3, TELLING " id", "put a break in, such as 6v4 save", add},
    {"list", "", 1, 1, "game last", "list breaks in the order they were put in", bw_log_list},
    {"edit", "N [NvN] [OUTCOME]", 2, 4, TELLING, "put break number N right", edit},
    {"undo", "", 1, 1, "", "take back the newest break", undo},
    {"remove", "N", 2, 2, "", "take back break number N", drop},
    {"import", "SHEET", 2, 2, "", "take in a CSV sheet of breaks: all its rows or none", import},
    {"export", "", 1, 1, "", "write the breaks as a CSV sheet", export},
};

const bw_command bw_command_log = {
    .name = "log",
    .operands = "FILE ACTION [WORDS]",
    .least = 2,
    .most = 6,
    .summary = "keep the log of breaks that were seen in games",
    .text =
        "A break is told in a few words: how many against how many, and how it ended: goal, "
        "save, wide, forced (a turnover the defence forced), unforced, ground-ball, matched-up "
        "(even numbers before a shot) or whistle. The rest is optional.\n\n"
        "Places are in yards, or in metres with --units m: x to the right of a defender looking "
        "out from the goal, y up-field.\n\n"
        "Every break has an id of its own. One that is sent twice, from a phone or a sheet, is "
        "there once; one that was removed does not come back.",
    .examples =
        "breakwater log terns.team add 6v4 save --seconds 7 --passes 3 --shot 4,9 --out TL "
        "# one break\n"
        "breakwater log terns.team add 5v4 forced --against \"Gullhaven Petrels\" # today's "
        "game\n"
        "breakwater log terns.team list --last 10 # what was put in last\n"
        "breakwater log terns.team edit 17 goal --note \"screened\" # put right\n"
        "breakwater log terns.team undo # take back the newest\n"
        "breakwater log terns.team export -o breaks.csv # for a spreadsheet\n",
    .options = options,
    .option_count = BW_COUNT(options),
    .run = bw_action_run,
    .actions = actions,
    .action_count = BW_COUNT(actions),
    .action_at = 1,
};
