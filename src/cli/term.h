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
/// obey rather than show (control characters, bytes that are no UTF-8) as \x1b, and what turns or hides
/// other letters as \u202e, so that it is seen.
void bw_term_put(FILE *stream, const char *text);

/// The same for many bytes, whose lines and tabs stay.
void bw_term_put_bytes(FILE *stream, const char *bytes, size_t length);

/// A stream onto stdout or stderr for what a terminal shows: everything goes through bw_term_put_bytes,
/// wherever it comes from, but for our own colours. One at a time for each. NULL: no memory.
FILE *bw_term_open(FILE *to);

/// Shows the rest of it and ends it. False when there was no memory for all of it.
bool bw_term_close(FILE *stream);

#endif
