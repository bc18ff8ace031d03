/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The verb `team`: its table. What each action does stands in team_*.c.
#include "cli/action.h"
#include "cli/care.h"
#include "cli/team_file.h"
#include "core/sprint.h"

static const char *sheet_choice(int index) {
    return bw_sheet_id(index);
}

static const char *clock_choice(int index) {
    return index < BW_CLOCK_COUNT ? bw_clock_id((bw_clock)index) : NULL;
}

static const bw_option options[] = {
    {.name = "name", .value = "NAME", .help = "What the team is called, or a player's full name"},
    {.name = "initials", .value = "TEXT", .help = "A player's initials"},
    {.name = "spots", .value = "LIST", .help = "Spots he can play, best first, such as \"TL,M\""},
    {.name = "fixed", .value = "LIST", .help = "Spots the coach has settled that he plays"},
    {.name = "date", .value = "DAY", .help = "Such as 2026-04-11; today when not given"},
    {.name = "clock",
     .value = "START",
     .choice = clock_choice,
     .standard = "signal",
     .help =
         "When the clock of a sprint started: at the first movement, at a signal, or at a light "
         "gate"},
    {.name = "field", .value = "PLACE", .help = "Where a game was played"},
    {.name = "note", .value = "TEXT", .help = "Why the scheme was changed"},
    {.name = "revision", .value = "N", .help = "Which revision of the scheme to write out"},
    {.name = "stage",
     .value = "N",
     .help = "The stage a line-up is for; four defenders when there is one"},
    {.name = "by",
     .value = "AIM",
     .choice = bw_who_aim_choice,
     .help = "What a line-up is chosen by: margin (the tightest run as loose as can be) or worth"},
    {.name = "apply",
     .value = "ON",
     .choice = bw_on_off_choice,
     .help = "Keep what the log says (on) for test --team, or take it out again (off)"},
    {.name = "sheet", .value = "SHEET", .choice = sheet_choice, .help = "Which sheet is meant"},
    {.name = "keep-odd", .help = bw_keep_odd_help},
    {.name = "list", .help = "Only list the places that speak of the player; change nothing"},
    {.name = "seen", .value = "CODE", .help = "The code of the list whose numbers are meant"},
    {.name = "strike",
     .value = "PLACES",
     .help = "Places of the list that go, such as 1,3-5, or all; unsure ones not named stay"},
    {.name = "leave",
     .value = "PLACES",
     .help = "Places of the list that stay, such as 2, or all; those not named go"},
    {.name = "force", .help = "Replace a file that is there already"},
};

static const bw_action actions[] = {
    {"new", "FILE", 1, 1, "name", "make a new, empty team file", bw_team_new, NULL},
    {"show", "FILE", 1, 1, "", "say what a team file holds", bw_team_show, NULL},
    {"set", "FILE NAME [VALUE]", 2, 3, "",
     "settings: team (its name), about (a line that stands on every review), full-names (on or "
     "off); "
     "without a value, say it",
     bw_team_set_option, NULL},
    {"player", "FILE JERSEY", 2, 2, "initials name spots fixed keep-odd",
     "put a player on the roster or change him; without options, show him", bw_team_edit_player,
     NULL},
    {"split", "FILE JERSEY DISTANCE=SECONDS ...", 3, 7, "date clock keep-odd",
     "add timed sprints, such as 20=3.1, distances in --units", bw_team_edit_splits, NULL},
    {"game", "FILE DAY OPPONENT", 3, 3, "field keep-odd", "put a game in, and say its number",
     bw_team_edit_game, NULL},
    {"scheme", "FILE [SCHEME]", 1, 2, "note revision",
     "save a scheme as a new revision; without one, list them, or write out --revision N",
     bw_team_edit_scheme, NULL},
    {"quiz", "FILE [JERSEY CODE]", 1, 3, "",
     "keep the result code a player's hand-out shows; without one, list what came in",
     bw_team_edit_quiz, NULL},
    {"legs", "FILE [SCHEME]", 1, 2, "",
     "each player's top speed and start from his sprints, and his time to spare on his spots",
     bw_team_show_legs, NULL},
    {"lineup", "FILE [SCHEME]", 1, 2, "stage by",
     "who goes where in a stage and in which order the late men come, with what each choice is "
     "worth",
     bw_team_choose_lineup, NULL},
    {"feedback", "FILE", 1, 1, "apply",
     "what the log says of the level's own figures, before and after; --apply on keeps it",
     bw_team_give_feedback, NULL},
    {"import", "FILE SHEET", 2, 2, "sheet keep-odd", "take in a CSV sheet: all its rows or none",
     bw_team_import_sheet, NULL},
    {"export", "FILE", 1, 1, "sheet", "write a CSV sheet", bw_team_export_sheet, NULL},
    {"backup", "FILE COPY", 2, 2, "force", "make a whole copy, even while the file is in use",
     bw_team_make_backup, NULL},
    {"restore", "FILE COPY", 2, 2, "force", "put a copy back in place of the file",
     bw_team_put_back, NULL},
    {"check", "FILE", 1, 1, "", "look at every page and reference; bring an older file up to date",
     bw_team_check_file, NULL},
    {"forget", "FILE JERSEY", 2, 2, "name list seen strike leave",
     "remove a player and all that is his, for good", bw_team_forget_player, NULL},
    {"scrub", "FILE", 1, 1, "", "write the file anew without traces of what was deleted",
     bw_team_scrub_file, NULL},
};

const bw_command bw_command_team = {
    .name = "team",
    .operands = "ACTION FILE [WORDS]",
    .least = 2,
    .most = 8,
    .of_players = true,
    .summary = "keep the team file: roster, splits, games, schemes, copies of it",
    .text =
        "One file holds a team: its schemes with every revision, the roster, timed sprints, "
        "games, logged breaks and quiz results. It stays on this machine; nothing leaves it "
        "unless you export it.\n\n"
        "Players are jersey numbers, with initials if you want them. Full names are kept only "
        "after: team set FILE full-names on. To forget a player removes him, his sprints and "
        "his quiz results, his number from breaks and his whole name from every text, and writes "
        "the file anew. What may mean him and may not (a part of his name, his initials, #12) is "
        "shown for you to decide, one by one; in a script, first --list, then --seen with --strike "
        "or --leave. --name looks for a name that the roster does not have. Copies and exports "
        "made "
        "before still have him.\n\n"
        "Back the file up with team backup, not by copying it while it is in use.",
    .examples = "breakwater team new terns.team --name \"Port Merrow Terns\" # an empty team file\n"
                "breakwater team import terns.team roster.csv --sheet roster # everyone at once\n"
                "breakwater team player terns.team 12 --initials A.B. --spots TL,M # one player\n"
                "breakwater team split terns.team 12 10=1.9 20=3.1 --clock gate # his sprints\n"
                "breakwater team scheme terns.team harbour.json --note \"wings higher\" # a new "
                "revision\n"
                "breakwater team backup terns.team terns-copy.team # a whole copy\n"
                "breakwater team forget terns.team 12 --list # what speaks of him\n"
                "breakwater team forget terns.team 12 # for good\n",
    .options = options,
    .option_count = BW_COUNT(options),
    .run = bw_action_run,
    .actions = actions,
    .action_count = BW_COUNT(actions),
};
