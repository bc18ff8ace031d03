/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Colour, and whether there is to be any. Colour never says what the words do not.
#ifndef BW_CLI_TERM_H
#define BW_CLI_TERM_H

#include <stdbool.h>
#include <stdio.h>

typedef enum bw_ink_colour {
    BW_TERM_PLAIN,
    BW_TERM_BOLD,
    BW_TERM_RED,
    BW_TERM_YELLOW,
    BW_TERM_CYAN
} bw_ink_colour;

/// No colour from here on: --no-color. Called once, before anything is printed.
void bw_term_no_colour(void);

/// Starts a colour, or with BW_TERM_PLAIN ends it. Nothing where there is to be no colour.
void bw_term_set(FILE *stream, bw_ink_colour colour);

/// Writes a text in which file names or other words of unknown origin may stand: what a terminal would
/// obey rather than show (control characters, bytes that are no UTF-8) as \x1b, so that it is seen.
void bw_term_put(FILE *stream, const char *text);

#endif
