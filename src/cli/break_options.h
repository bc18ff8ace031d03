/* SPDX-License-Identifier: GPL-3.0-or-later */
/// A break on the command line: what `test` and `draw --answer` share.
#ifndef BW_CLI_BREAK_OPTIONS_H
#define BW_CLI_BREAK_OPTIONS_H

#include "cli/attackers.h"

/// Levels by identifier; NULL past the last.
const char *bw_level_choice(int index);

/// The options of a verb that plays a break, for its table; the attack set (--set) is another row.
#define BW_BREAK_OPTIONS                                                                           \
    {.name = "offence",                                                                            \
     .value = "N",                                                                                 \
     .help = "Attackers, 3 to 6; when not given 6, or 4 when the scheme is for three men only"},   \
        {.name = "defence",                                                                        \
         .value = "N",                                                                             \
         .help = "Defenders in when it starts; when not given 4, or the men the scheme is for; "   \
                 "with --offence one fewer than that, 4 against 6"},                               \
        {.name = "start",                                                                          \
         .value = "PLACE",                                                                         \
         .names = "landmarks",                                                                     \
         .help = "Landmark where the ball is"},                                                    \
        {.name = "late",                                                                           \
         .value = "LIST",                                                                          \
         .help = "How far behind the late men start, such as \"20,30\"; \"\" for none; the "       \
                 "scheme's own when not given"},                                                   \
        {.name = "seconds",                                                                        \
         .value = "N",                                                                             \
         .standard = "4",                                                                          \
         .help = "Time the offence is given for the answer, 1 to 10"},                             \
        {.name = "level",                                                                          \
         .value = "LEVEL",                                                                         \
         .choice = bw_level_choice,                                                                \
         .help = "Whose legs, throws and shots; the scheme's level when not given"},               \
    {                                                                                              \
        .name = "seed", .value = "N", .standard = "1",                                             \
        .help = "Of the simulated breaks: the same seed, the same figures"                         \
    }

/// The level asked for; NULL: the scheme's.
const struct bw_level *bw_option_level(const bw_args *args);

#endif
