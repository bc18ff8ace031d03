/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Which of the listed places are struck when a player is forgotten: by --strike, --leave and --seen, or by
/// the answers of someone at a terminal.
#ifndef BW_CLI_FORGET_CHOICE_H
#define BW_CLI_FORGET_CHOICE_H

#include "cli/options.h"
#include "team/places.h"
#include <stdio.h>

typedef enum bw_forget_choice {
    BW_CHOICE_MADE,
    BW_CHOICE_OPEN, ///< some places need the coach's word
    BW_CHOICE_BAD   ///< an option is wrong, which has been said
} bw_forget_choice;

/// Fills strike[0..places->count) from the options; without any, the sure places are struck and the choice
/// is open when there are others.
bw_forget_choice bw_choice_of_options(const bw_args *args, const bw_places *places, bool *strike);

/// Asks about each place on standard error, and takes the answers from standard input. False when whoever
/// is asked wants to stop.
bool bw_choice_ask(const bw_places *places, bool *strike);

/// A place as two lines: which, where and what; the words around it.
void bw_place_print(FILE *out, const bw_place *place, int number);

/// The same as talk, on standard error.
void bw_place_show(const bw_place *place, int number);

#endif
