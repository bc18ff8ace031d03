/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Join codes: eight letters that let one device in. Each is good once and for ten minutes; five wrong
/// tries from one address, and it waits a minute; many wrong tries from anywhere, and the code is
/// replaced. Twenty consonants, as RFC 8628 section 6.1 has them: no words, no look-alikes, 34.6 bits.
#ifndef BW_SERVE_JOIN_H
#define BW_SERVE_JOIN_H

#include "core/text.h"

enum {
    BW_CODE_LETTERS = 8,
    BW_CODE_SIZE = BW_CODE_LETTERS + 1,
    BW_CODE_SECONDS = 600,
    BW_CODE_TRIES = 5,      ///< wrong ones from one address
    BW_CODE_WAIT = 60,      ///< seconds, after so many
    BW_CODE_ALL_TRIES = 50, ///< wrong ones from all addresses together
    BW_ADDRESS_SIZE = 46,   ///< an IPv6 address as text, terminator included
    BW_JOIN_ADDRESSES = 64  ///< remembered at a time
};

/// Wrong tries of one address.
typedef struct bw_join_tries {
    char address[BW_ADDRESS_SIZE];
    int wrong;
    double last;  ///< when it last tried, s
    double until; ///< it waits till then, s
} bw_join_tries;

typedef struct bw_join {
    char code[BW_CODE_SIZE]; ///< "" while there is none
    double made;             ///< s, on the caller's clock
    int wrong;               ///< tries since then
    bw_join_tries tries[BW_JOIN_ADDRESSES];
} bw_join;

typedef enum bw_join_answer {
    BW_JOIN_IN,    ///< right: the code is spent and a new one is there
    BW_JOIN_WRONG, ///< not the code, or no longer
    BW_JOIN_WAIT,  ///< too many wrong tries from this address
    BW_JOIN_BROKEN ///< the system has no random numbers
} bw_join_answer;

/// A new code, whatever the old one was. False when there are no random numbers.
bool bw_join_renew(bw_join *join, double now);

/// Replaces a code that has grown old.
bool bw_join_keep(bw_join *join, double now);

/// Seconds the code is still good for, 0 when it is not.
double bw_join_left(const bw_join *join, double now);

/// Someone at `address` typed `text`: capitals or not, spaces and dashes do not matter.
bw_join_answer bw_join_try(bw_join *join, const char *text, const char *address, double now);

/// The code as people read it: "BCDF-GHJK".
void bw_join_put(const bw_join *join, bw_text *out);

#endif
