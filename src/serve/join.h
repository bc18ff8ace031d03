/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Join codes: eight letters that let one device in. Each is good once and for ten minutes; five wrong
/// tries from one address, and it waits a minute. Twenty consonants, as RFC 8628 section 6.1 has them: no
/// words, no look-alikes, 34.6 bits.
///
/// What guessing is worth. Each try is right with a chance of 1 in 20^8 = 2.56e10, whether the code has
/// changed since the last try or not; so wrong tries do not change it, which would only turn away those
/// who are just typing it. An address has 5 tries a minute. At most 1024 addresses with a wrong try in
/// the last minute are remembered, and while there are so many, further ones wait: 5120 tries a minute
/// at most, 3.7e6 in the twelve hours that sharing can last, a chance of 1 in 6900 for someone who holds
/// more than a thousand addresses all day; with the 250 of a usual network, 1 in 28,000.
#ifndef BW_SERVE_JOIN_H
#define BW_SERVE_JOIN_H

#include "core/text.h"

enum {
    BW_CODE_LETTERS = 8,
    BW_CODE_SIZE = BW_CODE_LETTERS + 1,
    BW_CODE_SECONDS = 600,
    BW_CODE_TRIES = 5,       ///< wrong ones from one address
    BW_CODE_WAIT = 60,       ///< seconds, after so many
    BW_ADDRESS_SIZE = 46,    ///< an IPv6 address as text, terminator included
    BW_JOIN_ADDRESSES = 1024 ///< remembered at a time
};

/// Wrong tries of one address.
typedef struct bw_join_tries {
    char address[BW_ADDRESS_SIZE];
    int wrong;
    double last;  ///< when it last tried wrong, s
    double until; ///< it waits till then, s
} bw_join_tries;

typedef struct bw_join {
    char code[BW_CODE_SIZE]; ///< "" while there is none
    double made;             ///< s, on the caller's clock
    bw_join_tries tries[BW_JOIN_ADDRESSES];
} bw_join;

typedef enum bw_join_answer {
    BW_JOIN_IN,    ///< right: the code is spent and a new one is there
    BW_JOIN_WRONG, ///< not the code, or no longer
    BW_JOIN_WAIT,  ///< too many wrong tries from this address, or from too many others
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
