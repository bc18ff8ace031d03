/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Reading the command line by a verb's table. Options and operands may come in any order; "--" ends
/// the options; "--name=value" and "--name value" are the same; one-letter options may be joined.
/// Names are never abbreviated. A wrong one is answered with the nearest right one.
#ifndef BW_CLI_OPTIONS_H
#define BW_CLI_OPTIONS_H

#include "cli/command.h"
#include "report/ask.h"

typedef struct bw_args {
    const bw_command *verb;
    const char
        *given[BW_MAX_OPTIONS]; ///< by bw_command_option index; "" for a flag; NULL: not given
    const char *operands[BW_MAX_OPERANDS];
    int operand_count;
} bw_args;

/// Fills *args from the words after the verb. False when something is wrong, which has been said.
/// --help and --version are accepted wherever they stand and end the reading.
bool bw_options_read(const bw_command *verb, int count, char *const *words, bw_args *args);

/// Value of an option of this verb, its standard value when not given, or NULL. Asking for an option
/// the table does not have is a mistake of ours.
const char *bw_option_text(const bw_args *args, const char *name);

/// Whether the person gave it.
bool bw_option_given(const bw_args *args, const char *name);

/// A whole number from low to high into *out, left alone when the option was not given. False when it
/// is none, which has been said.
bool bw_option_int(const bw_args *args, const char *name, int low, int high, int *out);

/// The options as values by name.
bw_asked bw_ask_options(const bw_args *args);

/// Says what is wrong with a value that was asked for. BW_EXIT_OK when nothing is.
int bw_say_asked(const bw_asked *ask, bw_status status);

/// Reads options into an order: bw_ask_break or bw_ask_tuning. BW_EXIT_OK, or the code after saying what is
/// wrong.
int bw_load_order(const bw_args *args, bw_status (*read)(bw_asked *ask, bw_order *order),
                  bw_order *order);

#endif
