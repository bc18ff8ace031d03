/* SPDX-License-Identifier: GPL-3.0-or-later */
/// team new, set, backup, restore, check: the file as a whole.
#include "cli/out.h"
#include "cli/say.h"
#include "cli/team_file.h"
#include "team/backup.h"
#include "team/settings.h"
#include <stdlib.h>
#include <string.h>

int bw_team_new(const bw_args *args) {
    bw_error error;
    bw_team *team;
    const char *path = args->operands[0], *name = bw_option_text(args, "name");
    if (bw_team_create(path, &error) != BW_OK) return bw_say_refusal(path, &error);
    const int code = bw_open_team(args, BW_TEAM_WRITE, &team);
    if (code != BW_EXIT_OK) return code;
    if (name && bw_team_set(team, BW_SETTING_TEAM, name, &error) != BW_OK)
        return bw_team_refusal(team, path, &error);
    bw_team_close(team);
    bw_say("Made %s. Next: breakwater team import %s roster.csv --sheet roster", path, path);
    return bw_tell_facts(args, &(bw_fact){"file", 0, path}, 1);
}

/// Full names are a switch of their own: turning them off erases them.
static bw_status set(bw_team *team, const char *name, const char *value, bw_error *error) {
    return strcmp(name, "full-names") == 0
               ? bw_team_allow_names(team, strcmp(value, "on") == 0, error)
               : bw_team_set(team, name, value, error);
}

static int tell_setting(const bw_args *args, const char *name, const char *value, bool changed) {
    bw_out out;
    if (bw_option_given(args, "json")) return bw_tell_facts(args, &(bw_fact){name, 0, value}, 1);
    if (changed) return BW_EXIT_OK;
    if (!bw_out_open(args, &out)) return BW_EXIT_FILE;
    fprintf(out.stream, "%s\n", value);
    return bw_out_close(&out, BW_EXIT_OK);
}

int bw_team_set_option(const bw_args *args) {
    const char *name = args->operands[1];
    const bool change = args->operand_count > 2, names = strcmp(name, "full-names") == 0;
    const char *value = change ? args->operands[2] : "";
    if (strcmp(name, BW_SETTING_TEAM) != 0 && strcmp(name, BW_SETTING_ABOUT) != 0 && !names)
        return bw_usage(args->verb,
                        "there is no setting \"%s\"; there are team, about and full-names.", name);
    if (names && change && strcmp(value, "on") != 0 && strcmp(value, "off") != 0)
        return bw_usage(args->verb, "full-names is on or off, not \"%s\".", value);
    bw_team *team;
    bw_error error;
    char is[BW_SETTING_SIZE];
    const int code = bw_open_team(args, change ? BW_TEAM_WRITE : BW_TEAM_READ, &team);
    if (code != BW_EXIT_OK) return code;
    bw_status status = change ? set(team, name, value, &error) : BW_OK;
    if (status == BW_OK) status = bw_team_setting(team, name, is, sizeof is, &error);
    if (status != BW_OK) return bw_team_refusal(team, args->operands[0], &error);
    bw_team_close(team);
    return tell_setting(args, name, names && !is[0] ? "off" : is, change);
}

int bw_team_make_backup(const bw_args *args) {
    bw_team *team;
    bw_error error;
    const char *copy = args->operands[1];
    const int code = bw_open_team(args, BW_TEAM_READ, &team);
    if (code != BW_EXIT_OK) return code;
    if (bw_team_backup(team, copy, bw_option_given(args, "force"), &error) != BW_OK)
        return bw_team_refusal(team, copy, &error);
    bw_team_close(team);
    bw_say("Made %s, a whole copy of %s. It is as private as the file itself.", copy,
           args->operands[0]);
    return bw_tell_facts(args, &(bw_fact){"copy", 0, copy}, 1);
}

int bw_team_put_back(const bw_args *args) {
    bw_error error;
    const char *path = args->operands[0], *copy = args->operands[1];
    if (bw_team_restore(copy, path, bw_option_given(args, "force"), &error) != BW_OK)
        return bw_say_refusal(path, &error);
    bw_say("%s is again as it was in %s.", path, copy);
    return bw_tell_facts(args, &(bw_fact){"file", 0, path}, 1);
}

int bw_team_check_file(const bw_args *args) {
    bw_team *team;
    bw_error error;
    // Opening it to write brings an older file up to date; one that is read-only is looked at as it is.
    bw_status status = bw_team_open(args->operands[0], BW_TEAM_WRITE, &team, &error);
    if (status == BW_FILE) status = bw_team_open(args->operands[0], BW_TEAM_READ, &team, &error);
    if (status == BW_OK) status = bw_team_verify(team, &error);
    if (status != BW_OK) return bw_team_refusal(team, args->operands[0], &error);
    bw_team_close(team);
    bw_say("%s is sound.", args->operands[0]);
    return bw_tell_facts(args, &(bw_fact){"sound", 0, args->operands[0]}, 1);
}
