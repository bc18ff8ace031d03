/* SPDX-License-Identifier: GPL-3.0-or-later */
/// The names in a scheme that an option can take, for the completions of shells: what
/// `breakwater help --names KIND FILE` lists.
#ifndef BW_CLI_NAMES_H
#define BW_CLI_NAMES_H

#include "core/scheme.h"
#include <stdio.h>

/// Kinds of names, as --names and bw_option.names have them; NULL past the last.
const char *bw_names_choice(int index);

/// The scheme's names of a kind, one a line; of attack sets those that every scheme knows too.
void bw_names_put(FILE *out, const bw_scheme *scheme, const char *kind);

#endif
