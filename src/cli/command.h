/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The table everything about the command line is made from: parsing, --help, the manual pages,
/// docs/cli.md and the completions. One bw_command a verb, kept in that verb's own file.
#ifndef BW_CLI_COMMAND_H
#define BW_CLI_COMMAND_H

#include "core/base.h"

/// Exit codes, the same for every verb.
enum {
    BW_EXIT_OK = 0,
    BW_EXIT_WRONG = 1, ///< the input is wrong, or `check` found errors
    BW_EXIT_USAGE = 2,
    BW_EXIT_FILE = 3, ///< a file or device failed
    BW_EXIT_LIMIT = 4
};

enum { BW_MAX_OPTIONS = 32, BW_MAX_OPERANDS = 8 };

/// One option of a verb.
typedef struct bw_option {
    const char *name;                 ///< long name without the dashes
    char letter;                      ///< one-letter form; 0 for none
    const char *value;                ///< what its value is called in the help; NULL: it takes none
    const char *(*choice)(int index); ///< the words it may be, NULL past the last; NULL: anything
    const char *(*offer)(int index);  ///< words it is made of, or may be; others may be right
    const char *names;                ///< kind of names in the scheme (cli/names.h); NULL: none
    const char *standard;             ///< value when not given; NULL: none
    const char *help;                 ///< one sentence without its full stop
    bool file;                        ///< the value is a file name (for completion)
} bw_option;

struct bw_args;

/// One thing to do, of a verb that does several with the same file: `team show`, `log add`. Its word is
/// one of the verb's operands (cli/action.h).
typedef struct bw_action {
    const char *name;
    const char *operands; ///< what follows its word, and for a verb that begins with it the file
    int least, most;      ///< how many operands, its word left out, the file counted
    const char *options;  ///< those of the verb's own options that mean something here, by name
    const char *summary;  ///< one line, no full stop, begins with a small letter
    int (*run)(const struct bw_args *args); ///< gets the operands without its word: the file first
    const char *(*offer)(int index); ///< words among its operands, for completions; NULL: none
} bw_action;

typedef struct bw_command {
    const char *name;
    const char *operands; ///< as the usage line shows them; "" for none
    int least, most;      ///< how many operands
    const char *summary;  ///< one line, no full stop, begins with a small letter
    const char *text;     ///< paragraphs split by empty lines
    const char *examples; ///< lines "command # what it does"
    const bw_option *options;
    int option_count;
    int (*run)(const struct bw_args *args);
    const bw_action *actions; ///< NULL: it does one thing
    int action_count;
    bool of_players; ///< what it writes is of the players: no other user of the machine may read it
    int action_at;   ///< which operand the action's word is: 0 before the file, 1 behind it
} bw_command;

/// Options every verb has: help, version, json, output, units, no-color.
extern const bw_option bw_common_options[];
int bw_common_option_count(void);

/// All verbs in the order of use, NULL past the last.
const bw_command *bw_command_at(int index);

/// NULL when there is none of this name.
const bw_command *bw_command_find(const char *name);

/// Option number `index` of a verb, its own first, then the common ones; NULL past the last.
const bw_option *bw_command_option(const bw_command *verb, int index);

/// The meaning of the exit codes, for every manual page; NULL past the last.
typedef struct bw_exit_meaning {
    const char *code;
    const char *meaning;
} bw_exit_meaning;
const bw_exit_meaning *bw_exit_meaning_at(int index);

extern const bw_command bw_command_new, bw_command_check, bw_command_where, bw_command_draw,
    bw_command_test, bw_command_tune, bw_command_teach, bw_command_rehearse, bw_command_team,
    bw_command_log, bw_command_review, bw_command_board, bw_command_help;

#endif
