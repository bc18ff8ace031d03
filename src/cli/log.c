/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The verb `log`: breaks put in, listed, put right and taken back.
#include "cli/action.h"
#include "cli/care.h"
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

/// A break being stored, with what it is held against.
typedef struct storing {
    const bw_args *args;
    bw_team *team;
    bw_known *known;
    bw_entry entry;
    bw_game game; ///< id 0: none
    int added;
} storing;

static bool odd_stops(const storing *s) {
    bw_odd odd;
    const bw_game *game = s->game.id ? &s->game : NULL;
    return bw_odd_entry(s->known, &s->entry, game, &odd) && !bw_keep_odd(s->args, &odd);
}

/// Game, revision and the break.
static int put_new(storing *s) {
    bw_error error;
    const char *path = s->args->operands[0];
    const int code = bw_load_game(s->args, s->team, s->known, &s->game);
    if (code != BW_EXIT_OK) return code;
    s->entry.game = s->game.id;
    bw_status status = BW_OK;
    if (!bw_option_given(s->args, "revision"))
        status = newest_revision(s->team, &s->entry.revision, &error);
    if (status == BW_OK)
        status = bw_team_add_entries(s->team, &s->entry, 1, NULL, &s->added, &error);
    if (status != BW_OK) return bw_say_refusal(path, &error);
    return s->added > 0 && odd_stops(s) ? BW_EXIT_WRONG : BW_EXIT_OK;
}

/// One change with all that belongs to it, whole or not at all.
static int store(storing *s, int (*put)(storing *)) {
    bw_error error;
    const char *path = s->args->operands[0];
    if (bw_team_begin(s->team, &error) != BW_OK) return bw_say_refusal(path, &error);
    bw_status status = bw_known_load(s->team, bw_now(), &s->known, &error);
    int code = status == BW_OK ? put(s) : bw_say_refusal(path, &error);
    bw_known_drop(s->known);
    status = bw_team_end(s->team, code == BW_EXIT_OK ? BW_OK : BW_BAD_INPUT, &error);
    if (code == BW_EXIT_OK && status != BW_OK) code = bw_say_refusal(path, &error);
    return code;
}

static int add(const bw_args *args) {
    storing s = {.args = args, .entry = bw_entry_default()};
    // A break of a game that is named may be put in long after it.
    if (!bw_option_given(args, "game") && !bw_option_given(args, "date")) s.entry.time = bw_now();
    if (!take_id(args, &s.entry)) return BW_EXIT_USAGE;
    if (!bw_load_entry(args, 1, false, &s.entry)) return BW_EXIT_USAGE;
    int code = bw_open_team(args, BW_TEAM_WRITE, &s.team);
    if (code != BW_EXIT_OK) return code;
    code = store(&s, put_new);
    bw_team_close(s.team);
    if (code != BW_EXIT_OK) return code;
    if (s.added > 0) return bw_print_entry(args, &s.entry, &s.game, "kept");
    if (s.entry.order > 0)
        bw_say("This break is number %lld already; nothing was changed.", (long long)s.entry.order);
    else
        bw_say("This break was removed before; it stays removed.");
    return BW_EXIT_OK;
}

/// The break's game as it is now; id 0 without one.
static bw_status game_of(bw_team *team, const bw_entry *e, bw_game *game, bw_error *error) {
    *game = (bw_game){.id = 0};
    return e->game ? bw_team_game(team, e->game, game, error) : BW_OK;
}

static int put_changed(storing *s) {
    bw_error error;
    bw_game game, before_game;
    bw_odd odd, before_odd;
    const char *path = s->args->operands[0];
    bw_status status = bw_team_entry(s->team, s->entry.order, &s->entry, &error);
    if (status == BW_OK) status = game_of(s->team, &s->entry, &before_game, &error);
    if (status != BW_OK) return bw_say_refusal(path, &error);
    const bool before =
        bw_odd_entry(s->known, &s->entry, before_game.id ? &before_game : NULL, &before_odd);
    if (!bw_load_entry(s->args, 2, true, &s->entry)) return BW_EXIT_USAGE;
    const int code = bw_load_game(s->args, s->team, s->known, &game);
    if (code != BW_EXIT_OK) return code;
    s->game = game.id > 0 ? game : before_game;
    s->entry.game = s->game.id;
    status = bw_team_change_entry(s->team, &s->entry, &error);
    if (status != BW_OK) return bw_say_refusal(path, &error);
    // What was odd in it before is kept already.
    const bool now = bw_odd_entry(s->known, &s->entry, s->game.id ? &s->game : NULL, &odd);
    const bool same = now && before && strcmp(odd.message, before_odd.message) == 0;
    return now && !same && !bw_keep_odd(s->args, &odd) ? BW_EXIT_WRONG : BW_EXIT_OK;
}

static int edit(const bw_args *args) {
    int number;
    storing s = {.args = args};
    if (!bw_operand_int(args, 1, "the break's number", 1, 999999, &number)) return BW_EXIT_USAGE;
    int code = bw_open_team(args, BW_TEAM_WRITE, &s.team);
    if (code != BW_EXIT_OK) return code;
    s.entry.order = number;
    code = store(&s, put_changed);
    bw_team_close(s.team);
    return code == BW_EXIT_OK ? bw_print_entry(args, &s.entry, &s.game, "put right") : code;
}

/// Removes break `number`, or the newest when it is 0, and prints it so that it can be put in again.
static int take_back(const bw_args *args, int number) {
    bw_team *team;
    bw_error error;
    bw_entry e;
    const int code = bw_open_team(args, BW_TEAM_WRITE, &team);
    if (code != BW_EXIT_OK) return code;
    bw_game game;
    bw_status status = bw_team_entry(team, number, &e, &error);
    if (status == BW_OK) status = game_of(team, &e, &game, &error);
    if (status == BW_OK) status = bw_team_remove_entry(team, e.order, &error);
    if (status != BW_OK) return bw_team_refusal(team, args->operands[0], &error);
    bw_team_close(team);
    bw_say("Removed break %lld.", (long long)e.order);
    return bw_print_entry(args, &e, &game, "taken back");
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
    {.name = "keep-odd", .help = bw_keep_odd_help},
    {.name = "last", .value = "N", .help = "Only the last N breaks"},
};

#define TELLING "seconds passes shot out stage revision game against date time note keep-odd"

static const char *outcome_choice(int index) {
    return bw_outcome_id((bw_outcome)index);
}

static const bw_action actions[] = {
    {"add", "NvN OUTCOME", 3, 3, TELLING " id", "put a break in, such as 6v4 save", add,
     outcome_choice},
    {"list", "", 1, 1, "game last", "list breaks in the order they were put in", bw_log_list, NULL},
    {"edit", "N [NvN] [OUTCOME]", 2, 4, TELLING, "put break number N right", edit, outcome_choice},
    {"undo", "", 1, 1, "", "take back the newest break", undo, NULL},
    {"remove", "N", 2, 2, "", "take back break number N", drop, NULL},
    {"import", "SHEET", 2, 2, "keep-odd", "take in a CSV sheet of breaks: all its rows or none",
     import, NULL},
    {"export", "", 1, 1, "", "write the breaks as a CSV sheet", export, NULL},
};

const bw_command bw_command_log = {
    .name = "log",
    .operands = "FILE ACTION [WORDS]",
    .least = 2,
    .most = 6,
    .of_players = true,
    .summary = "keep the log of breaks that were seen in games",
    .text =
        "A break is told in a few words: how many against how many, and how it ended: goal, "
        "save, wide, forced (a turnover the defence forced), unforced, ground-ball, matched-up "
        "(even numbers before a shot) or whistle. The rest is optional.\n\n"
        "Places are in yards, or in metres with --units m: x to the right of a defender looking "
        "out from the goal, y up-field.\n\n"
        "What is hardly meant is not taken without a word: an opponent whose name is near "
        "another's, "
        "a spot no scheme has, a shot off the field. The sentence says what; --keep-odd keeps "
        "it.\n\n"
        "Every break has an id of its own. One that is sent twice, from a phone or a sheet, is "
        "there once; one that was removed does not come back.\n\n"
        "Once a break is kept, put right or taken back the exit code is 0, also when the line that "
        "tells of it cannot be written (a full disk): standard error then says so, and a script "
        "that tries again after a failure never counts a break twice.",
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
