/* SPDX-License-Identifier: GPL-3.0-or-later */
/// What the coach allows a tuning to change, from the command line.
#ifndef BW_CLI_TUNE_OPTIONS_H
#define BW_CLI_TUNE_OPTIONS_H

#include "cli/options.h"
#include "tune/tune.h"

/// The options, for the verb's table.
#define BW_TUNING_OPTIONS                                                                          \
    {.name = "stage",                                                                              \
     .value = "N",                                                                                 \
     .names = "stages",                                                                            \
     .help = "The stage to tune; four defenders when there is one, else the smallest"},            \
        {.name = "keep",                                                                           \
         .value = "LIST",                                                                          \
         .help = "What stays: spots (\"LL,TL\"), \"homes\", \"rule\", or numbers of the rule "     \
                 "(\"pickup,shift\")"},                                                            \
        {.name = "within",                                                                         \
         .value = "D",                                                                             \
         .standard = "4",                                                                          \
         .help = "How far a home may move each way"},                                              \
        {.name = "spacing",                                                                        \
         .value = "D",                                                                             \
         .standard = "3",                                                                          \
         .help = "How far apart two homes stay"},                                                  \
        {.name = "mix",                                                                            \
         .value = "PERCENT",                                                                       \
         .standard = "50",                                                                         \
         .help = "Share of typical play in the aim, the rest is best play, 0 to 100"},             \
        {.name = "practice",                                                                       \
         .value = "GOALS",                                                                         \
         .standard = "0.2",                                                                        \
         .help = "Pull toward practice: goals in 100 breaks for one step away, 0 to 10"},          \
        {.name = "tries",                                                                          \
         .value = "N",                                                                             \
         .standard = "600",                                                                        \
         .help = "Candidates looked at, 50 to 100000"},                                            \
        {.name = "breaks",                                                                         \
         .value = "N",                                                                             \
         .standard = "24",                                                                         \
         .help = "Breaks it is trained on at most, 4 to 48"},                                      \
    {                                                                                              \
        .name = "seed", .value = "N", .standard = "1", .help = "Of the search and of the breaks"   \
    }

/// Reads them. BW_EXIT_OK, or the code after saying what is wrong.
int bw_load_tuning(const bw_args *args, const bw_scheme *scheme, bw_tuning *def);

#endif
