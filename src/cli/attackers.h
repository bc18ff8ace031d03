/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Attackers on the command line: places one by one, or a set by name.
#ifndef BW_CLI_ATTACKERS_H
#define BW_CLI_ATTACKERS_H

#include "cli/options.h"
#include "core/scheme.h"

typedef struct bw_attackers {
    int count; ///< 0: none given
    bw_vec at[BW_MAX_ATTACKERS];
} bw_attackers;

/// The options, for a verb's table.
#define BW_ATTACKER_OPTIONS                                                                        \
    {.name = "attackers",                                                                          \
     .value = "PLACES",                                                                            \
     .help = "Where the attackers are: \"x,y x,y ...\", up to six"},                               \
        {.name = "set",                                                                            \
         .value = "SET",                                                                           \
         .names = "sets",                                                                          \
         .offer = bw_set_choice,                                                                   \
         .help = "Or an attack set, of the scheme's own or one of these"},                         \
    {                                                                                              \
        .name = "men", .value = "N",                                                               \
        .help = "With --set: how many of its attackers; all when not given"                        \
    }

/// The attack sets that every scheme knows; NULL past the last.
const char *bw_set_choice(int index);

/// Reads --attackers, or --set and --men. BW_EXIT_OK, or the code after saying what is wrong.
int bw_load_attackers(const bw_args *args, const bw_scheme *scheme, bw_attackers *men);

#endif
