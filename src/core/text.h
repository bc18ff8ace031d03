/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Building text in memory the caller owns: the core has no printf (it would bring imports into the
/// WebAssembly module). Truncates at whole UTF-8 characters and remembers that it did.
#ifndef BW_CORE_TEXT_H
#define BW_CORE_TEXT_H

#include <stdbool.h>
#include <stddef.h>

/// Text under construction. `data` is always terminated.
typedef struct bw_text {
    char *data;
    size_t room; ///< bytes in data, terminator included, at least 1
    size_t used; ///< bytes written, terminator left out
    bool full;   ///< something did not fit
} bw_text;

bw_text bw_text_in(char *data, size_t room);
void bw_put(bw_text *t, const char *s);
void bw_put_n(bw_text *t, const char *s, size_t n);
void bw_put_char(bw_text *t, char c);
void bw_put_int(bw_text *t, long long n);

/// x with exactly `decimals` (0 to 9) places, halves away from zero, never "-0". |x| < 1e9.
void bw_put_fixed(bw_text *t, double x, int decimals);

/// x with at most `decimals` places and no trailing zeros: the canonical form of a file.
void bw_put_number(bw_text *t, double x, int decimals);

/// Makes the letter at c large if it is one of ASCII's small ones: for the head of a sentence.
void bw_capital(char *c);

bool bw_same(const char *a, const char *b);
size_t bw_text_length(const char *s);

/// Copies s into a fixed buffer, cut at a whole UTF-8 character if it must be. Returns whether all fitted.
bool bw_copy(char *to, size_t room, const char *s);

/// Whether s is well-formed UTF-8 (RFC 3629) without control characters (C0, DEL, C1): one line that can
/// be shown anywhere. The empty text is plain.
bool bw_text_plain(const char *s);

/// Whether a well-formed s holds a character nobody sees that turns or hides others, so that a name reads
/// otherwise than it is: bidirectional marks, overrides and isolates, zero-width blanks, line separators, byte
/// order marks (Unicode Annex 9, and 23.2 of the standard). The joiners that Persian and the scripts of India
/// write with are none.
bool bw_text_hidden(const char *s);

/// The code point of the character a well-formed s begins with, when it is such a one; 0 when not.
unsigned bw_hidden_character(const char *s);

/// Bytes of the character s begins with, when bw_text_plain would let it pass; 0 when not, or at the end.
int bw_plain_character(const char *s);

/// Edit distance between two short words (insert, delete, change, swap neighbours), at most `limit` + 1.
/// For "did you mean": words up to 63 bytes, longer ones count as far away.
int bw_edit_distance(const char *a, const char *b, int limit);

#endif
