/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What `team` and `log` share: opening the team file, reading a sheet, units, days.
#ifndef BW_CLI_TEAM_FILE_H
#define BW_CLI_TEAM_FILE_H

#include "cli/options.h"
#include "core/scheme.h"
#include "team/import.h"
#include "team/team.h"

/// Opens the team file the action names first. BW_EXIT_OK, or the code after saying why.
int bw_open_team(const bw_args *args, bw_team_mode mode, bw_team **team);

/// Says why something failed with this file, closes it (NULL: not open), and returns the exit code.
int bw_team_refusal(bw_team *team, const char *path, const bw_error *error);

/// --units; yards when not given.
bw_units bw_team_units(const bw_args *args);

/// A whole number among the operands. False when it is none, which has been said.
bool bw_operand_int(const bw_args *args, int operand, const char *what, int low, int high,
                    int *out);

/// --date when it is given, otherwise today where this machine is. False when it is no day (said).
bool bw_option_date(const bw_args *args, char *date, size_t room);

/// Seconds since 1970 by this machine's clock.
int64_t bw_now(void);

/// One thing an action tells with --json: a number, or a text when it is not NULL.
typedef struct bw_fact {
    const char *key;
    double number;
    const char *text;
} bw_fact;

/// With --json, the facts as the result; without it nothing. Returns the exit code.
int bw_tell_facts(const bw_args *args, const bw_fact *facts, int count);

/// Imports a CSV file ("-": standard input) and tells what came of it; closes the team file.
int bw_import_sheet(const bw_args *args, bw_team *team, bw_csv_sheet sheet, const char *path);

/// Exports a sheet to --output or standard output.
int bw_export_sheet(const bw_args *args, bw_csv_sheet sheet);

/// What a line-up can be chosen by; NULL past the last.
const char *bw_who_aim_choice(int index);
const char *bw_on_off_choice(int index);

/// The actions of `team`, each in the file of its kind.
int bw_team_new(const bw_args *args);
int bw_team_show(const bw_args *args);
int bw_team_set_option(const bw_args *args);
int bw_team_edit_player(const bw_args *args);
int bw_team_edit_splits(const bw_args *args);
int bw_team_edit_game(const bw_args *args);
int bw_team_edit_scheme(const bw_args *args);
int bw_team_edit_quiz(const bw_args *args);
int bw_team_give_feedback(const bw_args *args);
int bw_team_show_legs(const bw_args *args);
int bw_team_choose_lineup(const bw_args *args);
int bw_team_import_sheet(const bw_args *args);
int bw_team_export_sheet(const bw_args *args);
int bw_team_make_backup(const bw_args *args);
int bw_team_put_back(const bw_args *args);
int bw_team_check_file(const bw_args *args);
int bw_team_forget_player(const bw_args *args);
int bw_team_scrub_file(const bw_args *args);

#endif
