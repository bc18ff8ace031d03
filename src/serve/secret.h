/* SPDX-License-Identifier: GPL-3.0-or-later */
/// Secrets from the system's random numbers, and comparing them without telling how far they agree.
#ifndef BW_SERVE_SECRET_H
#define BW_SERVE_SECRET_H

#include <stdbool.h>

/// 128 bits as 32 hexadecimal digits, terminator included.
enum { BW_SECRET_SIZE = 33 };

/// False when the system has no random numbers to give.
bool bw_secret_make(char out[BW_SECRET_SIZE]);

/// Whether two secrets are the same and not empty. Takes as long whether they differ early or late.
bool bw_secret_same(const char *a, const char *b);

/// `count` letters drawn evenly from an alphabet of at most 64, and a terminator.
bool bw_secret_letters(const char *alphabet, int count, char *out);

#endif
