/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The list of verbs, the options they share, and the meaning of the exit codes.
#include "cli/command.h"
#include <string.h>

static const char *unit_choice(int index) {
    static const char *const units[] = {"yd", "m", NULL};
    return units[index];
}

const bw_option bw_common_options[] = {
    {.name = "json", .help = "Give the result as JSON"},
    {.name = "output",
     .letter = 'o',
     .value = "FILE",
     .file = true,
     .help = "Write the result to FILE instead of standard output (-)"},
    {.name = "units",
     .value = "UNIT",
     .choice = unit_choice,
     .help = "Say and read lengths in this unit; the scheme's own when not given"},
    {.name = "no-color", .help = "No colour, not even on a terminal"},
    {.name = "help", .letter = 'h', .help = "Say how the verb is used, and stop"},
    {.name = "version", .help = "Say which version this is, and stop"},
};

int bw_common_option_count(void) {
    return BW_COUNT(bw_common_options);
}

const bw_command *bw_command_at(int index) {
    static const bw_command *const verbs[] = {&bw_command_new,    &bw_command_check,
                                              &bw_command_where,  &bw_command_draw,
                                              &bw_command_test,   &bw_command_tune,
                                              &bw_command_teach,  &bw_command_rehearse,
                                              &bw_command_team,   &bw_command_log,
                                              &bw_command_review, &bw_command_board,
                                              &bw_command_help,   NULL};
    return verbs[index];
}

const bw_command *bw_command_find(const char *name) {
    for (int i = 0; bw_command_at(i); i++) {
        if (strcmp(bw_command_at(i)->name, name) == 0) return bw_command_at(i);
    }
    return NULL;
}

const bw_option *bw_command_option(const bw_command *verb, int index) {
    if (index < verb->option_count) return &verb->options[index];
    index -= verb->option_count;
    return index < BW_COUNT(bw_common_options) ? &bw_common_options[index] : NULL;
}

const bw_exit_meaning *bw_exit_meaning_at(int index) {
    static const bw_exit_meaning meanings[] = {
        {"0", "All is well."},
        {"1", "The input is wrong, or check found errors."},
        {"2", "The command line is wrong."},
        {"3", "A file or device failed."},
        {"4", "A limit was reached."},
        {"130", "Interrupted from the keyboard."},
    };
    return index < BW_COUNT(meanings) ? &meanings[index] : NULL;
}
